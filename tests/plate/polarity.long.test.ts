import './polarity.test.js'

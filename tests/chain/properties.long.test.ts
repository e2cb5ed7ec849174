import './properties.test.js'

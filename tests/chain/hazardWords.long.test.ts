import './hazardWords.test.js'

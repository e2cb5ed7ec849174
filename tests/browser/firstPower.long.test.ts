import './firstPower.test.js'

import './decimalSign.test.js'

import './check.test.js'

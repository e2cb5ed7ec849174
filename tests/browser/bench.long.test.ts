import './bench.test.js'

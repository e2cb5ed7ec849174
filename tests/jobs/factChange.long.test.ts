import './factChange.test.js'

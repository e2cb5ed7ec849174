import './keep.test.js'

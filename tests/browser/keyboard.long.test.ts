import './keyboard.test.js'

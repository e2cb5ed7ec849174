import './askingOrder.test.js'

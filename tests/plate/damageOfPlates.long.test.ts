import './damageOfPlates.test.js'

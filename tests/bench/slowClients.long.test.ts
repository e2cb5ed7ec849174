import './slowClients.test.js'

import { pagesOfNoRecords, pagesOfRecords } from './everyPage.js'
import { type State, walked } from './states.js'

const isWalked = ([name]: State) => walked.has(name)

pagesOfNoRecords(isWalked)
pagesOfRecords(isWalked)

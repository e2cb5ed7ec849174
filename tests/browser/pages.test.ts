import { everyPage } from './everyPage.js'
import { walked } from './states.js'

everyPage(320, ([name]) => walked.has(name))

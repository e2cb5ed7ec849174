import { pagesOfNoRecords } from './everyPage.js'

pagesOfNoRecords(() => true)

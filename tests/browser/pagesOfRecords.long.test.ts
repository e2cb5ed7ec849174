import { pagesOfRecords } from './everyPage.js'

pagesOfRecords(() => true)

import { everyPage } from './everyPage.js'

for (const width of [320, 1280]) everyPage(width, () => true)

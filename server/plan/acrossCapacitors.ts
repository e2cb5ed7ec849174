import { say } from '../words/phrase.js'

/** How it is found out whether what is stored inside is gone: nobody knows which voltage is still there. */
export const acrossCapacitors = say`measure across the large capacitors: DC volts, highest range`

/** What the phone judges by without the server: the very functions that the server judges by, put together for browsers. */
export { fewestLetters, isLongEnough as saysCause } from '../../../bench/jobs/enoughSaid.js'
export { readingFinding } from '../../../bench/jobs/readingFinding.js'
export { seenFinding } from '../../../bench/jobs/seenFinding.js'
export { tell } from '../../../words/tell.js'
export { inUnit } from '../../../words/unit.js'
export { readMeter, unitsShown } from '../../meter.js'

import { faultsOf } from './faults.js'
import { tables } from './index.js'

/** What is wrong in the reference tables; empty when nothing is. Checked once at start. */
export const faultsOfTables = (): string[] => tables.flatMap(faultsOf)

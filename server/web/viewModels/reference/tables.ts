import * as bench from './benchTables.js'
import { findingsTable } from './findingsTable.js'
import * as fuses from './fuseTables.js'
import * as lamps from './lampTables.js'
import * as leads from './leadTables.js'
import { limitsTable } from './limitsTable.js'
import * as mains from './mainsTables.js'
import * as plates from './plateTables.js'
import { rulesTable } from './rulesTable.js'
import type { Row, Table } from './table.js'
import { wordsTable } from './wordsTable.js'

interface Group {
  title: string
  tables: readonly Table[]
}

/** Every table the program decides from, as a reader looks for it. One more table is one more entry. */
export const groups: readonly Group[] = [
  {
    title: 'Wall and cord',
    tables: [
      mains.countriesTable,
      mains.socketsTable,
      mains.plugTypesTable,
      mains.plugFitsTable,
      mains.bandsTable,
      mains.homeFrequenciesTable,
      mains.ratingTestsTable,
      leads.inletPairsTable,
      leads.crossMatingsTable,
      leads.cordsTable,
      leads.minimumAreasTable,
      leads.plugFusesTable,
      mains.coloursTable,
    ],
  },
  {
    title: 'Supply and machine',
    tables: [
      plates.plateSymbolsTable,
      plates.plateWordsTable,
      plates.polarityTermsTable,
      plates.plateUnitsTable,
      leads.dcPlugsTable,
      leads.awgTable,
      leads.flexibleCoresTable,
      leads.usbTable,
      bench.outputBandsTable,
      bench.regulationTable,
      bench.allowedRiseTable,
      bench.windingTable,
    ],
  },
  {
    title: 'Fuse-links',
    tables: [
      fuses.fuseRatingsTable,
      fuses.fuseGatesTable,
      fuses.otherGatesTable,
      fuses.schemesTable,
      fuses.meltingTable,
      fuses.breakingTable,
      fuses.fuseSelectionTable,
      fuses.fuseWordsTable,
      fuses.fuseSymbolsTable,
      fuses.fuseColoursTable,
    ],
  },
  {
    title: 'First power-up',
    tables: [
      lamps.lampsTable,
      lamps.lampSizesTable,
      lamps.coldRatiosTable,
      lamps.unsuitableLampsTable,
      lamps.glowTable,
      lamps.tungstenTable,
      lamps.heatCapacityTable,
      lamps.lampExponentsTable,
      bench.benchStepsTable,
      bench.storageTable,
      bench.reformingTable,
      bench.leakageTable,
      bench.touchTable,
      bench.safetyLimitsTable,
      bench.preferredTable,
    ],
  },
  { title: 'How it decides', tables: [findingsTable, limitsTable, rulesTable, wordsTable] },
]

export const tables: readonly Table[] = groups.flatMap((group) => group.tables)

const byName = new Map(tables.map((table) => [table.name, table]))

/** The table at an address; undefined where there is none. */
export const tableByName = (name: string): Table | undefined => byName.get(name)

const made = new Map<Table, readonly Row[]>()

/** The rows of a table, made when first asked for: the data do not change while the program runs. */
export function rowsOf(table: Table): readonly Row[] {
  const known = made.get(table) ?? table.rows()
  made.set(table, known)
  return known
}

import { awgTable } from './awg.js'
import { benchStepsTable, flexibleCoresTable } from './benchSupply.js'
import { leakageTable, reformingTable, storageTable, touchTable } from './capacitors.js'
import { causesTable } from './causes.js'
import { causesSeenTable } from './causesSeen.js'
import { conductorColoursTable } from './conductorColours.js'
import { connectorPinsTable } from './connectorPins.js'
import { cordsTable, minimumAreasTable, plugFusesTable } from './cordRows.js'
import { dcPlugsTable } from './dcPlugRows.js'
import { outputBandsTable } from './dummyLoad.js'
import { emptyWordsTable } from './emptyWords.js'
import { examinationsTable } from './examinations.js'
import { examineLimitsTable } from './examineLimits.js'
import { heatCapacityTable, lampExponentsTable, tungstenTable } from './filament.js'
import { frozen } from './frozen.js'
import { fuseGatesTable } from './fuseGates.js'
import { otherGatesTable, schemesTable } from './fuseGatesOther.js'
import { fuseColoursTable, fuseSymbolsTable, fuseWordsTable } from './fuseMarks.js'
import { meltingTable } from './fuseMelting.js'
import { breakingTable, fuseRatingsTable } from './fuseRatings.js'
import { fuseSelectionTable } from './fuseSelection.js'
import { glowTable } from './glow.js'
import { hazardWordsTable } from './hazardWords.js'
import { homeFrequenciesTable } from './homeFrequencies.js'
import { identityWordsTable } from './identityWords.js'
import { crossMatingsTable, inletPairsTable } from './inletPairs.js'
import { coldLoadsTable, lampShowsTable } from './inside.js'
import { coldRatiosTable, lampSizesTable, unsuitableLampsTable } from './lamps.js'
import { lookAlikesTable } from './lookAlikes.js'
import { countriesTable } from './mains.js'
import { mainsBandsTable } from './mainsBands.js'
import { mainsSourcesTable } from './mainsSources.js'
import { minimumLoadTable } from './minimumLoad.js'
import { neverDoneTable } from './neverDone.js'
import { plateNominalsTable } from './plateNominals.js'
import { plateSayingsTable } from './plateSayings.js'
import { plateSymbolsTable } from './plateSymbols.js'
import { plateUnitsTable, plateWordsTable } from './plateWords.js'
import { plugFitsTable } from './plugFits.js'
import { plugTypesTable } from './plugTypes.js'
import { plugWordsTable } from './plugWords.js'
import { polarityTermsTable } from './polarityTerms.js'
import { preferredTable } from './preferredValues.js'
import { ratingTestsTable } from './ratingTests.js'
import { windingTable } from './rectifiers.js'
import { safetyLimitsTable } from './safetyTestLimits.js'
import { socketsTable } from './socketFaces.js'
import { speedsTable } from './speeds.js'
import { stopWordsTable } from './stopWords.js'
import type { Table } from './table.js'
import { tellingWordsTable } from './tellingWords.js'
import { allowedRiseTable, regulationTable } from './transformerRegulation.js'
import { usbTable } from './usbPower.js'
import { variableTransformerTable } from './variableTransformer.js'
import { whatWasSeenTable } from './whatWasSeen.js'

/** Every table, as a reader looks for it. One more table is one more line. */
export const groups = frozen({
  'Wall and cord': [
    countriesTable,
    socketsTable,
    plugTypesTable,
    plugFitsTable,
    mainsBandsTable,
    mainsSourcesTable,
    variableTransformerTable,
    speedsTable,
    minimumLoadTable,
    connectorPinsTable,
    homeFrequenciesTable,
    plateNominalsTable,
    ratingTestsTable,
    inletPairsTable,
    crossMatingsTable,
    cordsTable,
    minimumAreasTable,
    plugFusesTable,
    conductorColoursTable,
  ],
  'Supply and machine': [
    plateSymbolsTable,
    plateWordsTable,
    polarityTermsTable,
    hazardWordsTable,
    plateSayingsTable,
    identityWordsTable,
    tellingWordsTable,
    plateUnitsTable,
    plugWordsTable,
    lookAlikesTable,
    dcPlugsTable,
    awgTable,
    flexibleCoresTable,
    usbTable,
    outputBandsTable,
    regulationTable,
    allowedRiseTable,
    windingTable,
  ],
  'Fuse-links': [
    fuseRatingsTable,
    fuseGatesTable,
    otherGatesTable,
    schemesTable,
    meltingTable,
    breakingTable,
    fuseSelectionTable,
    fuseWordsTable,
    fuseSymbolsTable,
    fuseColoursTable,
  ],
  'First power-up': [
    lampSizesTable,
    coldRatiosTable,
    unsuitableLampsTable,
    glowTable,
    lampShowsTable,
    coldLoadsTable,
    tungstenTable,
    heatCapacityTable,
    lampExponentsTable,
    benchStepsTable,
    stopWordsTable,
    emptyWordsTable,
    storageTable,
    reformingTable,
    leakageTable,
    touchTable,
    safetyLimitsTable,
    preferredTable,
  ],
  'What was seen': [
    whatWasSeenTable,
    causesSeenTable,
    causesTable,
    examinationsTable,
    examineLimitsTable,
    neverDoneTable,
  ],
})

export const tables: readonly Table[] = frozen(Object.values(groups).flat())

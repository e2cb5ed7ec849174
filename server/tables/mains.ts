import { frozen } from './frozen.js'
import { mainsBands } from './mainsBands.js'
import { type CountryRow, countryRows } from './mainsCountries.js'
import { socketLetters } from './socketLetters.js'
import { commonPractice, type Source } from './source.js'
import { figure, table } from './table.js'

interface MainsSystem {
  readonly voltageV: number
  readonly frequencyHz: number
  /** bottom of the band at the supply terminals [V] */
  readonly minV: number
  /** top of the band at the supply terminals [V] */
  readonly maxV: number
  readonly bandSources: readonly Source[]
}

export interface MainsCountry {
  /** ISO 3166-1 alpha-2 */
  readonly country: string
  readonly name: string
  /** every system met there; more than one means: find out which */
  readonly systems: readonly MainsSystem[]
  /** IEC letters */
  readonly sockets: readonly string[]
  readonly notes: readonly string[]
  readonly sources: readonly Source[]
}

export interface Band {
  readonly minV: number
  readonly maxV: number
  readonly sources: readonly Source[]
}

export const usualBand = 0.1
/** Where no row decides. @public */
export const usualBandSource = commonPractice(
  'Usual mains band',
  '±10 % of the nominal voltage where no firm national figure was found: as wide as or wider than nearly all published bands',
)

/**
 * The band the mains may lie in at the supply terminals in normal times.
 * A national row where there is one, the widest where several disagree; a row in doubt does not decide.
 * Else IEC 60038 where it has the system; else ±10 %.
 *
 * @param voltageV     nominal voltage [V], more than 0
 * @param frequencyHz  nominal frequency [Hz], more than 0
 * @param country      ISO 3166-1 alpha-2, either case
 * @throws RangeError outside those ranges
 * @source the rows of mainsBands.ts
 */
export function bandFor(voltageV: number, frequencyHz: number, country?: string): Band {
  if (!(voltageV > 0 && voltageV < Infinity)) throw new RangeError(`voltageV must be more than 0 V, got ${voltageV}`)
  if (!(frequencyHz > 0 && frequencyHz < Infinity))
    throw new RangeError(`frequencyHz must be more than 0 Hz, got ${frequencyHz}`)
  const rows = mainsBands.filter(
    (row) =>
      row.kind === 'supply' && !row.doubt && row.voltageV === voltageV && row.frequenciesHz.includes(frequencyHz),
  )
  const iso = country?.toUpperCase()
  const national = iso === undefined ? [] : rows.filter((row) => row.countries?.includes(iso))
  const deciding = national.length > 0 ? national : rows.filter((row) => row.countries === null)
  if (deciding.length === 0)
    return {
      // tidied to a tenth of a millivolt so that 1.1 × 120 is 132 and not 132.00000000000003
      minV: Number((voltageV * (1 - usualBand)).toFixed(4)),
      maxV: Number((voltageV * (1 + usualBand)).toFixed(4)),
      sources: [usualBandSource],
    }
  return {
    minV: Math.min(...deciding.map((row) => row.minV)),
    maxV: Math.max(...deciding.map((row) => row.maxV)),
    sources: deciding.flatMap((row) => row.sources),
  }
}

const asCountry = ({ country, name, systems, sockets, notes, doubt, sources }: CountryRow): MainsCountry => ({
  country,
  name,
  systems: systems.map(([voltageV, frequencyHz]) => {
    const { minV, maxV, sources: bandSources } = bandFor(voltageV, frequencyHz, country)
    return { voltageV, frequencyHz, minV, maxV, bandSources }
  }),
  sockets,
  notes: doubt === undefined ? notes : [...notes, doubt],
  sources,
})

/** Every country listed, by its letters. */
export const countries: readonly MainsCountry[] = frozen(countryRows.map(asCountry))

const byCountry = new Map(countries.map((row) => [row.country, row]))

/** The mains of a country; either case; undefined when it is not listed. */
export const mainsOf = (iso2: string): MainsCountry | undefined => byCountry.get(iso2.trim().toUpperCase())

const shownRows = countryRows.map((row) => {
  const systems = mainsOf(row.country)?.systems ?? []
  return { ...row, systems, sources: [...row.sources, ...systems.flatMap(({ bandSources }) => bandSources)] }
})

export const countriesTable = table<(typeof shownRows)[number]>({
  name: 'countries',
  title: 'Mains by country',
  intro:
    'Nominal voltage and frequency, the band the voltage may lie in at the supply terminals, and the sockets met there. Where lists disagree the row says so: measure before anything is plugged in.',
  rows: shownRows,
  id: ({ country }) => [country],
  byName: true,
  columns: [
    { key: 'country', title: 'Country', as: 'country', pattern: /^[A-Z]{2}$/ },
    { title: 'Code', of: ({ country }) => country },
    {
      key: 'systems',
      title: 'Mains',
      between: '; ',
      each: ({ voltageV, frequencyHz }: MainsSystem) => [figure(voltageV, 'V'), ' ', figure(frequencyHz, 'Hz')],
      filled: true,
    },
    {
      key: 'systems',
      title: 'Band',
      between: '; ',
      each: ({ minV, maxV }: MainsSystem) => figure(minV, 'V', { to: maxV }),
    },
    { key: 'sockets', title: 'Sockets', as: 'socket', filled: true, known: () => socketLetters },
    { key: 'notes', title: 'Notes', between: ' ' },
  ],
  rules: [
    {
      fault: 'has a system outside 100 to 240 V, 50 or 60 Hz',
      broken: ({ systems }) =>
        !systems.every(
          ({ voltageV, frequencyHz }) => voltageV >= 100 && voltageV <= 240 && [50, 60].includes(frequencyHz),
        ),
    },
  ],
})

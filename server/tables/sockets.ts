import { type FitRow, plugFits } from './plugFits.js'
import { type PlugType, plugTypes } from './plugTypes.js'
import { socketLetters } from './socketLetters.js'

export type { PlugType }

const plain = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '')

const byName = new Map<string, PlugType>()
for (const plug of plugTypes) for (const name of [plug.name, ...plug.aliases]) byName.set(plain(name), plug)
// a letter names a plug only where exactly one is filed under it
for (const letter of socketLetters) {
  const [only, second] = plugTypes.filter((plug) => plug.letters.includes(letter))
  if (only && !second) for (const text of [letter, `type ${letter}`]) byName.set(plain(text), only)
}

/** The plug a text names: "CEE 7/16", "cee7/16", "Europlug", "BS1363", "NEMA 5-15P", "Type G"; undefined when it names none, or several. */
export const plugByName = (text: string): PlugType | undefined => byName.get(plain(text))

const rowsOf = new Map<string, FitRow[]>()
for (const row of plugFits)
  for (const plug of row.plugs)
    for (const letter of row.letters) {
      const key = `${plug} ${letter}`
      rowsOf.set(key, [...(rowsOf.get(key) ?? []), row])
    }

/** The plugs that a row names for a letter. */
const plugsByLetter: ReadonlyMap<string, readonly PlugType[]> = new Map(
  socketLetters.map((letter) => [letter, plugTypes.filter(({ name }) => rowsOf.has(`${name} ${letter}`))]),
)

export interface Fit {
  /** 'depends': some usual sockets of the letter take it and some do not */
  readonly fits: 'yes' | 'forced' | 'no' | 'depends'
  readonly earth: FitRow['earth']
  /** every row for the pair, rare sockets too */
  readonly rows: readonly FitRow[]
}

/** Countries whose sockets of a letter are a case of their own for a plug. */
export function countriesOfFit(plug: string, socketLetter: string): string[] {
  const name = plugByName(plug)?.name
  const pair = rowsOf.get(`${name} ${socketLetter.trim().toUpperCase()}`) ?? []
  return [...new Set(pair.flatMap(({ countries }) => countries ?? []))]
}

const agreed = <Value extends string>(values: readonly Value[]): Value | undefined =>
  values.every((value) => value === values[0]) ? values[0] : undefined

/**
 * Whether a plug goes into a socket of a letter. Rows that disagree: 'forced' before everything, else 'depends'.
 * With a country, the rows for its own sockets come before the general ones.
 * Undefined where the table has no row for the pair, or the plug or the letter is not known.
 *
 * @source the rows of plugFits.ts
 */
export function fits(plug: string, socketLetter: string, country?: string): Fit | undefined {
  const name = plugByName(plug)?.name
  return name === undefined ? undefined : fitOf(name, socketLetter.trim().toUpperCase(), country?.toUpperCase())
}

/** The same for a plug by its name in the table, and a letter and a country in capitals. */
function fitOf(name: string, letter: string, iso: string | undefined): Fit | undefined {
  const pair = rowsOf.get(`${name} ${letter}`)
  if (pair === undefined) return undefined
  const own = iso === undefined ? [] : pair.filter((row) => row.countries?.includes(iso))
  const general = pair.filter((row) => row.countries === undefined)
  // no country and only national rows: all of them
  const rows = [own, general, iso === undefined ? pair : []].find((some) => some.length > 0) ?? []
  const usual = rows.filter((row) => row.commonness === 'usual')
  const deciding = usual.length > 0 ? usual : rows
  if (deciding.length === 0) return undefined
  const outcome = deciding.some((row) => row.fits === 'forced')
    ? 'forced'
    : (agreed(deciding.map((row) => row.fits)) ?? 'depends')
  const entering = deciding.filter((row) => row.fits !== 'no')
  return {
    fits: outcome,
    earth: entering.length === 0 ? 'not applicable' : (agreed(entering.map((row) => row.earth)) ?? 'depends'),
    rows,
  }
}

interface Fitting {
  readonly plug: PlugType
  readonly earth: FitRow['earth']
}

/** Countries that a row has for its own. */
const ownCountries = new Set(plugFits.flatMap(({ countries }) => countries ?? []))

/** The tables do not change, so what fits a socket of a country is worked out once. */
const fittingsKnown = new Map<string, readonly Fitting[]>()

/** The plugs made for a letter, in a country in capitals. */
function fittingsOf(letter: string, iso: string | undefined): readonly Fitting[] {
  // countries without rows of their own are all alike
  const key = `${letter} ${iso === undefined || ownCountries.has(iso) ? iso : 'another'}`
  const known = fittingsKnown.get(key)
  if (known) return known
  const found = (plugsByLetter.get(letter) ?? []).flatMap((plug) => {
    const fit = fitOf(plug.name, letter, iso)
    return fit?.fits === 'yes' && !fit.rows.some((row) => row.substitute) ? [{ plug, earth: fit.earth }] : []
  })
  if (plugsByLetter.has(letter)) fittingsKnown.set(key, found)
  return found
}

/**
 * The plugs to ask for when buying a cord set for a socket: those made for it, and with `earthed`
 * those whose earth is made. Where no unearthed plug fits (G), the earthed ones are what is sold.
 */
export function plugsFor(socketLetter: string, earthed: boolean, country?: string): PlugType[] {
  const fitting = fittingsOf(socketLetter.trim().toUpperCase(), country?.toUpperCase())
  const earthing = fitting.filter(({ earth }) => earth === 'made').map(({ plug }) => plug)
  if (earthed) return earthing
  const twoCore = fitting.map(({ plug }) => plug).filter((plug) => !plug.earthed)
  return twoCore.length > 0 ? twoCore : earthing
}

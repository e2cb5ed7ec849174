import type { Polarity, VoltageWindow } from '../../chain/case/request.js'
import type { DeviceRail, PreparedDevice, PreparedPlug, PreparedSite } from '../../chain/case/situation.js'
import { kindText } from '../../chain/matching/railText.js'
import { leastRatedA, plugSizeText, ratedText, soughtText, typedSize } from '../../chain/matching/sought.js'
import { type PlateLanguage, type PlateMeaning, plateWords } from '../../tables/plateWords.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import { plain, volts } from '../../words/quantity.js'
import { tell } from '../../words/tell.js'

/** What to look for, for one rail of a machine. What is not known of the machine is null. */
export interface Wanted {
  kind: 'ac' | 'dc' | null
  voltageV: number
  /** least rated current [A]; null where the machine's demand is not known */
  leastA: number | null
  polarity: Polarity | null
  plug: { outerMm: number | null; innerMm: number | null; name: string | null } | null
  /** the mains that its plate must name; null where the site is not known */
  input: { voltages: VoltageWindow[]; frequenciesHz: number[] } | null
  /** class II needs no earth, so it leaves the least to find out */
  protectionClass: 'II'
  /** inlets of that class for a cord set bought to fit the wall; or a plug on the block itself that fits it */
  inlets: string[]
  regulated: boolean | null
  /** to type into a search, in the sellers' language and in English */
  words: string[]
  /** the specification as lines to copy or print */
  lines: Phrase[]
}

/** The two-pin inlets of class II that supplies of this size have. */
const classTwoInlets = ['C8', 'C18']

/** The language most sellers of a country write in, as far as there are plate words for it. */
const languages: Record<string, PlateLanguage[]> = {
  DE: ['de'],
  AT: ['de'],
  CH: ['de', 'fr', 'it'],
  LI: ['de'],
  LU: ['fr', 'de'],
  FR: ['fr'],
  BE: ['nl', 'fr'],
  MC: ['fr'],
  IT: ['it'],
  SM: ['it'],
  ES: ['es'],
  MX: ['es'],
  AR: ['es'],
  CL: ['es'],
  CO: ['es'],
  PE: ['es'],
  UY: ['es'],
  PT: ['pt'],
  BR: ['pt'],
  NL: ['nl'],
  SE: ['sv'],
  DK: ['da'],
  NO: ['no'],
  FI: ['fi', 'sv'],
  PL: ['pl'],
  CZ: ['cs'],
  RU: ['ru'],
  JP: ['ja'],
  CN: ['zh'],
  TW: ['zh'],
  HK: ['zh', 'en'],
  KR: ['ko'],
}

const wordsFor = (language: PlateLanguage, meaning: PlateMeaning, most: number): string[] =>
  plateWords
    .filter((row) => row.language === language && row.meaning === meaning)
    .flatMap((row) => row.words)
    .slice(0, most)

const plugOf = ({ outerMm, innerMm, name }: PreparedPlug): Wanted['plug'] =>
  outerMm === null && innerMm === null && name === null ? null : { outerMm, innerMm, name }

function inputOf(site: PreparedSite): Wanted['input'] {
  const known = site.systems.filter(({ voltageV }) => voltageV !== null)
  if (known.length === 0) return null
  const voltages = [...new Set(known.map(({ voltageV }) => voltageV as number))]
  const frequencies = new Set(known.flatMap(({ frequencyHz }) => frequencyHz ?? []))
  return { voltages: voltages.map((value) => ({ min: value, max: value })), frequenciesHz: [...frequencies] }
}

const polarityMeaning = { 'centre-positive': 'centre positive', 'centre-negative': 'centre negative' } as const

/** What to type into a search: what such a thing is called, its volts and amperes; its plug; its polarity. */
function searchWords(
  rail: DeviceRail,
  plug: Wanted['plug'],
  polarity: Polarity | null,
  country: string | null,
): string[] {
  const figures = tell(soughtText(rail)).replaceAll('\u00a0', ' ')
  const spoken: PlateLanguage[] = [...new Set<PlateLanguage>([...(languages[country ?? ''] ?? []), 'en'])]
  const size = tell(plug && typedSize(plug))?.replaceAll('\u00a0', ' ')
  return [
    ...spoken.flatMap((language) => wordsFor(language, 'wall transformer', 4)).map((word) => `${word} ${figures}`),
    ...(size ? [size, size.replace(' x ', 'x').replace(' mm', 'mm')] : []),
    ...(polarity ? spoken.flatMap((language) => wordsFor(language, polarityMeaning[polarity], 2)) : []),
  ]
}

const unknownText = 'not known: find out before buying'

function linesOf(wanted: Omit<Wanted, 'lines'>, site: PreparedSite): Phrase[] {
  const { kind, voltageV, leastA, polarity, plug, regulated } = wanted
  const size = plug && plugSizeText(plug)
  const kindWords = kind === null ? say`AC or DC ${unknownText}` : kindText(kind)
  const mains = site.systems
    .filter(({ voltageV: system }) => system !== null)
    .map(
      ({ voltageV: system, frequencyHz }) =>
        say`${volts(system ?? 0)}${frequencyHz === null ? '' : say` ${plain(frequencyHz, 'Hz')}`}`,
    )
  return [
    say`Output: ${volts(voltageV)} ${kindWords}`,
    say`Current: ${leastA === null ? unknownText : say`${ratedText(leastA)} or more`}`,
    ...(kind === 'ac' ? [] : [say`Polarity: ${polarity === null ? unknownText : polarityMeaning[polarity]}`]),
    say`Plug: ${size ?? unknownText}`,
    say`Regulated: ${regulated === null ? 'not known; a regulated one leaves less to find out' : regulated ? 'yes' : 'either'}`,
    say`Input: ${mains.length === 0 ? 'site not known' : say`its plate names ${joined(mains, ' and ')}, or a range that holds it, such as 100-240 V`}`,
    say`Class II (a square in a square), with inlet ${wanted.inlets.join(' or ')} or a plug of its own that fits the wall`,
  ]
}

/** The shopping specification of a machine at a site: one entry for each rail it takes. */
export function wantedFor(device: PreparedDevice, site: PreparedSite): Wanted[] {
  return device.rails.map((rail) => {
    const plug = plugOf(device.jack)
    const polarity = rail.kind === 'ac' ? null : device.jack.polarity
    const wanted = {
      kind: rail.kind,
      voltageV: rail.voltageV,
      leastA: leastRatedA(rail),
      polarity,
      plug,
      input: inputOf(site),
      protectionClass: 'II' as const,
      inlets: classTwoInlets,
      regulated: device.regulatedNeeded,
      words: searchWords(rail, plug, polarity, site.country),
    }
    return { ...wanted, lines: linesOf(wanted, site) }
  })
}

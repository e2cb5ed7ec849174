import {
  type BreakingLetter,
  bandCharacteristics,
  bandDigits,
  breakingLetters,
  type Characteristic,
  characteristics,
  type FuseScheme,
  fuseWords,
  shortForms,
  sizeNames,
  speedWords,
} from '../reference/fuseMarks.js'
import {
  bareNumber,
  bs1362BreakingA,
  bs1362LargestA,
  bs1362RatedV,
  bs1362Ratings,
  iecBetween,
  iecBreakingCapacity,
  iecPreferred,
  plausibleRatedA,
} from '../reference/fuseRatings.js'

/** What a fuse-link is, as far as it is known. Unknown is null. */
export interface FittedFuse {
  ratedA: number | null
  ratedV: number | null
  /** FF, F, M, T or TT */
  characteristic: Characteristic | null
  /** L, E or H */
  breaking: BreakingLetter | null
  breakingCapacityA: number | null
  scheme: FuseScheme | null
}

/** What is printed on a fuse-link or beside its holder. */
export interface FuseMarking extends FittedFuse {
  /** "5x20", "6.3x32" …, only where it is printed or a symbol stands for it */
  sizeMm: string | null
  /** every piece of the text that found no place */
  unread: string[]
  /** what a reader should know about this marking, in plain words */
  notes: string[]
}

interface Current {
  valueA: number
  raw: string
  /** no unit and no fraction: counts only after a letter or a catalogue symbol */
  bare: boolean
  fraction: boolean
}

interface Draft {
  currents: Current[]
  breakingCurrentsA: { valueA: number; atV: number | null }[]
  voltagesV: number[]
  letters: { value: Characteristic; raw: string; scheme: FuseScheme | null; withBareNumber?: boolean }[]
  breaking: BreakingLetter[]
  schemes: FuseScheme[]
  sizes: string[]
  unread: string[]
  notes: string[]
  /** the last token can be followed by a bare number of amperes */
  expectsNumber: boolean
}

interface Rule {
  pattern: RegExp
  /** @param raw what was matched, as printed */
  read: (match: RegExpExecArray, draft: Draft, raw: string) => boolean
}

const fold = (text: string): string => {
  let folded = ''
  for (const unit of text) folded += unit.length === 1 ? (unit.normalize('NFD')[0] ?? unit).toLowerCase() : unit
  return folded
}

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅒': '1/10',
}

const cyrillicUnits: Readonly<Record<string, string>> = { мА: 'mA', А: 'A', В: 'V' }

/** One form for signs that are printed in several: full-width letters, vulgar fractions, dashes, multiplication signs. */
const tidy = (text: string): string =>
  text
    .replace(/(\d?)\s?([½¼¾⅛⅜⅝⅞⅒])/g, (_all, whole: string, sign: string) =>
      whole ? `${whole} ${vulgar[sign]}` : ` ${vulgar[sign]}`,
    )
    .normalize('NFKC')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[×✕]/g, 'x')
    .replace(/(?<=\d\s?)\*(?=\s?\d)/g, 'x')
    .replace(/(?<=\d)[oO]{1,3}(?=\d|\s?m?[AV])/g, (zeros) => '0'.repeat(zeros.length))
    .replace(/(?<=\d\s?)(?:мА|[АВ])(?!\p{L})/gu, (sign) => cyrillicUnits[sign] ?? sign)

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')

const phrasePattern = (phrases: readonly string[]): string =>
  [...phrases]
    .map(fold)
    .sort((a, b) => b.length - a.length)
    .map((phrase) => phrase.split(' ').map(literal).join('[\\s\\-]?'))
    .join('|')

const sticky = (source: string, flags = 'y'): RegExp => new RegExp(source, flags)

const speedByPhrase = new Map(speedWords.map((word) => [fold(word.phrase).replaceAll(/[\s-]/g, ''), word]))
const formBySymbol = new Map(shortForms.map((form) => [form.symbol.toLowerCase(), form]))
const sizeByName = new Map(sizeNames.map((name) => [name.name.toLowerCase(), name.sizeMm]))

const number = (text: string): number => Number(text.replace(',', '.'))
const num = String.raw`(\d{1,5}(?:[.,]\d{1,4})?|[.,]\d{1,4})`
const ampere = String.raw`(?:amperes?|amps?|a(?![a-z]{2}))`
const milliampere = String.raw`(?:milliamperes?|milliamps?|ma(?![a-z]{2}))`
const voltSign = String.raw`(?:volts?|v)(?![a-z]{3})\s?(?:a\.?c\.?|d\.?c\.?|~|⎓)?`
const bareVoltages = String.raw`(?:32|60|63|125|150|250|300|350|400|440|500|600)(?!\d)`
const colour = Object.keys(bandDigits).join('|')

const looksLikeGrouping = (text: string): boolean => /^\d{1,3},\d{3}$/.test(text)

const addCurrent = (draft: Draft, valueA: number, raw: string, how: Partial<Current> = {}): boolean => {
  draft.currents.push({ valueA, raw, bare: false, fraction: false, ...how })
  return true
}

const bandedRating = (first: number, second: number, exponent: number): number | null => {
  const decade = 10 ** exponent
  const fit = [...iecPreferred.ratedA, ...iecBetween.ratedA].find((ratedA) => {
    const inDecade = (ratedA * 1000) / decade
    return inDecade >= 10 && inDecade < 100 && Math.floor(inDecade + 1e-6) === first * 10 + second
  })
  return fit ?? null
}

/** In the order in which they are tried at each place of the folded text. */
const rules: readonly Rule[] = [
  {
    // "colour band 4 black"
    pattern: sticky(String.raw`colou?r\s?band\s?4\s?:?\s?(${colour})\b`),
    read: ([, name], draft) => {
      const value = bandCharacteristics[name ?? '']
      if (value) draft.letters.push({ value, raw: `band 4 ${name}`, scheme: null })
      return value !== undefined
    },
  },
  {
    // "orange-brown-brown-blue"
    pattern: sticky(
      String.raw`(?:colou?r\s?bands?\s?:?\s?)?(${colour})[\s\-/,]{1,3}(${colour})[\s\-/,]{1,3}(${colour})[\s\-/,]{1,3}(${colour})\b`,
    ),
    read: ([, one, two, three, four], draft, raw) => {
      const [first, second, exponent] = [one, two, three].map((name) => bandDigits[name ?? ''])
      const value = bandCharacteristics[four ?? '']
      if (first === undefined || second === undefined || exponent === undefined || !value) return false
      const ratedA = bandedRating(first, second, exponent)
      if (ratedA === null) return false
      draft.letters.push({ value, raw, scheme: 'IEC' })
      return addCurrent(draft, ratedA, raw)
    },
  },
  {
    // "BS 1362"
    pattern: sticky(String.raw`bs\s?1362(?!\d)(?::\d{4})?`),
    read: (_match, draft) => draft.schemes.push('BS1362') > 0,
  },
  {
    pattern: sticky(String.raw`bs\s?646(?!\d)(?::\d{4})?`),
    read: (_match, draft) => draft.schemes.push('BS646') > 0,
  },
  {
    pattern: sticky(String.raw`(?:iec|en|din\s?en)\s?60?127(?:-\d{1,2})?(?!\d)|bs\s?4265|din\s?4157[12]|din\s?41662`),
    read: (_match, draft) => draft.schemes.push('IEC') > 0,
  },
  {
    pattern: sticky(String.raw`(?:ul|csa)\s?248-14`),
    read: (_match, draft) => draft.schemes.push('UL') > 0,
  },
  {
    // body-size names and catalogue symbols
    pattern: sticky(String.raw`(${[...sizeByName.keys()].join('|')})(?![a-z\d])`),
    read: ([, name], draft) => draft.sizes.push(sizeByName.get(name ?? '') ?? '') > 0,
  },
  {
    pattern: sticky(String.raw`(${[...formBySymbol.keys()].join('|')})(?:[\s\-]?(?=[\d.])|(?![a-z\d]))`),
    read: ([, symbol], draft, raw) => {
      const form = formBySymbol.get(symbol ?? '')
      if (!form) return false
      draft.letters.push({ value: form.characteristic, raw, scheme: form.scheme })
      draft.sizes.push(form.sizeMm)
      if (form.breaking) draft.breaking.push(form.breaking)
      if (form.ratedV !== null) draft.voltagesV.push(form.ratedV)
      draft.notes.push(`${form.symbol} is a catalogue symbol of a maker (${form.source.title}).`)
      draft.expectsNumber = true
      return true
    },
  },
  {
    // "5 x 20 mm", "6.3x32"
    pattern: sticky(String.raw`(\d{1,2}(?:[.,]\d{1,2})?)\s?x\s?(\d{2}(?:[.,]\d{1,2})?)(?![\d/])(?:\s?mm)?`),
    read: ([, across, along], draft) => {
      const [diameter, length] = [number(across ?? ''), number(along ?? '')]
      if (!(diameter >= 2 && diameter <= 25 && length >= 10 && length <= 65)) return false
      return draft.sizes.push(`${diameter}x${length}`) > 0
    },
  },
  {
    // 1/4 x 1-1/4 in, 1/4 x 1 in
    pattern: sticky(String.raw`1/4"?\s?x\s?1(?:([\s\-]1/4)|(?![\d./]))\s?(?:"|in\b|inch(?:es)?\b)?`),
    read: ([, quarter], draft) => draft.sizes.push(quarter ? '6.3x32' : '6.3x25.4') > 0,
  },
  {
    // "x2", "2 x": how many links
    pattern: sticky(String.raw`x\s?([2-4])(?![\d.,/])|([2-4])\s?x(?=\s?(?:ff|tt|[fmt])\s?[\d.,])`),
    read: ([, after, before], draft) =>
      draft.notes.push(`${after ?? before} links of this kind are named: all must be alike.`) > 0,
  },
  {
    pattern: sticky(
      phrasePattern(speedWords.map((word) => word.phrase))
        .replace(/^/, '(')
        .replace(/$/, ')(?![\\p{L}])'),
      'uy',
    ),
    read: ([, phrase], draft, raw) => {
      const word = speedByPhrase.get((phrase ?? '').replaceAll(/[\s-]/g, '')) ?? speedByPhrase.get(phrase ?? '')
      if (!word) return false
      draft.letters.push({ value: word.characteristic, raw, scheme: word.scheme })
      return true
    },
  },
  {
    pattern: sticky(`(?:${phrasePattern(fuseWords)})(?![\\p{L}])`, 'uy'),
    read: () => true,
  },
  {
    // "6 kA", "10kA@125V": what it can break
    pattern: sticky(String.raw`${num}\s?ka\b(?:\s?[@/]\s?${num}\s?v(?:ac)?\b)?`),
    read: ([, value, atV], draft) =>
      draft.breakingCurrentsA.push({ valueA: number(value ?? '') * 1000, atV: atV ? number(atV) : null }) > 0,
  },
  {
    pattern: sticky(String.raw`${num}\s?a\s?@\s?${num}\s?v(?:ac)?\b`),
    read: ([, value, atV], draft) =>
      draft.breakingCurrentsA.push({ valueA: number(value ?? ''), atV: number(atV ?? '') }) > 0,
  },
  {
    // "100-240 V": the mains it is for, not a rating of the link
    pattern: sticky(String.raw`\d{2,3}\s?v?\s?(?:-|\.\.\.?|to)\s?\d{2,3}\s?${voltSign}`),
    read: (_match, draft, raw) => {
      draft.unread.push(raw)
      return draft.notes.push(`"${raw.trim()}" is a range of mains voltages, not the rated voltage of a link.`) > 0
    },
  },
  {
    // "130 °C"
    pattern: sticky(String.raw`\d{2,3}\s?°\s?c`),
    read: (_match, draft, raw) => {
      draft.unread.push(raw)
      return (
        draft.notes.push(
          `"${raw}" is a temperature: this may be a thermal link, which is another thing than a fuse-link.`,
        ) > 0
      )
    },
  },
  {
    pattern: sticky(String.raw`(\d{1,4})\s?${voltSign}`),
    read: ([, value], draft) => {
      const volts = Number(value)
      if (!(volts > 0 && volts <= 1500)) return false
      return draft.voltagesV.push(volts) > 0
    },
  },
  {
    // "1-1/4 A", "1 1/2 A", "3/8A"; a slash before a voltage is no fraction
    pattern: sticky(String.raw`(?:(\d{1,2})[\s\-])?(\d{1,2})/(2|4|8|10|16|32|64|100|200)(?!\d)(?!\s?v)(\s?${ampere})?`),
    read: ([, whole, top, bottom, unit], draft, raw) => {
      const part = Number(top) / Number(bottom)
      if (!(part > 0 && part < 1)) return false
      const valueA = Number(whole ?? 0) + part
      return addCurrent(draft, valueA, raw, { fraction: true, bare: !unit })
    },
  },
  {
    pattern: sticky(String.raw`${num}\s?${milliampere}`),
    read: ([, value], draft, raw) => {
      if (looksLikeGrouping(value ?? '')) return false
      return addCurrent(draft, number(value ?? '') / 1000, raw)
    },
  },
  {
    // "1A25": the unit in the place of the decimal sign
    pattern: sticky(String.raw`(\d{1,2})a(\d{1,2})(?![\d.,/]|\s?v|\s?m?a)`),
    read: ([, whole, part], draft, raw) => addCurrent(draft, Number(`${whole}.${part}`), raw),
  },
  {
    pattern: sticky(String.raw`${num}\s?(?:amperes?|amps?|a(?![a-z]{2}|\/s))`),
    read: ([, value], draft, raw) => addCurrent(draft, number(value ?? ''), raw),
  },
  {
    // a voltage with its unit left out, after a slash or a breaking letter
    pattern: sticky(String.raw`(?<=[/leh]\s?)(${bareVoltages})(?!\s?m?a|[.,/])`),
    read: ([, value], draft) => draft.currents.length > 0 && draft.voltagesV.push(Number(value)) > 0,
  },
  {
    // T, F, TT … before or after the value
    pattern: sticky(String.raw`\(?(ff|tt|f|m|t)\)?(?=[\s/,;:)~\-]|[\d.]|[leh](?:[\s\d/,;)]|$)|$)`),
    read: ([, letter], draft, raw) => {
      draft.letters.push({ value: (letter ?? '').toUpperCase() as Characteristic, raw, scheme: 'IEC' })
      draft.expectsNumber = true
      return true
    },
  },
  {
    pattern: sticky(String.raw`\(?([leh])\)?(?=[\s/,;:)~\-]|\d|$)`),
    read: ([, letter], draft) => {
      draft.breaking.push((letter ?? '').toUpperCase() as BreakingLetter)
      draft.schemes.push('IEC')
      return true
    },
  },
]

const separators = /[\s/,;:()[\]~|·•"'_=@-]/

/** Rules that may begin in the middle of a run of signs, because a marking is often printed without spaces. */
const continues = /[\d).~/,;:\-\s]/

const bareReading = (valueText: string): number | null => {
  const value = number(valueText)
  if (/^\d+$/.test(valueText) && value >= bareNumber.milliamperesFrom && value < bareNumber.milliamperesBelow)
    return value / 1000
  return value > 0 && value <= bareNumber.amperesTo ? value : null
}

const bareValue = sticky(
  String.raw`[\s\-]?${num}(?![\d]|[.,]\d|\s?(?:m?a|v|k?a)(?![a-z]{2})|\s?°|/\d{1,2}(?!\d)|[\s\-]\d{1,2}/\d)`,
)

function scan(printed: string): Draft {
  const text = fold(printed)
  const draft: Draft = {
    currents: [],
    breakingCurrentsA: [],
    voltagesV: [],
    letters: [],
    breaking: [],
    schemes: [],
    sizes: [],
    unread: [],
    notes: [],
    expectsNumber: false,
  }
  let at = 0
  let mayBegin = true
  while (at < text.length) {
    if (draft.expectsNumber) {
      draft.expectsNumber = false
      bareValue.lastIndex = at
      const match = bareValue.exec(text)
      const valueA = match ? bareReading(match[1] ?? '') : null
      if (match && valueA !== null) {
        const letter = draft.letters.at(-1)
        if (letter) letter.withBareNumber = true
        addCurrent(draft, valueA, `${letter?.raw ?? ''}${printed.slice(at, at + match[0].length)}`, { bare: true })
        at += match[0].length
        continue
      }
    }
    const sign = text[at] ?? ''
    const matched = mayBegin ? firstMatch(text, printed, at, draft) : 0
    if (matched > 0) {
      at += matched
      mayBegin = true
      continue
    }
    if (separators.test(sign)) {
      at += 1
      mayBegin = true
      continue
    }
    const end = wordEnd(text, at)
    draft.unread.push(printed.slice(at, end))
    at = end
    mayBegin = continues.test(text[at] ?? ' ')
  }
  return draft
}

function firstMatch(text: string, printed: string, at: number, draft: Draft): number {
  for (const { pattern, read } of rules) {
    pattern.lastIndex = at
    const match = pattern.exec(text)
    if (match && match[0].length > 0 && read(match, draft, printed.slice(at, at + match[0].length)))
      return match[0].length
  }
  return 0
}

function wordEnd(text: string, from: number): number {
  let end = from + 1
  while (end < text.length && !/[\s/;()|]/.test(text[end] ?? '')) end += 1
  return end
}

const distinct = <T>(values: readonly T[]): T[] => [...new Set(values)]

/**
 * Reads the marking of a fuse-link, or what is printed beside its holder.
 *
 * Forms of IEC 60127 in any order and spacing (below 1 A the number is in mA and the unit may be left out: T315 is
 * 315 mA, T3.15 is 3.15 A), decimal comma, words for the speed in several languages, North American fractions and
 * words, BS 1362, BS 646, body sizes, colour bands and makers' catalogue symbols. Nothing is guessed: what is not
 * printed is null, what is printed twice with two values is null, and what found no place stands in `unread`.
 *
 * @param text  as printed; any length, read in one pass
 * @source IEC 60127-1 clause 6.1, IEC 60127-2 clause 6.1, IEC 60127-1 table A.1
 */
export function readFuseMarking(text: string): FuseMarking {
  const draft = scan(tidy(text))
  const { unread, notes } = draft
  const schemes = distinct([...draft.schemes, ...lettersThatCount(draft).flatMap((letter) => letter.scheme ?? [])])

  const breakingLetter = distinct(draft.breaking)
  const breaking = breakingLetter.length === 1 ? (breakingLetter[0] ?? null) : null
  if (breakingLetter.length > 1)
    notes.push(`Two breaking-capacity letters are printed: ${breakingLetter.join(' and ')}.`)

  const fractional = draft.currents.some((current) => current.fraction)
  const scheme = schemeOf(schemes, fractional, notes)
  const { ratedA, printedBreakingA, counterfeit } = chooseRating(draft, scheme)
  const characteristic = chooseCharacteristic(draft)
  const voltages = distinct(draft.voltagesV)
  const each = voltages.length > 1 && ratedA === null && draft.currents.length > 1
  if (voltages.length > 1 && !each)
    notes.push(`Several voltages are printed (${listed(voltages, 'V')}): the lowest is taken as the rated voltage.`)
  const ratedV = each ? null : (smallest(voltages) ?? (scheme === 'BS1362' && !counterfeit ? bs1362RatedV.value : null))

  const sizes = distinct(draft.sizes)
  const sizeMm = sizes.length === 1 ? (sizes[0] ?? null) : scheme === 'BS1362' && sizes.length === 0 ? '6.3x25.4' : null

  return {
    ratedA,
    ratedV,
    characteristic,
    breaking,
    breakingCapacityA: counterfeit ? null : (printedBreakingA ?? capacityOf({ ratedA, breaking, scheme })),
    scheme,
    sizeMm,
    unread,
    notes,
  }
}

const schemeOf = (schemes: FuseScheme[], fractional: boolean, notes: string[]): FuseScheme | null => {
  for (const british of ['BS1362', 'BS646'] as const) if (schemes.includes(british)) return british
  if (schemes.includes('IEC') && schemes.includes('UL')) {
    notes.push(
      'Marks of IEC 60127 and of North American practice stand together: which standard it is rated by is not known.',
    )
    return null
  }
  return schemes[0] ?? (fractional ? 'UL' : null)
}

/**
 * Breaking capacity that the standard promises for a marking [A]; null where the marking does not tell.
 *
 * @source IEC 60127-2 sheets 1, 2, 3, 5 and 6; BS 1362
 */
export function capacityOf(fuse: Pick<FittedFuse, 'ratedA' | 'breaking' | 'scheme'>): number | null {
  if (fuse.scheme === 'BS1362') return bs1362BreakingA.value
  if (fuse.breaking === null || (fuse.scheme !== null && fuse.scheme !== 'IEC')) return null
  const { atLeastA, timesRated } = iecBreakingCapacity[fuse.breaking]
  if (timesRated === 0) return atLeastA
  return fuse.ratedA === null ? atLeastA : Math.max(atLeastA, timesRated * fuse.ratedA)
}

/** Least breaking capacity of any of the standards [A]: letter L, or a UL link up to 1 A. */
const leastBreakingA = iecBreakingCapacity.L.atLeastA

const listed = (values: readonly number[], unit: string): string =>
  values
    .slice(0, 4)
    .map((value) => `${value} ${unit}`)
    .concat(values.length > 4 ? ['…'] : [])
    .join(', ')

const smallest = (values: readonly number[]): number | null => values.toSorted((a, b) => a - b)[0] ?? null

interface Rating {
  ratedA: number | null
  /** printed beside the rating [A] */
  printedBreakingA: number | null
  /** a mark the named standard cannot carry */
  counterfeit: boolean
}

function chooseRating(draft: Draft, scheme: FuseScheme | null): Rating {
  const { unread, notes } = draft
  const withUnit = draft.currents.filter((current) => !current.bare)
  const candidates = withUnit.length > 0 ? withUnit : draft.currents
  if (withUnit.length > 0) for (const current of draft.currents) if (current.bare) unread.push(current.raw.trim())

  const found = distinct(candidates.map((current) => current.valueA))
  const [first = 0, second = 0] = found
  const [lowA, highA] = first < second ? [first, second] : [second, first]
  // "F4A 250V 1500A": the second value is what it can break
  const breaks = found.length === 2 && highA >= leastBreakingA && highA >= 10 * lowA
  const rated = breaks ? candidates.filter((current) => current.valueA === lowA) : candidates
  const at250V = draft.breakingCurrentsA.filter((entry) => entry.atV === null || entry.atV >= 250)
  const printedBreakingA = breaks ? highA : smallest(distinct(at250V.map((entry) => entry.valueA)))

  const reject = (why: string, counterfeit = false): Rating => {
    for (const current of rated) unread.push(current.raw.trim())
    notes.push(why)
    return { ratedA: null, printedBreakingA, counterfeit }
  }
  const values = breaks ? [lowA] : found
  const [ratedA] = values
  if (ratedA === undefined) return { ratedA: null, printedBreakingA, counterfeit: false }
  if (values.length > 1)
    return reject(`Several rated currents are printed (${listed(values, 'A')}): which one applies is not known.`)
  if (!(ratedA > 0)) return reject('A rated current of 0 A does not exist.')
  if (scheme === 'BS1362' && ratedA > bs1362LargestA.value)
    return reject(
      `${ratedA} A is not a rating of BS 1362, which stops at ${bs1362LargestA.value} A: a link with this mark is not what it claims to be and must not be used.`,
      true,
    )
  if (ratedA < plausibleRatedA.min || ratedA > plausibleRatedA.max)
    return reject(`${ratedA} A is not a rated current of a small fuse-link.`)
  if (scheme === 'BS1362' && !bs1362Ratings.ratedA.includes(ratedA))
    notes.push(`${ratedA} A is not one of the ratings known of BS 1362 links (${bs1362Ratings.ratedA.join(', ')} A).`)
  return { ratedA, printedBreakingA, counterfeit: false }
}

/** The letters that count: "F1" before "T2A" is a reference beside the holder, since the value with a unit is the rating. */
function lettersThatCount(draft: Draft): Draft['letters'] {
  const hasUnit = draft.currents.some((current) => !current.bare)
  return draft.letters.filter((letter) => !(hasUnit && letter.withBareNumber))
}

function chooseCharacteristic(draft: Draft): Characteristic | null {
  const letters = lettersThatCount(draft)
  const found = distinct(letters.map((letter) => letter.value))
  if (found.length <= 1) return found[0] ?? null
  draft.notes.push(`Several speeds are printed (${found.join(', ')}): which one applies is not known.`)
  for (const letter of letters) draft.unread.push(letter.raw.trim())
  return null
}

/** One of several prescriptions printed together, each for its own mains voltage. */
export interface PrescribedFor {
  text: string
  /** mains voltages it stands for [V]; a single one has min equal to max */
  mains: { min: number; max: number }
}

/**
 * Splits "115V T1.6A / 230V T800mA" into what applies at each mains voltage.
 *
 * @param text  what is printed beside the holder
 * @returns an empty list where the text is one prescription only
 */
export function splitPrescription(text: string): PrescribedFor[] {
  if (text.length > 400) return []
  const pieces = tidy(text)
    .split(/\s\/\s|[;\n|]|,\s|\s(?:und|and|et|e|y)\s/)
    .map((piece) => piece.trim())
    .filter(Boolean)
  const read = pieces.map((piece) => ({ piece, marking: readFuseMarking(piece), mains: mainsOf(piece) }))
  const distinctRatings = distinct(read.map(({ marking }) => marking.ratedA))
  if (pieces.length < 2 || distinctRatings.includes(null) || distinctRatings.length < 2) return []
  return read.flatMap(({ piece, mains }) => (mains ? [{ text: withoutMains(piece), mains }] : []))
}

const mainsPattern = /(\d{2,3})\s?V?\s?(?:-|to|\.\.\.?)\s?(\d{2,3})\s?V(?:\s?(?:AC|~))?|(\d{2,3})\s?V(?:\s?(?:AC|~))?/i

const mainsOf = (piece: string): { min: number; max: number } | null => {
  const match = mainsPattern.exec(piece)
  if (!match) return null
  const [min, max] = match[3] ? [Number(match[3]), Number(match[3])] : [Number(match[1]), Number(match[2])]
  return min > 0 && max >= min ? { min, max } : null
}

const withoutMains = (piece: string): string => piece.replace(mainsPattern, ' ').trim()

/** How slow a characteristic is: 0 the fastest. */
export const slowness = (characteristic: Characteristic): number => characteristics.indexOf(characteristic)

/** How much a breaking-capacity letter stands for: 0 the least. */
export const breakingRank = (letter: BreakingLetter): number => breakingLetters.indexOf(letter)

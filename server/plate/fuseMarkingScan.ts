import {
  type BreakingLetter,
  bandCharacteristics,
  bandDigits,
  type Characteristic,
  type FuseScheme,
  fuseWords,
  northAmericanMarks,
  shortForms,
  sizeNames,
  speedWords,
} from '../tables/fuseMarks.js'
import { bareNumber, iecBetween, iecPreferred, linkVoltages } from '../tables/fuseRatings.js'

/** A value of current found in a marking. */
export interface Current {
  valueA: number
  raw: string
  /** no unit and no fraction: counts only after a letter or a catalogue symbol */
  bare: boolean
  fraction: boolean
}

/** Everything found in a marking, before it is weighed. */
export interface Draft {
  currents: Current[]
  breakingCurrentsA: { valueA: number; atV: number | null }[]
  /** rated voltages, with the kind of current printed beside them */
  voltages: { valueV: number; ac: boolean; dc: boolean }[]
  /** voltages that are the circuit's, not the link's */
  circuitsV: number[]
  /** how many links are named */
  links: number[]
  /** an approval mark or word of North American practice is printed */
  northAmerican: boolean
  letters: {
    value: Characteristic
    raw: string
    scheme: FuseScheme | null
    withBareNumber?: boolean
    /** a word, not a letter or a catalogue symbol */
    word?: boolean
  }[]
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

export const fold = (text: string): string => {
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
export const tidy = (text: string): string =>
  text
    .replace(/(\d?)\s?([½¼¾⅛⅜⅝⅞⅒])/g, (_all, whole: string, sign: string) =>
      whole ? `${whole} ${vulgar[sign]}` : ` ${vulgar[sign]}`,
    )
    .replace(/[º˚]/g, '°')
    // squared units of area, volume and acceleration, whose plain form would end in a figure
    .replace(/[\u339F-\u33A8]/g, ' ')
    .normalize('NFKC')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/[×✕]/g, 'x')
    .replace(/(?<=\d\s?)\*(?=\s?\d)/g, 'x')
    .replace(/(?<=\d\s?)(?:мА|[АВ])(?!\p{L})/gu, (sign) => cyrillicUnits[sign] ?? sign)

const literal = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')

export const phrasePattern = (phrases: readonly string[]): string =>
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
const ampere = `(?:amperes?|amps?|a(?![a-z]{2}))`
const milliampere = `(?:milliamperes?|milliamps?|ma(?![a-z]{2}))`
const kinds = String.raw`(?:a\.?c\.?\s?/\s?d\.?c\.?|a\.?c\.?|d\.?c\.?|~|⎓)`
const voltSign = String.raw`(?:volts?|v)(?![a-z]{3})\s?${kinds}?`
const bareVoltages = `(?:${linkVoltages.valuesV.join('|')})(?!\\d)`
/** Words around a voltage that say whose it is: the circuit's. */
const beforeCircuit = /(?:^|[\s(])(?:on|for|at|auf|fur|bei|an|pour|sur|para|per|su|em|voor|op|till|for)\s?$/
const afterCircuit =
  /\s?-?\s?(?:mains|line|supply|side|seite|netz|circuit|rail|input|output|secteur|reseau|rete|red\b|kreis|kant|側)/y
const colour = Object.keys(bandDigits).join('|')

/** A figure in amperes right behind a letter: "l" and "I" stand for 1 there, and are no breaking letter. */
const figure = String.raw`\d{1,5}(?:[.,]\d{1,4})?`
const ampereSign = `m?a(?![a-z]{2})`

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
      if (form.ratedV !== null) draft.voltages.push({ valueV: form.ratedV, ac: true, dc: false })
      draft.notes.push(`${form.symbol} is a catalogue symbol of a maker (${form.source.title}).`)
      draft.expectsNumber = true
      return true
    },
  },
  {
    // "5 x 20 mm", "6.3x32", "20x5"
    pattern: sticky(String.raw`(\d{1,2}(?:[.,]\d{1,2})?)\s?x\s?(\d{1,2}(?:[.,]\d{1,2})?)(?![\d/])(?:\s?mm)?`),
    read: ([, one, other], draft) => {
      const [diameter = 0, length = 0] = [number(one ?? ''), number(other ?? '')].toSorted((a, b) => a - b)
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
    read: ([, after, before], draft) => draft.links.push(Number(after ?? before)) > 0,
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
      draft.letters.push({ value: word.characteristic, raw, scheme: word.scheme, word: true })
      return true
    },
  },
  {
    pattern: sticky(`(?:${phrasePattern(fuseWords)})(?![\\p{L}])`, 'uy'),
    read: () => true,
  },
  {
    pattern: sticky(`(?:${phrasePattern(northAmericanMarks)})(?![\\p{L}\\d])`, 'uy'),
    read: (_match, draft) => {
      draft.northAmerican = true
      return true
    },
  },
  {
    // "0215.500MXP", "0217002.MXP": a series of four figures, then three figures and the decimal sign, then the packing
    pattern: sticky(String.raw`0\d{3}(?=[\d.]{4}[a-z])(\.\d{3}|\d\.\d{2}|\d{2}\.\d|\d{3}\.)[a-z]{1,4}(?![a-z\d])`),
    read: ([, value], draft, raw) => addCurrent(draft, number(value ?? ''), raw),
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
    pattern: sticky(String.raw`(?:(dc|ac)\s?)?(\d{1,4})\s?(?:volts?|v)(?![a-z]{3})\s?(${kinds})?`),
    read: (match, draft) => {
      const [all, before = '', value, after = ''] = match
      const valueV = Number(value)
      if (!(valueV > 0 && valueV <= 1500)) return false
      const kind = `${before}${after.replaceAll('.', '')}`
      const dc = /dc|⎓/.test(kind)
      afterCircuit.lastIndex = match.index + all.length
      const circuits =
        !linkVoltages.valuesV.includes(valueV) ||
        beforeCircuit.test(match.input.slice(Math.max(0, match.index - 8), match.index)) ||
        afterCircuit.test(match.input)
      if (circuits) return draft.circuitsV.push(valueV) > 0
      return draft.voltages.push({ valueV, ac: !dc || /ac|~/.test(kind), dc }) > 0
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
    pattern: sticky(String.raw`(\d{1,2})a(\d{1,2})(?![\d.,/]|\s?v|\s?m?a|(?![leh])[a-z])`),
    read: ([, whole, part], draft, raw) => addCurrent(draft, Number(`${whole}.${part}`), raw),
  },
  {
    pattern: sticky(String.raw`${num}\s?(?:amperes?|amps?|a(?![a-z]{2}|\/s))`),
    read: ([, value], draft, raw) => addCurrent(draft, number(value ?? ''), raw),
  },
  {
    // a voltage with its unit left out, after a slash or a breaking letter
    pattern: sticky(String.raw`(?<=[/leh]\s?)(${bareVoltages})(?!\s?m?a|[.,/])`),
    read: ([, value], draft) =>
      draft.currents.length > 0 && draft.voltages.push({ valueV: Number(value), ac: true, dc: false }) > 0,
  },
  {
    // T, F, TT … before or after the value
    pattern: sticky(
      String.raw`\(?(ff|tt|f|m|t)\)?(?=[\s/,;:)~\-]|[\d.]|[leh](?:[\s/,;)]|(?!${figure}${ampereSign})\d|$)|$)`,
    ),
    read: ([, letter], draft, raw) => {
      draft.letters.push({ value: (letter ?? '').toUpperCase() as Characteristic, raw, scheme: 'IEC' })
      draft.expectsNumber = true
      return true
    },
  },
  {
    pattern: sticky(String.raw`\(?([leh])\)?(?=[\s/,;:)~\-]|(?!${figure}${ampereSign})\d|$)(?![.,]\d)`),
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

/** What may stand directly behind a bare number: no letter but a breaking letter, so that "1O" and "2SA" are no numbers. */
const afterBare = String.raw`(?=$|[^\p{L}\d]|[leh](?:[\s\d/,;:)~\-]|$))(?![.,]\S)`

const bareValue = sticky(
  String.raw`[\s\-]?${num}${afterBare}(?!\s?(?:m?a|v|k?a)(?![a-z]{2})|\s?°|/\d{1,2}(?!\d)|[\s\-]\d{1,2}/\d)`,
  'uy',
)

/**
 * Reads a marking from left to right in one pass; every rule is tried at each place, and none looks further back.
 *
 * @param printed  as made uniform by {@link tidy}
 */
export function scan(printed: string): Draft {
  const text = fold(printed)
  const draft: Draft = {
    currents: [],
    breakingCurrentsA: [],
    voltages: [],
    circuitsV: [],
    links: [],
    northAmerican: false,
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

export const distinct = <T>(values: readonly T[]): T[] => [...new Set(values)]

import { describe, expect, it } from 'vitest'
import { foldWord } from '../../server/plate/fold.js'
import { hazardText } from '../../server/plate/hazardText.js'
import type { LabelReading } from '../../server/plate/labelReading.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { type HazardMeaning, hazardMeanings, hazardWords } from '../../server/tables/hazardWords.js'

const meanings = (text: string): HazardMeaning[] => [...new Set(readPlate(text).hazards.map(({ meaning }) => meaning))]
const charger: HazardMeaning = 'charger: for batteries only'
const live: HazardMeaning = 'not isolated from the mains, live chassis'

/** A phrase of the table as a plate prints it: a figure for `#`, something for `…`. */
const printed = (phrase: string): string => phrase.replaceAll('*', '').replaceAll('#', '5').replace('…', 'RX 7')

/** Every wording is read on a plate of its own, some thousands [ms]. */
const patience = 60_000

describe('words of hazard', () => {
  it(
    'are found, each by its own meaning, wherever they stand on a plate',
    () => {
      const missed = hazardWords.flatMap(({ meaning, words }) =>
        words.filter((phrase) => {
          const found = meanings(`INPUT 230V~ 50Hz OUTPUT 12V⎓ 1A\n${printed(phrase)}\nX 1`)
          return !found.includes(meaning)
        }),
      )
      expect(missed).toEqual([])
    },
    patience,
  )

  it('have one meaning each', () => {
    const seen = new Map<string, HazardMeaning>()
    const twice = hazardWords.flatMap(({ meaning, words }) =>
      words.filter((phrase) => {
        const key = hazardText(foldWord(phrase.replaceAll('*', ''))).text
        const other = seen.get(key)
        seen.set(key, meaning)
        return other !== undefined && other !== meaning
      }),
    )
    expect(twice).toEqual([])
  })

  it('say for every meaning what it decides, and for each that decides what to do', () => {
    for (const { decides, why, action } of Object.values(hazardMeanings)) {
      expect(why.length).toBeGreaterThan(10)
      if (decides !== 'step') expect(action.length).toBeGreaterThan(10)
    }
  })

  it.each<[string, HazardMeaning, string]>([
    ['a hyphen', live, 'NON-ISOLATED DRIVER'],
    ['a line end', live, 'NOT\nISOLATED FROM\nMAINS'],
    ['lower case and accents', charger, 'Chargeur de batterie'],
    ['accents left out', charger, 'LADEGERAET LADEGERAT 12V'],
    ['a compound', charger, 'STECKERSCHNELLLADEGERÄT 12V'],
    ['a compound of another language', charger, 'PIKALATURI 12V'],
    ['an inflection', charger, 'ŁADOWARKI 12V'],
    ['no spaces', charger, '本品为充电器12V'],
    ['minutes of short-time duty', 'short-time or intermittent duty', 'S2 10 MIN'],
    ['a percentage', 'short-time or intermittent duty', 'ED 40 %'],
    ['a gap', 'only with the named model or the supply delivered', 'NUR MIT GERÄT RX 7 VERWENDEN'],
    ['a sign', 'positive earth (case positive)', '+VE CHASSIS'],
    ['the other sign', 'negative earth, output joined to earth', '-VE GROUNDED'],
  ])('are found with %s', (_, meaning, text) => {
    expect(meanings(text)).toContain(meaning)
  })

  // from the head: how tape, stamps, scans and other spellings print them
  it.each<[string, HazardMeaning, string]>([
    ['a nought for a letter', live, 'NOT IS0LATED'],
    ['a one for a letter', live, 'N0T 1SOLATED FROM MA1NS'],
    ['letters set apart', live, 'N O T  I S O L A T E D'],
    ['words run together', live, 'NOTISOLATED'],
    ['words run together with others', live, 'OUTPUTNOTISOLATEDFROMMAINS'],
    ['a prefix', live, 'UN-ISOLATED'],
    ['the denial behind', live, 'ISOLATED: NO'],
    ['another word for isolated', live, 'NOT INSULATED FROM MAINS'],
    ['the manner before the denial', live, 'GALVANISCH NICHT GETRENNT'],
    ['the manner behind the denial', live, 'NIET ELEKTRISCH GESCHEIDEN'],
    ['a language that denies behind', live, 'İZOLE DEĞİL'],
    ['signs that deny behind', live, '絶縁されていない'],
    ['an umlaut written out', charger, 'LADEGERAET'],
    ['an umlaut written out in a compound', charger, 'SCHNELL-LADEGERAET'],
    ['a compound in parts', 'autotransformer as a supply', 'SPAR-TRAFO'],
    ['a compound in words', 'autotransformer as a supply', 'SPAR TRANSFORMATOR'],
    ['a compound in parts of another alphabet', 'autotransformer as a supply', 'АВТО-ТРАНСФОРМАТОР'],
    ['a line end in a compound', 'constant current, LED driver', 'KONSTANT-\nSTROM 700mA'],
    ['the name of a use', 'supply for LED lamps', 'SELV LED POWER SUPPLY'],
    ['a battery that is named', charger, 'FOR Ni-Cd BATTERY ONLY'],
    ['a tag', 'marked as faulty, recalled or not to be used', 'DEFEKT!'],
  ])('are found in damaged print and other spellings: %s', (_, meaning, text) => {
    expect(meanings(text)).toContain(meaning)
  })

  it.each([
    // the end of one word and the beginning of the next
    ['CHARGE RESISTIVE'],
    ['MODEL LA-DER 5'],
    ['ISOLATED OUTPUT'],
    ['GALVANISCH GETRENNT'],
  ])('are none where only letters agree: %s', (text) => {
    expect(meanings(text)).toEqual([])
  })

  it('forbid no use where they only ask for care', () => {
    expect(meanings('DO NOT USE OUTDOORS')).toEqual(['indoors and dry only'])
  })

  it.each([
    ['NOT A CHARGER OUTPUT 12V'],
    ['DO NOT USE AS BATTERY CHARGER'],
    ['KEIN LADEGERÄT'],
    ['PAS UN CHARGEUR'],
    ['非充电器'],
    ['充電器ではありません'],
    // parts of other words
    ['SUPERCHARGE 12V'],
    ['INTERMEZZO'],
    // continuous duty
    ['S1 10 MIN'],
  ])('are none in %s', (text) => {
    expect(meanings(text)).toEqual([])
  })

  it.each([['MODEL NO. CHARGER 2'], ['INDOOR USE: NO\nCHARGER 12V']])(
    'stay where the denial belongs to something else: %s',
    (text) => {
      expect(meanings(text)).toContain(charger)
    },
  )

  it.each([
    ['USB CHARGER OUTPUT 5V⎓ 2A', false],
    ['CHARGER INPUT 100-240V~ OUTPUT 5V⎓ 1A', false],
    ['USB-C CHARGER OUTPUT 20V⎓ 3.25A', false],
    ['CHARGER OUTPUT 12V⎓ 1A', true],
    ['USB CHARGER INPUT 5V⎓ 1A OUTPUT 8.4V⎓ 0.5A', true],
    ['NI-CD BATTERY CHARGER OUTPUT 5V⎓ 1A', true],
  ])('call a charger none where it is a USB supply: %s', (text, isCharger) => {
    expect(meanings(text).includes(charger)).toBe(isCharger)
  })

  it('carry the words as printed, and leave nothing of them unread', () => {
    const { hazards, unread }: LabelReading = readPlate('Netz 230V~\nNC-Akku  Ladegerät')
    expect(hazards.map(({ words, language, decides }) => [words, language, decides])).toContainEqual([
      'Ladegerät',
      'de',
      'unknown',
    ])
    expect(unread.join()).not.toMatch(/Lade/)
  })
})

import { describe, expect, it } from 'vitest'
import { joined, listed, or, type Phrase, say } from '../../server/words/phrase.js'
import { farads, percent, quantityRange, volts } from '../../server/words/quantity.js'
import type { Reader } from '../../server/words/reader.js'
import { tell } from '../../server/words/tell.js'
import { isSame, unique } from '../../server/words/unique.js'

const comma: Reader = { decimal: ',' }
const flat = (phrase: Phrase, reader?: Reader): string => tell(phrase, reader).replaceAll('\u00a0', ' ')

describe('a phrase', () => {
  it('writes its quantities with the decimal sign of its reader, and leaves names as they are printed', () => {
    const phrase = say`“T1.6A” carries ${volts(12.5)} at ${percent(0.125)}`
    expect(flat(phrase)).toBe('“T1.6A” carries 12.5 V at 12.5 %')
    expect(flat(phrase, comma)).toBe('“T1.6A” carries 12,5 V at 12,5 %')
    expect(flat(say`range ${quantityRange(0.5, 1.5, 'A')}`, comma)).toBe('range 0,5 A to 1,5 A')
  })

  it('is not turned into text by the way: a template, an addition or JSON refuses it', () => {
    const phrase = say`twelve volts`
    expect(() => `${phrase}`).toThrow(TypeError)
    expect(() => JSON.stringify({ phrase })).toThrow(TypeError)
    expect(() => [phrase].join()).toThrow(TypeError)
  })

  it('lists, joins and says each thing once', () => {
    const items = [volts(5), volts(12), volts(5)]
    expect(flat(listed(unique(items)))).toBe('5 V and 12 V')
    expect(flat(listed(items.slice(0, 2), or))).toBe('5 V or 12 V')
    expect(flat(joined(items, '; '))).toBe('5 V; 12 V; 5 V')
    expect(isSame(say`${volts(5)}`, volts(5))).toBe(true)
    expect(isSame(volts(5), volts(6))).toBe(false)
  })

  it('refuses what is no number where it is made, not where it is read', () => {
    expect(() => volts(Number.NaN)).toThrow(RangeError)
    expect(() => farads(Number.POSITIVE_INFINITY)).toThrow(RangeError)
  })

  it('writes capacitors in pF, nF and µF only', () => {
    expect([10e-3, 4700e-6, 220e-6, 100e-9, 47e-12].map((value) => flat(farads(value)))).toEqual([
      '10 000 µF',
      '4700 µF',
      '220 µF',
      '100 nF',
      '47 pF',
    ])
  })
})

describe('telling', () => {
  it('tells every phrase within lists and objects, and passes the rest on as it is', () => {
    const rest = { volts: 12, list: [1, 2] }
    const told = tell({ title: say`at ${volts(0.5)}`, lines: [say`one`, 'as printed'], none: null, rest }, comma)
    expect(told).toEqual({ title: 'at 0,5\u00a0V', lines: ['one', 'as printed'], none: null, rest })
    expect(told.rest).toBe(rest)
  })
})

describe('a second language', () => {
  // words made up for this test: what counts is that parts keep their places and numbers their reader
  const german: Reader = {
    decimal: ',',
    catalogue: {
      'The plug is {}; the jack wants {}': 'Die Buchse will {1}; der Stecker ist {0}',
      'centre positive': 'innen plus',
      'centre negative': 'innen minus',
    },
  }

  it('needs a catalogue by templates and no change of what is said', () => {
    const phrase = say`The plug is ${say`centre negative`}; the jack wants ${say`centre positive`}`
    expect(tell(phrase, german)).toBe('Die Buchse will innen plus; der Stecker ist innen minus')
    expect(tell(say`not in the catalogue: ${volts(1.5)}`, german)).toBe('not in the catalogue: 1,5\u00a0V')
  })
})

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { readFuseMarking } from '../../server/plate/fuseMarking.js'
import { splitPrescription } from '../../server/plate/fusePrescription.js'

/** Markings as printed, with where each was seen. A size is expected only where it is printed or a symbol stands for it. */
const printed = [
  {
    text: 'FF',
    characteristic: 'FF',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-1 clause 6.1 (Russian text); overview of fuse markings in German',
  },
  {
    text: 'F',
    characteristic: 'F',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-1 clause 6.1 (Russian text); overview of fuse markings in German',
  },
  {
    text: 'M',
    characteristic: 'M',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-1 clause 6.1 (Russian text); overview of fuse markings in German',
  },
  {
    text: 'T',
    characteristic: 'T',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-1 clause 6.1 (Russian text); overview of fuse markings in German',
  },
  {
    text: 'TT',
    characteristic: 'TT',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-1 clause 6.1 (Russian text); overview of fuse markings in German',
  },
  {
    text: 'L',
    characteristic: null,
    ratedA: null,
    breaking: 'L',
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-2 clause 6.1 (GOST R IEC 60127-2-2010)',
  },
  {
    text: 'E',
    characteristic: null,
    ratedA: null,
    breaking: 'E',
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-2 clause 6.1 (GOST R IEC 60127-2-2010)',
  },
  {
    text: 'H',
    characteristic: null,
    ratedA: null,
    breaking: 'H',
    ratedV: null,
    sizeMm: null,
    source: 'IEC 60127-2 clause 6.1 (GOST R IEC 60127-2-2010)',
  },
  {
    text: 'colour band 4 black',
    characteristic: 'FF',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'GOST IEC 60127-1-2010 table A.1',
  },
  {
    text: 'colour band 4 red',
    characteristic: 'F',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'GOST IEC 60127-1-2010 table A.1',
  },
  {
    text: 'colour band 4 yellow',
    characteristic: 'M',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'GOST IEC 60127-1-2010 table A.1',
  },
  {
    text: 'colour band 4 blue',
    characteristic: 'T',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'GOST IEC 60127-1-2010 table A.1',
  },
  {
    text: 'colour band 4 grey',
    characteristic: 'TT',
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'GOST IEC 60127-1-2010 table A.1',
  },
  {
    text: 'colour bands orange-brown-brown-blue',
    characteristic: 'T',
    ratedA: 0.315,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'GOST IEC 60127-1-2010 table A.1',
  },
  {
    text: 'T0.5AL250V',
    characteristic: 'T',
    ratedA: 0.5,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T1AL250V',
    characteristic: 'T',
    ratedA: 1,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T1.25AL250V',
    characteristic: 'T',
    ratedA: 1.25,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T1.6AL250V',
    characteristic: 'T',
    ratedA: 1.6,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T2AL250V',
    characteristic: 'T',
    ratedA: 2,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T2.5AL250V',
    characteristic: 'T',
    ratedA: 2.5,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T3.15AL250V',
    characteristic: 'T',
    ratedA: 3.15,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T4AL250V',
    characteristic: 'T',
    ratedA: 4,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T5AL250V',
    characteristic: 'T',
    ratedA: 5,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T6.3AL250V',
    characteristic: 'T',
    ratedA: 6.3,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T10AL250V',
    characteristic: 'T',
    ratedA: 10,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'article on device fuses, their marking and labelling',
  },
  {
    text: 'T2,50A',
    characteristic: 'T',
    ratedA: 2.5,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'overview of fuse markings in German',
  },
  {
    text: 'T2A',
    characteristic: 'T',
    ratedA: 2,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'repair workshop article on fuse markings',
  },
  {
    text: 'T250mA',
    characteristic: 'T',
    ratedA: 0.25,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'repair workshop article on fuse markings',
  },
  {
    text: '2A',
    characteristic: null,
    ratedA: 2,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'repair workshop article on fuse markings',
  },
  {
    text: 'F1A',
    characteristic: 'F',
    ratedA: 1,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'forum post on fuse markings',
  },
  {
    text: 'F1.6A',
    characteristic: 'F',
    ratedA: 1.6,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'forum post on fuse markings',
  },
  {
    text: 'T315L250V',
    characteristic: 'T',
    ratedA: 0.315,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'IEC 60127-2 clause 6.1 (GOST R IEC 60127-2-2010), example read from a damaged scan',
  },
  {
    text: 'F4H250V',
    characteristic: 'F',
    ratedA: 4,
    breaking: 'H',
    ratedV: 250,
    sizeMm: null,
    source: 'IEC 60127-2 clause 6.1 (GOST R IEC 60127-2-2010), example read from a damaged scan',
  },
  {
    text: 'T315E250V',
    characteristic: 'T',
    ratedA: 0.315,
    breaking: 'E',
    ratedV: 250,
    sizeMm: null,
    source: 'IEC 60127-2 clause 6.1 (GOST R IEC 60127-2-2010), example read from a damaged scan',
  },
  {
    text: '2 amp, time-delay, 250 volt',
    characteristic: 'T',
    ratedA: 2,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'Glass and ceramic tube fuse catalogue text',
  },
  {
    text: '3AG 250V 8A',
    characteristic: null,
    ratedA: 8,
    breaking: null,
    ratedV: 250,
    sizeMm: '6.3x32',
    source: 'forum text; 3AG is the size name for 1/4 x 1-1/4 in',
  },
  {
    text: 'MDL-5',
    characteristic: 'T',
    ratedA: 5,
    breaking: null,
    ratedV: null,
    sizeMm: '6.3x32',
    source: 'equipment manual p. 16; Bussmann MDL data sheet',
  },
  {
    text: 'GMA-3.5-R',
    characteristic: 'F',
    ratedA: 3.5,
    breaking: null,
    ratedV: null,
    sizeMm: '5x20',
    source: 'Eaton GMA data sheet May 2017',
  },
  {
    text: 'GMD 1A',
    characteristic: 'T',
    ratedA: 1,
    breaking: null,
    ratedV: 250,
    sizeMm: '5x20',
    source: 'Bussmann GMD data sheet 12-18-98 SB98107',
  },
  {
    text: 'S505-3.15-R',
    characteristic: 'T',
    ratedA: 3.15,
    breaking: 'H',
    ratedV: 250,
    sizeMm: '5x20',
    source: 'Cooper Bussmann S505 data sheet BU-SB11758',
  },
  {
    text: 'S501-250-R',
    characteristic: 'F',
    ratedA: 0.25,
    breaking: 'H',
    ratedV: 250,
    sizeMm: '5x20',
    source: 'Eaton/Bussmann S501 data sheet, Electrical Characteristics',
  },
  {
    text: 'S500-2-R',
    characteristic: 'F',
    ratedA: 2,
    breaking: 'L',
    ratedV: 250,
    sizeMm: '5x20',
    source: 'Cooper Bussmann S500 data sheet, earlier edition',
  },
  {
    text: 'bel T 500mA L 250V',
    characteristic: 'T',
    ratedA: 0.5,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'Bel 5ST data sheet W5STD0405',
  },
  {
    text: 'bel F 1A L 250V',
    characteristic: 'F',
    ratedA: 1,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'Bel 5SF data sheet',
  },
  {
    text: 'bel T 4A H 250V',
    characteristic: 'T',
    ratedA: 4,
    breaking: 'H',
    ratedV: 250,
    sizeMm: null,
    source: 'Bel 5HT data sheet 5HTD0903',
  },
  {
    text: '5 AMP FUSE BS 1362',
    characteristic: null,
    ratedA: 5,
    breaking: null,
    ratedV: 250,
    sizeMm: '6.3x25.4',
    source: 'encyclopaedia text on BS 1362:1973',
  },
  {
    text: '3A BS1362',
    characteristic: null,
    ratedA: 3,
    breaking: null,
    ratedV: 250,
    sizeMm: '6.3x25.4',
    source: 'encyclopaedia text on BS 1362:1973',
  },
  {
    text: '13A BS1362',
    characteristic: null,
    ratedA: 13,
    breaking: null,
    ratedV: 250,
    sizeMm: '6.3x25.4',
    source: 'encyclopaedia text on BS 1362:1973',
  },
  {
    text: '15A BS1362',
    characteristic: null,
    ratedA: null,
    breaking: null,
    ratedV: null,
    sizeMm: '6.3x25.4',
    source: 'test of counterfeit 15 A plug fuses',
  },
  {
    text: 'T 315 mA L 250 V',
    characteristic: 'T',
    ratedA: 0.315,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'T 3,15 A/250 V',
    characteristic: 'T',
    ratedA: 3.15,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'F 500 mA 250 V',
    characteristic: 'F',
    ratedA: 0.5,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'F2AL250V',
    characteristic: 'F',
    ratedA: 2,
    breaking: 'L',
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'F3.15AH250V',
    characteristic: 'F',
    ratedA: 3.15,
    breaking: 'H',
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'T2AH250V',
    characteristic: 'T',
    ratedA: 2,
    breaking: 'H',
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'T1.6AE250V',
    characteristic: 'T',
    ratedA: 1.6,
    breaking: 'E',
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'M1A 250V',
    characteristic: 'M',
    ratedA: 1,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'FF 500mA 250V',
    characteristic: 'FF',
    ratedA: 0.5,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'TT2A 250V',
    characteristic: 'TT',
    ratedA: 2,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: '3.15A T 250V~',
    characteristic: 'T',
    ratedA: 3.15,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: '250V T2A',
    characteristic: 'T',
    ratedA: 2,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'T4A/250V x2',
    characteristic: 'T',
    ratedA: 4,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: '1-1/4A 250V',
    characteristic: null,
    ratedA: 1.25,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: '1 1/2 A 125 V',
    characteristic: null,
    ratedA: 1.5,
    breaking: null,
    ratedV: 125,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: '3/8A 250V T-D',
    characteristic: 'T',
    ratedA: 0.375,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: '3A 250V SB',
    characteristic: 'T',
    ratedA: 3,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: '5A 125V',
    characteristic: null,
    ratedA: 5,
    breaking: null,
    ratedV: 125,
    sizeMm: null,
    source: 'common practice',
  },
  {
    text: 'A/S 2A 250V',
    characteristic: 'T',
    ratedA: 2,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'Handbook of electrical applications, chapter 80: anti-surge',
  },
  {
    text: '0,4 A mittelträge',
    characteristic: 'M',
    ratedA: 0.4,
    breaking: null,
    ratedV: null,
    sizeMm: null,
    source: 'overview of fuse markings in German; string itself common practice',
  },
  {
    text: '1 A flink 250 V',
    characteristic: 'F',
    ratedA: 1,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'overview of fuse markings in German; string itself common practice',
  },
  {
    text: 'T 1,25/250 C',
    characteristic: 'T',
    ratedA: 1.25,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'from memory: old German marking to DIN 41571',
  },
  {
    text: 'M 0,5/250 D',
    characteristic: 'M',
    ratedA: 0.5,
    breaking: null,
    ratedV: 250,
    sizeMm: null,
    source: 'from memory: old German marking to DIN 41571',
  },
] as const

describe('readFuseMarking', () => {
  it.each(printed)('reads "$text" ($source)', ({ text, characteristic, ratedA, breaking, ratedV, sizeMm }) => {
    expect(readFuseMarking(text)).toMatchObject({ characteristic, ratedA, breaking, ratedV, sizeMm })
  })
})

describe('a marking in another order, spacing or sign', () => {
  it.each([
    { text: 'T 1.25 A L 250 V', ratedA: 1.25 },
    { text: '250V L T1.25A', ratedA: 1.25 },
    { text: '1.25AT L250V', ratedA: 1.25 },
    { text: 't1,25al250v', ratedA: 1.25 },
    { text: 'T1A25 L 250 V~', ratedA: 1.25 },
    { text: 'TL 1.25A 250VAC', ratedA: 1.25 },
    { text: 'Sicherung T 1,25 A L 250 V', ratedA: 1.25 },
    { text: 'T1.25 L 250', ratedA: 1.25 },
    { text: 'Ｔ１．２５Ａ Ｌ ２５０Ｖ', ratedA: 1.25 },
  ])('"$text" is T 1.25 A L 250 V (IEC 60127-1 clause 6.1)', ({ text, ratedA }) => {
    expect(readFuseMarking(text)).toMatchObject({
      characteristic: 'T',
      ratedA,
      breaking: 'L',
      ratedV: 250,
      scheme: 'IEC',
      unread: [],
    })
  })

  it.each([
    { text: 'T315', ratedA: 0.315 },
    { text: 'T3.15', ratedA: 3.15 },
    { text: 'T3,15', ratedA: 3.15 },
    { text: 'T500L250V', ratedA: 0.5 },
    { text: 'T32', ratedA: 0.032 },
    { text: 'T10', ratedA: 10 },
    { text: 'T.5', ratedA: 0.5 },
    { text: 'T28', ratedA: null },
    { text: 'T1000', ratedA: null },
  ])(
    '"$text" with the unit left out is $ratedA A: mA below 1 A, A from 1 A (IEC 60127-2 clause 6.1)',
    ({ text, ratedA }) => {
      expect(readFuseMarking(text).ratedA).toBe(ratedA)
    },
  )

  it.each([
    { text: '½A 250V', ratedA: 0.5 },
    { text: '1½ A', ratedA: 1.5 },
    { text: '1-6/10A', ratedA: 1.6 },
    { text: '15/100 A', ratedA: 0.15 },
    { text: 'AGC 1/2', ratedA: 0.5 },
    { text: '2-1/4A', ratedA: 2.25 },
  ])('"$text" is a North American fraction of $ratedA A', ({ text, ratedA }) => {
    expect(readFuseMarking(text)).toMatchObject({ ratedA, scheme: 'UL' })
  })

  it.each([
    ['2A rapide', 'F'],
    ['2A temporisé', 'T'],
    ['2A ritardato', 'T'],
    ['2A rápido', 'F'],
    ['2A traag', 'T'],
    ['2A snel', 'F'],
    ['2A trög', 'T'],
    ['2A hidas', 'T'],
    ['2A zwłoczny', 'T'],
    ['2А быстродействующий', 'F'],
    ['2A superflink', 'FF'],
    ['flinke Feinsicherung 2 A', 'F'],
    ['2 A träger Einsatz', 'T'],
    ['タイムラグヒューズ 2A', 'T'],
    ['2A superträge', 'TT'],
    ['2A slow-blow', 'T'],
    ['2A quick-acting', 'F'],
    ['2A slow', 'T'],
  ])('%s is %s (words from memory)', (text, characteristic) => {
    expect(readFuseMarking(text)).toMatchObject({ ratedA: 2, characteristic })
  })

  it.each([
    ['T2A 5x20', '5x20'],
    ['T2A 6.3 × 32 mm', '6.3x32'],
    ['T2A 5*20', '5x20'],
    ['5A 250V 3AB', '6.3x32'],
    ['5A 32V AGC', '6.3x32'],
    ['2A 1/4" x 1-1/4"', '6.3x32'],
    ['2A 6,3x25,4mm', '6.3x25.4'],
    ['2A', null],
  ])('%s has the size %s', (text, sizeMm) => {
    expect(readFuseMarking(text).sizeMm).toBe(sizeMm)
  })

  it('takes a reference beside the marking for what it is', () => {
    expect(readFuseMarking('F1 T2AL250V')).toMatchObject({ characteristic: 'T', ratedA: 2, unread: ['F1'] })
    expect(readFuseMarking('F2 500mA')).toMatchObject({
      characteristic: null,
      ratedA: 0.5,
      scheme: null,
      unread: ['F2'],
    })
  })

  it('takes a second, much larger current as what the link can break', () => {
    expect(readFuseMarking('F4A 250V 1500A')).toMatchObject({ ratedA: 4, breakingCapacityA: 1500 })
    expect(readFuseMarking('GMD 1A 100A@250V 10kA@125V')).toMatchObject({ ratedA: 1, breakingCapacityA: 100 })
  })
})

describe('breaking capacity from the letter (IEC 60127-2: L 35 A or 10 times rated, E 150 A, H 1500 A)', () => {
  it.each([
    ['T2AL250V', 35],
    ['T4AL250V', 40],
    ['T6.3AL250V', 63],
    ['T2AE250V', 150],
    ['T2AH250V', 1500],
    ['T2A250V', null],
    ['3A BS1362', 6000],
  ])('%s breaks %s A', (text, breakingCapacityA) => {
    expect(readFuseMarking(text).breakingCapacityA).toBe(breakingCapacityA)
  })
})

describe('what a marking does not say', () => {
  it('stays unknown: no letter, no speed', () => {
    expect(readFuseMarking('2A 250V')).toMatchObject({
      characteristic: null,
      breaking: null,
      breakingCapacityA: null,
      scheme: null,
    })
  })

  it.each(['', '   ', 'xyzzy 42 !!', 'Telefon', '🙂', '-', '\u0000'])('%j gives nulls', (text) => {
    const { unread, notes, ...facts } = readFuseMarking(text)
    expect(Object.values(facts).every((value) => value === null)).toBe(true)
    expect(unread.join('').length).toBeLessThanOrEqual(text.length)
    expect(notes).toEqual([])
  })

  it('keeps every piece that found no place, as printed', () => {
    expect(readFuseMarking('Xyzzy T2A plugh').unread).toEqual(['Xyzzy', 'plugh'])
  })

  it.each([
    ['15A BS1362', /stops at 13 A/],
    ['0A', /0 A does not exist/],
    ['99999A', /not a rated current/],
    ['T1A T2A', /Several rated currents/],
    ['T2A F2A', /Several speeds/],
    ['130°C 2A', /thermal cut-off/],
    ['T2A 100-240V', /range of mains voltages/],
  ])('%s says why in plain words', (text, words) => {
    expect(readFuseMarking(text).notes.join(' ')).toMatch(words)
  })

  it('gives no rating, voltage or breaking capacity to a link that claims what its standard does not know', () => {
    expect(readFuseMarking('15A BS1362')).toMatchObject({
      ratedA: null,
      ratedV: null,
      breakingCapacityA: null,
      unread: ['15A'],
    })
  })
})

describe('several prescriptions printed together', () => {
  it.each(['FUSE 115V T1.6A / 230V T800mA', '115V: T1.6A; 230V: T800mA', '115 V T1,6A\n230 V T0,8A'])(
    '%j are split by mains voltage',
    (text) => {
      const split = splitPrescription(text)
      expect(split.map(({ mains }) => mains.min)).toEqual([115, 230])
      expect(split.map((one) => readFuseMarking(one.text).ratedA)).toEqual([1.6, 0.8])
    },
  )

  it('are not looked for in a single one', () => {
    expect(splitPrescription('T4A/250V x2')).toEqual([])
    expect(splitPrescription('T 2 A / 250 V')).toEqual([])
  })
})

describe('a marking put together at random', { timeout: 60_000 }, () => {
  const speed = fc.constantFrom('FF', 'F', 'M', 'T', 'TT')
  const rated = fc.constantFrom(0.032, 0.1, 0.315, 0.5, 0.8, 1, 1.25, 2, 3.15, 6.3, 10)
  const breaks = fc.constantFrom('', 'L', 'E', 'H')
  const rating = (ratedA: number, milli: boolean, comma: boolean, gap: string) => {
    const text = milli && ratedA < 1 ? `${Math.round(ratedA * 1000)}${gap}mA` : `${ratedA}${gap}A`
    return comma ? text.replace('.', ',') : text
  }

  it('is read whatever the order, the spacing and the decimal sign', () => {
    fc.assert(
      fc.property(
        speed,
        rated,
        breaks,
        fc.boolean(),
        fc.boolean(),
        fc.constantFrom('', ' '),
        fc.nat(3),
        (letter, ratedA, capacity, milli, comma, gap, order) => {
          const value = rating(ratedA, milli, comma, gap)
          const text = [
            `${letter}${gap}${value}${gap}${capacity}${gap}250${gap}V`,
            `250V ${letter}${gap}${value} ${capacity}`,
            `${value} ${letter} ${capacity} 250 V`,
            `${letter} ${value}/250V ${capacity}`,
          ][order]
          expect(readFuseMarking(text ?? '')).toMatchObject({
            characteristic: letter,
            ratedA,
            breaking: capacity || null,
            ratedV: 250,
            scheme: 'IEC',
            unread: [],
          })
        },
      ),
      { numRuns: 1000 },
    )
  })

  it('never fails on any text, and never reads a rating out of nothing', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        const { ratedA } = readFuseMarking(text)
        if (!/[\p{N}]/u.test(text.normalize('NFKC')))
          expect(ratedA === null || /black|brown|red|orange|yellow|green|blue|violet|grey|white/i.test(text)).toBe(true)
        splitPrescription(text)
      }),
      { numRuns: 1000 },
    )
  })
})

describe('a sign for square metres', () => {
  it.each(['㎡', '㎥', '0.75㎟'])('is no fuse-link of medium speed: %s', (text) => {
    expect(readFuseMarking(text).ratedA).toBeNull()
  })
})

describe('noise', { timeout: 60_000 }, () => {
  const long = (piece: string) => piece.repeat(Math.ceil(100_000 / piece.length))
  it.each([
    'a',
    '1 ',
    '1',
    '1/',
    'T',
    'F1 ',
    'red-',
    ' ',
    '1-',
    '250V',
    '½',
    'slow ',
    'TFMLEHA 123.',
    '5x',
    '1,',
    'colour band ',
  ])('100 kB of %j are read in less than 5 s', (piece) => {
    const start = performance.now()
    const marking = readFuseMarking(long(piece))
    splitPrescription(long(piece))
    expect(performance.now() - start).toBeLessThan(5000)
    expect(marking.sizeMm).toBeNull()
  })
})

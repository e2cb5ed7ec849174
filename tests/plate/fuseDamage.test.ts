import { describe, expect, it } from 'vitest'
import { readFuseMarking } from '../../server/plate/fuseMarking.js'

describe('figures torn apart by pasting', () => {
  it.each([
    ['T 1. 6A', 'a blank behind the point of 1.6 A'],
    ['T1 .6A L 250V', 'a blank before the point'],
    ['T 1 6A', 'the point is lost'],
    ['F1 6A', 'may be 1.6 A, or link F1 of 6 A'],
    ['T3 15mA', '315 mA torn apart'],
    ['T 6 30mA L', '630 mA torn apart'],
    ['2 50mA', '250 mA torn apart'],
    ['T1·6A', 'a dot that is no decimal sign here'],
    ["T1'6A", 'an apostrophe for the comma'],
    ['T1;25A', 'a semicolon for the comma'],
    ['T 2, 5A H 250V', 'a blank behind the comma'],
    ['M 0. 5A', 'half an ampere, not five'],
    ['T1. 6L250V', 'the same with the unit left out'],
    ['T 3 .15 A', 'two blanks, 3.15 A'],
    ['1. 25A slow', 'without a letter for the speed'],
  ])('%s gives no rating (%s)', (text) => {
    const { ratedA, notes } = readFuseMarking(text)
    expect(ratedA).toBeNull()
    expect(notes.join(' ')).toMatch(/looks damaged/)
  })

  it.each([
    ['F2 500mA', 0.5, 'a reference, then 500 mA'],
    ['F14 2 AMP', 2, 'a reference: 14.2 A is no rating'],
    ['F1: 2A', 2, 'a colon ends the reference'],
    ['1 1/2 A', 1.5, 'a fraction'],
    ['5x20 2A', 2, 'a size before it'],
    ['BS1362 3A', 3, 'the number of a standard before it'],
    ['T2A, 250V', 2, 'a comma between two facts'],
    ['250V 2A', 2, 'the unit stands between the figures'],
    ['T315 L 250V', 0.315, 'milliamperes by the standard'],
    ['T1 L 250 V', 1, 'the unit left out, a letter between the figures'],
    ['T1.6A', 1.6, 'whole'],
  ])('%s is whole: %s A (%s)', (text, ratedA) => {
    expect(readFuseMarking(text).ratedA).toBe(ratedA)
  })
})

describe('letters for figures', () => {
  it.each([
    'T5OOmA',
    'T3I5mA',
    'T3l5mA',
    'TI.6A',
    'Tl6A',
    'T l,6A',
    'T1.SA',
    'T2SA',
    'T1O',
    'T S00mA',
    'TB00mA',
    'T8OO mA',
    'T 1O A',
    '2SOmA',
  ])('%s gives no rating', (text) => {
    expect(readFuseMarking(text).ratedA).toBeNull()
  })

  it.each(['T2AL25OV', 'T2A 2S0V', 'T2AL2SOV'])('%s keeps its rating and has no voltage', (text) => {
    expect(readFuseMarking(text)).toMatchObject({ ratedA: 2, ratedV: null })
  })
})

/** Each blank or letter put into a whole marking: it may lose the rating, and never gets another. */
describe('any one damage to a whole marking', () => {
  const whole = [
    ['T1.6AL250V', 1.6],
    ['T 3,15 A H 250 V', 3.15],
    ['F500mAL250V', 0.5],
    ['T 315 mA L 250 V', 0.315],
    ['6.3A 250V slow', 6.3],
    ['T1.25L250V', 1.25],
    ['0,63A träge', 0.63],
    ['FF 12.5A 500V', 12.5],
  ] as const
  const alike: Record<string, string> = { '0': 'O', '1': 'l', '5': 'S', '8': 'B', '2': 'Z' }
  const damaged = whole.flatMap(([text, ratedA]) => [
    ...[...text].map((_sign, at) => [`${text.slice(0, at)} ${text.slice(at)}`, ratedA] as const),
    ...[...text].flatMap((sign, at) =>
      alike[sign] ? [[`${text.slice(0, at)}${alike[sign]}${text.slice(at + 1)}`, ratedA] as const] : [],
    ),
  ])
  it.each(damaged)('%s is %s A or not known', (text, ratedA) => {
    expect([ratedA, null]).toContain(readFuseMarking(text).ratedA)
  })
})

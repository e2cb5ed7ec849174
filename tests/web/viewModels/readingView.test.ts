import { describe, expect, it } from 'vitest'
import type { LabelReading } from '../../../server/plate/labelReading.js'
import { plateFields, plateValues, readingView } from '../../../server/web/pages/check/readingView.js'
import type { Words } from '../../../server/words/phrase.js'
import { tell } from '../../../server/words/tell.js'

const nothingRead: LabelReading = {
  input: null,
  outputs: [],
  outputsTotalW: null,
  takes: [],
  polarity: null,
  protectionClass: null,
  fuse: null,
  plug: null,
  hazards: [],
  unread: [],
  from: [],
  unsure: [],
  proposals: [],
}

const supply: LabelReading = {
  ...nothingRead,
  input: {
    kind: 'ac',
    voltages: [
      { min: 115, max: 115 },
      { min: 230, max: 230 },
    ],
    frequenciesHz: [50, 60],
    currentA: 0.8,
    powerVA: null,
    powerW: null,
  },
  outputs: [
    { kind: 'dc', voltageV: 5, voltageMaxV: 11, currentA: 2, powerVA: null, powerW: null },
    { kind: null, voltageV: -12, voltageMaxV: null, currentA: null, powerVA: null, powerW: null },
  ],
  polarity: 'centre-negative',
  unread: ['SN 7'],
}

const spaced = (text: Words | undefined): string | undefined => tell(text)?.replaceAll('\u00a0', ' ')

describe('what was read from a plate', () => {
  it('is said line by line, and what was not read beside it', () => {
    const view = readingView(supply)
    expect(view?.lines.map(({ label, value }) => [label, spaced(value)])).toEqual([
      ['Input', '115 V or 230 V, AC, 50 Hz or 60 Hz, 800 mA'],
      ['Output 1', '5 V to 11 V, DC, 2 A'],
      ['Output 2', '−12 V, (AC or DC not printed)'],
      ['Polarity', 'centre negative'],
    ])
    expect(view?.unread).toEqual(['SN 7'])
    expect(view?.nothing).toBe(false)
  })

  it('is told apart from words in which nothing was understood, and from no words', () => {
    expect(readingView({ ...nothingRead, unread: ['?'] })?.nothing).toBe(true)
    expect(readingView(null)).toBeNull()
  })

  it('stands beside the field that could correct it', () => {
    const read = plateValues(supply, null)
    expect(spaced(read.in)).toBe('115 V or 230 V')
    expect(spaced(read.ina)).toBe('800 mA')
    expect(spaced(read.plugpol)).toBe('centre negative')
    expect(spaced(read.out2)).toBe('−12 V')
    expect(read.out2kind).toBeUndefined()
    const lines = plateFields.map(({ name }) => name)
    expect(Object.keys(read).filter((name) => !lines.includes(name))).toEqual([])
  })
})

import { describe, expect, it } from 'vitest'
import type { LabelRail, LabelReading } from '../../server/plate/labelReading.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { plates } from './plates.js'

const figures = (one: { currentA: number | null; powerVA: number | null; powerW: number | null }): string[] => [
  ...(one.currentA === null ? [] : [`${one.currentA}A`]),
  ...(one.powerVA === null ? [] : [`${one.powerVA}VA`]),
  ...(one.powerW === null ? [] : [`${one.powerW}W`]),
]

const rails = (list: LabelRail[]): string | undefined =>
  list
    .map(({ kind, voltageV, voltageMaxV, ...rest }) =>
      [`${voltageV}${voltageMaxV === null ? '' : `..${voltageMaxV}`}`, kind ?? '?', ...figures(rest)].join(' '),
    )
    .join('; ') || undefined

function input({ input }: LabelReading): string | undefined {
  if (!input) return undefined
  const windows = input.voltages.map(({ min, max }) => (min === max ? `${min}` : `${min}..${max}`))
  const hertz = input.frequenciesHz.length > 0 ? [`${input.frequenciesHz.join('/')}Hz`] : []
  return [input.kind ?? '?', ...windows, ...hertz, ...figures(input)].join(' ')
}

/** A reading in the short form of the list. */
const short = (reading: LabelReading) => ({
  in: input(reading),
  out: rails(reading.outputs),
  takes: rails(reading.takes),
  polarity: reading.polarity === null ? undefined : reading.polarity === 'centre-positive' ? '+' : '-',
  class: reading.protectionClass ?? undefined,
  fuse: reading.fuse ?? undefined,
  totalW: reading.outputsTotalW ?? undefined,
})

describe('reading a plate', () => {
  it.each(plates)('reads as a person does: $text ($of)', ({ text, of, unread = [], ...expected }) => {
    const reading = readPlate(text, of)
    expect(short(reading)).toEqual({
      in: undefined,
      out: undefined,
      takes: undefined,
      polarity: undefined,
      class: undefined,
      fuse: undefined,
      totalW: undefined,
      ...expected,
    })
    // what is no rating is left over, or a word of hazard
    const left = [...reading.unread, ...reading.hazards.map(({ words }) => words)].join('\n')
    for (const piece of unread) expect(left).toContain(piece)
  })

  it('has at least 120 plates', () => {
    expect(plates.length).toBeGreaterThanOrEqual(120)
  })
})

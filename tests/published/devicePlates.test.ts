import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

/** What a person reads on the plate of a machine; the source of each text stands in its row. Null is not printed. */
interface Row {
  t: string
  /** volts [min, max], hertz, amperes, watts */
  in?: [number[], number[], number | null, number | null]
  /** kind, volts, highest volts, amperes */
  takes?: [string | null, number, number | null, number | null][]
  pol?: string
  src: string
}

const rows: Row[] = JSON.parse(readFileSync(new URL('./devicePlates.json', import.meta.url), 'utf8'))

const asRead = (text: string) => {
  const { input, takes, polarity } = readPlate(text, 'device')
  const window = input?.voltages[0]
  return {
    volts: window ? [window.min, window.max] : null,
    hertz: input?.frequenciesHz.length ? input.frequenciesHz : null,
    amperes: input?.currentA ?? null,
    watts: input?.powerW ?? null,
    takes: takes.map(({ kind, voltageV, voltageMaxV, currentA }) => [kind, voltageV, voltageMaxV, currentA]),
    polarity,
  }
}

describe('plates of machines', () => {
  it('are the whole list', () => {
    expect(rows).toHaveLength(10)
  })

  it.each(rows)('are read as annotated: $t', ({ t, in: input, takes, pol }) => {
    const [volts = null, hertz = null, amperes = null, watts = null] = input ?? []
    expect(asRead(t)).toEqual({ volts, hertz, amperes, watts, takes: takes ?? [], polarity: pol ?? null })
  })
})

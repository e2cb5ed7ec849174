import { describe, expect, it } from 'vitest'
import { lampChoice } from '../support/told.js'

const load = { idleW: 5, ratedW: 20, minimumV: 90 }
const chosen = (voltageV: number) => lampChoice({ voltageV, frequencyHz: 50 }, load, null)

/** Lamps are sold for 100 V to 130 V and for 220 V to 250 V; one serves from 0.95 to 1.15 times its mains. */
describe('lamps for a mains of another voltage than lamps are sold for', () => {
  it('are two of 100 V in series on 190 V', () => {
    const { options } = chosen(190)
    expect(options.length).toBeGreaterThan(0)
    for (const option of options) expect(option).toMatchObject({ ratedV: 100, count: 2, arrangement: 'series' })
  })

  // 130 V is too little for 150 V, and two of the smallest, 200 V, are too much
  it.each([150, 160, 173])(
    'are none on %d V: one burns out on a short, a pair hides what it should show',
    (voltageV) => {
      const { options, order, cautions } = chosen(voltageV)
      expect(options).toEqual([])
      expect(order).toEqual([])
      expect(cautions.join('\n')).toMatch(/No standard lamp is made for/)
    },
  )
})

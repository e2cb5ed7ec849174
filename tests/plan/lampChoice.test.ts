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

describe('lamps a load is to start behind', () => {
  const { options } = chosen(230)
  const at = (idleW: number, place: number) => {
    const choice = lampChoice({ voltageV: 230, frequencyHz: 50 }, { ...load, idleW, ratedW: 10 * idleW }, null)
    return { option: choice.options[place], first: choice.order.find(({ use }) => use === 'first') }
  }

  // a quarter to spare: 1 / 1.25 = 0.8 of the most they pass to a rectifier
  it.each(options.map((option, place) => ({ ...option, place })))(
    '$ratedW W has a quarter to spare over what the load takes idle',
    ({ ceilingW, ratedW, place }) => {
      const near = at(0.9 * ceilingW, place)
      expect(near.option?.suits).toBe(false)
      expect(near.first?.ratedW).not.toBe(ratedW)
      expect(at(0.7 * ceilingW, place).option).toMatchObject({ startsIdle: true, suits: true })
    },
  )
})

import { describe, expect, it } from 'vitest'
import { operatingPoint } from '../../server/physics/seriesLamp.js'
import { lampsOf } from '../../server/plan/firstPower/lamps.js'
import { meanFrom, rmsFrom, simulate } from '../support/simulator.js'
import { switchOnAgrees, within } from '../support/switchOnAgrees.js'
import { circuits, lampNetlist } from '../support/switchOnCircuits.js'

describe('the switch-on agrees with ngspice within 1 %', () => {
  const compared: { durationS: number; mineMs: number; theirsMs: number }[] = []

  it.each(circuits)(
    '$name',
    async (circuit) => {
      compared.push(await switchOnAgrees(circuit))
    },
    60_000,
  )

  it('in a fiftieth of its time or less over the six circuits, and in less than 50 ms for a second of mains', () => {
    const mine = compared.reduce((sum, { mineMs }) => sum + mineMs, 0)
    const theirs = compared.reduce((sum, { theirsMs }) => sum + theirsMs, 0)
    const mains = compared.reduce((sum, { durationS }) => sum + durationS, 0)
    console.log(
      `six circuits, ${mains.toFixed(1)} s of mains: ${mine.toFixed(0)} ms against ${theirs.toFixed(0)} ms, ${(theirs / mine).toFixed(0)} times`,
    )
    expect(compared).toHaveLength(6)
    expect(theirs / mine).toBeGreaterThan(50)
    expect(mine / mains).toBeLessThan(50)
  })
})

describe('the operating point agrees with ngspice within 1 %', () => {
  it.each([
    { mainsV: 230, frequencyHz: 50, lamp: { ratedV: 230, ratedW: 60 }, loadOhm: 480 },
    { mainsV: 120, frequencyHz: 60, lamp: { ratedV: 120, ratedW: 100 }, loadOhm: 480 },
    { mainsV: 120, frequencyHz: 60, lamp: { ratedV: 120, ratedW: 60 }, loadOhm: 100 },
  ])(
    'lamp $lamp.ratedW W $lamp.ratedV V with $loadOhm Ω',
    async ({ mainsV, frequencyHz, lamp, loadOhm }) => {
      // a dark filament takes seconds
      const durationS = loadOhm > 400 ? 16 : 3
      const simulated = await simulate(
        [
          'lamp and resistor',
          `Vmains line 0 SIN(0 ${Math.SQRT2 * mainsV} ${frequencyHz})`,
          lampNetlist('l0', lamp, 'line', 'load'),
          `Rload load 0 ${loadOhm}`,
          // the heat rises by millionths in a step, so the simulator must resolve that
          '.options method=gear reltol=1e-7 vntol=1e-9',
          `.tran 200u ${durationS} ${durationS - 0.5} 200u uic`,
          '.end',
        ].join('\n'),
      )
      const point = operatingPoint(lampsOf({ lamps: [lamp], arrangement: 'series' }), mainsV, {
        kind: 'resistance',
        resistanceOhm: loadOhm,
      })
      const fromS = durationS - 10 / frequencyHz
      const loadV = rmsFrom(simulated.timeS, simulated.of('v(load)'), fromS)
      const filamentK = meanFrom(simulated.timeS, simulated.of('v(l0k)'), fromS)
      console.log(
        `${lamp.ratedW} W ${lamp.ratedV} V with ${loadOhm} Ω: ${point.lamp.filamentK.toFixed(1)} K against ${filamentK.toFixed(1)} K, ` +
          `${point.loadV.toFixed(2)} V against ${loadV.toFixed(2)} V`,
      )
      expect(within(point.loadV, loadV)).toBeLessThan(0.01)
      expect(within(point.lamp.currentA, loadV / loadOhm)).toBeLessThan(0.01)
      expect(within(point.lamp.filamentK, filamentK)).toBeLessThan(0.01)
    },
    60_000,
  )
})

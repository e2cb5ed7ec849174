import { describe, expect, it } from 'vitest'
import { assessCase } from '../../server/chain/assess.js'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest, Site } from '../../server/chain/case/request.js'
import { changed } from '../chain/cases.js'
import { planFirstPower } from '../support/told.js'

const planOf = (request: CheckRequest) => {
  const of = prepareCase(request)
  return planFirstPower(of, assessCase(of), {})
}

/** The supply with a plate for the voltage that the source gives. */
const separate = (source: Site['source']): CheckRequest => {
  const [country, volts, hertz] =
    source === 'two-live' ? ['US', 240, 60] : source === 'site-transformer' ? ['GB', 110, 50] : ['DE', 230, 50]
  const input = {
    voltages: [{ min: volts as number, max: volts as number }],
    frequenciesHz: [hertz as number],
    currentA: 0.2,
  }
  const plug = source === 'two-live' ? 'NEMA 6-15' : 'CEE 7/16'
  return changed({
    site: {
      country: country as string,
      voltageV: volts as number,
      frequencyHz: hertz as number,
      source,
      socket: source === 'two-live' || source === 'site-transformer' ? null : 'F',
    },
    supply: { input },
    cord: { plug },
  })
}

const inside = (source: Site['source']): CheckRequest => ({
  arrangement: 'built-in',
  site: { country: 'DE', voltageV: 230, frequencyHz: 50, socket: 'F', source },
  supply: {},
  device: {
    label: '230V~ 50Hz 40W FUSE T315mAL250V',
    mains: { inlet: 'C8', protectionClass: 'II', technology: 'transformer', motor: 'none', fuse: 'T315mAL250V' },
  },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
})

const stepsOn = (request: CheckRequest, key: string) =>
  planOf(request)
    .stages.flatMap(({ steps }) => steps)
    .filter((step) => step.key.endsWith(key))
const said = (steps: ReturnType<typeof stepsOn>): string => JSON.stringify(steps)

describe('what stands behind the socket, in the plan', () => {
  it('adds nothing for the wall, stated or not', () => {
    for (const source of ['wall', null] as const)
      for (const request of [separate(source), inside(source)]) {
        expect(stepsOn(request, '.source')).toEqual([])
        expect(said(stepsOn(request, '.lamp-circuit'))).toMatch(
          /in the line conductor.*a residual-current device upstream/,
        )
      }
    // the words of plates are made ready once, which takes a while on a busy machine
  }, 30_000)

  // two live conductors: cut both; a device before an isolating transformer sees nothing; a generator's windings may float
  it.each<[NonNullable<Site['source']>, RegExp | null, RegExp | null]>([
    ['two-live', /Both conductors are live: a single-pole switch, fuse-link or lamp breaks one/, null],
    [
      'isolating-transformer',
      /Both conductors may be live/,
      /does not open for a fault to earth behind it: none is relied on/,
    ],
    ['generator', /Both conductors may be live/, /may not open for a fault to earth behind it: none is relied on/],
    ['inverter-sine', /Both conductors may be live/, /may not open for a fault to earth behind it: none is relied on/],
  ])('%s: each stage that puts it on the mains says so before it', (source, both, residual) => {
    for (const request of source === 'two-live' ? [separate(source)] : [separate(source), inside(source)]) {
      const { stages } = planOf(request)
      const powered = stages.filter(({ steps }) => steps.some(({ power }) => power === 'mains'))
      expect(powered.length).toBeGreaterThan(0)
      for (const { name, steps } of powered) {
        const at = steps.findIndex(({ key }) => key === `${name}.source`)
        expect(at, name).toBeGreaterThanOrEqual(0)
        expect(at).toBeLessThan(steps.findIndex(({ power }) => power === 'mains'))
        const { text, caution } = steps[at]!
        expect(text).toMatch(/pull the plug/)
        expect(caution).toMatchObject({ signal: 'DANGER', electric: true })
        if (both) expect(caution?.hazard).toMatch(both)
        if (residual) expect(caution?.hazard).toMatch(residual)
        else expect(caution?.hazard).not.toMatch(/residual/)
      }
      const circuit = said(stepsOn(request, '.lamp-circuit'))
      expect(circuit).toMatch(/a switch and a fuse-link in both/)
      expect(circuit).toMatch(/qualified/)
      if (residual) expect(circuit).not.toMatch(/A residual-current device upstream/)
    }
  })

  it('relies on no residual-current device behind a converter with separate windings', () => {
    const american = {
      input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [50, 60], currentA: 0.3 },
    }
    const behind = (kind: 'isolating' | 'autotransformer') =>
      said(
        stepsOn(
          changed({
            supply: american,
            cord: { plug: 'NEMA 1-15', ratedV: 125 },
            converter: { kind, outputV: 120, ratedVA: 300 },
          }),
          '.lamp-circuit',
        ),
      )
    expect(behind('isolating')).toMatch(/none is relied on/)
    expect(behind('autotransformer')).toMatch(/a residual-current device upstream/)
  })
})

import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { changed, matching } from '../chain/cases.js'
import { assess, composeChecklist, planFirstPower } from '../support/told.js'

const builtIn: CheckRequest = {
  arrangement: 'built-in',
  site: { country: 'DE', socket: 'F' },
  supply: {},
  device: { label: '220-240V~ 50Hz 40W', mains: { technology: 'transformer', protectionClass: 'I', inlet: 'C14' } },
  cord: { plug: 'CEE 7/7', connector: 'C13', ratedV: 250, ratedA: 10, earthed: true, plugFitted: 'moulded' },
}
const behindConverter = changed({
  supply: { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60], currentA: 0.4 } },
  converter: { kind: 'isolating', outputV: 120, ratedVA: 100 },
})
const lampsOnHand = [{ ratedV: 230, ratedW: 60, count: 1 }]

const linesOf = (check: CheckRequest, lamps = lampsOnHand) => {
  const of = prepareCase(check)
  const assessment = assess(check)
  const plan = planFirstPower(of, assessment, { lampsOnHand: lamps, yearsUnused: 30, bulkF: 68e-6, bulkRatedV: 400 })
  return composeChecklist({ ...of, assessment, plan }).stages.flatMap(({ lines }) => lines)
}

// each kind of step that measures, and what it says of the meter before anything has power: common practice at the bench
const named: readonly (readonly [string, RegExp, RegExp])[] = [
  [
    'the socket',
    /^before\.mains-volts$/,
    /AC volts, range above \d+\u00a0V, meter and leads marked CAT\u00a0II \d+\u00a0V/,
  ],
  ['a converter', /^supply-alone\.converter$/, /AC volts, meter and leads marked CAT\u00a0II \d+\u00a0V/],
  ['the lamp', /\.meter-lamp$/, /Plug out: meter on AC volts above .* COM and V; .* CAT\u00a0II \d+\u00a0V/],
  ['the output alone', /^supply-alone\.meter-output$/, /unplug; move the leads .* volts, a range above/],
  [
    'what is stored inside',
    /^look\.discharge$|^(bench-supply|together|inside-(stripped|whole))\.off$/,
    /DC volts, highest range/,
  ],
  ['a load', /^dummy-load\.meter$/, /Plug out: meter on volts .* range above/],
  ['a current under mains', /\.drawn/, /ammeter set in and taken out with the plug out/],
  [
    'a current of the mains',
    /^inside-full\.current$/,
    /plug-in meter, set in with the plug out; never through test leads/,
  ],
  ['a sign', /^(supply-alone|bench-supply)\.polarity$/, /DC volts/],
  ['the machine’s terminals', /^bench-supply\.at-machine/, /meter on DC volts/],
  ['insulation', /^gate\.(isolation|insulation)$/, /insulation tester at 500\u00a0V DC/],
]

describe('a step that measures', () => {
  const all = [...linesOf(matching), ...linesOf(behindConverter, []), ...linesOf(builtIn)]

  it.each(named)('at %s says how the meter is set', (_what, keys, words) => {
    const lines = all.filter(({ key }) => keys.test(key))
    expect(lines.length).toBeGreaterThan(0)
    for (const { key, text, expect: expected } of lines) expect(`${text} ${expected ?? ''}`, key).toMatch(words)
  })

  it('sets the leads at the mains once a stage, before it is switched on, and reads the lamp before they move', () => {
    for (const stage of ['supply-alone', 'together', 'inside-stripped']) {
      const keys = all.map(({ key }) => key)
      const at = (step: string) => keys.indexOf(`${stage}.${step}`)
      expect(keys.filter((key) => key === `${stage}.meter-lamp`).length).toBeLessThanOrEqual(2)
      expect(at('meter-lamp')).toBeGreaterThan(-1)
      expect(at('lamp-volts')).toBeGreaterThan(at('meter-lamp'))
      if (at('hold') >= 0 && at('meter-output') >= 0) expect(at('meter-output')).toBeGreaterThan(at('hold'))
    }
  })
})

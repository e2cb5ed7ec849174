import fc from 'fast-check'
import type { CheckRequest, DeviceInput, Output } from '../../server/chain/case/request.js'

export const maybe = <T>(values: fc.Arbitrary<T>) => fc.option(values, { nil: null, freq: 4 })
export const among = <T>(...values: T[]) => fc.constantFrom(...values)
const record = <T>(model: { [K in keyof T]: fc.Arbitrary<T[K]> }) => fc.record(model)

export const window = fc
  .tuple(
    fc.oneof(among(100, 110, 115, 120, 127, 220, 230, 240, 12, 400), fc.double({ min: 1, max: 1000, noNaN: true })),
    among(1, 1, 1.2, 2.4),
  )
  .map(([min, factor]) => ({ min, max: Math.min(min * factor, 1000) }))
const railV = fc.oneof(among(5, 9, 12, -12, -5, 24, 18), fc.double({ min: 0.5, max: 60, noNaN: true }))
const amps = fc.oneof(among(0.1, 0.5, 1, 2, 3.25), fc.double({ min: 0.01, max: 30, noNaN: true }))
const kind = among<'ac' | 'dc' | null>('dc', 'dc', 'ac', null)
const polarity = among('centre-positive' as const, 'centre-negative' as const)
const dcPlug = record({
  outerMm: maybe(among(2.35, 4, 5.5, 5.5, 6.5)),
  innerMm: maybe(among(0.7, 1.7, 2.1, 2.1, 2.5, 4.4)),
  polarity: maybe(polarity),
  name: maybe(among('5.5 x 2.1', 'EIAJ-02', 'DIN', '')),
})
export const outputs = fc.array(
  record<Output>({ kind, voltageV: railV, currentA: maybe(amps), powerW: maybe(among(5, 12, 24, 60)) }),
  { minLength: 1, maxLength: 4 },
)
export const inputs = fc.array(
  record<DeviceInput>({
    kind,
    voltageV: railV,
    currentA: maybe(amps),
    currentIs: maybe(among('plate' as const, 'measured' as const)),
    tolerancePercent: maybe(among(0, 2, 5, 15)),
  }),
  { minLength: 1, maxLength: 4 },
)
const label = among(
  'INPUT: 100-240V~ 50/60Hz 0.5A\nOUTPUT: 12V ⎓ 2A ⧈',
  'PRI 230V 50Hz 12VA SEC 9V~ 1A T100mA',
  '3~ 400V',
  'INPUT 12V DC',
  'class III 230V',
  '',
  '\n\n',
  '\u202e V0.5 A',
)

/** Any request of the right shape, mostly of things that occur. */
export const anyRequest: fc.Arbitrary<CheckRequest> = fc.record({
  site: fc.record({
    country: maybe(among('DE', 'GB', 'US', 'JP', 'BR', 'IT', 'SA', 'AU', 'PH')),
    voltageV: maybe(among(100, 110, 120, 127, 220, 230, 240, 118.5, 1, 1000)),
    frequencyHz: maybe(among(50, 60, 50.2, 400, 16.7)),
    socket: maybe(among('A', 'B', 'C', 'F', 'G', 'I', 'L', 'N')),
  }),
  supply: fc.record({
    label: maybe(label),
    input: maybe(
      record({
        voltages: maybe(fc.array(window, { minLength: 1, maxLength: 3 })),
        frequenciesHz: maybe(among([50], [60], [50, 60], [400])),
        currentA: maybe(amps),
        powerVA: maybe(among(10, 60, 2000)),
        powerW: maybe(among(5, 40)),
        selectorV: maybe(among(115, 120, 230, 100)),
      }),
    ),
    technology: maybe(among('switch-mode' as const, 'transformer' as const, 'unknown' as const)),
    regulated: maybe(fc.boolean()),
    protectionClass: maybe(among('I' as const, 'II' as const, 'III' as const)),
    inlet: maybe(among('C6', 'C8', 'C14', 'C16', 'C18', 'C20', 'captive', 'plug-in', 'odd')),
    outputs: maybe(outputs),
    plug: maybe(dcPlug),
    lead: maybe(
      record({ lengthM: among(0.5, 1.5, 20), areaMm2: maybe(among(0.14, 0.5, 1.5)), awg: maybe(among(18, 22, 28)) }),
    ),
    fuse: maybe(among('T500mAL250V', 'F2A', 'T1.25AL250V', '???', '')),
    measured: maybe(
      record({ offLoadV: maybe(among(12, 16.5, -12, 9)), loadedV: maybe(among(12, 11, 5)), polarity: maybe(polarity) }),
    ),
  }),
  device: fc.record({
    label: maybe(among('DC 12V 1A centre positive', '230V~ 50Hz 40W motor', '9-12V ⎓ 500mA', '')),
    inputs: maybe(inputs),
    regulatedNeeded: maybe(fc.boolean()),
    jack: maybe(dcPlug),
  }),
  cord: maybe(
    fc.record({
      plug: maybe(among('CEE 7/16', 'CEE 7/7', 'BS 1363', 'NEMA 1-15', 'NEMA 5-15', 'CEE 7/17', 'odd')),
      connector: maybe(among('C5', 'C7', 'C13', 'C15', 'C17', 'C19', 'captive', 'odd')),
      ratedV: maybe(among(125, 250, 300)),
      ratedA: maybe(among(0.2, 2.5, 6, 10, 16)),
      earthed: maybe(fc.boolean()),
      areaMm2: maybe(among(0.3, 0.5, 0.75, 1.5)),
      awg: maybe(among(18, 22, 16)),
      plugFitted: maybe(among('moulded' as const, 'rewired' as const)),
      adapter: maybe(fc.record({ earthed: maybe(fc.boolean()) })),
    }),
  ),
  converter: maybe(
    fc.record({
      kind: maybe(among('autotransformer' as const, 'isolating' as const, 'electronic' as const)),
      outputV: maybe(among(100, 110, 120, 230)),
      ratedVA: maybe(among(50, 100, 2000)),
    }),
  ),
})

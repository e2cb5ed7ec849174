import { z } from 'zod'
import { circuitKinds, fusePositions, fuseSchemes, inrushShapes } from '../../chain/fuse/fuseRequest.js'
import { breakingLetters, characteristics } from '../../tables/fuseMarks.js'

const positive = (max: number, min: number = fuseLimits.least) => z.number().gt(0, { abort: true }).min(min).max(max)

/** Accepted ranges: wide enough for anything plugged into a wall, narrow enough to show a slip of the finger. */
export const fuseLimits = {
  voltageV: 1000,
  /** nothing smaller is on a bench, and quotients and squares of such numbers leave the range of numbers */
  least: 1e-6,
  leastV: 0.1,
  leastPowerFactor: 0.01,
  leastTimeS: 1e-9,
  currentA: 1000,
  powerW: 100_000,
  inrushPeakA: 100_000,
  inrushTimeS: 1000,
  pulses: 1_000_000_000,
  ambientMinC: -60,
  ambientMaxC: 150,
  faultA: 200_000,
  ratedA: 1000,
  ratedV: 1500,
  text: 2000,
  markingText: 200_000,
} as const

export const fuseMarkingRequest = z.strictObject({ text: z.string().max(fuseLimits.markingText) })

export const fuseRequest = z.strictObject({
  marking: z.string().max(fuseLimits.text).nullish(),
  prescribed: z.string().max(fuseLimits.text).nullish(),
  fuse: z
    .strictObject({
      ratedA: positive(fuseLimits.ratedA).nullish(),
      ratedV: positive(fuseLimits.ratedV).nullish(),
      characteristic: z.enum(characteristics).nullish(),
      breaking: z.enum(breakingLetters).nullish(),
      scheme: z.enum(fuseSchemes).nullish(),
    })
    .nullish(),
  position: z.enum(fusePositions),
  circuit: z.strictObject({
    voltageV: positive(fuseLimits.voltageV, fuseLimits.leastV),
    kind: z.enum(circuitKinds).nullish(),
    currentA: positive(fuseLimits.currentA).nullish(),
    powerW: positive(fuseLimits.powerW).nullish(),
    powerFactor: positive(1, fuseLimits.leastPowerFactor).nullish(),
    inrushPeakA: positive(fuseLimits.inrushPeakA).nullish(),
    inrushTimeS: positive(fuseLimits.inrushTimeS, fuseLimits.leastTimeS).nullish(),
    inrushShape: z.enum(inrushShapes).nullish(),
    pulses: z.number().min(1).max(fuseLimits.pulses).nullish(),
    ambientC: z.number().min(fuseLimits.ambientMinC).max(fuseLimits.ambientMaxC).nullish(),
    prospectiveFaultA: positive(fuseLimits.faultA).nullish(),
  }),
  formerVoltageV: positive(fuseLimits.voltageV, fuseLimits.leastV).nullish(),
  blown: z.boolean().nullish(),
  seriesLampA: positive(fuseLimits.currentA).nullish(),
})

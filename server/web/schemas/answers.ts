import { z } from 'zod'
import { linkOrder } from '../../chain/chainLinks.js'
import { outcomes } from '../../chain/finding.js'
import { topicNames } from '../../chain/index.js'
import { stageNames } from '../../plan/firstPowerPlan.js'

/**
 * The shapes of the answers, as the description of the calls and their tests need them.
 * Fields may be added to an answer; none of these is renamed or removed.
 */
const number = z.number()
const maybe = z.number().nullable()
const text = z.string()
const lines = z.array(text)

export const sourceAnswer = z
  .object({ title: text, detail: text, kind: z.enum(['published', 'common practice', 'from memory']) })
  .meta({ id: 'Source' })

export const findingAnswer = z
  .object({
    topic: z.enum(topicNames),
    outcome: z.enum(outcomes),
    title: text,
    lead: text.optional().describe('of a title that says several facts, the first'),
    why: text,
    working: lines,
    action: text.nullable(),
    actions: z.array(
      z.object({
        do: text,
        who: z.enum(['you', 'qualified']),
        power: z.enum(['none', 'low-voltage', 'mains']),
        wiring: z.literal(true).optional().describe('it comes near mains wiring: whose work that is stands with it'),
        buys: z.literal('cord set').optional().describe('a part that it asks to buy'),
      }),
    ),
    sources: z.array(sourceAnswer),
  })
  .meta({ id: 'Finding' })

export const factAnswer = z
  .object({
    key: text,
    label: text,
    question: text,
    unit: text.nullable(),
    choices: z.array(
      z.object({ value: z.union([text, z.boolean()]).nullable(), label: text, drawing: text.nullable() }),
    ),
    link: text,
    howToFindOut: text,
    needsPower: z.boolean(),
    many: z.boolean(),
    address: text,
  })
  .meta({ id: 'Fact' })

/** What every first-power call adds to its numbers. */
const shown = { working: lines, cautions: lines, sources: z.array(sourceAnswer) }

const kind = z.enum(['ac', 'dc']).nullable()
const rail = z
  .object({ kind, voltageV: number, voltageMaxV: maybe, currentA: maybe, powerVA: maybe, powerW: maybe })
  .meta({ id: 'LabelRail' })

export const labelAnswer = z
  .object({
    input: z
      .object({
        kind,
        voltages: z.array(z.object({ min: number, max: number })),
        frequenciesHz: z.array(number),
        currentA: maybe,
        powerVA: maybe,
        powerW: maybe,
      })
      .nullable(),
    outputs: z.array(rail),
    outputsTotalW: maybe,
    takes: z.array(rail),
    polarity: z.enum(['centre-positive', 'centre-negative']).nullable(),
    protectionClass: z.enum(['I', 'II', 'III']).nullable(),
    fuse: text.nullable(),
    plug: z
      .object({
        outerMm: maybe,
        innerMm: maybe,
        polarity: z.enum(['centre-positive', 'centre-negative']).nullable(),
        name: text.nullable(),
      })
      .nullable(),
    hazards: z.array(
      z.object({
        meaning: text,
        words: text,
        language: text,
        decides: z.enum(['stop', 'unknown', 'caution', 'step']),
      }),
    ),
    unread: lines,
    from: z.array(z.object({ field: text, words: text })),
    unsure: lines,
    proposals: z.array(z.object({ was: text, reads: text })),
  })
  .meta({ id: 'LabelReading' })

const verdict = z.enum(['do-not-connect', 'find-out-first', 'take-care', 'no-conflict-found'])

const assessed = {
  verdict,
  findings: z.array(findingAnswer),
  readings: z.object({ supply: labelAnswer.nullable(), device: labelAnswer.nullable() }),
}
const outcome = z.enum(outcomes)
const link = z.enum(linkOrder)

export const checkAnswer = z
  .object({
    answer: text.describe('one sentence: the verdict and what decides it'),
    ...assessed,
    links: z
      .array(z.object({ link, outcome: outcome.nullable(), facts: lines }))
      .describe(
        'the things of the chain in their order, each with the worst that was found about it and the keys of its facts',
      ),
    next: z
      .array(
        z.object({
          do: text,
          who: z.enum(['you', 'qualified']),
          power: z.enum(['none', 'low-voltage', 'mains']),
          link,
          fact: text.optional().describe('key of the fact that it settles'),
          couldTurn: z.array(outcome).optional().describe('what its answers could make of the findings that lack it'),
        }),
      )
      .describe('what to do, in order: nothing with power before what needs none, or while the mains side is open'),
    waiting: number.describe('findings not known that need not be settled while a stop stands'),
  })
  .meta({ id: 'CheckResponse' })

/** A check as a job keeps it. */
export const assessmentAnswer = z.object(assessed).meta({ id: 'Assessment' })

export const mainsCountryAnswer = z
  .object({
    country: text,
    name: text,
    systems: z.array(z.object({ voltageV: number, frequencyHz: number, minV: number, maxV: number })),
    sockets: lines,
    sources: z.array(sourceAnswer),
  })
  .meta({ id: 'MainsCountry' })

const fitted = {
  ratedA: maybe,
  ratedV: maybe,
  characteristic: text.nullable(),
  breaking: text.nullable(),
  breakingCapacityA: maybe,
  scheme: text.nullable(),
}

export const fuseMarkingAnswer = z
  .object({ ...fitted, sizeMm: text.nullable(), ratedDcV: maybe, noLink: text.nullable(), unread: lines })
  .meta({ id: 'FuseMarking' })

export const fuseAnswer = z
  .object({
    answer: text,
    outcome: z.enum(['keep', 'replace', 'find-out-first']),
    fitted: z.object(fitted),
    required: z.object({
      currentA: maybe,
      minimumRatedA: maybe,
      recommendedRatedA: maybe,
      scheme: text,
      inrushI2t: maybe,
      minimumMeltingI2t: maybe,
    }),
    findings: z.array(findingAnswer),
    curve: z.array(z.object({ multiple: number, currentA: number, minTimeS: maybe, maxTimeS: maybe })),
  })
  .meta({ id: 'FuseResponse' })

const glow = z.enum(['none', 'dull', 'part', 'bright', 'full'])

export const seriesLampAnswer = z.object({
  currentA: number,
  lampV: number,
  lampBandV: z.object({ low: number, high: number }),
  loadV: number,
  lampW: number,
  loadW: number,
  lampResistanceOhm: number,
  filamentK: number,
  glow,
  starts: z.boolean().nullable(),
  largestConstantPowerW: number,
  others: z.array(z.object({ currentA: number, lampV: number, loadV: number, stable: z.boolean() })),
  ...shown,
})

export const lampReadingAnswer = z.object({
  currentA: number,
  currentBandA: z.object({ low: number, high: number }),
  loadV: number,
  loadVA: number,
  glow,
  ...shown,
})

export const lampChoiceAnswer = z.object({
  options: z.array(
    z.object({
      ratedV: number,
      ratedW: number,
      arrangement: text,
      shortA: number,
      idleLoadV: maybe,
      ratedLoadV: maybe,
      suits: z.boolean(),
      reason: text,
    }),
  ),
  order: z.array(z.unknown()),
  ...shown,
})

export const lampTransientAnswer = z.object({
  timeS: z.array(number),
  filamentK: z.array(number),
  glow: z.array(glow),
  bulkV: z.array(number),
  currentA: z.array(number),
  peakA: number,
  i2t: number,
  settlesToS: maybe,
  endFilamentK: number,
  endBulkV: number,
  ...shown,
})

export const inrushAnswer = z.object({
  peakA: number,
  firstHalfCycleI2t: number,
  totalI2t: number,
  meanV: number,
  rippleV: number,
  rmsA: number,
  ...shown,
})

export const benchSupplyAnswer = z.object({
  stages: z.array(z.object({ voltageV: number, limitA: number, holdS: number, expect: text, stopIf: text })),
  overVoltageV: number,
  minimumResistanceOhm: maybe,
  ...shown,
})

export const dummyLoadAnswer = z.object({
  points: z.array(
    z.object({
      fraction: number,
      resistanceOhm: number,
      standardOhm: number,
      currentA: number,
      powerW: number,
      ratedW: maybe,
      lowV: number,
      highV: number,
    }),
  ),
  ...shown,
})

export const dischargeAnswer = z.object({
  timeS: number,
  energyJ: number,
  peakW: maybe,
  resistanceOhm: maybe,
  standardOhm: maybe,
  ...shown,
})

export const reformAnswer = z.object({
  stages: z.array(z.object({ voltageV: number, seriesOhm: number, holdS: number, maxLeakageA: number })),
  resistorW: number,
  acceptLeakageA: number,
  ...shown,
})

export const offLoadAnswer = z.object({
  dcOffLoadV: maybe.optional(),
  dcLoadedV: maybe.optional(),
  rippleV: maybe.optional(),
  acOffLoadV: maybe.optional(),
  ...shown,
})

export const leadDropAnswer = z.object({
  resistanceOhm: number,
  dropV: number,
  dropPercent: number,
  lostW: number,
  ...shown,
})

export const converterAnswer = z.object({
  neededVA: maybe,
  standardVA: maybe,
  outputV: maybe,
  fluxRatio: maybe,
  kinds: z.array(z.object({ kind: text, suits: z.boolean().nullable(), reason: text })),
  ...shown,
})

export const leakageAnswer = z.object({
  currentA: number,
  largestF: maybe,
  meters: z
    .array(z.object({ meterOhm: number, what: text, readsV: number }))
    .describe('what meters show on a case without earth between two such capacitors'),
  ...shown,
})

export const insulationAnswer = z.object({ findings: z.array(findingAnswer), ...shown })

const hands = z.enum(['you', 'qualified'])
const power = z.enum(['none', 'low-voltage', 'mains'])

const step = z.object({
  key: text,
  text,
  link: text,
  expect: text.nullable(),
  unit: text.nullable(),
  low: maybe,
  high: maybe,
  strict: z.literal(true).optional(),
  notAbove: text.optional(),
  stopIf: text.nullable(),
  who: hands,
  power,
  caution: z.object({ signal: text, hazard: text, consequence: text, avoid: text, electric: z.boolean() }).nullable(),
})

export const firstPowerAnswer = z.object({
  mains: z.object({ voltageV: number, frequencyHz: number }).nullable(),
  through: z.enum(['mains', 'converter']).nullable(),
  lamps: z.array(
    z.object({ ratedV: number, ratedW: number, count: number, arrangement: z.enum(['series', 'parallel']) }),
  ),
  missing: lines,
  gates: z.array(step),
  stages: z.array(
    z.object({
      name: z.enum(stageNames),
      title: text,
      leftOut: text.nullable(),
      waits: text.nullable(),
      figures: z.array(z.object({ label: text, value: text, working: text })),
      steps: z.array(step),
      sources: z.array(sourceAnswer),
    }),
  ),
})

export const observationAnswer = z.object({
  key: text,
  words: text,
  appliesTo: lines,
  place: text,
  atOnce: text,
  holdsPower: z.boolean(),
})

const reading = z.enum(['within', 'outside']).nullable()

export const examineAnswer = z.object({
  seen: z.array(z.object({ key: text, words: text, because: text.nullable() })),
  atOnce: lines.describe('to do first of all'),
  never: lines.describe('what must not be done'),
  waitsFor: lines.describe('what stands before any power; nothing that needs power is in next while one does'),
  next: z
    .array(
      z.object({
        do: text,
        who: hands,
        power,
        link: z.enum(linkOrder),
        examination: text.optional(),
        expect: text.nullable().describe('figures worked out from the case'),
        otherwise: text.nullable().describe('what it reads as where it is none of what it tells of'),
        tells: z
          .array(z.object({ cause: text, words: text, ifSo: text }))
          .describe('keys for found, with what each reads as'),
      }),
    )
    .describe('the order to examine in'),
  causes: z.array(
    z.object({
      key: text,
      cause: text,
      likelihood: z.enum(['common', 'sometimes', 'rare']),
      because: lines,
      confirmBy: z.object({ do: text, power, who: hands, expect: text, otherwise: text }),
      mayHaveTaken: lines,
      remedy: text,
      part: z.object({ name: text, rated: text.nullable() }).nullable(),
      confirmed: z.boolean(),
      mended: z.boolean(),
      sources: z.array(sourceAnswer),
    }),
  ),
  proof: z.object({ open: reading, loaded: reading, warm: reading, proved: z.boolean(), words: text }),
})

/** Every kept record. */
const record = { id: text, version: number, createdAt: z.union([text, number]), updatedAt: z.union([text, number]) }

export const supplyRecordAnswer = z
  .object({ ...record, name: text, place: text.nullable(), note: text.nullable(), supply: z.unknown() })
  .meta({ id: 'ShelfSupply' })

export const deviceRecordAnswer = z
  .object({ ...record, name: text, place: text.nullable(), note: text.nullable(), device: z.unknown() })
  .meta({ id: 'ShelfDevice' })

const match = { id: text, name: text, verdict, against: findingAnswer.nullable() }

export const matchesAnswer = z.object({ matches: z.array(z.object(match)) })

export const offeredAnswer = z.object({
  says: text.describe('one sentence: how many, or why none'),
  offered: z.array(z.object({ ...match, place: text.nullable() })),
})

const edges = z.array(z.object({ id: text, name: text }))

export const matrixAnswer = z.object({
  supplies: edges,
  devices: edges,
  cells: z.array(z.array(z.enum(outcomes))),
  total: z.object({ supplies: number, devices: number }),
})

export const checklistAnswer = z.object({
  stages: z.array(
    z.object({
      number,
      title: text,
      pause: text.nullable(),
      lines: z.array(
        z.object({
          number: text,
          key: text,
          text,
          expect: text.nullable(),
          unit: text.nullable(),
          lowV: number.optional(),
          highV: number.optional(),
          stopIf: text.nullable(),
          who: hands,
          power,
          caution: z.unknown(),
        }),
      ),
    }),
  ),
})

export const partAnswer = z
  .object({
    id: text,
    name: text,
    state: z.enum(['wanted', 'ordered', 'arrived', 'fitted']),
    note: text.nullable(),
    expected: text.optional(),
  })
  .meta({ id: 'Part' })

export const readingAnswer = z
  .object({ id: text, key: text, value: maybe, unit: text, at: text, typedAt: text.optional(), finding: findingAnswer })
  .meta({ id: 'Reading' })

export const tickAnswer = z
  .object({
    id: text,
    key: text,
    as: text,
    words: text.nullable(),
    at: text,
    typedAt: text.optional(),
    finding: findingAnswer,
  })
  .meta({ id: 'Tick' })

export const causeAnswer = z.object({ id: text, of: text, text, at: text }).meta({ id: 'Cause' })

export const stopAnswer = z
  .object({ of: text, key: text.nullable(), where: text, at: text, title: text, action: text })
  .meta({ id: 'Stop' })

export const photoAnswer = z
  .object({ id: text, caption: text.nullable(), large: text, small: text, createdAt: text })
  .meta({ id: 'Photo' })

export const jobAnswer = z
  .object({
    ...record,
    name: text,
    check: z.unknown(),
    assessment: assessmentAnswer,
    readings: z.array(readingAnswer),
    ticks: z.array(tickAnswer),
    causes: z.array(causeAnswer),
    stops: z.array(stopAnswer),
    observations: z.unknown(),
    parts: z.array(partAnswer),
    log: z.array(z.object({ text })),
    changes: z.array(
      z.object({
        id: text,
        at: text,
        facts: z.array(z.object({ fact: text, before: text, after: text })),
        verdict: z.object({ before: text, after: text }),
        turned: z.array(z.unknown()),
        undoes: text.optional(),
      }),
    ),
    examined: z
      .object({
        seen: lines,
        found: z.array(z.object({ cause: text, result: z.enum(['confirmed', 'excluded']), at: text })),
        readings: z.array(z.object({ key: text, value: number, unit: text })),
      })
      .optional()
      .describe('what was seen, found and read on the way to a cause; absent where nothing was'),
    standing: z.object({ state: text, waitsFor: z.array(z.unknown()), canGoOn: z.boolean() }),
  })
  .meta({ id: 'Job' })

export const errorAnswer = z
  .object({
    error: z.object({
      message: text,
      /** of a fault in the server: the name of the request in its log */
      id: text.optional(),
      fields: z.array(z.object({ path: text, message: text })).optional(),
    }),
  })
  .meta({ id: 'Error' })

/** An answer whose shape is told in words: what would change, a file, a description. */
export const whatChanges = z.looseObject({})

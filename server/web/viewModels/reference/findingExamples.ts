import type { Outcome, TopicName } from '../../../chain/finding.js'
import type { CheckRequest, Converter, Cord, Device, Site, Supply } from '../../../chain/request.js'
import { decimal, percent, plain } from '../../../physics/quantity.js'
import * as limit from '../../../reference/thresholds.js'

/** What makes a topic come to an outcome, with a check that does. */
export interface OutcomeRule {
  rule: string
  check: CheckRequest
}

/** Why an outcome does not occur. */
export interface NeverRule {
  never: string
}

/** A recorder and the supply that came with it, where nothing is in conflict; every example changes some facts of it. */
const whole = {
  site: { country: 'DE', socket: 'F' },
  supply: {
    input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50], currentA: 0.2 },
    technology: 'switch-mode',
    regulated: true,
    protectionClass: 'II',
    inlet: 'C8',
    outputs: [{ kind: 'dc', voltageV: 12, currentA: 2 }],
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  device: {
    inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'plate' }],
    regulatedNeeded: true,
    jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false, plugFitted: 'moulded' },
} as const satisfies Readonly<{ site: Site; supply: Supply; device: Device; cord: Cord }> | CheckRequest

interface Changes {
  site?: Site
  supply?: Supply
  device?: Device
  cord?: Cord
  converter?: Converter
}

const but = ({ site, supply, device, cord, converter }: Changes): CheckRequest =>
  structuredClone({
    site: { ...whole.site, ...site },
    supply: { ...whole.supply, ...supply },
    device: { ...whole.device, ...device },
    cord: { ...whole.cord, ...cord },
    ...(converter && { converter }),
  }) as CheckRequest

const plate = (minV: number, maxV = minV, frequenciesHz = [50], currentA = 0.2): Supply => ({
  input: { voltages: [{ min: minV, max: maxV }], frequenciesHz, currentA },
})
const earthed: Supply = { protectionClass: 'I', inlet: 'C14' }
const earthedCord: Cord = { plug: 'CEE 7/7', connector: 'C13', ratedA: 10, earthed: true }
const iron: Supply = { ...plate(120, 120, [60]), technology: 'transformer' }
const converter = (ratedVA: number): Converter => ({ kind: 'autotransformer', outputV: 120, ratedVA })
const wants = (change: Partial<NonNullable<Device['inputs']>[number]>): Device => ({
  inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'plate', ...change }],
})
const jack = (outerMm: number, innerMm: number): Device => ({
  jack: { outerMm, innerMm, polarity: 'centre-positive' },
})

const nothingBetween = 'Two shapes fit or do not; there is nothing between.'

/** Every topic, every outcome: its rule and a check that comes to it, or why none can. */
export const outcomeRules: Readonly<Record<TopicName, Readonly<Record<Outcome, OutcomeRule | NeverRule>>>> = {
  'mains-voltage': {
    stop: {
      rule: `The mains is more than ${decimal(limit.voltageStopAbove.value)} times the top of the plate, or less than ${decimal(limit.voltageStopBelow.value)} times its bottom; or the selector is set so.`,
      check: but({ supply: plate(120) }),
    },
    unknown: {
      rule: 'The plate gives no input voltage, the mains of the place is not known, or the plate has several settings and the selector’s place is not given.',
      check: but({ supply: { input: { frequenciesHz: [50], currentA: 0.2 } } }),
    },
    caution: {
      rule: `The top of the mains band is above what the plate was tested at, or the mains or the bottom of its band is below ${decimal(limit.voltageCautionBelow.value)} times the plate.`,
      check: but({ supply: plate(220) }),
    },
    clear: {
      rule: `The mains lies within the plate’s window, or within ${percent(limit.nominalMatch.value)} of its voltage.`,
      check: but({}),
    },
  },
  'mains-frequency': {
    stop: {
      rule: `A transformer is driven at more than ${decimal(limit.fluxStopAbove.value)} times the flux of its plate.`,
      check: but({ supply: iron, converter: converter(100) }),
    },
    unknown: {
      rule: 'The flux would be above the plate’s and it is not known whether the supply is a transformer or switch-mode, or the frequency of the place is not known.',
      check: but({ supply: { ...plate(230, 230, [60]), technology: 'unknown' } }),
    },
    caution: {
      rule: `A transformer is driven above the flux of its plate, by no more than ${decimal(limit.fluxStopAbove.value)} times.`,
      check: but({
        supply: { ...plate(127, 127, [60]), technology: 'transformer' },
        converter: { kind: 'autotransformer', outputV: 110, ratedVA: 100 },
      }),
    },
    clear: {
      rule: 'The frequency stands on the plate, or the supply is switch-mode, or a transformer carries no more flux than its plate allows.',
      check: but({}),
    },
  },
  converter: {
    stop: {
      rule: 'The converter is electronic, or its rating is below what the supply takes.',
      check: but({ supply: { ...iron, ...plate(120, 120, [60], 1) }, converter: converter(100) }),
    },
    unknown: {
      rule: 'This mains needs a converter and none is described, or its kind, output, rating or the need is not known.',
      check: but({ supply: plate(120) }),
    },
    caution: {
      rule: `The rating carries the need with less than ${decimal(limit.converterReserve.value)} times in hand.`,
      check: but({ supply: plate(120, 120, [60], 0.75), converter: converter(100) }),
    },
    clear: {
      rule: `The rating is ${decimal(limit.converterReserve.value)} times the need or more.`,
      check: but({ supply: plate(120, 120, [60], 0.5), converter: converter(100) }),
    },
  },
  earthing: {
    stop: {
      rule: 'A class I supply has a link that is known not to carry the earth: inlet, cord, plug, socket or adapter; or a class III unit claims mains.',
      check: but({ supply: earthed, cord: { ...earthedCord, adapter: { earthed: false } } }),
    },
    unknown: {
      rule: 'The class of protection is not known, or a link of a class I supply is not known to carry the earth.',
      check: but({ supply: earthed, cord: { ...earthedCord, earthed: null } }),
    },
    caution: { never: 'An earth that may be missing counts as not known: there is no half of an earth.' },
    clear: { rule: 'The supply is of class II, or every link of a class I supply carries the earth.', check: but({}) },
  },
  socket: {
    stop: {
      rule: 'The plug does not go into the socket, or goes in by force only.',
      check: but({ cord: { plug: 'NEMA 1-15' } }),
    },
    unknown: {
      rule: 'The plug or the socket is not known or not listed, or the sockets met at the place disagree.',
      check: but({ cord: { plug: null } }),
    },
    caution: {
      rule: 'An adapter stands between, or the plug goes into a converter whose outlets are not described.',
      check: but({ cord: { plug: 'NEMA 1-15', adapter: { earthed: false } } }),
    },
    clear: { rule: 'The table of fits says that the plug goes into every socket that may be met.', check: but({}) },
  },
  cord: {
    stop: {
      rule: `The cord is rated below the mains or below what the supply takes; its conductor is below the standard’s minimum; its fuse is too large for it; or a CEE 7/16 plug is used beyond ${plain(limit.europlugMostA.value, 'A')}, with class I, or fitted by hand.`,
      check: but({ cord: { ratedV: 125 } }),
    },
    unknown: {
      rule: 'The cord’s ratings, or what the supply takes, are not known.',
      check: but({ cord: { ratedV: null, ratedA: null } }),
    },
    caution: {
      rule: 'The wall plug was fitted by hand, or the cord serves with something to be looked after.',
      check: but({ supply: earthed, cord: { ...earthedCord, plugFitted: 'rewired' } }),
    },
    clear: { rule: 'Voltage, current and plug of the cord suit the mains and the supply.', check: but({}) },
  },
  inlet: {
    stop: {
      rule: 'The connector does not mate with the inlet.',
      check: but({ supply: earthed, cord: { ...earthedCord, connector: 'C7' } }),
    },
    unknown: {
      rule: 'Inlet or connector is not known or not one of IEC 60320, or a captive flex and a connector are both named.',
      check: but({ supply: { inlet: null } }),
    },
    caution: { never: nothingBetween },
    clear: {
      rule: 'The connector is the inlet’s own, or a hotter one that mates; or the flex is captive.',
      check: but({}),
    },
  },
  fuse: {
    stop: {
      rule: 'The link’s rated voltage, current, speed or breaking capacity does not suit the circuit or what is prescribed.',
      check: but({ supply: { fuse: 'T2A 125V' } }),
    },
    unknown: {
      rule: 'The marking leaves out something that decides, or the mains voltage or the current is not known.',
      check: but({ supply: { fuse: '2A' } }),
    },
    caution: {
      rule: 'The link serves with something to be looked after, such as one that is quicker or smaller than prescribed.',
      check: but({ supply: { fuse: 'F500mAH250V', label: 'FUSE T500mAH250V' } }),
    },
    clear: {
      rule: 'Every question of the fuse review is answered without conflict.',
      check: but({ supply: { fuse: 'T500mAH250V', label: 'FUSE T500mAH250V' } }),
    },
  },
  'output-kind': {
    stop: { rule: 'One side is alternating, the other direct current.', check: but({ device: wants({ kind: 'ac' }) }) },
    unknown: { rule: 'Either side does not say which it is.', check: but({ device: wants({ kind: null }) }) },
    caution: { never: 'Alternating current is not nearly direct current.' },
    clear: { rule: 'Both sides are of one kind.', check: but({}) },
  },
  'output-voltage': {
    stop: {
      rule: `The voltages differ by more than ${percent(limit.outputToleranceWidest.value)}, no output matches, or an unregulated supply meets a machine that needs a regulated one.`,
      check: but({ device: wants({ voltageV: 9 }) }),
    },
    unknown: {
      rule: 'Either voltage is not known, the output is adjustable and its setting not given, or whether the machine needs a regulated supply is not known of an unregulated one.',
      check: but({ device: { inputs: null } }),
    },
    caution: {
      rule: `The difference is beyond the machine’s tolerance (${percent(limit.outputToleranceRegulated.value)} where it states none) and within ${percent(limit.outputToleranceWidest.value)}.`,
      check: but({ device: wants({ voltageV: 13 }) }),
    },
    clear: { rule: 'The difference is within the machine’s tolerance.', check: but({}) },
  },
  'output-current': {
    stop: {
      rule: 'The supply gives less than the machine takes.',
      check: but({ device: wants({ currentA: 3 }) }),
    },
    unknown: { rule: 'Either current is not known.', check: but({ device: wants({ currentA: null }) }) },
    caution: {
      rule: `The machine’s current was measured and the supply has less than ${decimal(limit.measuredDemandHeadroom.value)} times of it.`,
      check: but({ device: wants({ currentA: 1.8, currentIs: 'measured' }) }),
    },
    clear: {
      rule: `The supply gives what the machine’s plate says or more, or ${decimal(limit.measuredDemandHeadroom.value)} times what was measured.`,
      check: but({}),
    },
  },
  polarity: {
    stop: {
      rule: 'Plug and jack carry opposite signs, or the plug measures otherwise than it is printed.',
      check: but({ device: { jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' } } }),
    },
    unknown: {
      rule: 'The polarity of plug or jack is not known.',
      check: but({ device: { jack: { outerMm: 5.5, innerMm: 2.1 } } }),
    },
    caution: { never: 'A sign is right or wrong.' },
    clear: {
      rule: 'Centre and sleeve carry the same sign on both sides; measured counts before printed.',
      check: but({}),
    },
  },
  'dc-plug': {
    stop: {
      rule: `The outside differs by more than ${plain(limit.plugOuterMost.value, 'mm')}, or the bore is smaller than the pin by more than ${plain(limit.plugBoreTight.value, 'mm')}.`,
      check: but({ device: jack(5.5, 2.5) }),
    },
    unknown: {
      rule: 'A size of plug or jack is not known.',
      check: but({ device: { jack: { outerMm: 5.5, polarity: 'centre-positive' } } }),
    },
    caution: {
      rule: `The bore is larger than the pin by ${plain(limit.plugBoreLoose.value, 'mm')} or more, the plug’s voltage class is not this voltage, or its contacts carry more than usual.`,
      check: but({ supply: { plug: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' } } }),
    },
    clear: { rule: 'Outside and bore suit the jack.', check: but({}) },
  },
  'lead-drop': {
    stop: {
      rule: `The lead loses more than ${percent(limit.leadDropStopAbove.value)} of the voltage.`,
      check: but({ supply: { lead: { lengthM: 20, areaMm2: 0.5 } } }),
    },
    unknown: {
      rule: 'The lead’s size, the voltage or the current is not known.',
      check: but({ supply: { lead: { lengthM: 2 } } }),
    },
    caution: {
      rule: 'The machine gets less than its tolerance allows, though the lead loses no more than that share.',
      check: but({ supply: { lead: { lengthM: 10, areaMm2: 0.5 } } }),
    },
    clear: {
      rule: 'What is left at the machine’s end is within its tolerance.',
      check: but({ supply: { lead: { lengthM: 1.5, areaMm2: 0.5 } } }),
    },
  },
}

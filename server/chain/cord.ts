import { awgAreaMm2 } from '../physics/conductor.js'
import { amperes, decimal, plain, volts } from '../physics/quantity.js'
import { atMost } from '../physics/tolerance.js'
import { largestPlugFuseFor, minimumAreaFor } from '../reference/cords.js'
import { bs1362Ratings } from '../reference/fuseRatings.js'
import { type PlugType, plugByName } from '../reference/sockets.js'
import { commonPractice, published, type Source } from '../reference/source.js'
import {
  europlugMostA,
  highVoltageCordV,
  lowClassMostV,
  lowVoltageCordMostV,
  smallestPlugFuseA,
} from '../reference/thresholds.js'
import { type Judgement, judging, together } from './judgement.js'
import { type LoadCurrent, loadAtReach } from './loadCurrent.js'
import { isPlugIn, protectionClassOf } from './protectionClass.js'
import type { Cord } from './request.js'
import type { MainsSituation, MainsTopic } from './situation.js'
import { qualifiedHands } from './words.js'

const judged = judging('cord')

const cordPrint = commonPractice(
  'Print on the cord set',
  'ratings moulded into plug and connector, or printed on the flex',
)
const byHand = commonPractice(
  'Plugs fitted by hand',
  'a loose screw, a stray strand or a swapped conductor is the commonest fault of old cord sets',
)
const neverRewirable = published(
  'EN 50075:1990, as cited by Wikipedia, "Europlug"',
  'non-rewirable with cord, by definition',
)

/** Whether the cord set carries what the supply draws, at the voltage of the site. */
export const cord: MainsTopic = {
  topic: 'cord',
  judge(situation) {
    const { supply } = situation
    if (supply.input.kind === 'dc' || isPlugIn(supply.inlet)) return []
    const set = situation.cord ?? {}
    const plug = set.plug ? plugByName(set.plug) : undefined
    const load = loadAtReach(situation)
    return together([
      ratedVoltage(situation, set),
      ratedCurrent(situation, set, load),
      ...europlug(situation, plug, load),
      ...fittedByHand(set, plug),
      ...conductorArea(set, load),
      ...plugFuse(set, plug, load),
    ])
  },
}

function ratedVoltage({ reach }: MainsSituation, set: Cord): Judgement {
  const { ratedV } = set
  const sources: Source[] = [cordPrint, lowVoltageCordMostV.source, highVoltageCordV.source]
  const topV = reach.maxV ?? reach.voltageV
  if (ratedV == null || reach.voltageV === null || topV === null)
    return judged.unknown(() => ({
      title:
        ratedV == null
          ? 'The cord set’s rated voltage is not known'
          : `The cord set is rated ${volts(ratedV)}; the voltage it will carry is not known`,
      why: 'A set of the 125 V class is not insulated for 220 V to 240 V.',
      working: [],
      action:
        ratedV == null
          ? 'Read the voltage moulded into plug and connector, or printed on the flex (250 V, 125 V, 300/500 V) and enter it; without any print use a new set.'
          : 'Enter the country, or the mains voltage, of the place where it will be used.',
      sources,
    }))
  const neededV =
    reach.voltageV <= lowClassMostV.value ? lowVoltageCordMostV.value : Math.max(highVoltageCordV.value, reach.voltageV)
  // a set marked with the nominal voltage itself is of its class: 240 V on 230 V, 100 V on 100 V
  const serves = atMost(Math.min(neededV, reach.voltageV), ratedV)
  const working = [`up to ${volts(topV)} on it: the ${volts(neededV)} class`]
  if (!serves)
    return judged.stop(() => ({
      title: `A cord set rated ${volts(ratedV)} must not carry ${volts(reach.voltageV ?? topV)}`,
      why: 'Its insulation, plug and connector are not approved for this voltage.',
      working,
      action: `Use a whole cord set rated ${volts(neededV)} or more. ${qualifiedHands}`,
      sources,
    }))
  return judged.clear(() => ({
    title: `The cord set’s ${volts(ratedV)} serves ${volts(reach.voltageV ?? topV)}`,
    why: 'Its insulation is approved for this voltage.',
    working,
    action: null,
    sources,
  }))
}

function ratedCurrent({ supply }: MainsSituation, set: Cord, load: LoadCurrent | null): Judgement {
  const { ratedA } = set
  if (ratedA == null || !load)
    return judged.unknown(() => ({
      title:
        ratedA == null
          ? `The cord set’s rated current is not known${load ? `; the supply draws up to ${amperes(load.currentA, 3, 'up')}` : ''}`
          : `The cord set is rated ${amperes(ratedA)}; what the supply draws is not known`,
      why: 'An overloaded cord or connector heats up where it cannot be seen.',
      working: load?.working ?? [],
      action:
        ratedA == null
          ? 'Read the amperes moulded into plug and connector (the lower one counts) and enter them; without any print use a new set.'
          : supply.rails.length > 0
            ? 'Read the input amperes, VA or watts on the supply’s plate, and enter them with the mains voltage.'
            : 'Read the supply’s plate (input amperes, VA or watts, or the outputs with their amperes) and enter it with the mains voltage.',
      sources: [cordPrint, ...(load?.sources ?? [])],
    }))
  const working = [...load.working, `${amperes(load.currentA, 4, 'up')} of ${amperes(ratedA)}`]
  if (!atMost(load.currentA, ratedA))
    return judged.stop(() => ({
      title: `The supply draws up to ${amperes(load.currentA, 3, 'up')}; the cord set is rated ${amperes(ratedA)}`,
      why: 'An overloaded cord or connector heats up where it cannot be seen, and its fuse does not protect it.',
      working,
      action: `Use a whole cord set rated ${amperes(load.currentA, 3, 'up')} or more. ${qualifiedHands}`,
      sources: [cordPrint, ...load.sources],
    }))
  return judged.clear(() => ({
    title: `The cord set’s ${amperes(ratedA)} carries the supply’s ${amperes(load.currentA, 3, 'up')}`,
    why: 'It stays cool.',
    working,
    action: null,
    sources: [cordPrint, ...load.sources],
  }))
}

const isEuroplug = (plug: PlugType | undefined): boolean => plug?.name === 'CEE 7/16'

function europlug({ supply }: MainsSituation, plug: PlugType | undefined, load: LoadCurrent | null): Judgement[] {
  if (!isEuroplug(plug)) return []
  const sources = [europlugMostA.source]
  const found: Judgement[] = []
  const known = protectionClassOf(supply)
  if (known?.protectionClass === 'I')
    found.push(
      judged.stop(() => ({
        title: `A CEE 7/16 plug is for class II only; the supply is class I (${known.from})`,
        why: 'It has no earth contact.',
        working: [],
        action: `Use a whole three-core cord set. ${qualifiedHands}`,
        sources: [...sources, ...known.sources],
      })),
    )
  if (load && !atMost(load.currentA, europlugMostA.value))
    found.push(
      judged.stop(() => ({
        title: `A CEE 7/16 plug carries ${amperes(europlugMostA.value)}; the supply draws up to ${amperes(load.currentA, 3, 'up')}`,
        why: 'Its thin pins run hot above that.',
        working: load.working,
        action: `Use a whole cord set with a plug of a higher rating. ${qualifiedHands}`,
        sources: [...sources, ...load.sources],
      })),
    )
  return found
}

function fittedByHand(set: Cord, plug: PlugType | undefined): Judgement[] {
  if (set.plugFitted !== 'rewired') return []
  if (isEuroplug(plug) || plug?.rewirable === false)
    return [
      judged.stop(() => ({
        title: `A ${plug?.name} plug is never fitted by hand: by its standard it is moulded to its cord`,
        why: 'What is on this cord is not what it is called, or was cut open.',
        working: [],
        action: `Do not use this cord. Use a whole moulded cord set. ${qualifiedHands}`,
        sources: [neverRewirable, ...(plug?.sources ?? [])],
      })),
    ]
  return [
    judged.caution(() => ({
      title: 'The plug was fitted by hand',
      why: 'A loose screw, a stray strand or a swapped conductor makes heat, or puts mains on the case.',
      working: [],
      action:
        'To be checked by a qualified person before use: clamp, strands, terminals, which conductor is on which pin, fuse-link, earth continuity. A moulded cord set is better.',
      sources: [byHand],
    })),
  ]
}

function conductorArea(set: Cord, load: LoadCurrent | null): Judgement[] {
  const area = areaOf(set)
  const needed = load ? minimumAreaFor(load.currentA, null) : undefined
  if (!area || !load || !needed) return []
  const short = needed.row.shortAreaMm2 ?? needed.areaMm2
  const mm2 = (value: number): string => plain(value, 'mm²', 3)
  const working = [
    ...area.working,
    `least for ${amperes(load.currentA, 3, 'up')}: ${mm2(needed.areaMm2)}${needed.row.shortAreaMm2 === null ? '' : `, or ${mm2(short)} up to ${plain(needed.row.shortM ?? 0, 'm')}`}`,
  ]
  const sources = [...needed.sources]
  if (!atMost(short, area.areaMm2))
    return [
      judged.stop(() => ({
        title: `A conductor of ${mm2(area.areaMm2)} is too thin for ${amperes(load.currentA, 3, 'up')}: at least ${mm2(short)}`,
        why: 'A thin conductor heats up along its whole length, most where it is coiled or covered.',
        working,
        action: `Use a whole cord set with at least ${mm2(needed.areaMm2)}. ${qualifiedHands}`,
        sources,
      })),
    ]
  if (!atMost(needed.areaMm2, area.areaMm2))
    return [
      judged.caution(() => ({
        title: `A conductor of ${mm2(area.areaMm2)} serves ${amperes(load.currentA, 3, 'up')} only up to ${plain(needed.row.shortM ?? 0, 'm')}`,
        why: 'A longer thin conductor heats up, most where it is coiled or covered.',
        working,
        action: `Measure the cord: no longer than ${plain(needed.row.shortM ?? 0, 'm')}, and uncoiled in use; else one with ${mm2(needed.areaMm2)}.`,
        sources,
      })),
    ]
  return [
    judged.clear(() => ({
      title: `A conductor of ${mm2(area.areaMm2)} is enough for ${amperes(load.currentA, 3, 'up')}`,
      why: 'It is at least the standard’s minimum.',
      working,
      action: null,
      sources,
    })),
  ]
}

function areaOf(set: Cord): { areaMm2: number; working: string[] } | null {
  if (set.areaMm2 != null) return { areaMm2: set.areaMm2, working: [] }
  if (set.awg == null) return null
  const areaMm2 = awgAreaMm2(set.awg)
  return { areaMm2, working: [`AWG ${decimal(set.awg)} = ${plain(areaMm2, 'mm²', 3)}`] }
}

function plugFuse(set: Cord, plug: PlugType | undefined, load: LoadCurrent | null): Judgement[] {
  if (!plug?.fused || !load) return []
  const usable = bs1362Ratings.ratedA.filter((ratedA) => ratedA >= smallestPlugFuseA.value).toSorted((a, b) => a - b)
  const ratedA = usable.find((value) => atMost(load.currentA, value))
  const sources: Source[] = [...bs1362Ratings.sources, smallestPlugFuseA.source]
  if (ratedA === undefined)
    return [
      judged.stop(() => ({
        title: `No plug fuse-link carries ${amperes(load.currentA, 3, 'up')}: the largest is ${amperes(Math.max(...usable))}`,
        why: 'The plug is not made for so much current.',
        working: load.working,
        action: `It needs its own connection. ${qualifiedHands}`,
        sources,
      })),
    ]
  const area = areaOf(set)
  const allowed = area ? largestPlugFuseFor(area.areaMm2) : undefined
  const working = [`smallest plug fuse-link that carries ${amperes(load.currentA, 3, 'up')}: ${amperes(ratedA)}`]
  if (allowed && ratedA > allowed.largestFuseA)
    return [
      judged.stop(() => ({
        title: `The ${amperes(ratedA)} plug fuse-link it needs is larger than the ${amperes(allowed.largestFuseA)} allowed for ${plain(allowed.areaMm2, 'mm²')}`,
        why: 'The plug fuse is there to protect the flex; too large for it, the flex burns first.',
        working,
        action: `Use a whole cord set with a thicker conductor. ${qualifiedHands}`,
        sources: [...sources, ...allowed.sources],
      })),
    ]
  if (set.ratedA != null && ratedA > set.ratedA)
    return [
      judged.caution(() => ({
        title: `The smallest plug fuse-link that serves is ${amperes(ratedA)}, more than the cord set’s own ${amperes(set.ratedA ?? 0)}`,
        why: 'Between the two the cord is overloaded and the fuse-link does not open.',
        working,
        action: `Prefer a cord set rated ${amperes(ratedA)} or more, with a ${amperes(ratedA)} fuse-link to BS 1362 in its plug.`,
        sources,
      })),
    ]
  return [
    judged.clear(() => ({
      title: `Plug fuse-link: ${amperes(ratedA)} to BS 1362`,
      why: 'The smallest that carries the load protects the flex best.',
      working,
      action: `Look into the plug: a ${amperes(ratedA)} link to BS 1362, no larger.`,
      sources,
    })),
  ]
}

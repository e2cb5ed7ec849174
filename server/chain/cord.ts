import { awgAreaMm2 } from '../physics/conductor.js'
import { atMost } from '../physics/tolerance.js'
import { minimumAreaRows } from '../tables/cordRows.js'
import { largestPlugFuseFor, minimumAreaFor } from '../tables/cords.js'
import { bs1362Ratings } from '../tables/fuseRatings.js'
import { connectorByName } from '../tables/inlets.js'
import { type PlugType, plugByName } from '../tables/sockets.js'
import { commonPractice, published, type Source } from '../tables/source.js'
import {
  europlugMostA,
  highVoltageCordV,
  lowClassMostV,
  lowVoltageCordMostV,
  smallestPlugFuseA,
} from '../tables/thresholds.js'
import { capital, type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, plain, volts } from '../words/quantity.js'
import { actionsOf, byQualified, nearWiring } from './action.js'
import type { Cord } from './case/request.js'
import type { MainsSituation } from './case/situation.js'
import { classOne, earthedCord } from './example.js'
import { fitsAt } from './fitsAt.js'
import { caution, clear, type Judgement, stop, together, unknown } from './judgement.js'
import { type LoadCurrent, loadAtReach } from './matching/loadCurrent.js'
import { isPlugIn, protectionClassOf } from './protectionClass.js'
import { mainsTopic } from './topic.js'
import { wholeCordSet } from './wholeCordSet.js'
import { aPlug } from './words.js'

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
export const cord = mainsTopic({
  name: 'cord',
  words: say`the cord`,
  links: ['cord'],
  asks: ['cord.ratedV', 'cord.ratedA', 'cord.plug', 'site.country', 'supply.outputs.currentA', 'supply.input.powerVA'],
  when: {
    stop: {
      rule: say`The cord is rated below the mains or below what the supply takes; its conductor is below the standard’s minimum; its fuse is too large for it; or a CEE 7/16 plug is used beyond ${plain(europlugMostA.value, 'A')}, with class I, or fitted by hand.`,
      example: { cord: { ratedV: 125 } },
    },
    unknown: {
      rule: say`The cord’s ratings, or what the supply takes, are not known.`,
      example: { cord: { ratedV: null, ratedA: null } },
    },
    caution: {
      rule: say`The wall plug was fitted by hand, or the cord serves with something to be looked after.`,
      example: { supply: classOne, cord: { ...earthedCord, plugFitted: 'rewired' } },
    },
    clear: { rule: say`Voltage, current and plug of the cord suit the mains and the supply.`, example: {} },
  },
  judge(situation) {
    const { supply } = situation
    if (supply.input.kind === 'dc' || isPlugIn(supply.inlet)) return []
    const set = situation.cord ?? {}
    const plug = set.plug ? plugByName(set.plug) : undefined
    const load = loadAtReach(situation)
    const found = together([
      ratedVoltage(situation, set),
      ratedCurrent(situation, set, load),
      ...plugVoltage(situation, set, plug),
      ...plugCurrent(situation, plug, load),
      ...connectorCurrent(situation, set, load),
      ...europlug(situation, plug, load),
      ...fittedByHand(situation, set, plug),
      ...conductorArea(situation, set, load),
      ...plugFuse(situation, set, plug, load),
    ])
    return plug?.rewirable && set.plugFitted == null ? found.map(lookAtPlug) : found
  },
})

/** Whether the plug was fitted by hand is seen at a glance, and not asked for before anything else is judged. */
const lookAtPlug = (judgement: Judgement): Judgement => ({
  ...judgement,
  say: () => {
    const text = judgement.say()
    return {
      ...text,
      action: [
        say`Look whether the plug is moulded to its cord or was fitted by hand, and enter which: one fitted by hand is to be checked by a qualified person before use.`,
        ...actionsOf(text.action),
      ],
    }
  },
})

function ratedVoltage(situation: MainsSituation, set: Cord): Judgement {
  const { reach } = situation
  const { ratedV } = set
  const sources: Source[] = [cordPrint, lowVoltageCordMostV.source, highVoltageCordV.source]
  const topV = reach.maxV ?? reach.voltageV
  if (ratedV == null || reach.voltageV === null || topV === null)
    return unknown(() => ({
      title:
        ratedV == null
          ? say`The cord set’s rated voltage is not known`
          : say`The cord set is rated ${volts(ratedV)}; the voltage it will carry is not known`,
      why: say`A set of the 125\u00a0V class is not insulated for 220\u00a0V to 240\u00a0V.`,
      working: [],
      action:
        ratedV == null
          ? say`Read the voltage moulded into plug and connector, or printed on the flex (250\u00a0V, 125\u00a0V, 300/500\u00a0V) and enter it.`
          : reach.through === 'converter'
            ? say`Read the output voltage on the converter’s plate and enter it.`
            : say`Enter the country, or the mains voltage, of the place where it will be used.`,
      sources,
    }))
  const neededV =
    reach.voltageV <= lowClassMostV.value ? lowVoltageCordMostV.value : Math.max(highVoltageCordV.value, reach.voltageV)
  // a set marked with the nominal voltage itself is of its class: 240 V on 230 V, 100 V on 100 V
  const serves = atMost(Math.min(neededV, reach.voltageV), ratedV)
  const working = (): Phrase[] => [say`up to ${volts(topV)} on it: the ${volts(neededV)} class`]
  if (!serves)
    return stop(() => ({
      title: say`A cord set rated ${volts(ratedV)} must not carry ${volts(reach.voltageV ?? topV)}`,
      why: say`Its insulation, plug and connector are not approved for this voltage.`,
      working: working(),
      action: wholeCordSet(situation, say`rated ${volts(neededV)} or more`),
      sources,
    }))
  return clear(() => ({
    title: say`The cord set’s ${volts(ratedV)} serves ${volts(reach.voltageV ?? topV)}`,
    why: say`Its insulation is approved for this voltage.`,
    working: working(),
    action: null,
    sources,
  }))
}

function ratedCurrent(situation: MainsSituation, set: Cord, load: LoadCurrent | null): Judgement {
  const { supply } = situation
  const { ratedA } = set
  if (ratedA == null || !load)
    return unknown(() => ({
      title:
        ratedA == null
          ? say`The cord set’s rated current is not known${load ? say`; the ${situation.supply.called} draws up to ${amperes(load.currentA, 3, 'up')}` : say``}`
          : say`The cord set is rated ${amperes(ratedA)}; what the ${situation.supply.called} draws is not known`,
      why: say`An overloaded cord or connector heats up where it cannot be seen.`,
      working: load?.working ?? [],
      action:
        ratedA == null
          ? say`Read the amperes moulded into plug and connector (the lower one counts) and enter them.`
          : supply.rails.length > 0
            ? say`Read the input amperes, VA or watts on the ${situation.supply.called}’s plate, and enter them with the mains voltage.`
            : say`Read the ${situation.supply.called}’s plate (input amperes, VA or watts, or the outputs with their amperes) and enter it with the mains voltage.`,
      sources: [cordPrint, ...(load?.sources ?? [])],
    }))
  const working = (): Phrase[] => [...load.working, say`${amperes(load.currentA, 4, 'up')} of ${amperes(ratedA)}`]
  if (!atMost(load.currentA, ratedA))
    return stop(() => ({
      title: say`The ${situation.supply.called} draws up to ${amperes(load.currentA, 3, 'up')}; the cord set is rated ${amperes(ratedA)}`,
      why: say`An overloaded cord or connector heats up where it cannot be seen, and its fuse does not protect it.`,
      working: working(),
      action: wholeCordSet(situation, say`rated ${amperes(load.currentA, 3, 'up')} or more`),
      sources: [cordPrint, ...load.sources],
    }))
  return clear(() => ({
    title: say`The cord set’s ${amperes(ratedA)} carries the ${situation.supply.called}’s ${amperes(load.currentA, 3, 'up')}`,
    why: say`It stays cool.`,
    working: working(),
    action: null,
    sources: [cordPrint, ...load.sources],
  }))
}

/** A set is as good as its weakest part: a plug of the 125 V class does not become a 250 V one by the print on its flex. */
function plugVoltage(situation: MainsSituation, set: Cord, plug: PlugType | undefined): Judgement[] {
  const { reach, site, converter } = situation
  const { voltageV } = reach
  if (!plug || voltageV === null || voltageV <= lowClassMostV.value || plug.ratedV > lowClassMostV.value) return []
  const sources: Source[] = [...plug.sources, lowVoltageCordMostV.source]
  const usedHere =
    !set.adapter && !converter && site.sockets.some((letter) => fitsAt(plug.name, letter, site)?.fits === 'yes')
  const working = (): Phrase[] => [say`${plug.name}: ${volts(plug.ratedV)} by its standard; ${volts(voltageV)} on it`]
  if (!usedHere)
    return [
      stop(() => ({
        title: say`${capital(aPlug(plug.name))} is made for ${volts(plug.ratedV)}, not for ${volts(voltageV)}, whatever the flex says`,
        why: say`The whole set is only as good as its weakest part, and nothing at the plug tells that it carries more.`,
        working: working(),
        action: wholeCordSet(situation, say`with a plug of this mains, rated ${volts(highVoltageCordV.value)}`),
        sources,
      })),
    ]
  return [
    caution(() => ({
      title: say`${capital(aPlug(plug.name))} is made for ${volts(plug.ratedV)} by its standard; here sockets of its shape carry ${volts(voltageV)}`,
      why: say`Sets of the same shape are made for both voltages, and only the print tells them apart.`,
      working: working(),
      action: say`Read the plug itself, not the flex: it has to say ${volts(highVoltageCordV.value)}. A set that came from a ${volts(lowVoltageCordMostV.value)} country is not to be used here.`,
      sources,
    })),
  ]
}

function plugCurrent({ supply }: MainsSituation, plug: PlugType | undefined, load: LoadCurrent | null): Judgement[] {
  // a CEE 7/16 and a fused plug have rules of their own
  if (!plug || !load || plug.fused || isEuroplug(plug) || atMost(load.currentA, plug.ratedA)) return []
  return [
    stop(() => ({
      title: say`${capital(aPlug(plug.name))} carries ${amperes(plug.ratedA)}; the ${supply.called} draws up to ${amperes(load.currentA, 3, 'up')}`,
      why: say`Plug and socket run hot above their rating.`,
      working: load.working,
      action: nearWiring(say`It needs another connection.`),
      sources: [...plug.sources, ...load.sources],
    })),
  ]
}

function connectorCurrent({ reach, supply }: MainsSituation, set: Cord, load: LoadCurrent | null): Judgement[] {
  const pair = set.connector ? connectorByName(set.connector) : undefined
  if (!pair || !load) return []
  const lowClass = reach.voltageV !== null && reach.voltageV <= lowClassMostV.value
  const ratedA = lowClass ? Math.max(pair.ratedA, pair.ratedANorthAmerica ?? 0) : pair.ratedA
  if (atMost(load.currentA, ratedA)) return []
  const title = say`A ${pair.connector} connector carries ${amperes(ratedA)}; the ${supply.called} draws up to ${amperes(load.currentA, 3, 'up')}`
  const why = 'Connector and inlet heat up where it cannot be seen.'
  const sources = [...pair.sources, ...load.sources]
  // marks above the international rating are seen on cord sets of the 125 V class
  if (lowClass && set.ratedA != null && atMost(load.currentA, set.ratedA))
    return [
      caution(() => ({
        title,
        why,
        working: load.working,
        action: say`Read the amperes on the connector itself: they have to be ${amperes(load.currentA, 3, 'up')} or more.`,
        sources,
      })),
    ]
  return [
    stop(() => ({
      title,
      why,
      working: load.working,
      action: nearWiring(
        say`Read the input line of the plate again; if it stands, the unit needs another inlet and cord.`,
      ),
      sources,
    })),
  ]
}

const isEuroplug = (plug: PlugType | undefined): boolean => plug?.name === 'CEE 7/16'

function europlug(situation: MainsSituation, plug: PlugType | undefined, load: LoadCurrent | null): Judgement[] {
  if (!isEuroplug(plug)) return []
  const { supply } = situation
  const sources = [europlugMostA.source]
  const found: Judgement[] = []
  const known = protectionClassOf(supply)
  if (known?.protectionClass === 'I')
    found.push(
      stop(() => ({
        title: say`A CEE 7/16 plug is for class II only; the ${situation.supply.called} is class I (${known.from})`,
        why: say`It has no earth contact.`,
        working: [],
        action: wholeCordSet(situation, say`with three cores`),
        sources: [...sources, ...known.sources],
      })),
    )
  if (load && !atMost(load.currentA, europlugMostA.value))
    found.push(
      stop(() => ({
        title: say`A CEE 7/16 plug carries ${amperes(europlugMostA.value)}; the ${situation.supply.called} draws up to ${amperes(load.currentA, 3, 'up')}`,
        why: say`Its thin pins run hot above that.`,
        working: load.working,
        action: wholeCordSet(situation, say`with a plug of a higher rating`),
        sources: [...sources, ...load.sources],
      })),
    )
  return found
}

function fittedByHand(situation: MainsSituation, set: Cord, plug: PlugType | undefined): Judgement[] {
  if (set.plugFitted !== 'rewired') return []
  if (isEuroplug(plug) || plug?.rewirable === false)
    return [
      stop(() => ({
        title: say`${capital(aPlug(plug?.name ?? ''))} is never fitted by hand: by its standard it is moulded to its cord`,
        why: say`What is on this cord is not what it is called, or was cut open.`,
        working: [],
        action: [say`Do not use this cord.`, wholeCordSet(situation, say`with a moulded plug`)],
        sources: [neverRewirable, ...(plug?.sources ?? [])],
      })),
    ]
  return [
    caution(() => ({
      title: say`The plug was fitted by hand`,
      why: say`A loose screw, a stray strand or a swapped conductor makes heat, or puts mains on the case.`,
      working: [],
      action: byQualified(
        say`To be checked by a qualified person before use: clamp, strands, terminals, which conductor is on which pin, fuse-link, earth continuity.`,
      ),
      sources: [byHand],
    })),
  ]
}

function conductorArea(situation: MainsSituation, set: Cord, load: LoadCurrent | null): Judgement[] {
  const area = areaOf(set)
  const needed = load ? minimumAreaFor(load.currentA, null) : undefined
  if (!area || !load) return []
  if (!needed) return [beyondTable(area.areaMm2, load)]
  const short = needed.row.shortAreaMm2 ?? needed.areaMm2
  const mm2 = (value: number): Phrase => plain(value, 'mm²', 3)
  const working = (): Phrase[] => [
    ...area.working,
    say`least for ${amperes(load.currentA, 3, 'up')}: ${mm2(needed.areaMm2)}${needed.row.shortAreaMm2 === null ? say`` : say`, or ${mm2(short)} up to ${plain(needed.row.shortM ?? 0, 'm')}`}`,
  ]
  const sources = [...needed.sources]
  if (!atMost(short, area.areaMm2))
    return [
      stop(() => ({
        title: say`A conductor of ${mm2(area.areaMm2)} is too thin for ${amperes(load.currentA, 3, 'up')}: at least ${mm2(short)}`,
        why: say`A thin conductor heats up along its whole length, most where it is coiled or covered.`,
        working: working(),
        action: wholeCordSet(situation, say`with at least ${mm2(needed.areaMm2)}`),
        sources,
      })),
    ]
  if (!atMost(needed.areaMm2, area.areaMm2))
    return [
      caution(() => ({
        title: say`A conductor of ${mm2(area.areaMm2)} serves ${amperes(load.currentA, 3, 'up')} only up to ${plain(needed.row.shortM ?? 0, 'm')}`,
        why: say`A longer thin conductor heats up, most where it is coiled or covered.`,
        working: working(),
        action: say`Measure the cord: no longer than ${plain(needed.row.shortM ?? 0, 'm')}, and uncoiled in use; else one with ${mm2(needed.areaMm2)}.`,
        sources,
      })),
    ]
  return [
    clear(() => ({
      title: say`A conductor of ${mm2(area.areaMm2)} is enough for ${amperes(load.currentA, 3, 'up')}`,
      why: say`It is at least the standard’s minimum.`,
      working: working(),
      action: null,
      sources,
    })),
  ]
}

/** Above the last row of the table: what is thinner than that row is too thin, anything else is not for a plug. */
function beyondTable(areaMm2: number, load: LoadCurrent): Judgement {
  const last = minimumAreaRows[minimumAreaRows.length - 1]
  const largest = last && { areaMm2: last.areaMm2, toA: last.toA }
  const figures = say`${plain(areaMm2, 'mm²', 3)} for ${amperes(load.currentA, 3, 'up')}`
  const working = largest
    ? [say`the table ends at ${amperes(largest.toA)}, which needs ${plain(largest.areaMm2, 'mm²', 3)}`]
    : []
  const sources = [...(last?.sources ?? []), ...load.sources]
  const action = nearWiring(say`Read the input line of the plate again; if it stands, it needs its own connection.`)
  const why = say`A thin conductor heats up along its whole length, most where it is coiled or covered.`
  return largest && !atMost(largest.areaMm2, areaMm2)
    ? stop(() => ({ title: say`A conductor of ${figures} is too thin`, why, working, action, sources }))
    : unknown(() => ({
        title: say`Whether ${figures} is enough is not known: so much current is beyond cord sets`,
        why,
        working,
        action,
        sources,
      }))
}

function areaOf(set: Cord): { areaMm2: number; working: Phrase[] } | null {
  if (set.areaMm2 != null) return { areaMm2: set.areaMm2, working: [] }
  if (set.awg == null) return null
  const areaMm2 = awgAreaMm2(set.awg)
  return { areaMm2, working: [say`AWG ${decimal(set.awg)} = ${plain(areaMm2, 'mm²', 3)}`] }
}

/** Which link is in the plug is not asked for: a cord often comes with the largest there is. */
const lookAtLink = (ratedA: number): Phrase =>
  say`Look at the link that is fitted in the plug, with the plug pulled: ${amperes(ratedA)} to BS 1362 is the smallest that carries the load. Cords often come with ${amperes(Math.max(...bs1362Ratings.ratedA))}: then put the smaller one in its place, unless plate or plug are marked for more and the cord allows it.`

function plugFuse(
  situation: MainsSituation,
  set: Cord,
  plug: PlugType | undefined,
  load: LoadCurrent | null,
): Judgement[] {
  if (!plug?.fused || !load) return []
  const usable = bs1362Ratings.ratedA.filter((ratedA) => ratedA >= smallestPlugFuseA.value).toSorted((a, b) => a - b)
  const ratedA = usable.find((value) => atMost(load.currentA, value))
  const sources: Source[] = [...bs1362Ratings.sources, smallestPlugFuseA.source]
  if (ratedA === undefined)
    return [
      stop(() => ({
        title: say`No plug fuse-link carries ${amperes(load.currentA, 3, 'up')}: the largest is ${amperes(Math.max(...usable))}`,
        why: say`The plug is not made for so much current.`,
        working: load.working,
        action: nearWiring(say`It needs its own connection.`),
        sources,
      })),
    ]
  const area = areaOf(set)
  const allowed = area ? largestPlugFuseFor(area.areaMm2) : undefined
  const working = (): Phrase[] => [
    say`smallest plug fuse-link that carries ${amperes(load.currentA, 3, 'up')}: ${amperes(ratedA)}`,
  ]
  if (allowed && ratedA > allowed.largestFuseA)
    return [
      stop(() => ({
        title: say`The ${amperes(ratedA)} plug fuse-link it needs is larger than the ${amperes(allowed.largestFuseA)} allowed for ${plain(allowed.areaMm2, 'mm²')}`,
        why: say`The plug fuse is there to protect the flex; too large for it, the flex burns first.`,
        working: working(),
        action: wholeCordSet(situation, say`with a thicker conductor`),
        sources: [...sources, ...allowed.sources],
      })),
    ]
  if (set.ratedA != null && ratedA > set.ratedA)
    return [
      caution(() => ({
        title: say`The smallest plug fuse-link that serves is ${amperes(ratedA)}, more than the cord set’s own ${amperes(set.ratedA ?? 0)}`,
        why: say`Between the two the cord is overloaded and the fuse-link does not open.`,
        working: working(),
        action: [lookAtLink(ratedA), wholeCordSet(situation, say`rated ${amperes(ratedA)} or more`)],
        sources,
      })),
    ]
  return [
    clear(() => ({
      title: say`Plug fuse-link: ${amperes(ratedA)} to BS 1362`,
      why: say`The smallest that carries the load protects the flex best.`,
      working: working(),
      action: lookAtLink(ratedA),
      sources,
    })),
  ]
}

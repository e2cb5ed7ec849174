import { atMost } from '../physics/tolerance.js'
import { type DcPlugRow, isSameBore } from '../tables/dcPlugs.js'
import { commonPractice, type Source } from '../tables/source.js'
import { extraLowVoltageMostV, plugBoreLoose, plugBoreTight, plugOuterMost } from '../tables/thresholds.js'
import { joined, listed, or, type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, millimetres, plain, volts } from '../words/quantity.js'
import { underPower } from './action.js'
import { hasMap } from './case/hasMap.js'
import type { PairSituation, PreparedPlug } from './case/situation.js'
import { dcInvolved } from './dcInvolved.js'
import { caution, clear, type Judgement, stop, together, uniqueSources, unknown } from './judgement.js'
import { drawnA, ends, ratedA } from './matching/matchRails.js'
import { pairTopic } from './topic.js'

const sizeNames = commonPractice(
  'Plug sizes',
  'outer diameter by bore, both of the plug; a jack is called by the plug it takes',
)

/** Whether the plug on the lead fits the machine's jack, and may carry this voltage and current. */
export const dcPlug = pairTopic({
  name: 'dc-plug',
  words: say`the low-voltage plug in the jack`,
  links: ['plug', 'jack'],
  asks: ['supply.plug.outerMm', 'supply.plug.innerMm', 'device.jack.outerMm', 'device.jack.innerMm'],
  when: {
    stop: {
      rule: say`The outside differs by more than ${plain(plugOuterMost.value, 'mm')}, or the bore is smaller than the pin by more than ${plain(plugBoreTight.value, 'mm')}.`,
      example: { device: { jack: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' } } },
    },
    unknown: {
      rule: say`A size of plug or jack is not known, or is not that of its name or of the plate’s print.`,
      example: { device: { jack: { outerMm: 5.5, polarity: 'centre-positive' } } },
    },
    caution: {
      rule: say`The bore is larger than the pin by ${plain(plugBoreLoose.value, 'mm')} or more, the plug’s voltage class is not this voltage, or its contacts carry more than usual.`,
      example: { supply: { plug: { outerMm: 5.5, innerMm: 2.5, polarity: 'centre-positive' } } },
    },
    clear: { rule: say`Outside and bore suit the jack.`, example: {} },
  },
  judge(situation) {
    if ((!dcInvolved(situation) && !isLowAc(situation)) || hasMap(situation)) return []
    const { plug } = situation.supply
    const { jack } = situation.device
    return together([
      ...misnamed(plug, say`plug`),
      ...misnamed(jack, say`jack`),
      ...outer(plug, jack),
      ...bore(plug, jack),
      ...missing(plug, jack),
      ...usage(situation),
    ])
  },
})

/** Low-voltage plugs of AC have sizes, too; mains connectors are another topic's. */
const isLowAc = ({ device }: PairSituation): boolean =>
  device.rails.length > 0 && device.rails.every(({ voltageV }) => Math.abs(voltageV) <= extraLowVoltageMostV.value)

const size = ({ outerMm, innerMm }: Pick<PreparedPlug, 'outerMm' | 'innerMm'>): Phrase =>
  outerMm !== null && innerMm !== null
    ? say`${decimal(outerMm)} × ${millimetres(innerMm)}`
    : outerMm !== null
      ? say`${millimetres(outerMm)} outside`
      : innerMm !== null
        ? say`${millimetres(innerMm)} bore`
        : say`of unknown size`

/** A name or print that the size entered contradicts: one of the two is wrong, and nobody knows which. */
export const misnamed = (plug: PreparedPlug, called: Phrase): Judgement[] =>
  plug.contradicted.map((claim) =>
    unknown(() => ({
      title: say`${claim.called} is a plug of ${listed(claim.sizes.map(size), or)}, but ${size(plug)} was entered for the ${called}`,
      why: say`One of the two is wrong: the plug may be another, or was put on later, and then neither voltage nor polarity is what the name lets one expect.`,
      working: [],
      action: say`Measure it again, unplugged: outside with a caliper, the bore with a drill shank or a gauge pin. Then put the name right, or the size.`,
      sources: uniqueSources([...claim.sources, sizeNames]),
    })),
  )

function outer(plug: PreparedPlug, jack: PreparedPlug): Judgement[] {
  if (plug.outerMm === null || jack.outerMm === null) return []
  const difference = Math.abs(plug.outerMm - jack.outerMm)
  if (atMost(difference, plugOuterMost.value)) return []
  return [
    stop(() => ({
      title: say`A plug of ${size(plug)} is not the plug of a ${size(jack)} jack: the outside differs by ${millimetres(difference)}`,
      why: say`It does not go in, or sits loose and shorts or arcs.`,
      working: [
        say`|${size(plug)} − ${size(jack)}|: ${millimetres(difference)} outside, more than ${millimetres(plugOuterMost.value)}`,
      ],
      action: say`Use a supply with the right plug, or a ready-made adaptor for both sizes that is marked with them; check polarity again behind it.`,
      sources: [plugOuterMost.source, sizeNames],
    })),
  ]
}

function bore(plug: PreparedPlug, jack: PreparedPlug): Judgement[] {
  const hole = plug.innerMm
  const pin = jack.innerMm
  if (hole === null || pin === null) return []
  const difference = isSameBore(hole, pin) ? 0 : hole - pin
  const working = (): Phrase[] => [
    say`bore ${millimetres(hole)} − pin ${millimetres(pin)} = ${millimetres(hole - pin)}`,
  ]
  if (!atMost(-difference, plugBoreTight.value))
    return [
      stop(() => ({
        title: say`The plug’s ${millimetres(hole)} bore does not go over a ${millimetres(pin)} pin`,
        why: say`Forced, it splits the plug or breaks the pin out of the machine.`,
        working: working(),
        action: say`Use a supply with the right plug, or a ready-made adaptor; do not drill or force it.`,
        sources: [plugBoreTight.source, sizeNames],
      })),
    ]
  if (atMost(plugBoreLoose.value, difference))
    return [
      caution(() => ({
        title: say`The plug’s ${millimetres(hole)} bore is loose on a ${millimetres(pin)} pin`,
        why: say`It goes on and seems to fit, then arcs, heats up and drops out when moved.`,
        working: working(),
        action: [
          say`Use a plug with the right bore.`,
          underPower(say`Until then watch for resets when the lead moves.`, 'mains'),
        ],
        sources: [plugBoreLoose.source, sizeNames],
      })),
    ]
  if (plug.outerMm === null || jack.outerMm === null) return []
  if (!atMost(Math.abs(plug.outerMm - jack.outerMm), plugOuterMost.value)) return []
  return [
    clear(() => ({
      title: say`A plug of ${size(plug)} belongs in a ${size(jack)} jack`,
      why: say`Both contacts are made. The size says nothing of voltage or polarity.`,
      working: working(),
      action: null,
      sources: [plugOuterMost.source, plugBoreTight.source, sizeNames],
    })),
  ]
}

function missing(plug: PreparedPlug, jack: PreparedPlug): Judgement[] {
  if (plug.outerMm !== null && plug.innerMm !== null && jack.outerMm !== null && jack.innerMm !== null) return []
  const open = [
    ...(plug.outerMm === null ? [say`the plug’s outer diameter`] : []),
    ...(plug.innerMm === null ? [say`the plug’s bore`] : []),
    ...(jack.outerMm === null ? [say`the plug size the jack takes, outside`] : []),
    ...(jack.innerMm === null ? [say`the jack’s pin`] : []),
  ]
  return [
    unknown(() => ({
      title:
        open.length === 4
          ? say`Neither the size of the plug nor that of the jack is known`
          : say`Plug ${named(plug)}, jack ${named(jack)}; not known: ${joined(open, say`, `)}`,
      why: say`Sizes a few tenths apart look alike; one goes on and makes bad contact, the other breaks the pin.`,
      working: [],
      action: say`Measure the plug’s outside with a caliper, and its bore with a drill shank or a gauge pin that just goes in. The jack’s pin: with a caliper, or by the plug that belonged to it. A connector with several pins: compare it pin by pin with the manual.`,
      sources: [sizeNames],
    })),
  ]
}

const named = (plug: PreparedPlug): Phrase =>
  plug.name ? say`“${plug.name.slice(0, 40)}” (${size(plug)})` : size(plug)

/** A voltage class of the plug's series, and the usual rating of its contacts. */
function usage(situation: PairSituation): Judgement[] {
  const { plug } = situation.supply
  const { rows } = plug
  if (rows.length === 0) return []
  return [...voltageClass(situation, rows), ...contactCurrent(situation, rows)]
}

/** Only where every plug of this size, or the one named, is of a voltage-coded series: a size alone proves no voltage. */
function voltageClass({ supply, device }: PairSituation, rows: readonly DcPlugRow[]): Judgement[] {
  const rail = supply.rails.length === 1 ? supply.rails[0] : device.rails.length === 1 ? device.rails[0] : undefined
  if (!rail) return []
  if (rows.some(({ voltageMinV }) => voltageMinV === null)) return []
  const [low, high] = ends(rail).map(Math.abs)
  const outside = rows.every(
    ({ voltageMinV, voltageMaxV }) =>
      voltageMinV !== null &&
      voltageMaxV !== null &&
      (!atMost(Math.max(low ?? 0, high ?? 0), voltageMaxV) || !atMost(voltageMinV, Math.min(low ?? 0, high ?? 0))),
  )
  const [row] = rows
  if (!outside || !row) return []
  return [
    caution(() => ({
      title: say`A plug of the ${row.name} size is coded for ${volts(row.voltageMinV ?? 0)} to ${volts(row.voltageMaxV ?? 0)}; the supply gives ${volts(Math.max(low ?? 0, high ?? 0))}`,
      why: say`The series codes the voltage by size so that nothing can be mixed up: here something was changed, or the plug is not of the series.`,
      working: [],
      action: underPower(say`Measure the output with nothing connected before the machine is.`, 'mains'),
      sources: sourcesOf(rows),
    })),
  ]
}

function contactCurrent({ supply, pairs }: PairSituation, rows: readonly DcPlugRow[]): Judgement[] {
  if (pairs.length > 1) return []
  let contactA = Number.POSITIVE_INFINITY
  for (const row of rows) contactA = Math.min(contactA, row.contactA ?? contactA)
  const [pair] = pairs
  const drawn = pair ? drawnA(pair.device) : null
  const [rail, second] = supply.rails
  const currentA = drawn ?? (rail && !second && pairs.length === 0 ? ratedA(rail) : null)
  if (currentA === null || atMost(currentA, contactA)) return []
  return [
    caution(() => ({
      title: say`${amperes(currentA, 3, 'up')} through contacts usually rated ${amperes(contactA)}`,
      why: say`The contact heats up, its spring softens, and it heats up more.`,
      working: [
        say`${amperes(currentA, 3, 'up')} / ${amperes(contactA)} = ${plain(currentA / contactA, 'times', 3, 'up')}`,
      ],
      action: [
        say`Look up the rating of the actual part.`,
        underPower(say`Feel the plug after ten minutes under load.`, 'mains'),
      ],
      sources: sourcesOf(rows),
    })),
  ]
}

const sourcesOf = (rows: readonly DcPlugRow[]): Source[] => uniqueSources(rows.flatMap(({ sources }) => sources))

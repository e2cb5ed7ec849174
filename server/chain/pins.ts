import { atMost } from '../physics/tolerance.js'
import { commonPractice } from '../tables/source.js'
import { outputToleranceWidest } from '../tables/thresholds.js'
import { listed, type Phrase, say } from '../words/phrase.js'
import { percent, volts } from '../words/quantity.js'
import { underPower } from './action.js'
import type { Pin } from './case/request.js'
import type { DeviceRail, PairSituation, Rail } from './case/situation.js'
import { clear, type Judgement, stop, type Text, together, unknown } from './judgement.js'
import { ends } from './matching/matchRails.js'
import { toleranceOf } from './matching/outputTolerance.js'
import { pairTopic } from './topic.js'
import { measuredThere, ratingPlate } from './words.js'

const contactByContact = commonPractice(
  'Contacts, one by one',
  'a connector of several contacts says nothing by its shape: one plug carries 12 V, 24 V and 63 V on the same contact; each is compared by what it carries, measured before anything is joined',
)
const sources = [contactByContact, ratingPlate, measuredThere]

/** Whether each contact of the machine’s connector gets what it wants, contact by contact. */
export const pins = pairTopic({
  name: 'pins',
  words: say`the contacts, one by one`,
  links: ['plug', 'jack'],
  asks: [],
  when: {
    stop: {
      rule: say`A contact of the machine gets another voltage, sign or kind of current than it wants, a voltage stands where the machine has a return, an earth or a signal, a rail or every return is missing, or a contact measures otherwise than it was mapped.`,
      example: {
        supply: {
          pins: [
            { id: '1', role: 'rail', kind: 'dc', voltageV: 12, measuredV: 12 },
            { id: '2', role: 'return' },
          ],
        },
        device: {
          pins: [
            { id: '1', role: 'return' },
            { id: '2', role: 'rail', kind: 'dc', voltageV: 12 },
          ],
        },
      },
    },
    unknown: {
      rule: say`One of the two maps is not known or not whole, a voltage on it was not measured, or an earth meets a return.`,
      example: {
        supply: {
          pins: [
            { id: '1', role: 'rail', kind: 'dc', voltageV: 12 },
            { id: '2', role: 'return' },
          ],
        },
        device: {
          pins: [
            { id: '1', role: 'rail', kind: 'dc', voltageV: 12 },
            { id: '2', role: 'return' },
          ],
        },
      },
    },
    caution: { never: say`A contact carries what the machine wants there or it does not.` },
    clear: {
      rule: say`Every rail and every return of the machine meets its own, measured, and nothing stands on a signal.`,
      example: {
        supply: {
          pins: [
            { id: '1', role: 'rail', kind: 'dc', voltageV: 12, measuredV: 12.1 },
            { id: '2', role: 'return' },
          ],
        },
        device: {
          pins: [
            { id: '1', role: 'rail', kind: 'dc', voltageV: 12 },
            { id: '2', role: 'return' },
          ],
        },
      },
    },
  },
  judge(situation) {
    const given = situation.supply.facts.pins ?? []
    const wanted = situation.device.facts.pins ?? []
    if (given.length === 0 && wanted.length === 0) return []
    if (given.length === 0 || wanted.length === 0) return [unknown(() => mapMissing(given.length === 0))]
    const doubled = [...twice(given), ...twice(wanted)]
    if (doubled.length > 0) return [unknown(() => namedTwice(doubled))]
    const all = [
      ...mapOf('supply', given, situation.supply.rails),
      ...mapOf('machine', wanted, situation.device.rails),
      ...met(situation, given, wanted),
    ]
    return all.length === 0 ? [clear(() => matches(given, wanted))] : together(all)
  },
})

const nameOf = ({ id }: Pin): string => id.trim().toUpperCase()

const twice = (map: readonly Pin[]): string[] => [
  ...new Set(map.map(nameOf).filter((name, index, names) => names.indexOf(name) !== index)),
]

/** What a contact of the supply gives: as measured, else as mapped [V]; null where neither is known. */
const givenV = ({ measuredV, voltageV }: Pin): number | null => measuredV ?? voltageV ?? null

/** Contacts on which a voltage stands: those mapped so, and those that a meter shows to have one. */
const isLive = (pin: Pin): boolean => pin.role === 'rail' || pin.measuredV != null

const says = (
  outcome: typeof stop | typeof unknown,
  title: Phrase,
  why: Phrase,
  action: Text['action'],
  working: Phrase[] = [],
): Judgement => outcome(() => ({ title, why, working, action, sources }))

const destroys = say`A voltage on the wrong contact destroys the machine the moment it is joined.`
const ringOut = say`Machine and supply apart and unplugged: draw the contacts as one looks into each, with the groove or key and the printed figures; ohms from each contact to bare chassis, under 1\u00a0Ω is a return; from the others to it, both ways round, a kick and a rise is a rail with a capacitor. Follow a rail to a part that names its voltage.`
const measureIt = underPower(
  say`Then measure the supply alone, contact by contact against its return, with nothing connected and lightly loaded, and enter each.`,
  'mains',
)
const notJoined = say`Do not join the two. Compare both drawings again, each as one looks into it: a drawing of the other side is its mirror.`

/** One map in itself: whole, and of one mind with the rails of its side. */
function mapOf(of: 'supply' | 'machine', map: readonly Pin[], rails: readonly (Rail | DeviceRail)[]): Judgement[] {
  const found: Judgement[] = []
  if (!map.some(({ role }) => role === 'return'))
    found.push(says(unknown, say`No return is known among the contacts of the ${of}`, destroys, ringOut))
  for (const pin of map.filter(
    ({ role, voltageV, measuredV }) => role === 'rail' && voltageV == null && measuredV == null,
  ))
    found.push(
      says(unknown, say`Which voltage is on contact ${nameOf(pin)} of the ${of} is not known`, destroys, ringOut),
    )
  const contacts = map
    .filter(({ role }) => role === 'rail')
    .flatMap(({ voltageV, measuredV }) => voltageV ?? measuredV ?? [])
  const missing = rails.filter((rail) => !contacts.some((voltageV) => isNear(rail, voltageV)))
  const unexplained =
    rails.length === 0 ? [] : contacts.filter((voltageV) => !rails.some((rail) => isNear(rail, voltageV)))
  if (missing.length + unexplained.length > 0)
    found.push(
      says(
        unknown,
        missing.length > 0
          ? say`The map of the ${of} has no contact for ${listed(missing.map(({ voltageV }) => volts(voltageV)))}`
          : say`The map of the ${of} has ${listed(unexplained.map((voltageV) => volts(voltageV)))}, which is none of what it ${of === 'supply' ? say`gives` : say`takes`}`,
        destroys,
        ringOut,
      ),
    )
  return found
}

function isNear(rail: Rail, voltageV: number): boolean {
  const [low, high] = ends(rail)
  const share = outputToleranceWidest.value
  const least = low - Math.abs(low) * share
  const most = high + Math.abs(high) * share
  return (
    (voltageV >= least && voltageV <= most) ||
    (rail.kind === 'ac' && Math.abs(voltageV) >= Math.abs(least) && Math.abs(voltageV) <= Math.abs(most))
  )
}

/** The two maps, contact by contact: only what speaks against joining them. */
function met(situation: PairSituation, given: readonly Pin[], wanted: readonly Pin[]): Judgement[] {
  const mate = (pin: Pin, among: readonly Pin[]): Pin | undefined =>
    among.find((other) => nameOf(other) === nameOf(pin))
  return [
    ...given.flatMap(measuredOtherwise),
    ...wanted.flatMap((pin) => atContact(situation, pin, mate(pin, given), given)),
    ...given
      .filter((pin) => isLive(pin) && !mate(pin, wanted))
      .map((pin) =>
        says(
          unknown,
          say`What the machine has on contact ${nameOf(pin)}, where the supply gives ${pinV(pin)}, is not known`,
          destroys,
          ringOut,
        ),
      ),
    ...(wanted.some((pin) => pin.role === 'return' && mate(pin, given)?.role === 'return')
      ? []
      : [
          says(
            stop,
            say`No return of the machine meets a return of the supply`,
            say`The current then looks for another way back, through signals and screens.`,
            notJoined,
          ),
        ]),
  ]
}

const pinV = (pin: Pin): Phrase => {
  const voltageV = givenV(pin)
  return voltageV === null ? say`a voltage` : volts(voltageV)
}

/** A contact that the meter shows otherwise than the map. */
function measuredOtherwise(pin: Pin): Judgement[] {
  const { role, voltageV, measuredV } = pin
  if (measuredV == null) return []
  if (role !== 'rail')
    return [
      says(
        stop,
        say`Contact ${nameOf(pin)} of the supply is mapped as ${roleText(role)}, and measures ${volts(measuredV)}`,
        destroys,
        notJoined,
      ),
    ]
  if (voltageV == null) return []
  const off = Math.abs(measuredV - voltageV) / Math.abs(voltageV)
  const ac = pin.kind === 'ac' ? Math.abs(Math.abs(measuredV) - Math.abs(voltageV)) / Math.abs(voltageV) : off
  return atMost(ac, outputToleranceWidest.value)
    ? []
    : [
        says(
          stop,
          say`Contact ${nameOf(pin)} of the supply is mapped as ${volts(voltageV)}, and measures ${volts(measuredV)}`,
          destroys,
          notJoined,
          [say`|${volts(measuredV)} − ${volts(voltageV)}| / ${volts(Math.abs(voltageV))} = ${percent(ac)}`],
        ),
      ]
}

const roleText = (role: Pin['role']): Phrase =>
  ({ rail: say`a voltage`, return: say`a return`, earth: say`an earth`, signal: say`a signal`, none: say`nothing` })[
    role as 'rail' | 'return' | 'earth' | 'signal' | 'none'
  ]

function atContact(situation: PairSituation, wanted: Pin, given: Pin | undefined, all: readonly Pin[]): Judgement[] {
  const at = nameOf(wanted)
  switch (wanted.role) {
    case 'rail':
      return railAt(situation, wanted, given)
    case 'return':
      if (given?.role === 'return') return []
      // one of several contacts in parallel may be left out only on purpose
      return [
        given && isLive(given)
          ? says(
              stop,
              say`Contact ${at}: the supply gives ${pinV(given)}, and the machine has its return there`,
              destroys,
              notJoined,
            )
          : says(
              unknown,
              say`Contact ${at}: the machine has a return there, and the supply ${given ? roleText(given.role) : say`no contact that is known`}`,
              say`Contacts in parallel share the current: one left out overheats the others.`,
              ringOut,
            ),
      ]
    default:
      if (!given || given.role === 'none') return []
      if (isLive(given) && wanted.role !== 'none')
        return [
          says(
            stop,
            say`Contact ${at}: the supply gives ${pinV(given)}, and the machine has ${roleText(wanted.role)} there`,
            destroys,
            notJoined,
          ),
        ]
      if (isLive(given))
        return [
          says(
            unknown,
            say`Contact ${at}: the supply gives ${pinV(given)}, and nothing is known to be there in the machine`,
            destroys,
            ringOut,
          ),
        ]
      if (given.role === wanted.role) return []
      if (wanted.role === 'earth' || given.role === 'earth')
        return [
          says(
            unknown,
            say`Contact ${at}: ${roleText(given.role)} of the supply meets ${roleText(wanted.role)} of the machine`,
            say`Where a pole is joined to earth on one side and another on the other, the supply is short-circuited through the machine.`,
            ringOut,
          ),
        ]
      return wanted.role === 'signal' && all.length > 0
        ? [
            says(
              stop,
              say`Contact ${at}: ${roleText(given.role)} of the supply stands on a signal of the machine`,
              say`The signal is held to the return; what drives it is destroyed.`,
              notJoined,
            ),
          ]
        : []
  }
}

/** A rail of the machine, against what the supply gives on the same contact. */
function railAt(situation: PairSituation, wanted: Pin, given: Pin | undefined): Judgement[] {
  const at = nameOf(wanted)
  const wantsV = wanted.voltageV ?? null
  const wants = wantsV === null ? say`a voltage` : volts(wantsV)
  if (given?.role !== 'rail')
    return [
      says(
        stop,
        say`Contact ${at}: the machine wants ${wants}, and the supply has ${given ? roleText(given.role) : say`no such contact`}`,
        say`A machine with one rail missing may be destroyed by the others.`,
        notJoined,
      ),
    ]
  const givesV = givenV(given)
  if (wantsV === null || givesV === null) return []
  if (given.kind != null && wanted.kind != null && given.kind !== wanted.kind)
    return [
      says(
        stop,
        say`Contact ${at}: the supply gives ${givesV === null ? say`` : volts(givesV)} ${given.kind.toUpperCase()}, the machine wants ${wants} ${wanted.kind.toUpperCase()}`,
        destroys,
        notJoined,
      ),
    ]
  if (given.kind == null || wanted.kind == null)
    return [
      says(
        unknown,
        say`Contact ${at}: whether ${volts(givesV)} of the supply and ${wants} of the machine are AC or DC is not known`,
        say`Alternating current destroys a machine that wants direct current.`,
        [ringOut, measureIt],
      ),
    ]
  const size = given.kind === 'ac'
  const off = size ? Math.abs(Math.abs(givesV) - Math.abs(wantsV)) : Math.abs(givesV - wantsV)
  const rail = situation.device.rails.find((one) => isNear(one, wantsV))
  const share = Math.max(outputToleranceWidest.value, rail ? toleranceOf(rail, situation.device).share : 0)
  if (!atMost(off, share * Math.abs(wantsV)))
    return [
      says(
        stop,
        say`Contact ${at}: the supply gives ${volts(givesV)}, the machine wants ${wants}`,
        destroys,
        notJoined,
        [say`|${volts(givesV)} − ${volts(wantsV)}| / ${volts(Math.abs(wantsV))} = ${percent(off / Math.abs(wantsV))}`],
      ),
    ]
  if (given.measuredV == null)
    return [
      says(
        unknown,
        say`Contact ${at}: ${volts(givesV)} of the supply is mapped, and was not measured`,
        say`A drawing may be of the other side, or of another maker’s connector of the same shape.`,
        measureIt,
      ),
    ]
  return []
}

const matches = (given: readonly Pin[], wanted: readonly Pin[]): Text => ({
  title: say`Every contact of the machine meets its own: ${listed(
    wanted.filter(({ role }) => role === 'rail').map((pin) => say`${nameOf(pin)} ${volts(pin.voltageV ?? 0)}`),
  )}`,
  why: say`Each voltage was measured on its own contact, and nothing stands on a signal.`,
  working: given.filter(isLive).map((pin) => say`${nameOf(pin)}: ${pinV(pin)} measured`),
  action: underPower(say`First mating through a fuse in each rail, of one and a half times what it draws.`, 'mains'),
  sources,
})

const mapMissing = (ofSupply: boolean): Text => ({
  title: ofSupply
    ? say`What the supply has on each contact is not known`
    : say`What the machine wants on each contact is not known`,
  why: destroys,
  working: [],
  action: ofSupply ? [ringOut, measureIt] : ringOut,
  sources,
})

const namedTwice = (names: readonly string[]): Text => ({
  title: say`A contact is named twice: ${listed(names)}`,
  why: destroys,
  working: [],
  action: say`Give each contact its own name: figures for the printed ones, letters for those without.`,
  sources,
})

/** What each outcome of a map alone is held to, for a supply without a machine. */
export const ownMap = (situation: PairSituation): Judgement[] => {
  const map = situation.supply.facts.pins ?? []
  if (map.length === 0) return []
  const found = [
    ...mapOf('supply', map, situation.supply.rails),
    ...map.flatMap(measuredOtherwise),
    ...map
      .filter((pin) => pin.role === 'rail' && pin.measuredV == null)
      .map((pin) => says(unknown, say`Contact ${nameOf(pin)} of the supply was not measured`, destroys, measureIt)),
  ]
  return found.length > 0
    ? together(found)
    : [
        clear(() => ({
          title: say`Every voltage of the supply’s contacts measures as it is mapped: ${listed(map.filter(isLive).map((pin) => say`${nameOf(pin)} ${pinV(pin)}`))}`,
          why: say`It is compared contact by contact with a machine’s.`,
          working: [],
          action: null,
          sources,
        })),
      ]
}

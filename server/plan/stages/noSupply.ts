import type { PreparedDevice, PreparedSupply } from '../../chain/case/situation.js'
import { holdsVoltage } from '../../chain/charging.js'
import type { Finding } from '../../chain/finding.js'
import { dangerousRail } from '../../chain/isolation.js'
import type { HazardMeaning } from '../../tables/hazardWords.js'
import { type Phrase, say } from '../../words/phrase.js'

/** Why nothing is put on an output that is joined to the mains. */
export const outputIsLive = say`The output of this supply is not isolated from the mains: nobody but a qualified person puts it on the mains, measures on it, loads it or connects a machine to it.`

const chassisIsLive = say`The chassis of this machine is not isolated from the mains: nobody but a qualified person, with an isolating transformer, puts it on the mains, measures on it or joins anything to it.`

const outputIsDangerous = say`The output of this supply is dangerous to touch: nobody but a qualified person puts it on the mains, measures on it, loads it or connects a machine to it.`

const charger = say`A charger for batteries is not brought up like a supply: with nothing connected, or on a resistor, it may give nothing, pulse, or climb far above what is printed, and no reading would tell a sound one from a faulty one. Use a power supply in its place.`

/** What a plate, or a label on it, says of a unit that is not to be used. */
export const unfit = ['marked as faulty, recalled or not to be used'] as const satisfies readonly HazardMeaning[]

/** Why nothing puts power on a unit so marked. */
export const markedUnfit = say`A label says that it is faulty, recalled or not to be used: nothing puts power on it until a qualified person settled why, and the text of the plate was put right.`

/** Kinds of units for which no stage on the mains is worked out. */
const reasons: readonly (readonly [HazardMeaning, Phrase])[] = [
  [unfit[0], markedUnfit],
  ['not isolated from the mains, live chassis', outputIsLive],
  ['autotransformer as a supply', outputIsLive],
  [
    'electronic transformer for halogen lamps',
    say`A transformer for halogen lamps is not brought up like a supply: an electronic one starts only with its least load of lamps, which a series lamp in front of it keeps from starting, and its bursts read wrongly on a meter. Use a supply that is made for machines.`,
  ],
  ['charger: for batteries only', charger],
  ['charger for one named battery', charger],
  [
    'constant current, LED driver',
    say`A source of constant current is not brought up like a supply: with little or nothing to feed it climbs to its ceiling, and a load worked out for a voltage tells nothing. Use a supply that gives a constant voltage.`,
  ],
  [
    'for shavers only',
    say`What is made for shavers alone is no supply for a machine, and is not brought up as one. Use a supply that is made for machines.`,
  ],
]

/** Whether a plate carries words of one of these meanings. */
export const says = (
  { reading }: Pick<PreparedSupply | PreparedDevice, 'reading'>,
  meanings: readonly HazardMeaning[],
): boolean => (reading?.hazards ?? []).some(({ meaning }) => meanings.includes(meaning))

/** Whether the output is joined to the mains: by the plate, or by what the check found of either side. */
export const isLive = (supply: PreparedSupply, findings: readonly Finding[]): boolean =>
  says(supply, ['not isolated from the mains, live chassis', 'autotransformer as a supply']) ||
  findings.some(({ topic, outcome }) => topic === 'isolation' && outcome === 'stop')

/** Why this unit is put on no mains, with a lamp or without; null where it is a supply like any other. */
export function noSupply(supply: PreparedSupply, findings: readonly Finding[]): Phrase | null {
  if (isLive(supply, findings)) return supply.called === 'machine' ? chassisIsLive : outputIsLive
  if (dangerousRail(supply) !== null) return outputIsDangerous
  const found = reasons.find(
    ([meaning]) =>
      (says(supply, [meaning]) && !(meaning === 'constant current, LED driver' && holdsVoltage(supply))) ||
      (meaning === 'electronic transformer for halogen lamps' && supply.chopped),
  )
  return found?.[1] ?? null
}

import { fluxRatio } from '../physics/flux.js'
import { atMost } from '../physics/tolerance.js'
import { commonPractice } from '../tables/source.js'
import { fluxClear, fluxStopAbove, frequencyMatch, speedFollowsFrequency } from '../tables/thresholds.js'
import { listed, type Phrase, say } from '../words/phrase.js'
import { decimal, hertz, percent } from '../words/quantity.js'
import { nearWiring } from './action.js'
import type { DeviceRail, MainsSituation, Rail } from './case/situation.js'
import { caution, type Judgement, stop, type Text, unknown } from './judgement.js'
import { ends, matchRails } from './matching/matchRails.js'
import { ratingPlate } from './words.js'

const voltageOnly = commonPractice(
  'Transformers and frequency',
  'a transformer gives AC of the frequency it gets: the machine behind it meets the frequency of the mains',
)

/**
 * Whether a machine that takes AC may meet the frequency that comes through its supply: the mains', as a transformer changes the voltage
 * alone. Only what speaks against it is a judgement; a machine whose plate names no frequency, or this one, adds nothing.
 */
export function machineFrequency({ device, supply, reach }: MainsSituation): Judgement[] {
  const listedHz = device?.frequenciesHz ?? []
  if (!device || listedHz.length === 0) return []
  const pairs = acPairs(supply.rails, device.rails)
  if (pairs.length === 0) return []
  const siteHz = reach.frequencyHz
  const plate = listed(listedHz.map((hz) => hertz(hz)))
  if (siteHz === null || supply.technology === 'switch-mode') return [unknown(() => frequencyOpen(plate, siteHz))]
  if (listedHz.some((hz) => Math.abs(siteHz - hz) <= frequencyMatch.value * hz)) return []
  const lowestHz = Math.min(...listedHz)
  const ratio = Math.max(...pairs.map(({ given, wanted }) => fluxThere(given, wanted, siteHz, lowestHz)))
  const over = !atMost(ratio, fluxClear.value)
  const say = (): Text => otherFrequency({ plate, siteHz, ratio, over, turns: device.turns, listedHz })
  if (!device.turns) return over ? [unknown(say)] : []
  return [atMost(ratio, fluxStopAbove.value) ? caution(say) : stop(say)]
}

/** What the machine takes that may be AC, each with the output that serves it, where that may be AC too. */
export const acPairs = (
  supplies: readonly Rail[],
  devices: readonly DeviceRail[],
): { wanted: DeviceRail; given: Rail }[] =>
  matchRails(supplies, devices).flatMap(({ device: wanted, supply: given }) =>
    wanted.kind === 'dc' || given === null || given.kind === 'dc' ? [] : [{ wanted, given }],
  )

/** Flux of a winding in the machine over that of its plate [1], the supply's voltage as printed. */
function fluxThere(given: Rail, wanted: DeviceRail, siteHz: number, plateHz: number): number {
  const highest = (rail: Rail): number => Math.max(...ends(rail).map(Math.abs))
  return fluxRatio(highest(given), siteHz, highest(wanted), plateHz)
}

const frequencyOpen = (plate: Phrase, siteHz: number | null): Text => ({
  title: say`The machine’s plate names ${plate}; the frequency of the AC it gets is not known`,
  why: say`Motors, clocks and transformers in it follow the frequency; on a lower one a winding overheats.`,
  working: [],
  action:
    siteHz === null
      ? say`Enter the country, or the mains frequency, of the place where it will be used.`
      : say`Read the output frequency on the supply’s plate: a switch-mode unit makes its own, often no sine and far above the mains.`,
  sources: [ratingPlate, voltageOnly],
})

interface Other {
  plate: Phrase
  siteHz: number
  ratio: number
  over: boolean
  turns: boolean
  listedHz: readonly number[]
}

function otherFrequency({ plate, siteHz, ratio, over, turns, listedHz }: Other): Text {
  const speeds = turns
    ? listedHz.map(
        (hz) =>
          say`a synchronous motor or clock made for ${hertz(hz)} turns at ${hertz(siteHz)} / ${hertz(hz)} = ${percent(siteHz / hz)} of its speed`,
      )
    : []
  return {
    title: say`The machine’s plate names ${plate}; through this supply it gets ${hertz(siteHz)}: ${decimal(ratio, 3, 'up')} times the flux of its plate${turns ? say`, and another speed` : say``}`,
    why: over
      ? say`A winding at more than its rated flux saturates and overheats, even with nothing to do; a motor runs hot and slow.`
      : say`What turns with the mains runs at another speed: pitch, time and timing are off.`,
    working: [say`flux follows V / f: ${decimal(ratio, 4, 'up')} of the plate’s`, ...speeds],
    action: turns
      ? [
          say`Ask for the maker’s part for ${hertz(siteHz)} (pulley, motor, capacitor).`,
          over
            ? nearWiring(say`Until then do not run it on this mains; no transformer changes the frequency.`)
            : say`No transformer changes the frequency.`,
        ]
      : say`Find out what stands behind its mains switch: a transformer or motor for ${plate} does not bear this at its full voltage; a switch-mode input does. No transformer changes the frequency.`,
    sources: [
      ratingPlate,
      voltageOnly,
      fluxClear.source,
      fluxStopAbove.source,
      ...(turns ? [speedFollowsFrequency] : []),
    ],
  }
}

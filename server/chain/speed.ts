import { frequencyMatch, speedFollowsFrequency } from '../tables/thresholds.js'
import { listed, or, type Phrase, say } from '../words/phrase.js'
import { decimal, hertz, percent } from '../words/quantity.js'
import { plateFrequencies } from './case/plateFrequencies.js'
import { windowsInUse } from './case/plateWindow.js'
import type { MainsSituation } from './case/situation.js'
import { caution, clear, type Text, unknown } from './judgement.js'
import { acPairs } from './machineFrequency.js'
import { mainsTopic } from './topic.js'
import { ratingPlate } from './words.js'

/** Whether what follows the mains in the machine, a motor or a clock, runs at its own speed. */
export const speed = mainsTopic({
  name: 'speed',
  words: say`the speed of motors and clocks`,
  links: ['machine'],
  asks: ['device.mains.motor', 'device.mains.input.frequenciesHz'],
  when: {
    stop: {
      never: say`A wrong speed harms nothing; what a frequency does to windings is the mains frequency’s topic.`,
    },
    unknown: {
      rule: say`A machine with its supply inside gets a frequency that its plate does not name, and it was not told whether anything in it follows the mains; or something does, and one of the two frequencies is not known.`,
      example: {
        supply: { outputs: [{ kind: 'ac', voltageV: 9, currentA: 1 }], technology: 'transformer' },
        device: { label: 'CLOCK 9V AC 0.3A', inputs: null },
      },
    },
    caution: {
      rule: say`A machine for AC that speaks of a motor or a clock gets a frequency that its plate does not name.`,
      example: {
        supply: { outputs: [{ kind: 'ac', voltageV: 9, currentA: 1 }], technology: 'transformer' },
        device: { label: 'CLOCK 9V AC 60Hz 0.3A', inputs: null },
      },
    },
    clear: {
      rule: say`The machine’s plate names the frequency it gets.`,
      example: {
        supply: { outputs: [{ kind: 'ac', voltageV: 9, currentA: 1 }], technology: 'transformer' },
        device: { label: 'CLOCK 9V AC 50Hz 0.3A', inputs: null },
      },
    },
  },
  judge(situation) {
    const { reach, device } = situation
    const siteHz = reach.frequencyHz
    const { plateHz, assumed } = followedHz(situation)
    const follows = followsMains(situation)
    if (follows === 'no') return []
    if (siteHz === null || plateHz.length === 0)
      // behind a separate supply the topic of the mains frequency asks for that of the place
      return follows === 'yes' && (plateHz.length === 0 || isInside(situation))
        ? [unknown(() => frequencyOpen(siteHz, plateHz))]
        : []
    if (isEntered(device) && plateHz.length > 1) return [caution(() => setting(siteHz, plateHz))]
    const named = plateHz.some((hz) => Math.abs(siteHz - hz) <= frequencyMatch.value * hz)
    if (follows === 'maybe') return named ? [] : [unknown(() => motorOpen(siteHz, plateHz, assumed))]
    if (named)
      return [
        clear(() => ({
          title: say`What follows the mains in the machine runs at its speed: ${hertz(siteHz)}`,
          why: say`Its plate names this frequency.`,
          working: [],
          action: null,
          sources: [ratingPlate, speedFollowsFrequency],
        })),
      ]
    const nearest = plateHz.toSorted((one, other) => Math.abs(one - siteHz) - Math.abs(other - siteHz))[0] ?? siteHz
    const ratio = siteHz / nearest
    return [
      caution(() => ({
        title: say`On ${hertz(siteHz)} a clock or synchronous motor made for ${listed(plateHz.map((hz) => hertz(hz)))} runs at ${decimal(ratio, 3)} times its speed`,
        why: say`Pitch, time and timing are off: a clock ${ratio < 1 ? say`loses` : say`gains`} ${decimal(Math.abs(1 - ratio) * 60, 2)} minutes in each hour.`,
        working: [
          ...(assumed ? [assumed] : []),
          say`${hertz(siteHz)} / ${hertz(nearest)} = ${decimal(ratio, 3)}, ${percent(Math.abs(1 - ratio))} off`,
          say`12 × log2(${decimal(ratio, 3)}) = ${decimal(semitones(ratio), 3)} semitones`,
          ...(device?.motor === 'induction' ? [say`an induction motor slips a little below that`] : []),
        ],
        action: say`No transformer or converter changes the frequency. Ask for the maker’s part for ${hertz(siteHz)} (pulley, motor, capacitor, a switch or link on the clock’s board), or feed the motor alone from a source that makes ${hertz(nearest)} itself. A disk spindle that hangs on the mains is not run at another speed: its heads may not fly.`,
        sources: [ratingPlate, speedFollowsFrequency],
      })),
    ]
  },
})

/** How far pitch is off, in semitones: 12 · log2(ratio). */
const semitones = (ratio: number): number => 12 * Math.log2(ratio)

/** A motor that follows the mains, on a plate for several frequencies: something inside is set for one of them. */
const setting = (siteHz: number, plateHz: readonly number[]): Text => ({
  title: say`The plate names ${listed(plateHz.map((hz) => hertz(hz)))}, and the motor follows the mains: something inside is set for one of them`,
  why: say`Set for the other, pitch, time and timing are off by a fifth; a run capacitor of the wrong size leaves the motor weak or hot.`,
  working: [],
  action: say`Unplugged, look for a switch, a step of the pulley or a second pulley, and a run capacitor with two values; set all of them for ${hertz(siteHz)}.`,
  sources: [ratingPlate, speedFollowsFrequency],
})

const isInside = ({ supply }: MainsSituation): boolean => supply.called === 'machine'

/** A motor that follows the mains was entered. */
const isEntered = (device: MainsSituation['device']): boolean =>
  device?.motor === 'synchronous' || device?.motor === 'induction'

/**
 * Whether something in the machine follows the mains: as entered, else as its plate speaks. In a machine with its supply inside that says
 * nothing of it a motor may hang on the mains beside any kind of supply, and the motor of which a switch-mode machine speaks may be fed by that.
 */
function followsMains(situation: MainsSituation): 'yes' | 'maybe' | 'no' {
  const { supply, device } = situation
  if (!device) return 'no'
  if (isInside(situation)) {
    if (device.motor !== null) return isEntered(device) ? 'yes' : 'no'
    return device.turns && supply.technology !== 'switch-mode' ? 'yes' : 'maybe'
  }
  const getsMains = supply.technology !== 'switch-mode' && acPairs(supply.rails, device.rails).length > 0
  return device.turns && getsMains ? 'yes' : 'no'
}

/** The frequencies that it is made for: those on its plate, else those of the home regions of the mains voltage on it. */
function followedHz(situation: MainsSituation): { plateHz: readonly number[]; assumed: Phrase | null } {
  const { supply, device } = situation
  if (!isInside(situation)) return { plateHz: device?.frequenciesHz ?? [], assumed: null }
  const { windows } = windowsInUse(supply.input)
  const each = (windows.length > 0 ? windows : [null]).flatMap(
    (window) => plateFrequencies(supply.input.frequenciesHz, window) ?? [],
  )
  return {
    plateHz: [...new Set(each.flatMap(({ frequenciesHz }) => frequenciesHz))],
    assumed: each[0]?.assumed ?? null,
  }
}

const frequencyOpen = (siteHz: number | null, plateHz: readonly number[]): Text => ({
  title:
    siteHz === null
      ? say`Something in the machine follows the mains, made for ${listed(
          plateHz.map((hz) => hertz(hz)),
          or,
        )}; the frequency of the place is not known`
      : say`Something in the machine follows the mains, and its plate does not say for which frequency it is made; the mains has ${hertz(siteHz)}`,
  why: say`Between 50\u00a0Hz and 60\u00a0Hz pitch, time and timing are off by a fifth.`,
  working: [],
  action:
    siteHz === null
      ? say`Enter the country, or the mains frequency, of the place where it will be used.`
      : say`Look for Hz, c/s or cycles on the plate, the motor and the clock’s dial, and enter it.`,
  sources: [ratingPlate, speedFollowsFrequency],
})

const motorOpen = (siteHz: number, plateHz: readonly number[], assumed: Phrase | null): Text => ({
  title: say`The machine is made for ${listed(
    plateHz.map((hz) => hertz(hz)),
    or,
  )} and gets ${hertz(siteHz)}; whether a motor or clock in it follows the mains is not known`,
  why: say`What follows the mains runs at another speed: pitch, time and timing are off by a fifth. A motor on direct current from inside, or with carbon brushes, does not mind.`,
  working: assumed ? [assumed] : [],
  action: say`Find out what turns in it, and enter the kind of its motor, or that there is none. Reels, discs, fans and print drums of old machines often hang on the mains, beside a switch-mode supply too.`,
  sources: [ratingPlate, speedFollowsFrequency],
})

import { frequencyMatch, speedFollowsFrequency } from '../tables/thresholds.js'
import { listed, say } from '../words/phrase.js'
import { decimal, hertz, percent } from '../words/quantity.js'
import type { MainsSituation } from './case/situation.js'
import { caution, clear, type Text } from './judgement.js'
import { acPairs } from './machineFrequency.js'
import { mainsTopic } from './topic.js'
import { ratingPlate } from './words.js'

/** Whether what follows the mains in the machine, a motor or a clock, runs at its own speed. */
export const speed = mainsTopic({
  name: 'speed',
  words: say`the speed of motors and clocks`,
  links: ['machine'],
  asks: [],
  when: {
    stop: {
      never: say`A wrong speed harms nothing; what a frequency does to windings is the mains frequency’s topic.`,
    },
    unknown: { never: say`Where the frequency is not known, the topic of the mains frequency asks for it.` },
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
    const { reach, supply, device } = situation
    const siteHz = reach.frequencyHz
    const plateHz = followedHz(situation)
    const follows = device?.motor === 'synchronous' || device?.motor === 'induction'
    if (siteHz === null || plateHz.length === 0 || (supply.technology === 'switch-mode' && !follows)) return []
    if (follows && plateHz.length > 1) return [caution(() => setting(siteHz, plateHz))]
    if (plateHz.some((hz) => Math.abs(siteHz - hz) <= frequencyMatch.value * hz))
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

/** The frequencies on the plate of a machine that turns or keeps time with the AC it gets. */
function followedHz({ supply, device }: MainsSituation): readonly number[] {
  if (device?.turns && supply.called === 'machine') return supply.input.frequenciesHz
  if (!device?.turns || acPairs(supply.rails, device.rails).length === 0) return []
  return device.frequenciesHz
}

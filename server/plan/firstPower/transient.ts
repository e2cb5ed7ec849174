import type { BulkLoad } from '../../physics/bulkLoad.js'
import type { EnergyBalance } from '../../physics/energyBalance.js'
import { type SwitchOnRun, switchOn } from '../../physics/transient.js'
import { type GlowWord, glowRows, glowWords } from '../../tables/glow.js'
import { heatContentVoltageExponent } from '../../tables/lamps.js'
import { bridgeDiode, defaultStartShare, restartS, settledBand, stopShare } from '../../tables/seriesLamp.js'
import { type Phrase, say } from '../../words/phrase.js'
import { amperes, farads, joules, plain, seconds, volts, watts } from '../../words/quantity.js'
import { type Explained, glowOf, type LampSetup, lampCautions, lampSources, lampsOf, lampWorking } from './lamps.js'

/** A supply as seen behind its rectifier. */
export interface BulkInput {
  /** reservoir capacitor [F] */
  readonly bulkF: number
  /** a resistive load on it [Ω], or a constant-power one [W]; neither: nothing draws */
  readonly loadOhm?: number | null
  readonly loadW?: number | null
  /** capacitor volts at which a constant-power load starts [V]; not known: an estimate is used and said */
  readonly startV?: number | null
  /** a short across the capacitor from then on [s] */
  readonly shortAfterS?: number | null
}

export interface LampTransient extends Explained {
  timeS: number[]
  filamentK: number[]
  glow: GlowWord[]
  bulkV: number[]
  /** rms over the half cycle before [A]; the first is the current at switch-on */
  currentA: number[]
  peakA: number
  i2t: number
  settlesToS: number | null
  endFilamentK: number
  endGlow: GlowWord
  endBulkV: number
  /** how often the load gave up for want of voltage */
  gaveUp: number
  energy: EnergyBalance
  /** what is seen, in one sentence */
  seen: Phrase
}

/**
 * What the lamps and the reservoir capacitor do from switch-on.
 *
 * @param durationS  [s], more than 0
 * @throws RangeError for lamps that melt on this mains, and outside the ranges of `switchOn`
 * @source {@link switchOn}; the start, stop and restart of a converter are project estimates
 */
export function lampTransient(
  setup: LampSetup & { mains: { frequencyHz: number } },
  load: BulkInput,
  switchAt: 'crest' | 'zero',
  durationS: number,
): LampTransient {
  const string = lampsOf(setup)
  const { voltageV, frequencyHz } = setup.mains
  const crestV = Math.SQRT2 * voltageV
  const startV = load.startV ?? defaultStartShare.value * crestV
  const run = switchOn({
    mainsV: voltageV,
    frequencyHz,
    switchAt,
    series: string,
    diode: bridgeDiode,
    bulkF: load.bulkF,
    load: bulkLoad(load, startV),
    shortAfterS: load.shortAfterS ?? undefined,
    durationS,
    samples: 600,
    settledBand,
  })
  const glow = run.filamentK.map(glowOf)
  const constantPower = load.loadW != null && load.loadW > 0
  return {
    timeS: run.timeS,
    filamentK: run.filamentK,
    glow,
    bulkV: run.bulkV,
    currentA: run.currentA,
    peakA: run.peakA,
    i2t: run.i2t,
    settlesToS: run.settlesToS,
    endFilamentK: run.endFilamentK,
    endGlow: glowOf(run.endFilamentK),
    endBulkV: run.endBulkV,
    gaveUp: run.gaveUp,
    energy: run.energy,
    seen: whatIsSeen(run, glow, load, durationS),
    working: [
      ...lampWorking(string),
      say`largest current ${amperes(run.peakA)} after ${seconds(run.peakAtS)}; cold lamps at the crest would pass ${volts(crestV)} / ${plain(string.coldOhm, 'Ω', 3)} = ${amperes(crestV / string.coldOhm)}`,
      say`capacitor ${farads(load.bulkF)} at the end: ${volts(run.endBulkV)}, ${joules(run.energy.capacitorJ, 3)}`,
      ...(constantPower
        ? [
            say`load ${watts(load.loadW as number)}: starts at ${volts(startV)}${load.startV == null ? say` (project estimate, ${0.6} to ${0.8} of the crest)` : say``}, gives up at ${volts(stopShare.value * startV)} and waits ${seconds(restartS.value)} (project estimates)`,
          ]
        : []),
      say`energy: ${joules(run.energy.sourceJ)} from the mains = ${joules(run.energy.radiatedJ)} given off and ${joules(run.energy.filamentJ)} stored by the filaments, ${joules(run.energy.bridgeJ)} in the bridge, ${joules(run.energy.loadJ)} in the load, ${joules(run.energy.capacitorJ)} in the capacitor${run.energy.shortedJ > 0 ? say`, ${joules(run.energy.shortedJ)} when it was shorted` : say``}`,
    ],
    cautions: [
      ...(run.meltedAtS === null
        ? []
        : [say`A filament melts after ${seconds(run.meltedAtS)}: these lamps are not for this mains.`]),
      say`The lamp limits current, not the energy already stored in a capacitor: a fault there can still flash.`,
      say`A lamp that has just been lit is hot and its resistance high; switched on again within seconds it behaves differently from a cold one.`,
      ...lampCautions(setup, string),
    ],
    sources: [
      ...new Set([
        ...lampSources(string),
        heatContentVoltageExponent.source,
        ...bridgeDiode.sources,
        ...(constantPower ? [defaultStartShare.source, stopShare.source, restartS.source] : []),
      ]),
    ],
  }
}

const bulkLoad = ({ loadOhm, loadW }: BulkInput, startV: number): BulkLoad => {
  if (loadOhm != null) return { kind: 'resistance', resistanceOhm: loadOhm }
  if (loadW != null && loadW > 0)
    return {
      kind: 'constant-power',
      powerW: loadW,
      startV,
      stopV: stopShare.value * startV,
      restartS: restartS.value,
    }
  return { kind: 'none' }
}

const rank = (word: GlowWord): number => glowWords.indexOf(word)
const inWords = (word: GlowWord): string => glowRows.find((row) => row.glow === word)?.seen ?? word

function whatIsSeen(run: SwitchOnRun, glow: readonly GlowWord[], load: BulkInput, durationS: number): Phrase {
  const end = glowOf(run.endFilamentK)
  const brightest = glow.reduce<GlowWord>((best, word) => (rank(word) > rank(best) ? word : best), 'none')
  const lastOther = glow.findLastIndex((word) => word !== end)
  const since = run.timeS[Math.min(lastOther + 1, run.timeS.length - 1)] ?? 0
  if (run.meltedAtS !== null) return say`the lamp flashes and burns out after ${seconds(run.meltedAtS)}`
  if (load.shortAfterS != null && load.shortAfterS < durationS)
    return say`from ${seconds(load.shortAfterS)} on the load is shorted: the lamp goes to ${inWords(end)} and stays so. Switch off.`
  if (run.gaveUp > 0)
    return say`the lamp flashes again and again (the load gave up ${run.gaveUp} ${run.gaveUp === 1 ? say`time` : say`times`}): too large a load for this lamp, or its output is shorted`
  if (end === 'full') return say`the lamp comes to full brightness and stays there: a short or nearly one. Switch off.`
  if (end === 'none' && brightest === end) return say`the lamp stays dark`
  if (brightest === end) return say`the lamp shows ${inWords(end)} and stays so`
  return say`a flash (${inWords(brightest)}), then from ${plain(since, 's', 2)} on: ${inWords(end)}; capacitors charging`
}

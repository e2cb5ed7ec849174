import { fluxRatio, voltageAtRatedFlux } from '../physics/flux.js'
import { atMost } from '../physics/tolerance.js'
import { homeFrequencySource } from '../tables/homeFrequencies.js'
import { commonPractice } from '../tables/source.js'
import {
  fluxClear,
  fluxStopAbove,
  frequencyMatch,
  speedFollowsFrequency,
  usualFrequencyLeastHz,
  usualFrequencyMostHz,
} from '../tables/thresholds.js'
import { joined, listed, type Phrase, say } from '../words/phrase.js'
import { decimal, hertz, percent, volts } from '../words/quantity.js'
import { nearWiring, underPower } from './action.js'
import { plateFrequencies } from './case/plateFrequencies.js'
import { windowsInUse } from './case/plateWindow.js'
import type { VoltageWindow } from './case/request.js'
import type { MainsSituation } from './case/situation.js'
import { american, converterOf, plateOf } from './example.js'
import type { Outcome } from './finding.js'
import { clear, type Judgement, type Text, together, uniqueSources, unknown } from './judgement.js'
import { machineFrequency } from './machineFrequency.js'
import { hasOwnFrequency } from './source.js'
import { mainsTopic } from './topic.js'
import { ratingPlate } from './words.js'

const rectifiesFirst = commonPractice(
  'Switch-mode supplies and frequency',
  'the mains is rectified before anything else, so 50 Hz and 60 Hz are the same to it',
)

/** Whether the frequency of the mains suits what is inside the supply. */
export const mainsFrequency = mainsTopic({
  name: 'mains-frequency',
  words: say`the mains frequency`,
  links: ['source', 'supply'],
  asks: [
    'site.country',
    'site.frequencyHz',
    'supply.input.frequenciesHz',
    'supply.technology',
    'supply.input.voltages',
    'converter.outputV',
  ],
  when: {
    stop: {
      rule: say`A transformer is driven at more than ${decimal(fluxStopAbove.value)} times the flux of its plate.`,
      example: { supply: american, converter: converterOf(100) },
    },
    unknown: {
      rule: say`The flux would be above the plate’s and it is not known whether the supply is a transformer or switch-mode, or the frequency of the place is not known.`,
      example: { supply: { ...plateOf(230, 230, [60]), technology: 'unknown' } },
    },
    caution: {
      rule: say`A transformer is driven above the flux of its plate, by no more than ${decimal(fluxStopAbove.value)} times.`,
      example: {
        supply: { ...plateOf(127, 127, [60]), technology: 'transformer' },
        converter: converterOf(100, 110),
      },
    },
    clear: {
      rule: say`The frequency stands on the plate, or the supply is switch-mode, or a transformer carries no more flux than its plate allows.`,
      example: {},
    },
  },
  judge(situation) {
    if (situation.supply.input.kind === 'dc') return []
    return together([judgeSupply(situation), ...machineFrequency(situation)])
  },
})

function judgeSupply(situation: MainsSituation): Judgement {
  const { supply, reach } = situation
  const siteHz = reach.frequencyHz
  const odd = siteHz !== null && isOdd(siteHz, supply.input.frequenciesHz)
  if (supply.technology === 'switch-mode') {
    if (odd) return unknown(() => oddFrequency(siteHz))
    const belowItsOwn = isBelowItsOwn(siteHz, supply.input.frequenciesHz)
    return belowItsOwn ? unknown(() => onlyHigher(situation)) : clear(() => switchMode(situation))
  }
  if (siteHz === null) return unknown(() => frequencyNotKnown(situation))
  const { windows } = windowsInUse(supply.input)
  const [window, ...others] = windows
  const at = (plate: VoltageWindow | null): Judgement => {
    const flux = judgeWindow(situation, siteHz, plate)
    return odd && flux.outcome !== 'stop' ? unknown(() => oddFrequency(siteHz)) : flux
  }
  const first = at(window ?? null)
  const each = [first, ...others.map(at)]
  return each.every(({ outcome }) => outcome === first.outcome) ? first : unknown(() => dependsOnSelector(each))
}

/** Neither on the plate, or between what it lists, nor near any frequency supplies are made for. */
function isOdd(siteHz: number, listedHz: readonly number[]): boolean {
  const lowest = Math.min(...listedHz, usualFrequencyLeastHz.value) * (1 - frequencyMatch.value)
  const highest = Math.max(...listedHz, usualFrequencyMostHz.value) * (1 + frequencyMatch.value)
  return !(siteHz >= lowest && siteHz <= highest)
}

/** A plate that names nothing but frequencies above the usual ones, and a mains below them all, or not known. */
function isBelowItsOwn(siteHz: number | null, listedHz: readonly number[]): boolean {
  const lowestHz = Math.min(...listedHz)
  if (listedHz.length === 0 || lowestHz <= usualFrequencyMostHz.value) return false
  return siteHz === null || siteHz < lowestHz * (1 - frequencyMatch.value)
}

function judgeWindow(situation: MainsSituation, siteHz: number, window: VoltageWindow | null): Judgement {
  const { supply, reach } = situation
  const plate = plateFrequencies(supply.input.frequenciesHz, window)
  if (!plate) return unknown(() => plateSaysNothing(situation, siteHz))
  const { frequenciesHz, assumed } = plate
  const notes = [...(assumed ? [assumed] : []), ...speedNote(situation, siteHz, frequenciesHz)]
  const sources = uniqueSources([
    ratingPlate,
    ...(assumed ? [homeFrequencySource] : []),
    ...(situation.device?.turns ? [speedFollowsFrequency] : []),
  ])
  if (frequenciesHz.some((hz) => Math.abs(siteHz - hz) <= frequencyMatch.value * hz))
    return clear(() => ({
      title: assumed
        ? say`The plate names no frequency; ${hertz(siteHz)} is what its voltage is used with at home`
        : say`${hertz(siteHz)} is what the ${supply.called} is made for: ${listed(frequenciesHz.map((hz) => hertz(hz)))}`,
      why: say`On the frequency it was made for it carries the flux it was made for.`,
      working: notes,
      action: null,
      sources: uniqueSources([...sources, frequencyMatch.source]),
    }))
  const voltageV = reach.voltageV
  const lowestHz = Math.min(...frequenciesHz)
  if (voltageV === null || window === null) return unknown(() => fluxNotKnown(situation, siteHz, frequenciesHz))
  const ratio = fluxRatio(voltageV, siteHz, window.max, lowestHz)
  const outcome = fluxOutcome(ratio, supply.technology === 'transformer')
  return {
    outcome,
    say: () => {
      const text = fluxWords({
        called: supply.called,
        outcome,
        ratio,
        voltageV,
        siteHz,
        ratedV: window.max,
        ratedHz: lowestHz,
      })
      const title = assumed ? say`${text.title} (no frequency on the plate: ${hertz(lowestHz)} taken)` : text.title
      return {
        ...text,
        title,
        working: [...text.working, ...notes],
        sources: uniqueSources([...sources, ...text.sources]),
      }
    },
  }
}

/** A flux above the plate's is judged only of what is known to be a transformer: else it may be a switch-mode supply. */
function fluxOutcome(ratio: number, transformer: boolean): Outcome {
  if (atMost(ratio, fluxClear.value)) return 'clear'
  if (!transformer) return 'unknown'
  return atMost(ratio, fluxStopAbove.value) ? 'caution' : 'stop'
}

function speedNote({ device }: MainsSituation, siteHz: number, frequenciesHz: readonly number[]): Phrase[] {
  if (!device?.turns) return []
  return frequenciesHz
    .filter((hz) => Math.abs(siteHz - hz) > frequencyMatch.value * hz)
    .map(
      (hz) =>
        say`a synchronous motor or clock made for ${hertz(hz)} turns at ${hertz(siteHz)} / ${hertz(hz)} = ${percent(siteHz / hz)} of its speed`,
    )
}

interface Flux {
  called: 'supply' | 'machine'
  outcome: Outcome
  ratio: number
  voltageV: number
  siteHz: number
  ratedV: number
  ratedHz: number
}

function fluxWords({ called, outcome, ratio, voltageV, siteHz, ratedV, ratedHz }: Flux): Text {
  const rightV = voltageAtRatedFlux(siteHz, ratedV, ratedHz)
  const working = [
    say`flux ratio r = (${volts(voltageV)} / ${hertz(siteHz)}) / (${volts(ratedV)} / ${hertz(ratedHz)}) = ${decimal(ratio, 4, 'up')}`,
    say`r = 1 at ${volts(ratedV)} × ${hertz(siteHz)} / ${hertz(ratedHz)} = ${volts(rightV)}`,
  ]
  const figures = say`${volts(voltageV)} ${hertz(siteHz)} puts ${decimal(ratio, 3, 'up')} times the plate’s flux into a transformer`
  switch (outcome) {
    case 'clear':
      return {
        title: say`${figures}: no more than it was made for`,
        why: say`A core that carries no more flux than rated neither saturates nor overheats.`,
        working,
        action: null,
        sources: [fluxClear.source],
      }
    case 'caution':
      return {
        title: say`${figures}: a little over what it was made for`,
        why: say`A small transformer runs near saturation already: it will hum more and run hotter.`,
        working: [...working, say`at most ${decimal(fluxStopAbove.value)} for a small transformer`],
        action: [
          underPower(say`Run it for short, attended periods at first and feel for heat with the plug pulled.`, 'mains'),
          say`At ${volts(rightV, 4, 'down')} the flux would be as rated.`,
        ],
        sources: [fluxClear.source, fluxStopAbove.source],
      }
    case 'stop':
      return {
        title: say`${figures}: it saturates`,
        why: say`The magnetising current rises far more than the flux: the winding overheats, even with no load.`,
        working: [...working, say`more than ${decimal(fluxStopAbove.value)}`],
        action: nearWiring(
          say`Do not run it on this mains. ${called === 'machine' ? say`Feed` : say`Use a supply whose plate names ${hertz(siteHz)}, or feed`} it no more than ${volts(rightV, 4, 'down')} through a transformer of that output: its own outputs then fall in the same proportion. No converter of this kind changes the frequency.`,
        ),
        sources: [fluxClear.source, fluxStopAbove.source],
      }
    case 'unknown':
      return {
        title: say`${figures}; whether it has one is not known`,
        why: say`A switch-mode supply does not mind the frequency; a transformer at more than its rated flux hums, overheats and may burn out.`,
        working,
        action: say`${tellApart} For a transformer, ${volts(rightV, 4, 'down')} would be right.`,
        sources: [fluxClear.source, fluxStopAbove.source, rectifiesFirst],
      }
  }
}

const tellApart =
  'Find out whether it is a switch-mode or a transformer supply: a transformer is heavy for its power (a kilogram for some 20\u00a0W), names one mains voltage, and hums; a switch-mode supply is light, often names 100\u00a0V to 240\u00a0V, and often says “switching” on the plate.'

const oddFrequency = (siteHz: number): Text => ({
  title: say`${hertz(siteHz)} is far from the 50\u00a0Hz and 60\u00a0Hz that supplies are made and tested for`,
  why: say`Filter capacitors pass more current as the frequency rises and reservoirs run empty as it falls; a transformer passes less of its power, or saturates.`,
  working: [say`usual input range: ${hertz(usualFrequencyLeastHz.value)} to ${hertz(usualFrequencyMostHz.value)}`],
  action: say`Check the mains frequency that was entered. If it holds, look for ${hertz(siteHz)} in the maker’s data and enter the frequencies it names.`,
  sources: [usualFrequencyLeastHz.source],
})

const onlyHigher = ({ supply, reach }: MainsSituation): Text => {
  const plate = listed(supply.input.frequenciesHz.map((hz) => hertz(hz)))
  return {
    title: say`The plate names ${plate} only; the mains has ${reach.frequencyHz === null ? say`a frequency that is not known` : hertz(reach.frequencyHz)}`,
    why: say`A switch-mode supply rectifies first, but its reservoir capacitors are sized for the frequency of its plate: on a lower one they run empty between the crests.`,
    working: [say`usual input range: ${hertz(usualFrequencyLeastHz.value)} to ${hertz(usualFrequencyMostHz.value)}`],
    action: say`Look in the maker’s data for a range that holds the frequency of this mains, and enter it.`,
    sources: [ratingPlate, usualFrequencyLeastHz.source],
  }
}

const switchMode = ({ reach }: MainsSituation): Text => ({
  title: say`A switch-mode supply does not mind ${reach.frequencyHz === null ? say`the mains frequency` : hertz(reach.frequencyHz)}`,
  why: say`It rectifies the mains first; 50\u00a0Hz and 60\u00a0Hz are the same to what follows.`,
  working: [],
  action: null,
  sources: [rectifiesFirst],
})

const frequencyNotKnown = ({ site, supply }: MainsSituation): Text => ({
  title: say`The mains frequency is not known${supply.input.frequenciesHz.length > 0 ? say`; the plate names ${listed(supply.input.frequenciesHz.map((hz) => hertz(hz)))}` : say``}`,
  why: say`A 60\u00a0Hz transformer on 50\u00a0Hz carries a fifth more flux and may overheat.`,
  working: [],
  action: hasOwnFrequency(site.source)
    ? say`Read the frequency on the plate of the source, or have it measured there by a qualified person, and enter it. ${tellApart}`
    : say`Enter the country, or the frequency, of the place where it will be used. ${tellApart}`,
  sources: [fluxClear.source, ratingPlate],
})

const plateSaysNothing = ({ supply }: MainsSituation, siteHz: number): Text => ({
  title: say`Which frequency the ${supply.called} is made for is not known; the mains has ${hertz(siteHz)}`,
  why: say`A 60\u00a0Hz transformer on 50\u00a0Hz carries a fifth more flux and may overheat.`,
  working: [],
  action: say`Read the input line of the rating plate and enter its voltage and frequency (50\u00a0Hz, 60\u00a0Hz, 50/60\u00a0Hz).${supply.technology === null ? say` ${tellApart}` : say``}`,
  sources: [fluxClear.source, ratingPlate],
})

const fluxNotKnown = ({ reach }: MainsSituation, siteHz: number, frequenciesHz: readonly number[]): Text => ({
  title: say`${hertz(siteHz)} is not on the plate (${listed(frequenciesHz.map((hz) => hertz(hz)))}); ${reach.voltageV === null ? say`the voltage that reaches it` : say`the voltage on the plate`} is not known`,
  why: say`What a transformer carries depends on voltage over frequency; with one of them missing nobody can tell.`,
  working: [],
  action: say`Enter the input voltage on the plate and the mains voltage. ${tellApart}`,
  sources: [fluxClear.source, ratingPlate],
})

const dependsOnSelector = (each: readonly Judgement[]): Text => {
  const texts = each.map(({ say }) => say())
  return {
    title: say`Whether the frequency suits depends on where the selector stands: ${joined(
      texts.map(({ title }) => title),
      say`; `,
    )}`,
    why: say`The flux follows the voltage the winding is set for.`,
    working: texts.flatMap(({ working }) => working),
    action: say`With the cord unplugged, read where the selector stands and enter it.`,
    sources: uniqueSources(texts.flatMap(({ sources }) => sources)),
  }
}

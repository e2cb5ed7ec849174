import { fluxRatio, voltageAtRatedFlux } from '../physics/flux.js'
import { atMost } from '../physics/tolerance.js'
import type { Source } from '../tables/source.js'
import { converterReserve, converterSizesVA, fluxClear, fluxStopAbove } from '../tables/thresholds.js'
import { type Phrase, say } from '../words/phrase.js'
import { decimal, hertz, voltAmperes, volts } from '../words/quantity.js'
import { plateFrequencies } from './case/plateFrequencies.js'
import type { Converter } from './case/request.js'
import type { Mains, PreparedSite, PreparedSupply } from './case/situation.js'
import { noIsolation, phaseCut, standardSizeVA } from './converter.js'
import { inputPower } from './inputPower.js'
import { uniqueSources } from './judgement.js'
import { mainsVoltage } from './mainsVoltage.js'
import { nominalOutputV } from './matching/nominalOutput.js'
import { reachOf } from './reach.js'
import { qualifiedHands } from './words.js'

export interface ConverterKind {
  kind: NonNullable<Converter['kind']>
  /** null: it cannot be told from what was entered */
  suits: boolean | null
  reason: Phrase
}

export interface ConverterChoice {
  /** what the supply takes at most [VA]; null where its plate does not say */
  inputVA: number | null
  /** the rating a converter should have: the supply's, with reserve [VA] */
  neededVA: number | null
  /** the usual size that covers it [VA]; null where none does */
  standardVA: number | null
  /** output voltage to ask for [V]; null where the plate names none */
  outputV: number | null
  /** flux in a transformer at that output and the site's frequency over the plate's [1], the highest of several systems */
  fluxRatio: number | null
  /** whether the site's mains needs one at all; null where it cannot be told, or systems differ */
  needed: boolean | null
  kinds: ConverterKind[]
  working: Phrase[]
  cautions: Phrase[]
  sources: Source[]
}

/** Which converter a supply needs on a site's mains: size, output voltage, kinds that suit. */
export function chooseConverter(site: PreparedSite, supply: PreparedSupply): ConverterChoice {
  const power = inputPower(supply)
  const neededVA = power ? converterReserve.value * power.powerVA : null
  const standardVA = neededVA === null ? null : standardSizeVA(neededVA)
  const { windows, selectorV } = supply.input
  const outputV = selectorV ?? nominalOutputV(windows, site.systems[0]?.voltageV ?? null)
  const flux = outputV === null ? null : highestFlux(site.systems, supply, outputV)
  return {
    inputVA: power?.powerVA ?? null,
    neededVA,
    standardVA,
    outputV,
    fluxRatio: flux?.ratio ?? null,
    needed: needed(site, supply),
    kinds: kindsFor(supply, flux, neededVA !== null && standardVA === null),
    working: [
      ...(power
        ? [
            ...power.working,
            say`input power from ${power.basis}`,
            say`${decimal(converterReserve.value)} × ${voltAmperes(power.powerVA, 4, 'up')} = ${voltAmperes(neededVA ?? 0, 4, 'up')}`,
          ]
        : [
            say`what the supply takes cannot be told: neither VA, amperes with a voltage, watts nor outputs with amperes are entered`,
          ]),
      ...(flux?.working ?? []),
    ],
    cautions: [
      say`The frequency stays that of the mains: no transformer changes it.`,
      say`An autotransformer isolates nothing: its output is as dangerous to touch as the mains.`,
      say`Read the converter’s own plate: its input has to name the voltage and the frequency of the site’s mains.`,
      say`A class I supply needs its earth through the converter: measure it from outlet to plug.`,
      ...(standardVA === null && neededVA !== null
        ? [
            say`${voltAmperes(neededVA, 3, 'up')} is more than the largest usual size of ${voltAmperes(Math.max(...converterSizesVA.value))}.`,
          ]
        : []),
      say`${qualifiedHands}`,
    ],
    sources: uniqueSources([
      ...(power?.sources ?? []),
      converterReserve.source,
      converterSizesVA.source,
      phaseCut,
      noIsolation,
      ...(flux ? [fluxClear.source, fluxStopAbove.source] : []),
    ]),
  }
}

function needed(site: PreparedSite, supply: PreparedSupply): boolean | null {
  const outcomes = site.systems.map((mains) => {
    const situation = { site, mains, reach: reachOf(mains, null), supply, cord: null, converter: null, device: null }
    return mainsVoltage.judge(situation)[0]?.outcome
  })
  if (outcomes.every((outcome) => outcome === 'stop')) return true
  return outcomes.every((outcome) => outcome === 'clear' || outcome === 'caution') ? false : null
}

interface Flux {
  ratio: number
  rightV: number
  working: Phrase[]
}

function highestFlux(systems: readonly Mains[], { input }: PreparedSupply, outputV: number): Flux | null {
  const window = input.windows.find(({ min, max }) => outputV >= min && outputV <= max) ?? {
    min: outputV,
    max: outputV,
  }
  const plate = plateFrequencies(input.frequenciesHz, window)
  if (!plate) return null
  const ratedHz = Math.min(...plate.frequenciesHz)
  const found = systems.flatMap(({ frequencyHz }): Flux[] => {
    if (frequencyHz === null) return []
    const ratio = fluxRatio(outputV, frequencyHz, window.max, ratedHz)
    const rightV = voltageAtRatedFlux(frequencyHz, window.max, ratedHz)
    return [
      {
        ratio,
        rightV,
        working: [
          say`flux ratio r = (${volts(outputV)} / ${hertz(frequencyHz)}) / (${volts(window.max)} / ${hertz(ratedHz)}) = ${decimal(ratio, 4, 'up')}; r = 1 at ${volts(rightV)}`,
          ...(plate.assumed ? [plate.assumed] : []),
        ],
      },
    ]
  })
  if (found.length < systems.length) return null
  return found.toSorted((one, other) => other.ratio - one.ratio)[0] ?? null
}

function kindsFor({ technology }: PreparedSupply, flux: Flux | null, beyond: boolean): ConverterKind[] {
  const transformer = suitsTransformer(technology, flux)
  const suits = beyond ? false : transformer.suits
  const size = beyond ? ' None of the usual sizes is large enough.' : ''
  return [
    {
      kind: 'autotransformer',
      suits,
      reason: say`Changes the voltage and keeps the sine; isolates nothing. ${transformer.reason}${size}`,
    },
    {
      kind: 'isolating',
      suits,
      reason: say`Changes the voltage, keeps the sine, and separates the output from the mains; heavier and dearer. ${transformer.reason}${size}`,
    },
    {
      kind: 'electronic',
      suits: false,
      reason: say`Cuts the sine for heaters and lamps; a supply charges to the crest, which stays as high as the mains. Never with a supply.`,
    },
  ]
}

function suitsTransformer(
  technology: PreparedSupply['technology'],
  flux: Flux | null,
): { suits: boolean | null; reason: Phrase } {
  if (technology === 'switch-mode')
    return { suits: true, reason: say`A switch-mode supply does not mind the frequency.` }
  if (!flux) return { suits: null, reason: say`Whether the frequency suits cannot be told from what was entered.` }
  if (atMost(flux.ratio, fluxClear.value))
    return { suits: true, reason: say`The flux in a transformer stays at or below the plate’s.` }
  const over = say`At this frequency a transformer gets ${decimal(flux.ratio, 3, 'up')} times its flux; ${volts(flux.rightV, 4, 'down')} would be right`
  if (technology === null)
    return { suits: null, reason: say`${over}. Find out whether the supply is a switch-mode one, which does not mind.` }
  return atMost(flux.ratio, fluxStopAbove.value)
    ? { suits: true, reason: say`${over}: it will run warm.` }
    : { suits: false, reason: say`${over}: it would overheat.` }
}

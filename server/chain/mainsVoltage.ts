import { doublerVoltageV } from '../physics/doubler.js'
import { fluxRatio } from '../physics/flux.js'
import { oppositionVA } from '../physics/opposition.js'
import { atMost } from '../physics/tolerance.js'
import { plateNominalFor } from '../tables/plateNominals.js'
import {
  extraLowVoltageMostV,
  fluxStopAbove,
  nominalMatch,
  voltageCautionBelow,
  voltageStopAbove,
  voltageStopBelow,
} from '../tables/thresholds.js'
import { capital, listed, or, type Phrase, say } from '../words/phrase.js'
import { amperes, decimal, percent, voltAmperes, volts } from '../words/quantity.js'
import { type Action, byQualified, nearWiring, underPower } from './action.js'
import { plateFrequencies } from './case/plateFrequencies.js'
import { positionFor, settingsOf, windowsInUse } from './case/plateWindow.js'
import type { VoltageWindow } from './case/request.js'
import type { MainsSituation } from './case/situation.js'
import { plateOf } from './example.js'
import { byWorst } from './finding.js'
import { type Judgement, stop, type Text, together, uniqueSources, unknown } from './judgement.js'
import { loadAtReach } from './matching/loadCurrent.js'
import { testedTop } from './matching/testedTop.js'
import { hasOwnVoltage, sourceJudgements } from './source.js'
import { mainsTopic } from './topic.js'
import { outcomeOf, type WindowFit, windowAgainstMains } from './windowAgainstMains.js'
import { qualifiedHands, ratingPlate, windowText } from './words.js'

/** Whether the supply may meet the voltage that reaches it. */
export const mainsVoltage = mainsTopic({
  name: 'mains-voltage',
  words: say`the mains voltage`,
  links: ['source', 'supply'],
  asks: ['site.country', 'site.voltageV', 'supply.input.voltages', 'supply.input.selectorV', 'converter.outputV'],
  when: {
    stop: {
      rule: say`The mains is more than ${decimal(voltageStopAbove.value)} times the top of the plate, or less than ${decimal(voltageStopBelow.value)} times its bottom; or the selector is set so; or the source is a shaver outlet, or an inverter with steps for a transformer or motor.`,
      example: { supply: plateOf(120) },
    },
    unknown: {
      rule: say`The plate gives no input voltage, the mains of the place, or what a source of its own voltage gives, is not known, or the plate has several settings, or speaks of a selector, and the selector’s place is not given.`,
      example: { supply: { input: { frequenciesHz: [50], currentA: 0.2 } } },
    },
    caution: {
      rule: say`The top of the mains band is above what the plate was tested at, or the mains or the bottom of its band is below ${decimal(voltageCautionBelow.value)} times the plate; or the source is none with one live conductor and a neutral.`,
      example: { supply: plateOf(220) },
    },
    clear: {
      rule: say`The mains lies within the plate’s window, or within ${percent(nominalMatch.value)} of its voltage, or the plate names it by an older name.`,
      example: {},
    },
  },
  judge: (situation) => together([...judgeVoltage(situation), ...sourceJudgements(situation)]),
})

/** The same of the voltage alone, whatever stands behind the socket. */
export function judgeVoltage(situation: MainsSituation): Judgement[] {
  const { supply, reach } = situation
  const { input } = supply
  if (input.kind === 'dc') return [stop(() => directCurrentInput(situation))]
  if (input.threePhase) return [stop(threePhaseInput)]
  const inUse = windowsInUse(input)
  if (inUse.decidedBy === 'nothing') return [unknown(() => plateSaysNothing(situation))]
  const voltageV = reach.voltageV
  if (voltageV === null) return [unknown(() => mainsNotKnown(situation, inUse.windows))]
  const band = reach.minV === null || reach.maxV === null ? null : { minV: reach.minV, maxV: reach.maxV }
  const fitted = inUse.windows.map((window) => ({
    window,
    fit: windowAgainstMains(window, voltageV, band, reach.frequencyHz),
  }))
  // of windows that the unit finds itself it works in the one that suits best
  const itself = inUse.decidedBy === 'open' && input.setsItself
  const [only] = itself ? fitted.toSorted((one, other) => -byWorst(asJudged(one), asJudged(other))) : fitted
  if (only && (itself || inUse.decidedBy === 'one' || inUse.decidedBy === 'position')) {
    const at = { ...only, voltageV, situation }
    return [{ outcome: outcomeOf[only.fit], say: () => windowWords(at) }]
  }
  const say = (): Text => selectorWords(situation, voltageV, fitted, inUse.decidedBy === 'contradiction')
  const noneServes = positionFor(inUse.windows, { voltageV, frequencyHz: reach.frequencyHz }) === null
  return [noneServes || fitted.every(({ fit }) => outcomeOf[fit] === 'stop') ? stop(say) : unknown(say)]
}

const asJudged = ({ fit }: { fit: WindowFit }) => ({ outcome: outcomeOf[fit] })

/** "230 V mains", or "the converter's 120 V". */
const named = ({ reach }: MainsSituation, voltageV: number): Phrase =>
  reach.through === 'converter' ? say`the converter’s ${volts(voltageV)}` : say`${volts(voltageV)} mains`

interface At {
  situation: MainsSituation
  window: VoltageWindow
  voltageV: number
  fit: WindowFit
}

function windowWords(at: At): Text {
  const { situation, window, voltageV, fit } = at
  const { minV, maxV, sources } = situation.reach
  const mains = capital(named(situation, voltageV))
  const plate = windowText(window)
  const tested = testedTop(window)
  const bandLine = minV === null || maxV === null ? [] : [say`band at the site: ${volts(minV)} to ${volts(maxV)}`]
  switch (fit) {
    case 'made for it':
      return {
        title: say`${mains} is what the ${situation.supply.called} is made for: ${plate}`,
        why: say`On the mains it was made for it works within its limits.`,
        working: [
          window.min === window.max
            ? say`|${volts(voltageV)} − ${volts(window.max)}| / ${volts(voltageV)} = ${percent(Math.abs(voltageV - window.max) / voltageV)}, within ${percent(nominalMatch.value)}`
            : say`${volts(voltageV)} lies in ${plate}, give or take ${percent(nominalMatch.value)}`,
          ...bandLine,
        ],
        action: null,
        sources: uniqueSources([ratingPlate, nominalMatch.source, ...sources]),
      }
    case 'made for it by another name': {
      const nominal = plateNominalFor(window, { voltageV, frequencyHz: situation.reach.frequencyHz })
      return {
        title: say`${mains} is what a plate of ${plate} was made for: ${volts(nominal?.plateV ?? window.max)} is another name of this mains`,
        why: say`The nominal voltage was named anew; what the sockets carry, and the units made for it, stayed the same.`,
        working: bandLine,
        action: null,
        sources: uniqueSources([ratingPlate, ...(nominal?.sources ?? []), ...sources]),
      }
    }
    case 'far too high':
      return {
        title: say`${mains} is ${decimal(voltageV / window.max, 3)} times the ${volts(window.max)} the ${bySelector(situation) ? say`selector is set to` : say`plate allows`}`,
        why: tooHigh(at),
        working: [
          say`${volts(voltageV)} / ${volts(window.max)} = ${decimal(voltageV / window.max, 3)}, more than ${decimal(voltageStopAbove.value)}`,
          ...doubling(at),
          ...bandLine,
        ],
        action: bySelector(situation)
          ? [say`Do not connect it.`, ...setSelector(at)]
          : say`Do not connect it to ${named(situation, voltageV)}. ${window.max <= extraLowVoltageMostV.value ? say`It takes extra-low voltage and never mains: use a supply whose plate includes ${volts(voltageV)}.` : say`${anotherOr(situation, voltageV)} a converter with an output of ${plate}.`} ${qualifiedHands}`,
        sources: uniqueSources([ratingPlate, voltageStopAbove.source, ...sources]),
      }
    case 'far too low':
      return {
        title: say`${mains} is only ${decimal(voltageV / window.min, 3)} of the ${volts(window.min)} the ${bySelector(situation) ? say`selector is set to` : say`plate asks for`}`,
        why: say`It will not run, or only in fits and starts; a motor or relay in it may hang and overheat. The low voltage itself adds no shock hazard beyond that of any mains.`,
        working: [
          say`${volts(voltageV)} / ${volts(window.min)} = ${decimal(voltageV / window.min, 3)}, less than ${decimal(voltageStopBelow.value)}`,
          ...bandLine,
        ],
        action: bySelector(situation)
          ? setSelector(at)
          : nearWiring(say`${anotherOr(situation, voltageV)} a converter with an output of ${plate}.`),
        sources: uniqueSources([ratingPlate, voltageStopBelow.source, ...sources]),
      }
    case 'beyond its test':
      return {
        title: say`${mains} may rise to ${volts(maxV ?? voltageV)}; a plate of ${plate} was tested up to ${volts(tested.testedV)}`,
        why: say`On the high side of the band it runs hotter than its type test proved, and old insulation and capacitors have the least in hand.`,
        working: [say`${volts(tested.ratedV)} × ${decimal(1 + tested.above)} = ${volts(tested.testedV)}`, ...bandLine],
        action: [
          ...setSelector(at),
          byQualified(say`Have the mains measured where it will be used, at a quiet hour too.`, 'mains'),
          ...opposed(at),
          ...(inside(situation)
            ? [say`Where the voltage stands near the top, have it brought down by a transformer of the right output.`]
            : [say`Where the voltage stands near the top, use a supply made for this mains.`]),
          underPower(say`Keep first runs short and attended; feel for heat with the plug pulled.`, 'mains'),
        ],
        sources: uniqueSources([ratingPlate, ...tested.sources, ...sources]),
      }
    case 'may drop out':
      return {
        title: say`${mains} may fall to ${volts(minV ?? voltageV)}; a plate of ${plate} was tested down to ${volts(window.min * voltageCautionBelow.value)}`,
        why: say`On the low side of the band the output may sag or drop out under load.`,
        working: [
          say`${volts(window.min)} × ${decimal(voltageCautionBelow.value)} = ${volts(window.min * voltageCautionBelow.value)}`,
          ...bandLine,
        ],
        action: [
          ...setSelector(at),
          underPower(
            say`Measure the output under load when the mains is low, and treat odd resets of the machine as a sign of it.`,
            'mains',
          ),
        ],
        sources: uniqueSources([ratingPlate, voltageCautionBelow.source, ...sources]),
      }
    case 'within':
      return {
        title: say`${mains} lies within what a plate of ${plate} was tested for`,
        why: say`Both ends of the band stay inside the type test.`,
        working: [
          ...bandLine,
          say`tested from ${volts(window.min * voltageCautionBelow.value)} to ${volts(tested.testedV)}`,
        ],
        action: null,
        sources: uniqueSources([ratingPlate, ...tested.sources, ...sources]),
      }
    case 'band not known':
      return {
        title: say`${mains} is near the plate’s ${plate}, but the mains behind the converter is not known`,
        why: say`A converter passes on every percent the mains is high or low.`,
        working: [],
        action: say`Enter the country, or the mains voltage, of the place where it will be used.`,
        sources: [ratingPlate],
      }
  }
}

/** A few per cent taken off by a small transformer, for what is no switch-mode supply and has a known current; nothing elsewhere. */
function opposed({ situation, window, voltageV }: At): Action[] {
  const { supply } = situation
  const load = loadAtReach(situation)
  if (supply.technology === 'switch-mode' || !load || voltageV <= window.max * (1 + nominalMatch.value)) return []
  const leastVA = oppositionVA(voltageV, window.max, load.currentA)
  return [
    byQualified(
      say`The usual remedy is a small transformer in opposition: a secondary of ${volts(voltageV - window.max, 2, 'down')} in series against the mains, for ${amperes(load.currentA, 2, 'up')} at least (${voltAmperes(leastVA, 2, 'up')}), its primary on the mains. It does not isolate; the wrong way round it adds as much. A licensed electrician builds it into a case of its own, fused, earth straight through, under local codes, and measures it before anything is joined.`,
    ),
  ]
}

/** Whether the supply is inside the machine: no other supply can stand in for it. */
const inside = ({ supply }: MainsSituation): boolean => supply.called === 'machine'

/** The beginning of what to do about a wrong voltage: another supply where there can be one. */
const anotherOr = (situation: MainsSituation, voltageV: number): Phrase =>
  inside(situation) ? say`Use` : say`Use a supply whose plate includes ${volts(voltageV)}, or`

const bySelector = ({ supply }: MainsSituation): boolean => supply.input.selectorV !== null

/** Which position to set, where the selector stands at another: its fuse-link is part of the setting. */
function setSelector({ situation, window, voltageV }: At): Phrase[] {
  const { supply, reach } = situation
  if (!bySelector(situation)) return []
  const position = positionFor(settingsOf(supply.input), { voltageV, frequencyHz: reach.frequencyHz })
  if (position && position.min === window.min && position.max === window.max) return []
  return [
    position
      ? say`With the cord unplugged, set the selector to ${windowText(position)}, check the setting twice, and enter it here again. ${fuseOfSetting}`
      : say`With the cord unplugged, set the selector to the position for ${volts(voltageV)} if it has one, check the setting twice, and enter it here again. ${fuseOfSetting}`,
  ]
}

const fuseOfSetting =
  'Another setting often wants another fuse-link: the one printed beside the holder for it belongs in before power.'

/** Whether a transformer's core saturates, as far as its plate tells: flux goes with voltage over frequency. */
function saturates({ situation, window, voltageV }: At): boolean {
  const { frequencyHz } = situation.reach
  const plate = plateFrequencies(situation.supply.input.frequenciesHz, window)
  if (frequencyHz === null || !plate) return true
  return !atMost(fluxRatio(voltageV, frequencyHz, window.max, Math.min(...plate.frequenciesHz)), fluxStopAbove.value)
}

function tooHigh(at: At): Phrase {
  const { situation, window, voltageV } = at
  const times = decimal(voltageV / window.max, 3)
  if (situation.supply.technology === 'transformer' && !saturates(at))
    return say`Every output stands ${times} times too high: regulators, capacitors and the machine get it. The core itself does not saturate: at this frequency it carries no more flux than its plate allows for.`
  if (situation.supply.technology === 'transformer')
    return say`The winding gets ${times} times its voltage: the core saturates, it overheats within minutes, and every output stands ${times} times too high.`
  return bySelector(situation)
    ? say`On the low setting the input works as a voltage doubler: the reservoir capacitors and switches get twice the voltage they are made for and may burst at once.`
    : say`Input parts get more than they are made for: they may fail at once, loudly, and may pass the fault on to the machine.`
}

function doubling({ situation, voltageV }: At): Phrase[] {
  if (!bySelector(situation) || situation.supply.technology === 'transformer') return []
  const meant = Math.SQRT2 * voltageV
  return [
    say`voltage doubler: 2 × √2 × ${volts(voltageV)} = ${volts(doublerVoltageV(voltageV))} on capacitors meant for √2 × ${volts(voltageV)} = ${volts(meant)}`,
  ]
}

function selectorWords(
  situation: MainsSituation,
  voltageV: number,
  fitted: readonly { window: VoltageWindow; fit: WindowFit }[],
  contradiction: boolean,
): Text {
  const each = fitted.map(({ window, fit }) => windowWords({ situation, voltageV, window, fit }))
  const positions = fitted.map(({ window }) => windowText(window))
  const position = positionFor(
    fitted.map(({ window }) => window),
    { voltageV, frequencyHz: situation.reach.frequencyHz },
  )
  const suits = position ? [windowText(position)] : []
  const mains = named(situation, voltageV)
  const { selectorV } = situation.supply.input
  const setting = selectorV === null ? '' : volts(selectorV)
  return {
    title: contradiction
      ? say`The selector is entered at ${setting}, which is none of the plate’s ${listed(positions.slice(0, -1))}`
      : suits.length === 0
        ? say`No position of the selector suits ${mains}: ${listed(positions)}`
        : say`The plate names ${listed(positions)}; where the selector stands is not known`,
    why:
      suits.length === 0
        ? say`Every setting puts the input outside what it is made for.`
        : say`One position suits, another may destroy the ${situation.supply.called} the moment it is plugged in: a low setting on high mains puts twice the voltage on its capacitors.`,
    working: fitted.flatMap(({ window }, index) => [
      say`set to ${windowText(window)}: ${each[index]?.title ?? say``}`,
      ...(each[index]?.working ?? []),
    ]),
    action:
      suits.length === 0
        ? nearWiring(
            inside(situation)
              ? say`Do not connect it to ${mains}. Use a converter with an output that one of its positions names.`
              : say`Do not connect it to ${mains}. Use a supply, or a converter output, that one of its positions names.`,
          )
        : say`With the cord unplugged, look for a switch or a turnable fuse drawer with these voltages, read where it stands, and enter it. It has to stand at ${listed(suits, or)}. ${fuseOfSetting} A unit without a switch says on its plate that it sets itself; then enter the window that includes ${volts(voltageV)}.`,
    sources: uniqueSources(each.flatMap(({ sources }) => sources)),
  }
}

const directCurrentInput = ({ supply, reach }: MainsSituation): Text => {
  const plate = listed(supply.input.windows.map(windowText), or)
  return {
    title: say`The plate asks for ${plate ? say`${plate} ` : say``}direct current, not for ${reach.voltageV === null ? say`mains` : say`${volts(reach.voltageV)} mains`}`,
    why: say`A unit made for a car, a battery or a USB socket has nothing in it that withstands mains: it fails at once and can put mains on the machine.`,
    working: [],
    action: say`Never connect it to mains. Use a supply whose plate names the mains voltage.`,
    sources: [ratingPlate],
  }
}

const threePhaseInput = (): Text => ({
  title: say`The plate asks for three-phase mains`,
  why: say`A socket outlet gives one phase; the unit does not run from it, and its connection is part of the fixed wiring.`,
  working: [],
  action: nearWiring(say`Do not fit a plug to it.`),
  sources: [ratingPlate],
})

const plateSaysNothing = ({ reach, supply }: MainsSituation): Text => ({
  title: say`The input voltage of the ${supply.called} is not known${reach.voltageV === null ? say`` : say`; it would meet ${volts(reach.voltageV)}`}`,
  why:
    supply.called === 'machine'
      ? say`A machine for another mains voltage can be destroyed the moment it is plugged in.`
      : say`A supply for another mains voltage can be destroyed, and can destroy the machine, the moment it is plugged in.`,
  working: [],
  action: say`Read the rating plate, underneath or beside the inlet, and enter its input line (INPUT, PRI, ~). Without a plate find the maker’s data by its part number. Do not try it out.`,
  sources: [ratingPlate],
})

const mainsNotKnown = ({ reach, site, supply }: MainsSituation, windows: readonly VoltageWindow[]): Text => ({
  title:
    reach.through === 'converter'
      ? say`The converter’s output voltage is not known; the plate asks for ${listed(windows.map(windowText), or)}`
      : hasOwnVoltage(site.source)
        ? say`What voltage the source gives is not known; the plate asks for ${listed(windows.map(windowText), or)}`
        : say`Where the ${supply.called} will be used is not known; its plate asks for ${listed(windows.map(windowText), or)}`,
  why: say`Without the mains voltage nobody can tell whether the ${supply.called} may meet it.`,
  working: [],
  action:
    reach.through === 'converter'
      ? say`Read the output voltage on the converter’s plate and enter it.`
      : hasOwnVoltage(site.source)
        ? [
            say`Read what it gives on its own plate and enter it as the voltage of the socket; the country’s mains says nothing of it.`,
            byQualified(say`Without a plate it is found out by whoever looks after the source.`),
          ]
        : say`Enter the country, or the voltage and frequency, of the place where it will be used. In a country with several systems ask the house’s electrician or the electricity company which one the socket has.`,
  sources: [ratingPlate],
})

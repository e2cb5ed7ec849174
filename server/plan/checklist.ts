import type { Arrangement } from '../chain/case/arrangement.js'
import { isFor, settingsOf } from '../chain/case/plateWindow.js'
import type { PreparedDevice, PreparedSite, PreparedSupply } from '../chain/case/situation.js'
import type { CheckResponse, Finding, Verdict } from '../chain/finding.js'
import { topicTag } from '../chain/topicTag.js'
import { mainsText } from '../chain/words.js'
import { polarityText } from '../facts/plug.js'
import { plugOuterMost } from '../tables/thresholds.js'
import { type Phrase, say, type Words } from '../words/phrase.js'
import { millimetres, quantity, volts } from '../words/quantity.js'
import type { Told } from '../words/tell.js'
import { isSame } from '../words/unique.js'
import type { Caution, FirstPowerPlan, FirstPowerStage, StageName, Step } from './firstPowerPlan.js'
import { stagesBefore } from './gateResults.js'
import { mainsBand } from './stages/facts.js'
import { markedFor } from './stages/meterOnLamp.js'
import { outletOf } from './stages/outlet.js'
import { step } from './stages/step.js'

export interface ChecklistLine extends Step {
  /** something is written down here, a reading or words */
  writes: boolean
  /** the same limits where the reading is in volts */
  lowV?: number
  highV?: number
}

export interface ChecklistStage {
  title: Words
  /** what to stop for before the first line of this stage; null: no pause */
  pause: Words | null
  lines: ChecklistLine[]
}

/** A line with the number that it has on plan, job, paper and phone: "3.5". */
export interface NumberedLine extends ChecklistLine {
  number: string
}

export interface NumberedStage extends ChecklistStage {
  number: number
  lines: NumberedLine[]
}

/** The bench checklist of one check and one plan, as plain data in the order it is worked through. */
export interface Checklist {
  verdict: Verdict
  stages: NumberedStage[]
}

export interface ChecklistFacts {
  arrangement: Arrangement
  assessment: CheckResponse
  plan: FirstPowerPlan
  site: PreparedSite
  supply: PreparedSupply
  device: PreparedDevice
}

const line = (key: string, text: Phrase, rest: Partial<Step> & { writes?: true } = {}): ChecklistLine =>
  asLine({ ...rest, ...step(key, text, rest) })

/** A step as a line; the limits also under the names the JSON promises for volts. */
function asLine(step: Step & { writes?: boolean }): ChecklistLine {
  const written = { ...step, writes: step.writes ?? step.unit !== null }
  if (step.unit !== 'V') return written
  return {
    ...written,
    ...(step.low === null ? {} : { lowV: step.low }),
    ...(step.high === null ? {} : { highV: step.high }),
  }
}

const noLimit: Caution = {
  signal: 'DANGER',
  hazard: say`Without the lamp nothing but the fuse-link limits a fault.`,
  consequence: say`A fault now draws the full current of the mains: fire and shock.`,
  avoid: say`Go on only if every line before this one was within its limits.`,
  electric: true,
}

/** What to do first about it: nothing that needs the mains, as nothing is plugged in before these lines. */
const firstAction = ({ actions }: Finding): Pick<Step, 'expect' | 'who'> => {
  const first = actions.find(({ power }) => power !== 'mains')
  return { expect: first ? say`${first.do}` : null, who: first?.who ?? actions[0]?.who ?? 'you' }
}

/** What must change or be found out before anything is plugged in: the killer items of this case. */
function openPoints({ findings }: CheckResponse): ChecklistLine[] {
  return findings.flatMap((finding, index) => {
    if (finding.outcome === 'stop')
      return line(`before.stop-${index}`, say`Must change first (${topicTag(finding.topic)}): ${finding.title}`, {
        ...firstAction(finding),
        stopIf: say`it has not changed: nothing is plugged in`,
      })
    if (finding.outcome === 'unknown')
      return line(`before.unknown-${index}`, say`Find out (${topicTag(finding.topic)}): ${finding.title}`, {
        writes: true,
        ...firstAction(finding),
        stopIf: say`it stays unknown`,
      })
    return []
  })
}

const cautionsToKeep = ({ findings }: CheckResponse): ChecklistLine[] =>
  findings
    .filter(({ outcome }) => outcome === 'caution')
    .map((finding, index) =>
      line(
        `before.caution-${index}`,
        say`Take care (${topicTag(finding.topic)}): ${finding.title}`,
        firstAction(finding),
      ),
    )

/** Asked for only where something may go on the mains. */
function mainsLine({ site, plan }: ChecklistFacts): ChecklistLine[] {
  if (!plan.stages.some(onMains)) return []
  const [system, ...others] = site.systems
  if (!system || others.length > 0 || system.voltageV === null) return []
  const { minV, maxV } = system
  const limits = mainsBand({ voltageV: system.voltageV, minV, maxV })
  return [
    line(
      'before.mains-volts',
      say`Have the socket’s voltage measured: AC volts, range above ${volts(limits.high)}, ${markedFor(system.voltageV)}.`,
      {
        expect: say`${mainsText(system)}: ${volts(limits.low)} to ${volts(limits.high)}`,
        unit: 'V',
        ...limits,
        stopIf: say`outside this band`,
        link: 'source',
        who: 'qualified',
        power: 'mains',
      },
    ),
  ]
}

function selectorLine({ supply, plan }: ChecklistFacts): ChecklistLine[] {
  const settings = settingsOf(supply.input)
  if (settings.length < 2 && supply.input.positions === null) return []
  const mainsV = plan.mains?.voltageV ?? null
  const fitting = settings.filter((setting) => mainsV !== null && isFor(setting, mainsV))
  const only = fitting.length === 1 ? fitting[0] : undefined
  return [
    line('before.selector', say`Voltage selector, plug out: read where it is set and write it down.`, {
      expect: only
        ? say`the position for ${volts(only.min)}${only.max > only.min ? say` to ${volts(only.max)}` : say``}`
        : say`the position for this mains; ask before you go on`,
      ...(only ? { unit: 'V', low: only.min, high: only.max } : { writes: true as const }),
      stopIf: say`it is set to anything else`,
    }),
  ]
}

function fuseLine({ supply }: ChecklistFacts): ChecklistLine[] {
  const { fitted, prescribed } = supply.fuse
  if (!fitted && !prescribed) return []
  return [
    line('before.fuse', say`Fuse-link, plug out: read the print on its cap and write it down.`, {
      writes: true,
      expect: prescribed ? say`as prescribed: “${prescribed}”` : say`as entered: “${fitted ?? say``}”`,
      stopIf: say`a higher rating, another letter or a lower voltage than prescribed; or it has blown`,
    }),
  ]
}

function polarityLine(key: string, { supply, device }: ChecklistFacts): ChecklistLine[] {
  if (!device.rails.some(({ kind }) => kind !== 'ac')) return []
  const wanted = device.jack.polarity
  const given = supply.measured.polarity ?? supply.plug.polarity
  const same = wanted && given && wanted === given
  return [
    line(key, say`Polarity: compare the drawing on the supply with the drawing beside the machine’s jack.`, {
      expect: same ? say`${polarityText(wanted)} on both` : say`not settled yet: measure before the two meet`,
      stopIf: say`they differ, or one of them is not known`,
    }),
  ]
}

function plugLine({ supply: { plug } }: ChecklistFacts): ChecklistLine[] {
  if (plug.outerMm === null) return []
  const bore = plug.innerMm === null ? '' : say`, bore ${millimetres(plug.innerMm)}`
  return [
    line('before.plug-size', say`Plug on the lead: measure its outer diameter with a caliper.`, {
      expect: say`${millimetres(plug.outerMm)}${bore}`,
      unit: 'mm',
      low: plug.outerMm - plugOuterMost.value,
      high: plug.outerMm + plugOuterMost.value,
      stopIf: say`it is another size than was entered`,
    }),
  ]
}

const unplugged: Record<Arrangement, Phrase> = {
  separate: say`Supply out of the socket, machine and supply apart, nothing else connected.`,
  'plug-in': say`Block out of the socket, machine and block apart, nothing else connected.`,
  'built-in': say`Machine out of the socket, nothing else connected.`,
  'supply-only': say`Supply out of the socket, nothing else connected.`,
  'machine-only': say`Nothing connected to the machine.`,
}

const beforeLines = (facts: ChecklistFacts): ChecklistLine[] => [
  line('before.unplugged', unplugged[facts.arrangement]),
  ...openPoints(facts.assessment),
  ...polarityLine('before.polarity', facts),
  ...selectorLine(facts),
  ...fuseLine(facts),
  ...cautionsToKeep(facts.assessment),
  ...plugLine(facts),
  ...mainsLine(facts),
]

/** The gates, with room for who tested. */
const gateLines = ({ plan }: ChecklistFacts): ChecklistLine[] => [
  ...plan.gates.map(asLine),
  line('gate.tested-by', say`Tested by whom, with which instrument, on which day:`, {
    writes: true,
    stopIf: say`a line above has no result: that gate stays open, and nothing is plugged in`,
  }),
]

/** What to watch at first power, with room to write. */
function watchLines(stage: string, facts: ChecklistFacts): ChecklistLine[] {
  const seen: Partial<Step> & { writes: true } = { writes: true, link: 'machine', power: 'mains' }
  return [
    line(`${stage}.lamps`, say`Lamps and displays of the machine: what lights, and when?`, seen),
    line(`${stage}.moves`, say`Fan, drive, motor: what starts, what tries and stops?`, seen),
    line(`${stage}.sounds`, say`Sounds: hum, tick, whine, silence?`, {
      ...seen,
      stopIf: say`arcing, crackling, or a hum that grows`,
    }),
    line(`${stage}.smells`, say`Smell and heat: warm dust, or burning?`, {
      ...seen,
      stopIf: say`anything smells burnt, smokes, or burns the hand`,
    }),
    ...drawnLines(stage, facts),
  ]
}

/** What each rail draws: no more than the machine’s plate says, else than the supply may give; where neither is known it is written down. */
function drawnLines(stage: string, { device, supply }: ChecklistFacts): ChecklistLine[] {
  const several = device.rails.length > 1
  return device.rails.map(({ voltageV, currentA }, index) => {
    const most = currentA ?? supply.rails.find((rail) => rail.voltageV === voltageV)?.currentA ?? null
    return line(
      `${stage}.drawn${index === 0 ? '' : `-${index + 1}`}`,
      say`Current the machine draws${several ? say` at ${volts(voltageV)}` : say``}, once steady: clamp meter, or ammeter set in and taken out with the plug out.`,
      {
        ...(most === null
          ? { writes: true as const }
          : {
              expect: say`not above ${quantity(most, 'A')} at ${volts(voltageV)}`,
              unit: 'A',
              low: -most,
              high: most,
            }),
        stopIf: say`it is more, or climbs`,
        link: 'machine',
        power: 'mains',
      },
    )
  })
}

const lampText = ({ ratedW, ratedV, count, arrangement }: FirstPowerPlan['lamps'][number]): Phrase => {
  const each = say`${quantity(ratedW, 'W')} ${volts(ratedV)}`
  return count > 1 ? say`${count} × ${each} in ${arrangement}` : each
}

const fuseAgain = (key: string, { supply }: ChecklistFacts): ChecklistLine[] =>
  supply.fuse.fitted || supply.fuse.prescribed ? [line(key, say`Fuse-link: still the one read above, and whole.`)] : []

const converterAgain = (key: string, { plan }: ChecklistFacts): ChecklistLine[] =>
  plan.through === 'converter'
    ? [
        line(key, say`Converter: still in between, set to the same output.`, {
          expect: say`everything hangs on its outlet, nothing on the wall socket`,
          stopIf: say`the plug would go into the wall`,
        }),
      ]
    : []

/** The first stage behind the lamp has lines of its own for the circuit as a whole. */
const beginsBehindLamp: readonly StageName[] = ['supply-alone', 'inside-stripped']

/** The killer items that may have changed since they were read: lamp, fuse-link, polarity. */
function killersAgain({ name }: FirstPowerStage, facts: ChecklistFacts): ChecklistLine[] {
  const lamp = facts.plan.lamps.at(-1)
  return [
    ...(beginsBehindLamp.includes(name)
      ? []
      : [
          line(
            `${name}.lamp-in`,
            say`Lamp in the circuit: ${lamp ? lampText(lamp) : say`read its rating and write it down`}.`,
            {
              expect: say`in the line conductor; earth straight through, never by way of the lamp`,
              stopIf: say`it is missing, loose, or another one`,
            },
          ),
        ]),
    ...(beginsBehindLamp.includes(name) ? [] : converterAgain(`${name}.converter`, facts)),
    ...(name === 'together'
      ? [...fuseAgain('together.fuse-again', facts), ...polarityLine('together.polarity-again', facts)]
      : []),
  ]
}

const pauseReduced = say`Pause: before reduced-current power. Hands off; read every line of this stage; know where the switch is.`

const pauseNext = (before: Words): Phrase =>
  say`Pause: before reduced-current power. Every line of “${before}” ticked and every reading within its limits, or this stage waits. Hands off; read every line; know where the switch is.`

const pauseFull = say`Pause: before full mains. Every line above ticked and every reading within its limits, or this stage waits.`

/** The bench supply needs no mains plug of the supply that is tested. */
const onMains = ({ steps }: FirstPowerStage): boolean => steps.some(({ power }) => power === 'mains')

function planStages(facts: ChecklistFacts): ChecklistStage[] {
  return facts.plan.stages
    .filter(({ leftOut }) => leftOut === null)
    .flatMap((stage): ChecklistStage[] => {
      const steps = stage.steps.map(asLine)
      const split = steps.findIndex(({ lampOut }) => lampOut)
      const behindLamp = split < 0 ? steps : steps.slice(0, split)
      const direct = split < 0 ? [] : steps.slice(split)
      const watched = stage.name === 'together' || stage.name === 'inside-full' ? watchLines(stage.name, facts) : []
      const power = onMains(stage)
      const before = facts.plan.stages.find(
        ({ name, leftOut }) => leftOut === null && stagesBefore(stage.name).at(-1) === name,
      )
      const first: ChecklistStage = {
        title: stage.title,
        pause: power ? (before ? pauseNext(before.title) : pauseReduced) : null,
        lines: [...(power ? killersAgain(stage, facts) : []), ...beforeSwitchOff(behindLamp, watched)],
      }
      if (direct.length === 0) return [first]
      const bare = behindLamp.length === 0
      const second: ChecklistStage = {
        title: say`${stage.title}, without the lamp`,
        pause: pauseFull,
        lines: [
          ...fuseAgain(`${stage.name}.fuse-full`, facts),
          ...converterAgain(`${stage.name}.converter-full`, facts),
          ...(bare ? beforeSwitchOff(direct, watched) : direct),
        ],
      }
      return bare ? [second] : [first, second]
    })
}

/** What is watched while it runs stands before the line that switches off. */
const beforeSwitchOff = (steps: ChecklistLine[], watched: ChecklistLine[]): ChecklistLine[] =>
  steps.length === 0 ? watched : [...steps.slice(0, -1), ...watched, ...steps.slice(-1)]

/** Topics that are still to be found out: nothing meets the full mains before. */
const openTopics = ({ assessment }: ChecklistFacts): string[] => [
  ...new Set(assessment.findings.filter(({ outcome }) => outcome === 'unknown').map(({ topic }) => topicTag(topic))),
]

/** Why the list ends behind the lamp, where it does so for something that is still open. */
function fullMainsWaits(facts: ChecklistFacts): ChecklistLine[] {
  const { stages } = facts.plan
  const before = stages.find(({ name }) => name === 'together' || name === 'inside-stripped')
  const open = openTopics(facts)
  if (!before || before.leftOut !== null || open.length === 0) return []
  return [
    line(
      'done.waits',
      say`Full mains, without the lamp, waits until this is found out and entered: ${open.join(', ')}.`,
    ),
  ]
}

function fullMains(facts: ChecklistFacts): ChecklistStage[] {
  const together = facts.plan.stages.find(({ name }) => name === 'together')
  if (!together || together.leftOut !== null || openTopics(facts).length > 0) return []
  return [
    {
      title: say`Full mains, without the lamp`,
      pause: pauseFull,
      lines: [
        line(
          'full.unplug',
          say`Unplug, lamp out of the circuit; the supply now goes into ${outletOf(facts.plan.through)}.`,
          { caution: noLimit },
        ),
        ...converterAgain('full.converter', facts),
        ...polarityLine('full.polarity', facts),
        ...fuseAgain('full.fuse', facts),
        line('full.on', say`Plug in, stand at the switch, and watch for one minute.`, {
          power: 'mains',
          expect: say`as behind the lamp, only brighter or quicker`,
          stopIf: say`smoke, smell, arcing, or a protective device opens`,
        }),
        line('full.watch', say`Watch again: lamps, movement, sounds, smell. What is different from before?`, {
          power: 'mains',
          writes: true,
          stopIf: say`anything crackles, smells burnt or smokes`,
        }),
        ...drawnLines('full', facts),
        line('full.warm', say`After 10 min: unplug, feel the supply’s case with the back of your hand.`, {
          expect: say`warm`,
          stopIf: say`too hot to keep the hand there`,
        }),
      ],
    },
  ]
}

/**
 * Composes the bench checklist: only lines that apply to this case, one action a line, the killer items first in their group and
 * again where they may have changed, a pause before the plug is touched, before reduced current and before full mains.
 */
export function composeChecklist(facts: ChecklistFacts): Checklist {
  return { verdict: facts.assessment.verdict, stages: sayOnce(allStages(facts)).map(numbered) }
}

/** Where the gates stand: nothing comes before them but what is looked at with all unplugged. */
export const gatesStage = 2

const numbered = (stage: ChecklistStage, index: number): NumberedStage => ({
  ...stage,
  number: index + 1,
  lines: stage.lines.map((each, at) => ({ ...each, number: `${index + 1}.${at + 1}` })),
})

/** The number of each line by its key. */
export const numbersOf = ({ stages }: Checklist | Told<Checklist>): ReadonlyMap<string, string> =>
  new Map(stages.flatMap(({ lines }) => lines.map(({ key, number }) => [key, number])))

/**
 * A caution stands before the first step it concerns. A DANGER is said again in each stage it belongs to; anything less is
 * said once, because a reader stops reading what is said for the fifth time.
 */
function sayOnce(stages: ChecklistStage[]): ChecklistStage[] {
  const saidBefore: Words[] = []
  return stages.map((stage) => {
    const saidHere: Words[] = []
    const lines = stage.lines.map((each) => {
      if (!each.caution) return each
      const said = each.caution.signal === 'DANGER' ? saidHere : saidBefore
      const { hazard } = each.caution
      const again = said.some((before) => isSame(before, hazard))
      said.push(hazard)
      return again ? { ...each, caution: null } : each
    })
    return { ...stage, lines }
  })
}

const allStages = (facts: ChecklistFacts): ChecklistStage[] => [
  {
    title: say`Before the plug is touched`,
    pause: say`Pause: before the plug is touched. All stays unplugged; read every line of this stage first.`,
    lines: beforeLines(facts),
  },
  { title: say`Look, take out and test`, pause: null, lines: gateLines(facts) },
  ...planStages(facts),
  ...fullMains(facts),
  {
    title: say`Done for today`,
    pause: null,
    lines: [
      ...fullMainsWaits(facts),
      line('done.unplugged', say`Unplugged, cooled, batteries still out, parts in a labelled box.`),
      line('done.stands', say`Where the job stands, and what comes next:`, {
        expect: say`kept as a spare: power it about once a year, for some hours; after a longer rest behind the lamp or from a lower voltage first`,
        writes: true,
      }),
      line('done.signed', say`Done by, and date:`, { writes: true }),
    ],
  },
]

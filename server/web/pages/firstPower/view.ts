import { limitsText } from '../../../bench/jobs/readingFinding.js'
import { assessCase } from '../../../chain/assess.js'
import { prepareCase } from '../../../chain/case/case.js'
import type { Finding } from '../../../chain/finding.js'
import { protectionClassOf } from '../../../chain/protectionClass.js'
import { labelOf } from '../../../facts/boxes.js'
import { discharge } from '../../../plan/bench/discharge.js'
import { insulationAnswer } from '../../../plan/bench/insulation.js'
import { leakage } from '../../../plan/bench/leakage.js'
import { reform } from '../../../plan/bench/reform.js'
import { composeChecklist, gatesStage, numbersOf } from '../../../plan/checklist.js'
import { loadLine } from '../../../plan/firstPower/seriesLamp.js'
import type { Caution, Figure, FirstPowerPlan, FirstPowerStage, Step } from '../../../plan/firstPowerPlan.js'
import { planOf } from '../../../plan/planFirstPower.js'
import { firstSeconds, lampText, reservoirOf } from '../../../plan/stages/behindLamp.js'
import { factsOf, type LampUse, type PlanFacts, setupOf } from '../../../plan/stages/facts.js'
import { fedBy } from '../../../plan/stages/fedBy.js'
import { demand } from '../../../plan/stages/together.js'
import { accessibleLimit, reformingProcedures } from '../../../tables/capacitors.js'
import type { Source } from '../../../tables/source.js'
import { joined, type Phrase, say, type Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import { amperes, decimal, duration, farads, joules, ohms, volts, watts } from '../../../words/quantity.js'
import { unique } from '../../../words/unique.js'
import { lampCircuit } from '../../charts/lampCircuit.js'
import { loadLineChart } from '../../charts/loadLine.js'
import { reformingStaircase } from '../../charts/reformingStaircase.js'
import type { Drawing } from '../../charts/svgText.js'
import { transientChart } from '../../charts/transientChart.js'
import { head, type PageHead } from '../../page.js'
import { caseName } from '../../parts/caseName.js'
import { type CountryName, countryNames } from '../../parts/countryNames.js'
import { factFields } from '../../parts/factFields.js'
import type { FormState } from '../../parts/formState.js'
import { openGroups } from '../../parts/openGroups.js'
import { shownRows } from '../../parts/shownRows.js'
import { tally, verdictWords } from '../../parts/verdictWords.js'
import { addressOf, checkNames } from '../check/form.js'
import { type FirstPowerForm, firstPowerQuery, lampRow, lampRows, machineInputs, schemeChoices } from './form.js'

/** As the `dataTable` mixin takes it. */
interface Table {
  caption: Words
  head: Words[]
  rows: Words[][]
}

interface DrawingView {
  title: Words
  svg: Phrase
  caption: Words
  table: Table
}

type Numbers = ReadonlyMap<string, string>

/** As the `stepList` mixin takes it. */
interface StepView {
  /** as on paper; null where it stands on none */
  number: string | null
  text: Words
  expect: Words | null
  stopIf: Words | null
  warning: Caution | null
}

interface StageView {
  id: string
  /** of its first stage on paper; null where it is left out */
  number: string | null
  title: Words
  leftOut: Words | null
  /** gates that are open before it */
  waits: Words | null
  /** what the folded stage holds, with its numbers */
  gist: Words
  figures: Figure[]
  steps: StepView[]
  drawings: DrawingView[]
  sources: Source[]
}

/** A worked-out aside: reforming, discharge, tingle, test readings. */
interface AsideView {
  id: string
  title: string
  /** what it comes to, with its numbers, said while it is folded */
  gist: Words
  lead: Words
  warning: Caution | null
  drawing: DrawingView | null
  tables: Table[]
  findings: readonly Finding[]
  working: readonly Words[]
  cautions: readonly Words[]
  sources: Source[]
}

interface FirstPowerResult {
  /** what the plan is for; null where no plate names a thing */
  caseName: string | null
  verdict: (typeof verdictWords)[keyof typeof verdictWords]
  checkAddress: string
  /** null where no check was entered */
  checklistAddress: string | null
  /** where something was seen at it */
  examineAddress: string
  /** the query string to be kept with a job; null where no check was entered */
  keep: string | null
  lamps: Phrase
  /** the stage that comes first: it stands open; null where none can be done */
  open: string | null
  missing: readonly Words[]
  /** the stage they are on paper */
  gatesNumber: number
  gates: StepView[]
  stages: StageView[]
  asides: AsideView[]
}

const missing = (count: number): string =>
  count === 0 ? 'nothing is missing' : count === 1 ? 'one fact is missing' : `${count} facts are missing`

/** The boxes of each folded part of the form. */
const groups = {
  lamps: lampRows.slice(1).flatMap((row) => Object.values(lampRow(row))),
  capacitor: ['bulk', 'bulkv', 'years', 'idle'],
  tests: ['scheme', 'earthohm', 'insulation', 'touch'],
}

export interface FirstPowerPage {
  page: PageHead
  form: FormState
  empty: boolean
  countries: readonly CountryName[]
  choices: { machineInputs: typeof machineInputs; schemes: typeof schemeChoices }
  asked: typeof asked
  lampRows: { row: number; names: ReturnType<typeof lampRow> }[]
  /** parameters of the check that have no field here: carried along, shown only where they are wrong */
  carried: { name: string; label: string; value: string; wrong: boolean }[]
  open: Record<keyof typeof groups, boolean>
  example: string
  result: FirstPowerResult | null
  sentence: Words
}

/** Facts of the check that this page asks for itself. */
const asked = {
  what: factFields(['have']),
  place: factFields(['country', 'mains', 'hz']),
  supplyPlate: factFields(['supply']),
  supply: factFields(['type', 'regulated', 'class', 'inlet', 'plugpol']),
  machinePlate: factFields(['machine']),
  machine: factFields(['jackpol']),
}
const askedNames = new Set(Object.values(asked).flatMap((fields) => fields.map(({ name }) => name)))

const example = `/first-power?${new URLSearchParams({
  country: 'DE',
  supply: 'SWITCHING POWER SUPPLY INPUT: 100-240V~ 50/60Hz 0.8A OUTPUT: 12V DC 2.0A',
  type: 'switch-mode',
  regulated: 'yes',
  class: 'II',
  inlet: 'C8',
  plugpol: 'centre-positive',
  machine: 'TAPE RECORDER 12V DC 1.2A',
  jackpol: 'centre-positive',
  cordplug: 'CEE 7/16',
  cordend: 'C7',
  cordv: '250',
  corda: '2.5',
  socket: 'F',
  lamp1v: '230',
  lamp1w: '60',
  lamp1n: '2',
  years: '20',
  bulk: '68',
  bulkv: '400',
})}`

const drawingView = (title: Words, { svg, caption, table }: Drawing): DrawingView => ({
  title,
  svg,
  caption,
  table: { caption: say`${title}: the figures`, head: table.headings, rows: table.rows },
})

const stepView = ({ key, text, expect, stopIf, who, caution }: Step, numbers: Numbers): StepView => ({
  number: numbers.get(key) ?? null,
  text: who === 'you' ? text : say`${text} This is work for a licensed electrician or other qualified person.`,
  expect,
  stopIf,
  warning: caution,
})

function loadLineOf(
  facts: PlanFacts,
  lamp: LampUse | null,
  powerW: number | null,
  { id, subject }: { id: string; subject: string },
): DrawingView[] {
  const { reach, technology } = facts
  if (!lamp || !reach || powerW === null) return []
  const setup = setupOf(lamp, reach.voltageV, reach.frequencyHz)
  const resistive = technology === 'transformer'
  const load = resistive
    ? ({ kind: 'resistance', resistanceOhm: reach.voltageV ** 2 / powerW } as const)
    : // without its least voltage, so that the curve reaches the second point, which lies below it
      ({ kind: 'constant-power', powerW } as const)
  const names = { lamp: 'lamps', load: watts(powerW, 3) }
  return [
    drawingView(
      say`Where lamp and ${subject} settle at ${names.load}${resistive ? '' : ': the wanted point and the one that starves it'}`,
      loadLineChart(loadLine(setup, load), names, id),
    ),
  ]
}

function drawingsOf(facts: PlanFacts): Record<string, DrawingView[]> {
  const { firstLamp, loadLamp, idle, reach } = facts
  const circuit = ({ count, arrangement }: LampUse, words: string, id: string): DrawingView =>
    drawingView(
      'The circuit',
      lampCircuit(
        { count, arrangement, words: count === 1 ? 'one lamp' : `${count} lamps` },
        { words, earthed: facts.classI },
        fedBy(facts),
        id,
      ),
    )
  const transient = firstLamp ? firstSeconds(facts, firstLamp) : null
  const reservoir = reservoirOf(facts)
  return {
    'supply-alone': firstLamp
      ? [
          circuit(firstLamp, 'supply, nothing connected', 'circuit-alone'),
          ...loadLineOf(facts, firstLamp, idle?.powerW ?? null, { id: 'load-line-alone', subject: 'the supply alone' }),
          ...(transient && reservoir && reach
            ? [
                drawingView(
                  say`The first seconds, ${farads(reservoir.bulkF, 3)}${reservoir.estimated ? say` (project estimate)` : ''} behind ${lampText(firstLamp)}`,
                  transientChart(
                    transient,
                    say`Switch-on of the supply alone on ${volts(reach.voltageV)}`,
                    null,
                    'transient-alone',
                  ),
                ),
              ]
            : []),
        ]
      : [],
    'inside-stripped': firstLamp ? [circuit(firstLamp, 'machine, its inside unplugged', 'circuit-inside')] : [],
    together: loadLineOf(facts, loadLamp, demand(facts)?.powerW ?? null, {
      id: 'load-line-together',
      subject: 'supply with machine',
    }),
  }
}

/** At most so many expected readings are named while a stage is folded. */
const gistReadings = 3

/** What a stage holds, in a line: how many steps, behind which lamps, and the first readings to expect. */
function gistOf({ name, leftOut, steps }: FirstPowerStage, { firstLamp, loadLamp }: PlanFacts): Words {
  if (leftOut !== null) return 'Left out as things stand.'
  const lamp = {
    'supply-alone': firstLamp,
    'dummy-load': loadLamp,
    'bench-supply': null,
    together: loadLamp,
    'inside-stripped': firstLamp,
    'inside-whole': loadLamp,
    'inside-full': null,
  }[name]
  const limited = steps.filter(({ unit, low, high }) => unit !== null && (low !== null || high !== null))
  const readings = unique(limited.map(limitsText)).slice(0, gistReadings)
  return joined(
    [
      say`${steps.length} steps`,
      ...(lamp ? [say`behind ${lampText(lamp)}`] : []),
      ...(readings.length > 0 ? [say`to be read: ${joined(readings, ' · ')}`] : []),
    ],
    ', ',
  )
}

function stageViews(facts: PlanFacts, plan: FirstPowerPlan, numbers: Numbers): StageView[] {
  const drawings = drawingsOf(facts)
  return plan.stages.map((stage) => ({
    id: stage.name,
    number: numbers.get(stage.steps[0]?.key ?? '')?.split('.')[0] ?? null,
    title: stage.title,
    leftOut: stage.leftOut,
    waits: stage.waits,
    gist: gistOf(stage, facts),
    figures: stage.figures,
    steps: stage.steps.map((step) => stepView(step, numbers)),
    drawings: stage.leftOut === null ? (drawings[stage.name] ?? []) : [],
    sources: stage.sources,
  }))
}

const lethal: Caution = {
  signal: 'DANGER',
  hazard: say`A capacitor being reformed carries a voltage that kills, for hours.`,
  consequence: say`Touching its terminals can kill, also after the source is off.`,
  avoid: say`Out of circuit, covered, labelled; discharge through a resistor and measure before touching.`,
  electric: true,
}

/** Above this a part is not touched [V]: the lowest d.c. limit for accessible parts. */
const touchableV = accessibleLimit.limitV

const charged: Caution = {
  signal: 'WARNING',
  hazard: say`A capacitor keeps its charge after the plug is out.`,
  consequence: say`A shock; an arc; a destroyed part.`,
  avoid: say`Unplug, wait, measure; through an insulated resistor, never with a screwdriver.`,
  electric: true,
}

const aside = (rest: Pick<AsideView, 'id' | 'title' | 'gist' | 'lead'> & Partial<AsideView>): AsideView => ({
  warning: null,
  drawing: null,
  tables: [],
  findings: [],
  working: [],
  cautions: [],
  sources: [],
  ...rest,
})

function reformAside({ options }: PlanFacts): AsideView[] {
  const { bulkF, bulkRatedV, yearsUnused } = options
  if (bulkF == null || bulkRatedV == null || yearsUnused == null) return []
  const answer = reform({ capacitanceF: bulkF, ratedV: bulkRatedV, yearsUnused })
  const words = {
    'check-leakage': 'Such an age asks for a leakage measurement, not for reforming.',
    reform: 'Such an age asks for reforming before full voltage.',
    'plan-to-replace': 'Past the shelf life makers give: reform it for a trial, and plan to replace it.',
  }
  return [
    aside({
      id: 'reforming-steps',
      title: 'Reforming the largest capacitor',
      gist: say`${farads(bulkF)} ${volts(bulkRatedV)} after ${decimal(yearsUnused)} years: ${answer.stages.length} steps, at most ${amperes(answer.acceptLeakageA)} at the end`,
      lead: say`${words[answer.need]} Makers’ words for that age: ${answer.advice}. If the part is shorted the resistor takes ${watts(answer.resistorW, 3, 'up')}: fit ${answer.resistorRatedW === null ? 'several that share it' : watts(answer.resistorRatedW)}. Inside a mains enclosure this is work for a licensed electrician or other qualified person.`,
      warning: bulkRatedV > touchableV ? lethal : charged,
      drawing: drawingView('The reforming steps', reformingStaircase(answer, 'reforming')),
      tables: [
        {
          caption: 'Leakage that is accepted, by rule',
          head: ['Rule', 'At most', 'Read after'],
          rows: answer.limits.map(({ name, leakageA, after }) => [
            prose(name),
            leakageA === null ? 'not for this voltage' : amperes(leakageA, 4),
            prose(after),
          ]),
        },
        {
          caption: 'Published ways to reform, side by side',
          head: ['Resistor', 'Voltage', 'Time', 'From'],
          rows: reformingProcedures.map(({ resistor, voltage, time, source }) => [
            prose(resistor),
            prose(voltage),
            prose(time),
            source.title,
          ]),
        },
      ],
      working: answer.working,
      cautions: answer.cautions,
      sources: answer.sources,
    }),
  ]
}

function dischargeAside({ options, reach }: PlanFacts): AsideView[] {
  const { bulkF } = options
  if (bulkF == null || !reach) return []
  const voltageV = reach.voltageV * Math.SQRT2
  const answer = discharge({ capacitanceF: bulkF, voltageV })
  if (answer.standardOhm === null || answer.peakW === null) return []
  return [
    aside({
      id: 'discharge',
      title: 'Discharging it before each reach inside',
      gist: say`From ${volts(voltageV)} below ${volts(answer.limitV)} in ${duration(answer.timeS)}, through ${ohms(answer.standardOhm)}`,
      lead: say`${farads(bulkF)} at the crest of ${volts(reach.voltageV)}, ${volts(voltageV)}, holds ${joules(answer.energyJ, 3)}. Through ${ohms(answer.standardOhm)} it is below ${volts(answer.limitV)} after ${duration(answer.timeS)}; ${watts(answer.peakW, 3, 'up')} in the first moment.`,
      warning: charged,
      tables: [
        {
          caption: say`Time to each limit through ${ohms(answer.standardOhm)}`,
          head: ['Below', 'Limit', 'After'],
          rows: answer.times.map(({ limitV, what, timeS }) => [
            volts(limitV),
            what,
            timeS === null ? '–' : duration(timeS),
          ]),
        },
      ],
      working: answer.working,
      cautions: answer.cautions,
      sources: answer.sources,
    }),
  ]
}

/** Usual Y capacitors [F]. */
const usualY = [1e-9, 2.2e-9, 3.3e-9, 4.7e-9, 10e-9] as const

function tingleAside({ reach }: PlanFacts): AsideView[] {
  if (!reach) return []
  const answers = usualY.map((capacitanceF) => ({
    capacitanceF,
    answer: leakage({ capacitanceF, voltageV: reach.voltageV, frequencyHz: reach.frequencyHz }),
  }))
  const [first] = answers
  if (!first) return []
  return [
    aside({
      id: 'tingle',
      title: 'A tingle at the case or the output',
      gist: say`Up to ${volts(first.answer.openV)} on a meter; ${amperes(first.answer.currentA)} through ${farads(first.capacitanceF)}`,
      lead: say`Filter capacitors from the mains to the output let a small current through. On this mains a floating case shows up to ${volts(first.answer.openV)} on a meter and gives:`,
      tables: [
        {
          caption: 'Current by the size of each Y capacitor',
          head: ['Capacitor', 'Current', 'Largest usual limit it keeps'],
          rows: answers.map(({ capacitanceF, answer }) => {
            const kept = answer.limits.find(({ within }) => within)
            return [
              farads(capacitanceF),
              amperes(answer.currentA),
              kept ? say`${amperes(kept.limitA)}: ${kept.what}` : 'none',
            ]
          }),
        },
        {
          caption: 'What meters show on a case without earth, by the size of each Y capacitor',
          head: ['Capacitor', ...first.answer.meters.map(({ what, meterOhm }) => say`${what}, ${ohms(meterOhm)}`)],
          rows: answers.map(({ capacitanceF, answer }) => [
            farads(capacitanceF),
            ...answer.meters.map(({ readsV }) => volts(readsV, 3)),
          ]),
        },
        {
          caption: 'Largest capacitor for a limit',
          head: ['Limit', 'Where from', 'Largest capacitor'],
          rows: first.answer.limits.map(({ limitA, what, largestF }) => [
            amperes(limitA),
            what,
            farads(largestF, 3, 'down'),
          ]),
        },
      ],
      working: first.answer.working.slice(0, 1),
      cautions: first.answer.cautions,
      sources: first.answer.sources,
    }),
  ]
}

function testsAside(form: FirstPowerForm, facts: PlanFacts): AsideView[] {
  const { readings } = form
  if (!readings) return []
  const known = protectionClassOf(facts.supply)
  const lead =
    'These tests are for competent persons with the instrument made for them. The 500\u00a0V of an insulation test can itself destroy electronics.'
  if (!known)
    return [
      aside({
        id: 'tests',
        title: 'Earth, insulation and touch current',
        gist: 'Not judged: the protection class is not known',
        lead: say`${lead} The protection class of the supply is not known, and the limits hang on it: enter it above.`,
      }),
    ]
  const { scheme, ...values } = readings
  const answer = insulationAnswer({ schemes: [scheme], protectionClass: known.protectionClass, ...values })
  return [
    aside({
      id: 'tests',
      title: 'Earth, insulation and touch current',
      gist: tally(answer.findings),
      lead,
      findings: answer.findings,
      cautions: answer.cautions,
    }),
  ]
}

function resultOf(form: FirstPowerForm, check: NonNullable<FirstPowerForm['check']['request']>): FirstPowerResult {
  const of = prepareCase(check)
  const assessment = assessCase(of)
  const facts = factsOf(of, assessment, form.options)
  const plan = planOf(facts)
  const numbers = numbersOf(composeChecklist({ ...of, assessment, plan }))
  const query = firstPowerQuery(form.state.values)
  return {
    caseName: caseName(check, assessment.readings),
    verdict: verdictWords[assessment.verdict],
    checkAddress: `/?${addressOf(form.state.values)}`,
    examineAddress: `/examine?${addressOf(form.state.values)}`,
    checklistAddress: form.check.request && `/checklist?${query}`,
    keep: form.check.request && query,
    lamps: joined(plan.lamps.map(lampText), say`; then `),
    missing: plan.missing,
    gates: plan.gates.map((gate) => stepView(gate, numbers)),
    gatesNumber: gatesStage,
    open: plan.stages.find(({ leftOut }) => leftOut === null)?.name ?? null,
    stages: stageViews(facts, plan, numbers),
    asides: [...reformAside(facts), ...dischargeAside(facts), ...testsAside(form, facts), ...tingleAside(facts)],
  }
}

/** Everything the page "/first-power" shows. */
export function firstPowerView(form: FirstPowerForm): FirstPowerPage {
  const { state, faults } = form
  // lamps and readings alone are a question too: they plan nothing, and the page says what is missing
  const check = form.check.request ?? (form.check.empty && !form.empty ? { site: {}, supply: {}, device: {} } : null)
  const result = faults.length === 0 && check ? resultOf(form, check) : null
  if (typeof state.shown.country === 'string') state.values.country = state.shown.country
  const doable = result?.stages.filter(({ leftOut }) => leftOut === null).length ?? 0
  return {
    page: head(`First power-up${result?.caseName ? `: ${result.caseName}` : ''}`, 'first-power', faults),
    form: state,
    empty: form.empty,
    countries: countryNames,
    choices: { machineInputs, schemes: schemeChoices },
    asked,
    lampRows: lampRows.slice(0, shownRows('lamp', 3, state)).map((row) => ({ row, names: lampRow(row) })),
    carried: checkNames
      .filter((name) => !askedNames.has(name) && (state.values[name] ?? '').trim() !== '')
      .map((name) => ({
        name,
        label: labelOf(name),
        value: state.values[name] ?? '',
        wrong: state.errors[name] !== undefined,
      })),
    open: openGroups(state, groups),
    example,
    result,
    sentence: result
      ? say`${doable} of ${result?.stages.length ?? 0} stages can be done as things stand; ${missing(result.missing.length)}.`
      : faults.length > 0
        ? 'Not planned yet.'
        : '',
  }
}

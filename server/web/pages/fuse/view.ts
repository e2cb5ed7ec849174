import type { Finding, Outcome } from '../../../chain/finding.js'
import { clearsBehindLamp } from '../../../chain/fuse/circuitRules.js'
import { describe, type FuseLink, fittedLink, prescriptionAt } from '../../../chain/fuse/fuseLink.js'
import type { FuseOutcome, FuseRequest, FuseResponse } from '../../../chain/fuse/fuseRequest.js'
import { gatesOf } from '../../../chain/fuse/linkGates.js'
import { meltingRange } from '../../../chain/fuse/meltingRange.js'
import { reviewFuse } from '../../../chain/fuse/review.js'
import { slowness } from '../../../plate/fuseMarking.js'
import { schemeComparison } from '../../../tables/fuseGatesOther.js'
import { type Phrase, say, type Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import { amperes, decimal, duration, percent, volts } from '../../../words/quantity.js'
import { isSame } from '../../../words/unique.js'
import { type CurveLink, type CurveMark, type FuseCurveDrawing, fuseCurve } from '../../charts/fuseCurve.js'
import { head, type PageHead } from '../../page.js'
import type { FormState } from '../../parts/formState.js'
import { openGroups } from '../../parts/openGroups.js'
import { unbroken } from '../../parts/unbroken.js'
import { tally } from '../../parts/verdictWords.js'
import {
  type Candidate,
  type FuseForm,
  fieldLabel,
  fuseFields,
  fuseQuery,
  kindChoices,
  positionChoices,
  shapeChoices,
} from './form.js'

/** As the `dataTable` mixin takes it. */
export interface Table {
  caption: string
  head: string[]
  rows: Words[][]
  numeric: number[]
}

export interface FuseLine {
  label: string
  value: Words
}

export interface FuseResult {
  outcome: Outcome
  title: Words
  text: string
  tally: Phrase
  findings: readonly Finding[]
  read: { title: Words; lines: FuseLine[]; unread: string[] }[]
  numbers: FuseLine[]
  drawing: FuseCurveDrawing | null
  legend: { sign: string; text: Words }[]
  notes: Words[]
  gates: Table | null
  marks: Table | null
  candidates: Table | null
  comparison: Table
  lampNote: Words | null
  entered: FuseLine[]
  address: string
}

/** The boxes of each folded part of the form. */
const groups = {
  inrush: ['peak', 'pulse', 'shape', 'pulses'],
  more: ['ambient', 'fault', 'lamp', 'pf'],
  candidates: ['a', 'b', 'c'],
}

export interface FusePage {
  page: PageHead
  form: FormState
  choices: { positions: typeof positionChoices; kinds: typeof kindChoices; shapes: typeof shapeChoices }
  open: Record<keyof typeof groups, boolean>
  example: string
  result: FuseResult | null
  sentence: Words
}

const headline = ({ answer, findings, outcome }: FuseResponse): { outcome: Outcome; title: Words; text: string } => {
  const words: Record<FuseOutcome, { outcome: Outcome; text: string }> = {
    keep: {
      outcome: findings.some((one) => one.outcome === 'caution') ? 'caution' : 'clear',
      text: 'Nothing you entered speaks against it. This says nothing about the rest of the supply.',
    },
    replace: {
      outcome: findings[0]?.outcome ?? 'stop',
      text: 'What is wrong with the fitted one, and what to do, stands below.',
    },
    'find-out-first': {
      outcome: findings[0]?.outcome === 'stop' ? 'stop' : 'unknown',
      text: 'Something that decides is not known or not explained. Each is named below, with how to find out. Leave the supply unplugged meanwhile.',
    },
  }
  return { title: answer, ...words[outcome] }
}

const known = (value: Words | null): Words => value ?? 'not known'

function readOf(title: Words, link: FuseLink): FuseResult['read'][number] {
  return {
    title,
    unread: link.unread.slice(0, 12).map((piece) => piece.slice(0, 40)),
    lines: [
      { label: 'Rated current', value: known(link.ratedA === null ? null : amperes(link.ratedA)) },
      {
        label: 'Speed',
        value: known(
          link.characteristic === null ? null : `${link.characteristic}, ${speedWords[link.characteristic]}`,
        ),
      },
      { label: 'Rated voltage', value: known(link.ratedV === null ? null : volts(link.ratedV)) },
      {
        label: 'Breaking capacity',
        value: known(
          link.breakingCapacityA === null
            ? link.breaking
            : say`${link.breaking === null ? '' : `${link.breaking}, `}${amperes(link.breakingCapacityA, 4, 'down')}`,
        ),
      },
      { label: 'Standard', value: known(link.scheme === null ? null : schemeWords[link.scheme]) },
      ...(link.sizeMm === null ? [] : [{ label: 'Size', value: prose(`${link.sizeMm.replace('x', ' × ')} mm`) }]),
    ],
  }
}

const speedWords = { FF: 'very quick', F: 'quick', M: 'medium time-lag', T: 'time-lag', TT: 'long time-lag' } as const

const schemeWords = { IEC: 'IEC 60127', UL: 'UL 248-14', BS1362: 'BS 1362', BS646: 'BS 646' } as const

const limit = (value: number | null): Words => (value === null ? 'no limit' : duration(value))

const gateTable = (links: readonly CurveLink[]): Table => ({
  caption: 'Gates: when the link opens at these currents',
  head: ['Link', 'Times rated', 'Current', 'Not before', 'Not after'],
  numeric: [1, 2, 3, 4],
  rows: links.flatMap((link) =>
    link.points.map((point) => [
      link.letter,
      decimal(point.multiple, 3),
      amperes(point.multiple * link.ratedA),
      limit(point.minS),
      limit(point.maxS),
    ]),
  ),
})

const marksTable = (request: FuseRequest, marks: readonly CurveMark[], ratedA: number | null): Table | null => {
  const { inrushPeakA, inrushTimeS } = request.circuit
  const times = (currentA: number): Words => (ratedA === null ? 'not known' : decimal(currentA / ratedA, 3))
  const rows = [
    ...marks.map((mark) => [mark.name, amperes(mark.currentA), times(mark.currentA), 'lasting']),
    ...(inrushPeakA != null && inrushTimeS != null
      ? [['inrush', amperes(inrushPeakA), times(inrushPeakA), duration(inrushTimeS)]]
      : []),
  ]
  if (rows.length === 0) return null
  return {
    caption: 'Currents marked in the drawing',
    head: ['What', 'Current', 'Times rated', 'Time'],
    rows,
    numeric: [1, 2],
  }
}

interface Compared {
  letter: string
  link: FuseLink
}

function candidateTable(compared: readonly Compared[], prescribed: FuseLink | null): Table | null {
  if (compared.length === 0) return null
  return {
    caption: 'Candidates side by side',
    head: ['Link', 'Read as', 'Typical melting I²t', 'Against the prescription'],
    numeric: [],
    rows: compared.map(({ letter, link }) => {
      const range = meltingRange(link)
      return [
        letter,
        describe(link),
        range === null
          ? 'fewer than two data sheets give it'
          : say`${decimal(range.lowI2t, 3)} to ${decimal(range.highI2t, 3)} A²s over ${range.sources.length} data sheets, no tolerance stated`,
        against(link, prescribed),
      ]
    }),
  }
}

/** In words, why a candidate may not stand in for what is prescribed. */
function against(link: FuseLink, prescribed: FuseLink | null): string {
  if (!prescribed || prescribed.ratedA === null) return 'not known: no prescription'
  if (link.ratedA === null) return 'not known: no rating read'
  const faults = [
    link.ratedA > prescribed.ratedA ? 'higher rating' : null,
    link.characteristic !== null &&
    prescribed.characteristic !== null &&
    slowness(link.characteristic) > slowness(prescribed.characteristic)
      ? 'slower'
      : null,
    prescribed.breakingCapacityA !== null &&
    link.breakingCapacityA !== null &&
    link.breakingCapacityA < prescribed.breakingCapacityA &&
    link.breaking !== prescribed.breaking
      ? 'lower breaking capacity'
      : null,
    prescribed.ratedV !== null && link.ratedV !== null && link.ratedV < prescribed.ratedV ? 'lower voltage' : null,
    prescribed.sizeMm !== null && link.sizeMm !== null && link.sizeMm !== prescribed.sizeMm ? 'other size' : null,
    prescribed.scheme !== null && link.scheme !== null && link.scheme !== prescribed.scheme ? 'other standard' : null,
  ].filter((fault) => fault !== null)
  if (faults.length > 0) return `not permitted: ${faults.join(', ')}`
  const open = [
    link.characteristic === null || prescribed.characteristic === null ? 'speed' : null,
    link.ratedV === null ? 'voltage' : null,
    link.breaking === null && link.scheme !== 'BS1362' ? 'breaking capacity' : null,
  ].filter((fact) => fact !== null)
  if (open.length > 0) return `not known: ${open.join(', ')}`
  return link.ratedA < prescribed.ratedA ? 'lower rating: may open early' : 'nothing against it'
}

const comparison: Table = {
  caption: 'What links of one number do, by the standard they are made to',
  head: ['At', 'UL 248-14', 'IEC 60127'],
  numeric: [],
  rows: schemeComparison.lines.map((row) => [
    percent(row.percent / 100),
    prose(unbroken(row.ul)),
    prose(unbroken(row.iec)),
  ]),
}

function numbersOf({ required }: FuseResponse): FuseLine[] {
  const of = (value: number | null, show: (value: number) => Phrase): Words =>
    value === null ? 'not known' : show(value)
  const i2t = (value: number): Phrase => say`${decimal(value, 3)}\u00a0A²s`
  return [
    { label: 'Operating current', value: of(required.currentA, (value) => amperes(value, 4, 'up')) },
    { label: 'Least rating by calculation', value: of(required.minimumRatedA, (value) => amperes(value, 4, 'up')) },
    { label: 'Rating: as prescribed, else the next preferred one', value: of(required.recommendedRatedA, amperes) },
    { label: 'I²t of the inrush', value: of(required.inrushI2t, i2t) },
    { label: 'Melting I²t needed', value: of(required.minimumMeltingI2t, i2t) },
  ]
}

function resultOf(request: FuseRequest, candidates: readonly Candidate[], state: FormState): FuseResult {
  const response = reviewFuse(request)
  const fitted = fittedLink(request, request.circuit.voltageV)
  const prescription = prescriptionAt(request.prescribed, request.circuit.voltageV)
  const main = fitted.ratedA === null && prescription ? prescription.link : fitted
  const compared = candidates.map(({ letter, text }) => ({ letter, link: fittedLink({ marking: text }) }))
  const other =
    prescription && main !== prescription.link && !isSame(describe(main), describe(prescription.link))
      ? [{ letter: 'P', link: prescription.link }]
      : []
  const side = [...other, ...compared]
  const links: CurveLink[] = [{ letter: '1', link: main }, ...side].flatMap(({ letter, link }) => {
    const { points } = gatesOf(link)
    return link.ratedA === null || points.length === 0
      ? []
      : [{ letter, name: describe(link), ratedA: link.ratedA, points }]
  })
  const { circuit, seriesLampA } = request
  const { currentA } = response.required
  const marks: CurveMark[] = [
    ...(currentA === null ? [] : [{ kind: 'operating' as const, name: 'operating current', currentA }]),
    ...(circuit.prospectiveFaultA == null
      ? []
      : [{ kind: 'fault' as const, name: 'fault current', currentA: circuit.prospectiveFaultA }]),
    ...(seriesLampA == null
      ? []
      : [{ kind: 'lamp' as const, name: 'short circuit behind the lamp', currentA: seriesLampA }]),
  ]
  const inrush =
    circuit.inrushPeakA != null && circuit.inrushTimeS != null
      ? { peakA: circuit.inrushPeakA, timeS: circuit.inrushTimeS }
      : null
  const drawing = fuseCurve({ links, marks, inrush })
  const candidateNotes = side.flatMap(({ letter, link }) => gatesOf(link).notes.map((note) => say`${letter}: ${note}`))
  return {
    ...headline(response),
    tally: tally(response.findings),
    findings: response.findings,
    read: [
      ...(request.marking ? [readOf('Fitted, as read', fitted)] : []),
      ...(prescription
        ? [
            readOf(
              prescription.chosenByVoltage
                ? say`Prescribed at ${volts(circuit.voltageV)}, as read`
                : 'Prescribed, as read',
              prescription.link,
            ),
          ]
        : []),
    ],
    numbers: numbersOf(response),
    drawing,
    legend: links.map((link) => ({
      sign: link.letter,
      text: say`${link.name}${roles[link.letter === '1' && main !== fitted ? 'P' : link.letter] ?? ''}`,
    })),
    notes: [...response.curveNotes.map((note) => (side.length > 0 ? say`1: ${note}` : note)), ...candidateNotes],
    gates: links.length > 0 ? gateTable(links) : null,
    marks: marksTable(request, marks, main.ratedA),
    candidates: candidateTable(compared, prescription?.link ?? null),
    comparison,
    entered: enteredLines(state),
    lampNote:
      seriesLampA == null
        ? null
        : `Behind a series lamp ${clearsBehindLamp(main, seriesLampA) ? 'do not count on the fuse to' : 'the fuse will not'} clear a fault: the lamp is the limit. A short circuit shows as a bright lamp that stays bright.`,
    address: `/fuse?${fuseQuery(state.values)}`,
  }
}

/** Every field that holds something, as it was understood. */
const enteredLines = ({ values, shown }: FormState): FuseLine[] =>
  fuseFields.flatMap((name) => {
    const typed = values[name]?.trim() ?? ''
    const understood = choiceWords(name, typed) ?? shown[name]
    return typed === '' ? [] : [{ label: fieldLabel(name), value: understood ?? typed }]
  })

const choicesOf: Readonly<Record<string, readonly { value: string; label: string }[]>> = {
  position: positionChoices,
  kind: kindChoices,
  shape: shapeChoices,
}

const choiceWords = (name: string, value: string): string | undefined =>
  choicesOf[name]?.find((choice) => choice.value === value)?.label

/** What a letter in the drawing stands for, said behind the link's name. */
const roles: Readonly<Record<string, string>> = { '1': ', fitted', P: ', prescribed' }

/** An invented case: a time-lag link where a quick one is prescribed, on 230 V. */
const example = `/fuse?${fuseQuery({ marking: 'T2AL250V', prescribed: 'F1.6AL250V', position: 'mains', volts: '230', watts: '60', peak: '20', pulse: '1 ms', shape: 'exponential', lamp: '0.43' })}`

/** Everything the page shows. */
export function fuseView({ state, faults, request, candidates }: FuseForm): FusePage {
  const result = request === null ? null : resultOf(request, candidates, state)
  return {
    page: head('Review a fuse', 'fuse', faults),
    form: state,
    choices: { positions: positionChoices, kinds: kindChoices, shapes: shapeChoices },
    open: openGroups(state, groups),
    example,
    result,
    sentence: result ? say`${result.title} ${result.tally}.` : '',
  }
}

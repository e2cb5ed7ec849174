import type { AnsweredCheck } from '../../../chain/answer.js'
import { knownReading } from '../../../chain/case/knownReading.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import type { Outcome } from '../../../chain/finding.js'
import { topicTag } from '../../../chain/topicTag.js'
import { figures } from '../../../facts/address.js'
import { labelOf } from '../../../facts/boxes.js'
import type { LabelReading } from '../../../plate/labelReading.js'
import { type Phrase, say, type Words } from '../../../words/phrase.js'
import { type PlugDrawing, plugDrawing } from '../../charts/plugDrawing.js'
import { type ChainLink, powerChain } from '../../charts/powerChain.js'
import { head, type PageHead } from '../../page.js'
import { countryName } from '../../parts/countryNames.js'
import { type Example, examples } from '../../parts/examples.js'
import { type FactField, type FactSection, factFields, factSection } from '../../parts/factFields.js'
import type { FormState } from '../../parts/formState.js'
import { notJudged, tally, verdictWords } from '../../parts/verdictWords.js'
import { type CheckForm, carried, checkNames } from './form.js'
import type { FromShelfView } from './fromShelfView.js'
import { type NextView, nextView } from './nextView.js'
import { type Onward, onward } from './onward.js'
import { type Line, plateFields, plateValues, type ReadingView, readingView } from './readingView.js'
import { factsAddress, type SectionName, sectionAt, sectionNames, sectionOf } from './sections.js'

export interface ResultView {
  verdict: { outcome: Outcome; title: string }
  answer: Words
  tally: Phrase
  /** what is not clear, worst first */
  findings: AnsweredCheck['findings']
  clear: { names: Words[]; findings: AnsweredCheck['findings'] }
  chain: (ChainLink & { address: string })[]
  /** supplies of the shelf, where the check has a machine and none */
  fromShelf: FromShelfView | null
  next: NextView
  waiting: number
  plugs: PlugDrawing | null
  notJudged: Words[]
  entered: Line[]
  onward: Onward
}

export interface CheckPage {
  page: PageHead
  form: FormState
  empty: boolean
  examples: readonly Example[]
  /** what everybody is asked */
  first: Record<'have' | 'country' | 'supply' | 'machine', FactField>
  /** what was said, in a line */
  said: Words[]
  /** the facts of one thing, where they are asked for or hold a fault */
  sections: FactSection[]
  ways: { name: SectionName; words: string; open: boolean }[]
  at: SectionName | null
  /** what was entered and has no box on this page */
  kept: { name: string; value: string }[]
  readings: { supply: ReadingView | null; machine: ReadingView | null }
  plateFields: { name: string; value: Words }[]
  result: ResultView | null
  /** one sentence for the live region */
  sentence: Words
}

/** A verdict that something which could not be used may still turn. */
function verdictOf({ verdict, answer }: AnsweredCheck, faults: number): Pick<ResultView, 'verdict' | 'answer'> {
  if (faults === 0 || verdict === 'do-not-connect' || verdict === 'find-out-first')
    return { verdict: verdictWords[verdict], answer }
  return {
    verdict: verdictWords['find-out-first'],
    answer: say`Find out first: ${faults === 1 ? say`one entry` : say`${faults} entries`} could not be used, and nothing else that was entered is in conflict.`,
  }
}

function resultView(
  request: CheckRequest,
  response: AnsweredCheck,
  form: CheckForm,
  open: readonly SectionName[],
  fromShelf: FromShelfView | null,
): ResultView {
  const { state, query, faults } = form
  const { findings, readings, waiting } = response
  const { supply, device } = request
  const clear = findings.filter(({ outcome }) => outcome === 'clear')
  return {
    ...verdictOf(response, faults.length),
    tally: tally(findings),
    findings: findings.filter(({ outcome }) => outcome !== 'clear'),
    clear: { names: [...new Set(clear.map(({ topic }) => topicTag(topic)))], findings: clear },
    chain: powerChain(request, response).map((link) => ({
      ...link,
      address: factsAddress(query, sectionAt(link.key)),
    })),
    fromShelf,
    next: nextView(response, form, open),
    waiting,
    plugs: plugDrawing({
      plug: supply.plug
        ? { ...supply.plug, polarity: supply.measured?.polarity ?? supply.plug.polarity ?? readings.supply?.polarity }
        : null,
      jack: device.jack ? { ...device.jack, polarity: device.jack.polarity ?? readings.device?.polarity } : null,
    }),
    notJudged: notJudged(findings),
    entered: checkNames.flatMap((name) => {
      const value = state.shown[name]
      return value === undefined ? [] : [{ label: labelOf(name), value }]
    }),
    onward: onward(request, response, query),
  }
}

export interface Checked {
  form: CheckForm
  readings: { supply: LabelReading | null; machine: LabelReading | null }
  /** `null` while there is nothing to judge */
  response: AnsweredCheck | null
  fromShelf: FromShelfView | null
  /** the thing whose facts are asked for */
  at: SectionName | null
  /** where the last check was, by its code */
  place: string | null
  /** rating of the residual-current device at hand [A], for a box that is open and empty */
  residualA: number | null
}

const oneOf = (name: string): FactField => {
  const [field] = factFields([name])
  if (!field) throw new RangeError(`no box is called ${name}`)
  // a list of all lands would be longer than the rest of the page
  const { list: _, ...options } = field.options
  return { ...field, options }
}

/** Everything the page "/" shows. */
export function checkView({ form, readings, response, fromShelf, at, place, residualA }: Checked): CheckPage {
  const { state, faults, usable, empty } = form
  const confirmed = state.values.confirmed?.split(/\s+/) ?? []
  const read = plateValues(
    knownReading(readings.supply, 'supply', confirmed).known,
    knownReading(readings.machine, 'device', confirmed).known,
  )
  state.read = read
  // the address carries the code; a person reads the name
  if (typeof state.shown.country === 'string') state.values.country = state.shown.country
  else if (empty && place !== null) state.values.country = countryName(place)
  if (residualA !== null) state.values.rcd ||= figures(residualA)
  const count = faults.length === 1 ? 'One entry cannot be used yet' : `${faults.length} entries cannot be used yet`
  const open = sectionNames.filter(
    (name) => name === at || faults.some((fault) => fault.name !== 'country' && sectionOf(fault.name) === name),
  )
  const result = usable && response ? resultView(usable, response, form, open, fromShelf) : null
  const title = result ? `${result.verdict.title}: a check` : 'Check a power supply'
  // what everybody is asked stands above, once
  const sections = open.map((name): FactSection => {
    const section = factSection(name, state, true)
    return { ...section, plate: null, ahead: section.ahead.filter((field) => field.name !== 'country') }
  })
  const boxes = new Set([
    'have',
    'country',
    'supply',
    'machine',
    'confirmed',
    ...open.flatMap((name) => checkNames.filter((box) => sectionOf(box) === name)),
  ])
  return {
    page: head(title, 'check', faults),
    form: state,
    empty,
    examples,
    first: { have: oneOf('have'), country: oneOf('country'), supply: oneOf('supply'), machine: oneOf('machine') },
    said: ['have', 'country', 'supply', 'machine'].flatMap((name) => state.shown[name] ?? []),
    sections,
    ways: sectionNames.map((name) => ({
      name,
      words: factSection(name, state, false).legend,
      open: open.includes(name),
    })),
    at,
    kept: carried(form.query).filter(({ name }) => !boxes.has(name)),
    readings: {
      supply: readingView(readings.supply, 'supply', confirmed),
      machine: readingView(readings.machine, 'device', confirmed),
    },
    plateFields: plateFields
      .filter(({ name }) => boxes.has(name))
      .map(({ name }) => ({ name, value: read[name] ?? '' })),
    result,
    sentence: result ? say`${result.verdict.title}. ${result.tally}.` : faults.length > 0 ? `${count}.` : '',
  }
}

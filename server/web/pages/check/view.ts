import type { AnsweredCheck } from '../../../chain/answer.js'
import { knownReading } from '../../../chain/case/knownReading.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import { labelOf } from '../../../facts/boxes.js'
import type { LabelReading } from '../../../plate/labelReading.js'
import { type Phrase, say, type Words } from '../../../words/phrase.js'
import { type PlugDrawing, plugDrawing } from '../../charts/plugDrawing.js'
import { type ChainLink, powerChain } from '../../charts/powerChain.js'
import { head, type PageHead } from '../../page.js'
import { type CountryName, countryNames } from '../../parts/countryNames.js'
import { type Example, examples } from '../../parts/examples.js'
import { type FactSection, factSection } from '../../parts/factFields.js'
import type { FormState } from '../../parts/formState.js'
import { notJudged, tally, verdictWords } from '../../parts/verdictWords.js'
import { type CheckForm, checkNames } from './form.js'
import { type Onward, onward } from './onward.js'
import { type Line, plateFields, plateValues, type ReadingView, readingView } from './readingView.js'

export interface ResultView {
  verdict: (typeof verdictWords)[keyof typeof verdictWords]
  tally: Phrase
  findings: AnsweredCheck['findings']
  chain: ChainLink[]
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
  countries: readonly CountryName[]
  sections: Record<'arrangement' | 'site' | 'supply' | 'device' | 'cord' | 'converter' | 'readings', FactSection>
  readings: { supply: ReadingView | null; machine: ReadingView | null }
  plateFields: { name: string; value: Words }[]
  result: ResultView | null
  /** one sentence for the live region */
  sentence: Words
}

function resultView(request: CheckRequest, response: AnsweredCheck, { state, query }: CheckForm): ResultView {
  const { findings, verdict, readings } = response
  const { supply, device } = request
  return {
    verdict: verdictWords[verdict],
    tally: tally(findings),
    findings,
    chain: powerChain(request, response),
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
}

/** Everything the page "/" shows. */
export function checkView({ form, readings, response }: Checked): CheckPage {
  const { state, faults, request, empty } = form
  const confirmed = state.values.confirmed?.split(/\s+/) ?? []
  const read = plateValues(
    knownReading(readings.supply, 'supply', confirmed).known,
    knownReading(readings.machine, 'device', confirmed).known,
  )
  state.read = read
  // the address carries the code; a person reads the name
  if (typeof state.shown.country === 'string') state.values.country = state.shown.country
  const result = request && response ? resultView(request, response, form) : null
  const title = result ? `${result.verdict.title}: a check` : 'Check a power supply'
  const count = faults.length === 1 ? 'One entry cannot be used yet' : `${faults.length} entries cannot be used yet`
  return {
    page: head(title, 'check', faults),
    form: state,
    empty,
    examples,
    countries: countryNames,
    sections: {
      arrangement: factSection('arrangement', state, true),
      site: factSection('site', state, true),
      supply: factSection('supply', state, true),
      device: factSection('device', state, true),
      cord: factSection('cord', state, true),
      converter: factSection('converter', state, true),
      readings: factSection('readings', state, true),
    },
    readings: {
      supply: readingView(readings.supply, 'supply', confirmed),
      machine: readingView(readings.machine, 'device', confirmed),
    },
    plateFields: plateFields.map(({ name }) => ({ name, value: read[name] ?? '' })),
    result,
    sentence: result ? say`${result.verdict.title}. ${result.tally}.` : faults.length > 0 ? `${count}.` : '',
  }
}

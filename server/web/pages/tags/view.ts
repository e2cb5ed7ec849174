import type { ShelfDevice, ShelfKind, ShelfSupply } from '../../../bench/shelf/shelfItem.js'
import { answerCheck } from '../../../chain/answer.js'
import { prepareCase } from '../../../chain/case/case.js'
import type { CheckRequest } from '../../../chain/case/request.js'
import { chooseConverter } from '../../../chain/chooseConverter.js'
import type { Outcome } from '../../../chain/finding.js'
import type { Link } from '../../../facts/fact.js'
import { polarities } from '../../../facts/plug.js'
import type { Kept } from '../../../store/store.js'
import { say, type Words } from '../../../words/phrase.js'
import { voltAmperes, volts } from '../../../words/quantity.js'
import { powerChain } from '../../charts/powerChain.js'
import { head, type PageHead } from '../../page.js'
import { countryName } from '../../parts/countryNames.js'
import type { FormFault, FormState } from '../../parts/formState.js'
import { type Qr, qr } from '../../parts/qr.js'
import { verdictWords } from '../../parts/verdictWords.js'
import { onSheets, type Sheet, sheets } from './sheets.js'

/** What a printed label says of a supply or a machine. */
export interface Tag {
  kind: 'Supply' | 'Machine'
  name: string
  /** what a supply gives, what a machine takes; null where it is not known */
  rails: Words | null
  plug: Words | null
  /** the drawing of its polarity; null where it is not known */
  polarity: { address: string; says: string } | null
  verdict: { outcome: Outcome; text: Words } | null
  /** what must stand between it and the wall */
  only: Words | null
  code: Qr
}

export interface TagsPage {
  page: PageHead
  form: FormState
  sheet: Sheet['key']
  choices: { value: string; label: string }[]
  /** what goes along with the form: the things asked for */
  ids: readonly string[]
  sheets: (Tag | null)[][]
  total: number
  /** where the codes lead to */
  origin: string
}

/** The converter that a supply may meet this mains through; null where it needs none, or which is not known. */
function onlyThrough(check: CheckRequest): Words | null {
  const { site, supply } = prepareCase(check)
  const { needed, outputV, standardVA, kinds } = chooseConverter(site, supply)
  if (needed !== true || outputV === null || kinds.every(({ suits }) => suits === false)) return null
  const size = standardVA === null ? '' : say`, ${voltAmperes(standardVA)} or more`
  return say`Only through a transformer to ${volts(outputV)}${size}`
}

function tagOf(kind: ShelfKind, { name, body }: Kept<ShelfSupply | ShelfDevice>, country: string | null) {
  const site = { country }
  const check: CheckRequest =
    'supply' in body
      ? { arrangement: 'supply-only', site, supply: body.supply, device: {} }
      : {
          arrangement: body.device.mains ? 'built-in' : 'machine-only',
          site,
          supply: {},
          device: body.device,
        }
  const answered = answerCheck(check)
  const chain = powerChain(check, answered)
  const at = (link: Link): Words | null => chain.find(({ key }) => key === link)?.what ?? null
  const reading = kind === 'supply' ? answered.readings.supply : answered.readings.device
  const own =
    'supply' in body ? (body.supply.measured?.polarity ?? body.supply.plug?.polarity) : body.device.jack?.polarity
  const drawn = polarities.find(({ value }) => value === (own ?? reading?.polarity))
  // the verdict of a machine alone says nothing of the mains
  const judged = country !== null && (kind === 'supply' || check.arrangement === 'built-in')
  return {
    kind: kind === 'supply' ? ('Supply' as const) : ('Machine' as const),
    name,
    rails: at(kind === 'supply' ? 'supply' : 'machine'),
    plug: at(kind === 'supply' ? 'plug' : 'jack'),
    polarity: drawn ? { address: `/drawings/${drawn.drawing}.svg`, says: drawn.says } : null,
    verdict: judged
      ? {
          outcome: verdictWords[answered.verdict].outcome,
          text: say`${verdictWords[answered.verdict].title}, ${countryName(country)}`,
        }
      : null,
    only: judged && kind === 'supply' ? onlyThrough(check) : null,
  }
}

export interface Tagged {
  kind: ShelfKind
  kept: Kept<ShelfSupply | ShelfDevice>
}

/** The tags of some things, laid out on sheets. */
export function tagsView({
  things,
  country,
  origin,
  sheet,
  first,
  form,
  faults,
  ids,
}: {
  things: readonly Tagged[]
  country: string | null
  origin: string
  sheet: Sheet
  first: number
  form: FormState
  faults: FormFault[]
  ids: readonly string[]
}): TagsPage {
  const folder = { supply: 'supplies', device: 'devices' } as const
  const tags = things.map(
    ({ kind, kept }): Tag => ({
      ...tagOf(kind, kept, country),
      code: qr(`${origin}/shelf/${folder[kind]}/${kept.id}`),
    }),
  )
  return {
    page: head('Tags to print', 'shelf', faults),
    form,
    sheet: sheet.key,
    choices: sheets.map(({ key, label }) => ({ value: key, label })),
    ids,
    sheets: onSheets(tags, sheet, first),
    total: tags.length,
    origin,
  }
}

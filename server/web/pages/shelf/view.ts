import { cellsOf } from '../../../bench/shelf/shelfCells.js'
import type { ShelfItem, ShelfKind, ShelfSummary } from '../../../bench/shelf/shelfItem.js'
import type { Wanted } from '../../../bench/shelf/wanted.js'
import type { Outcome, Verdict } from '../../../chain/finding.js'
import { check } from '../../../facts/check.js'
import type { Group, Part } from '../../../facts/fact.js'
import type { Kept, Photo, Row, Store } from '../../../store/store.js'
import { plateWords } from '../../../tables/plateWords.js'
import { type Phrase, say, type Words } from '../../../words/phrase.js'
import { prose } from '../../../words/prose.js'
import { language } from '../../language.js'
import { head, type PageHead } from '../../page.js'
import { type CountryName, countryNames } from '../../parts/countryNames.js'
import { day, type Moment } from '../../parts/dates.js'
import { exampleRows } from '../../parts/examples.js'
import { type FactSection, factSection } from '../../parts/factFields.js'
import type { FormFault, FormState } from '../../parts/formState.js'
import { mostPhotos } from '../../parts/keepPhoto.js'
import { addressWith, type Pager, pager, perPage } from '../../parts/pager.js'
import { type PhotoView, photoViews } from '../../parts/photoViews.js'
import type { Match } from '../../parts/shelfMatching.js'
import { verdictWords } from '../../parts/verdictWords.js'
import type { ChangedField } from '../jobs/view.js'

export const plurals = { supply: 'supplies', device: 'devices' } as const

export const kindWords = {
  supply: { one: 'supply', many: 'Supplies', title: 'Supply', other: 'machine' },
  device: { one: 'machine', many: 'Machines', title: 'Machine', other: 'supply' },
} as const

interface ShelfLine {
  address: string
  name: string
  place: string
  plate: string
  updated: Moment
}

interface ShelfList {
  kind: ShelfKind
  title: string
  add: string
  /** a made-up row for a list that is still empty */
  example: Readonly<Record<string, string>>
  total: number
  lines: ShelfLine[]
  pager: Pager | null
}

export interface ShelfPage {
  page: PageHead
  search: string
  country: string
  countries: readonly CountryName[]
  /** nothing is kept yet */
  empty: boolean
  lists: ShelfList[]
  matrix: string
  undo: { action: string; what: string } | null
}

export interface ShelfAsked {
  search: string
  country: string
  numbers: Record<ShelfKind, number>
  undo: { kind: ShelfKind; id: string } | null
}

/** A plate's words on one line, cut short. */
const plateLine = (label: string | null): string => {
  const line = (label ?? '').replace(/\s+/g, ' ').trim()
  return line.length > 120 ? `${line.slice(0, 117)}…` : line
}

const lineOf =
  (kind: ShelfKind, country: string) =>
  (row: Row<ShelfSummary>): ShelfLine => ({
    address: addressWith(`/shelf/${plurals[kind]}/${row.id}`, { country }),
    name: row.name,
    place: row.summary.place ?? '',
    plate: plateLine(row.summary.label),
    updated: day(row.updatedAt),
  })

/** The shelf: supplies and machines as rows, a page of each. */
export async function shelfView(store: Store, { search, country, numbers, undo }: ShelfAsked): Promise<ShelfPage> {
  const list = async (kind: ShelfKind): Promise<ShelfList> => {
    const offset = (numbers[kind] - 1) * perPage
    const { rows, total } = await store.list<ShelfSummary>(kind, { search, limit: perPage, offset })
    return {
      kind,
      title: kindWords[kind].many,
      add: `/shelf/${plurals[kind]}/new`,
      example: exampleRows[kind],
      total,
      lines: rows.map(lineOf(kind, country)),
      pager: pager(numbers[kind], total, (page) =>
        addressWith('/shelf', {
          search,
          country,
          supplies: numbers.supply,
          devices: numbers.device,
          [plurals[kind]]: page,
        }),
      ),
    }
  }
  const lists = [await list('supply'), await list('device')]
  return {
    page: head('Shelf', 'shelf'),
    empty: search === '' && lists.every(({ total }) => total === 0),
    search,
    country,
    countries: countryNames,
    lists,
    matrix: addressWith('/shelf/matrix', { country }),
    undo: undo && {
      action: `/shelf/${plurals[undo.kind]}/${undo.id}/restore`,
      what: `The ${kindWords[undo.kind].one}`,
    },
  }
}

export interface ShelfFormPage {
  page: PageHead
  kind: ShelfKind
  title: string
  action: string
  back: string
  version: number | null
  form: FormState
  section: FactSection
  changed: ChangedField[]
  notSaved: string | null
}

export interface ShelfFormShown {
  kind: ShelfKind
  kept: { id: string; version: number; name: string } | null
  form: FormState
  faults?: FormFault[] | undefined
  changed?: ChangedField[] | undefined
  notSaved?: string | null | undefined
}

/** The form of a new row, or of one that is kept. */
export function shelfFormView({ kind, kept, form, ...refused }: ShelfFormShown): ShelfFormPage {
  const folder = `/shelf/${plurals[kind]}`
  const title = kept ? `Change ${kept.name}` : `Add a ${kindWords[kind].one}`
  return {
    page: head(title, 'shelf', refused.faults ?? []),
    kind,
    title,
    action: kept ? `${folder}/${kept.id}` : folder,
    back: kept ? `${folder}/${kept.id}` : '/shelf',
    version: kept?.version ?? null,
    form,
    section: factSection(kind, form, false),
    changed: refused.changed ?? [],
    notSaved: refused.notSaved ?? null,
  }
}

interface MatchLine {
  address: string
  /** the check of the pair, with everything filled in; null where the form has too few boxes */
  check: string | null
  name: string
  outcome: Outcome
  verdict: string
  against: Words
}

export interface ShelfItemPage {
  page: PageHead
  id: string
  kind: ShelfKind
  name: string
  folder: string
  facts: { label: string; value: Words }[]
  country: string
  countries: readonly CountryName[]
  matchTitle: string
  matches: MatchLine[]
  more: number
  wanted: { lines: Phrase[]; words: { text: string; lang: string | null }[] }[]
  photos: PhotoView[]
  /** a photo that was just deleted and can be brought back */
  deletedPhoto: string | null
  roomForPhotos: boolean
  photoForm: FormState
  captions: { value: string; label: string }[]
  notSaved: string | null
}

/** How many matches a page shows; those after them are worse than all shown. */
export const mostMatches = 50

/** What is shown of a row: its own two lines, then its facts by the labels of their rows, in the order of the columns. */
const shownOf = (kind: ShelfKind): { column: string; label: string; unit: string; typed: boolean }[] => [
  { column: 'place', label: 'Place', unit: '', typed: true },
  { column: 'note', label: 'Note', unit: '', typed: true },
  ...columnsShown(check[kind]),
]

function columnsShown({ parts }: Group<Record<string, Part>>): ReturnType<typeof shownOf> {
  return Object.values(parts).flatMap((part) => {
    if (part.kind === 'group') return columnsShown(part)
    const { column } = part
    if (column === undefined) return []
    if (part.kind === 'list') return [{ column, label: 'Rails', unit: '', typed: false }]
    const typed = part.kind === 'plate' || part.kind === 'text'
    return [{ column, label: part.label, unit: 'unit' in part ? part.unit : '', typed }]
  })
}

export interface ShelfItemShown {
  kind: ShelfKind
  kept: Kept<ShelfItem>
  country: string
  matches: Match[]
  checkOf: (match: Match) => string | null
  wanted: Wanted[]
  photos: Photo[]
  deletedPhoto: string | null
  photoForm?: FormState | undefined
  faults?: FormFault[] | undefined
  notSaved?: string | null | undefined
}

const verdictOf = (verdict: Verdict): { outcome: Outcome; title: string } => verdictWords[verdict]

/** The language of a search that begins with a word of a plate; null for that of the page, and where none is known. */
function languageOf(search: string): string | null {
  const found = plateWords
    .filter(({ words }) => words.some((word) => `${search} `.startsWith(`${word} `)))
    .map((row) => row.language)
  return found.find((one) => one === language || one === 'any') ? null : (found[0] ?? null)
}

/** One row of the shelf with what suits it. */
export function shelfItemView(shown: ShelfItemShown): ShelfItemPage {
  const { kind, kept, country, matches, wanted, photos } = shown
  const other = kind === 'supply' ? 'device' : 'supply'
  const cells = cellsOf(kind, null, kept.body)
  const label = 'supply' in kept.body ? kept.body.supply.label : kept.body.device.label
  return {
    page: head(kept.name, 'shelf', shown.faults ?? []),
    id: kept.id,
    kind,
    name: kept.name,
    folder: `/shelf/${plurals[kind]}/${kept.id}`,
    facts: shownOf(kind).flatMap(({ column, label, unit, typed }) => {
      const value = cells[column]
      if (!value) return []
      const words = typed ? value : prose(value)
      return [{ label, value: unit ? say`${words}\u00a0${unit}` : words }]
    }),
    country,
    countries: countryNames,
    matchTitle: kind === 'supply' ? 'Machines for it, best first' : 'Supplies for it, best first',
    matches: matches.slice(0, mostMatches).map((match) => ({
      address: addressWith(`/shelf/${plurals[other]}/${match.id}`, { country }),
      check: shown.checkOf(match),
      name: match.name,
      outcome: verdictOf(match.verdict).outcome,
      verdict: verdictOf(match.verdict).title,
      against: match.against?.title ?? '',
    })),
    more: Math.max(0, matches.length - mostMatches),
    wanted: wanted.map(({ lines, words }) => ({
      lines,
      words: words.map((text) => ({ text, lang: languageOf(text) })),
    })),
    photos: photoViews(photos, kind === 'supply' ? { supply: label } : { machine: label }),
    deletedPhoto: shown.deletedPhoto,
    roomForPhotos: photos.length < mostPhotos,
    photoForm: shown.photoForm ?? {
      values: { caption: `${kindWords[kind].one} plate` },
      errors: {},
      shown: {},
      read: {},
    },
    captions: [
      { value: `${kindWords[kind].one} plate`, label: 'Its plate' },
      { value: 'plug', label: 'Its plug or jack' },
      { value: 'outside', label: 'Outside' },
      { value: 'inside', label: 'Inside' },
    ],
    notSaved: shown.notSaved ?? null,
  }
}

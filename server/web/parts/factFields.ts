import { wordOf } from '../../facts/address.js'
import { type Box, boxes, boxOf } from '../../facts/boxes.js'
import type { Fact } from '../../facts/fact.js'
import { mainsOf } from '../../tables/mains.js'
import { drawings } from '../drawings/index.js'
import { countryCode } from './countryNames.js'
import type { FormState } from './formState.js'

/** One box as the mixin `factField` prints it. */
export interface FactField {
  name: string
  label: string
  as: 'number' | 'line' | 'area' | 'choice' | 'drawn'
  /** `drawing` is its address; '' where there is none. `elsewhere`: it belongs to sockets of other places */
  choices: { value: string; label: string; drawing: string; elsewhere?: boolean }[]
  options: {
    unit?: string
    hint?: string
    term?: string
    /** the empty answer of a list */
    empty?: string
    /** it has a line with what the plate says */
    reads?: boolean
    /** text of figures, as 100-240 */
    figures?: boolean
    /** the datalist of its names */
    list?: string
    rows?: number
  }
}

/** Boxes that stand folded away until one of them holds something. */
interface Fold {
  summary: string
  hint: string
  open: boolean
  rows: { legend: string; fields: FactField[] }[]
  fields: FactField[]
}

/** What is asked about one thing, in the order in which it is printed. */
export interface FactSection {
  legend: string
  hint: string
  plate: FactField | null
  ahead: FactField[]
  howToFindOut: { label: string; ways: string }[]
  folds: Fold[]
}

const as = (fact: Fact): FactField['as'] => {
  if (fact.kind === 'number') return 'number'
  if (fact.kind === 'plate' || fact.kind === 'phrases') return 'area'
  const choices = 'choices' in fact ? fact.choices : undefined
  if (choices?.some(({ drawing }) => drawing !== undefined)) return 'drawn'
  return choices ? 'choice' : 'line'
}

/**
 * A box by the row of its fact.
 *
 * @param reads  whether the page shows what the plate says beside it
 * @param local  letters of the sockets met at the place; null where they are not known
 */
function fieldOf({ name, fact, row }: Box, reads: boolean, local: readonly string[] | null = null): FactField {
  const { hint, term } = fact
  const choices = 'choices' in fact ? (fact.choices ?? []) : []
  return {
    name,
    label: row === null ? fact.label : (fact.inRow ?? fact.label),
    as: as(fact),
    choices: choices.map((choice) => ({
      value: wordOf(choice),
      label: choice.label,
      drawing: choice.drawing !== undefined && drawings.has(choice.drawing) ? `/drawings/${choice.drawing}.svg` : '',
      ...(local && choice.sockets && { elsewhere: !choice.sockets.some((letter) => local.includes(letter)) }),
    })),
    options: {
      ...(hint !== undefined && { hint }),
      // its text has an id, and a page with rows would hold it several times
      ...(term !== undefined && row === null && { term }),
      ...('unit' in fact && { unit: fact.unit }),
      ...('none' in fact && fact.none !== undefined && { empty: fact.none }),
      ...((fact.kind === 'windows' || fact.kind === 'numbers') && { figures: true }),
      ...(fact.kind === 'country' && { list: 'countries' }),
      ...(fact.kind === 'plate' && { rows: 5 }),
      ...(fact.kind === 'phrases' && { rows: 2 }),
      ...(reads && { reads: (fact.printed ?? fact.printedRow) !== undefined }),
    },
  }
}

/** The letters of the sockets that may be met, from what was typed: of the socket, else of the country. */
export function socketsAt({ socket, country }: Readonly<Record<string, string>>): readonly string[] | null {
  const letter = socket?.trim() ?? ''
  return letter === '' ? (mainsOf(countryCode(country ?? '') ?? '')?.sockets ?? null) : [letter]
}

/** The boxes of some names, for a page that asks a few facts only. */
export const factFields = (names: readonly string[], local: readonly string[] | null = null): FactField[] =>
  names.flatMap((name) => {
    const box = boxOf(name)
    return box ? [fieldOf(box, false, local)] : []
  })

/** A part of the form: what is not asked ahead goes to the fold that has the longest beginning of its key. */
interface Layout {
  legend: string
  hint?: string
  key: string
  folds?: { summary: string; hint?: string; keys: string[] }[]
}

const layouts = {
  arrangement: {
    legend: 'What you have',
    hint: 'A machine and a separate supply, where nothing is chosen.',
    key: 'arrangement',
  },
  site: {
    legend: 'Where it will be used',
    hint: 'Leave out what you do not know, here and everywhere: it is counted as not known, never guessed.',
    key: 'site',
    folds: [{ summary: 'Add: what stands behind the socket', keys: ['site'] }],
  },
  supply: {
    legend: 'The supply',
    key: 'supply',
    folds: [
      { summary: 'Correct or add: mains side', hint: 'An empty box leaves it as the plate says.', keys: ['supply'] },
      {
        summary: 'Correct or add: outputs',
        hint: 'Rows given here count instead of the plate’s. Write a negative rail with its sign, as −12.',
        keys: ['supply.outputs', 'supply.outputsTotalW'],
      },
      {
        summary: 'Add: what was measured, and the lead',
        hint: 'Only what was measured already. If it was not, leave it empty.',
        keys: ['supply.measured', 'supply.lead', 'supply.plug'],
      },
      {
        summary: 'Add: contact by contact',
        hint: 'For a connector of several contacts, screw terminals or bare leads: a row each, as one looks at them.',
        keys: ['supply.pins'],
      },
    ],
  },
  device: {
    legend: 'The machine',
    key: 'device',
    folds: [
      {
        summary: 'Correct or add: what it takes',
        hint: 'Rows given here count instead of the plate’s.',
        keys: ['device.inputs'],
      },
      { summary: 'Add: name of the jack', keys: ['device'] },
      {
        summary: 'Add: its own mains side',
        hint: 'Only of a machine with its supply inside. An empty box leaves it as the plate says.',
        keys: ['device.mains'],
      },
      {
        summary: 'Add: contact by contact',
        hint: 'What the machine wants on each contact of its own connector.',
        keys: ['device.pins'],
      },
    ],
  },
  cord: { legend: 'The cord', key: 'cord', folds: [{ summary: 'Add: what is printed on the cord', keys: ['cord'] }] },
  converter: {
    legend: 'A voltage converter',
    hint: 'Only if one stands between the wall and the supply.',
    key: 'converter',
    folds: [{ summary: 'Add: what else it feeds, and its earth', keys: ['converter'] }],
  },
  readings: {
    legend: 'What was read',
    key: 'readings.dismissed',
    folds: [{ summary: 'Words that were not read', keys: ['readings'] }],
  },
} satisfies Record<string, Layout>

const within = (key: string, of: string): boolean => key === of || key.startsWith(`${of}.`)

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/**
 * The boxes of one thing for a form.
 *
 * @param reads  whether the page shows beside a box what the plate says
 */
export function factSection(part: keyof typeof layouts, { values, errors }: FormState, reads: boolean): FactSection {
  const { legend, hint = '', key, folds = [] }: Layout = layouts[part]
  const own = boxes.filter((box) => within(box.key, key))
  // the socket itself is looked for among those of the country
  const local = socketsAt({ ...values, ...(part === 'site' && { socket: '' }) })
  const plate = own.find(({ fact }) => fact.kind === 'plate')
  const ahead = own.filter(({ fact }) => fact.ahead)
  const folded = own.filter((box) => box !== plate && !box.fact.ahead)
  const depth = (fold: NonNullable<Layout['folds']>[number], box: Box): number =>
    Math.max(0, ...fold.keys.map((one) => (within(box.key, one) ? one.length : 0)))
  const foldOf = (box: Box): number => {
    const depths = folds.map((fold) => depth(fold, box))
    return depths.indexOf(Math.max(...depths))
  }
  const holds = ({ name }: Box): boolean => (values[name] ?? '').trim() !== '' || errors[name] !== undefined
  const lastHeld = new Map<Box['list'], number>()
  for (const box of folded) if (holds(box)) lastHeld.set(box.list, Math.max(box.row ?? 0, lastHeld.get(box.list) ?? 0))
  // rows of a list that hold something, and one more
  const shown = folded
    .filter(({ list, row }) => row === null || row <= 1 + (lastHeld.get(list) ?? 0))
    .map((box) => ({ box, fold: foldOf(box) }))
  return {
    legend,
    hint,
    plate: plate ? fieldOf(plate, reads) : null,
    ahead: ahead.map((box) => fieldOf(box, reads, local)),
    howToFindOut: plate
      ? ahead.map(({ fact }) => ({ label: fact.label, ways: fact.findOut.map(({ how }) => how).join(' ') }))
      : [],
    folds: folds.flatMap(({ summary, hint: remark = '' }, index) => {
      const held = shown.filter(({ fold }) => fold === index).map(({ box }) => box)
      if (held.length === 0) return []
      return [
        {
          summary,
          hint: remark,
          open: held.some(holds),
          rows: rowsOf(held, reads),
          fields: held.filter(({ row }) => row === null).map((box) => fieldOf(box, reads)),
        },
      ]
    }),
  }
}

/** The boxes of lists, row by row; what a row cannot be without stands first in it. */
function rowsOf(held: readonly Box[], reads: boolean): Fold['rows'] {
  const numbers = [...new Set(held.flatMap(({ row }) => (row === null ? [] : [row])))]
  return numbers.map((number) => {
    const own = held.filter(({ row }) => row === number)
    return {
      legend: upperFirst(`${own[0]?.list?.each ?? ''} ${number}`),
      fields: own
        .toSorted((one, other) => Number(other.fact.required ?? 0) - Number(one.fact.required ?? 0))
        .map((box) => fieldOf(box, reads)),
    }
  })
}

import { type AtHand, meterCategories, transformerKinds } from '../../../bench/atHand/atHand.js'
import { figures } from '../../../facts/address.js'
import { type Phrase, say } from '../../../words/phrase.js'
import { amperes, ohms, volts, watts } from '../../../words/quantity.js'
import { type Choice, type FormFault, FormReader, type FormState } from '../../parts/formState.js'
import type { NumberAsked } from '../../readNumber.js'
import { atHandBounds as bounds } from '../../schemas/atHand.js'
import { readCheckForm } from '../check/form.js'

/** One box: how it is read, and where its value stands. */
interface NumberBox {
  label: string
  asked: Omit<NumberAsked, 'label'>
  show?: (value: number) => Phrase
}

const box = (label: string, asked: NumberBox['asked'], show?: NumberBox['show']): NumberBox => ({ label, asked, show })
const count = box('How many', { ...bounds.count, whole: true })

/** What may be there several times: a row each, its boxes named by the row. */
export const groups = {
  lamp: {
    legend: 'Filament lamps',
    hint: 'Incandescent or halogen: others limit nothing.',
    boxes: {
      v: box('Rated voltage', { unit: 'V', ...bounds.lampV }, volts),
      w: box('Power', { unit: 'W', ...bounds.lampW }, watts),
      n: count,
    },
    choices: {},
  },
  load: {
    legend: 'Load resistors',
    hint: '',
    boxes: {
      ohm: box('Resistance', { unit: 'Ω', ...bounds.ohm }, ohms),
      w: box('Power', { unit: 'W', ...bounds.resistorW }, watts),
      n: count,
    },
    choices: {},
  },
  transformer: {
    legend: 'Transformers',
    hint: 'A variable transformer isolates nothing unless its plate says so.',
    boxes: { va: box('Rated power', { unit: 'VA', ...bounds.ratedVA }) },
    choices: { kind: { label: 'Kind', of: transformerKinds } },
  },
  meter: {
    legend: 'Meters',
    hint: 'The category is printed beside the sockets of the meter; its leads need the same.',
    boxes: { v: box('Up to', { unit: 'V', ...bounds.meterV }, volts) },
    choices: { cat: { label: 'Category', of: meterCategories } },
  },
} as const satisfies Record<string, Group>

interface Group {
  legend: string
  hint: string
  boxes: Record<string, NumberBox>
  choices: Record<string, { label: string; of: readonly string[] }>
}

/** What is there once. */
export const single = {
  benchv: box('Bench supply, most voltage', { unit: 'V', ...bounds.benchV }, volts),
  bencha: box('Bench supply, most current', { unit: 'A', ...bounds.benchA }, amperes),
  benchn: box('Bench supply, outputs', { ...bounds.outputs, whole: true }),
  tester: box('Insulation tester, test voltage', { unit: 'V', ...bounds.testerV }, volts),
  residual: box(
    'Residual-current device, rated residual current',
    { unit: 'mA', min: bounds.residualA.min * 1000, max: bounds.residualA.max * 1000 },
    (value) => amperes(value / 1000),
  ),
} as const satisfies Record<string, NumberBox>

export const rowName = (group: string, row: number, part: string): string => `${group}${row}${part}`

const rowNumbers = Array.from({ length: bounds.rows }, (_, index) => index + 1)

/** Every box with its label, for what is said of it. */
const labels: Record<string, string> = Object.fromEntries([
  ...Object.entries(single).map(([name, { label }]) => [name, label]),
  ...Object.entries<Group>(groups).flatMap(([name, group]) =>
    rowNumbers.flatMap((row) =>
      Object.entries({ ...group.boxes, ...group.choices }).map(([part, { label }]) => [
        rowName(name, row, part),
        `${group.legend} ${row}, ${label.toLowerCase()}`,
      ]),
    ),
  ),
])

export const choicesOf = (words: readonly string[]): Choice[] => words.map((word) => ({ value: word, label: word }))

export interface AtHandForm {
  state: FormState
  faults: FormFault[]
  atHand: AtHand
}

/** Reads the form: the place by the boxes of a check, the rest by its own. */
export function readAtHandForm(sent: Record<string, unknown>): AtHandForm {
  const { country, socket, ...rest } = sent
  const site = readCheckForm({ ...(country !== undefined && { country }), ...(socket !== undefined && { socket }) })
  const form = new FormReader(rest, Object.keys(labels), (name) => labels[name] ?? name)
  const number = (name: string, { asked, show }: NumberBox, required = false): number | null =>
    form.number(name, { label: labels[name] ?? name, ...asked, ...(required && { required }) }, show)
  const rows = <Row>(name: keyof typeof groups, read: (at: (part: string) => string) => Row | null): Row[] =>
    rowNumbers.flatMap((row) => {
      const at = (part: string): string => rowName(name, row, part)
      const { boxes, choices }: Group = groups[name]
      const used = Object.keys({ ...boxes, ...choices }).some((part) => form.text(at(part)) !== null)
      const found = used ? read(at) : null
      return found === null ? [] : [found]
    })
  const { lamp, load, transformer, meter } = groups
  const chosen = <Word extends string>(name: string, words: readonly Word[]): Word | null => {
    const word = form.choice(name, words, labels[name] ?? name)
    if (word === null) form.fault(name, say`Choose for “${labels[name] ?? name}”, or empty its row.`)
    return word
  }
  const benchV = number('benchv', single.benchv)
  const benchA = number('bencha', single.bencha, benchV !== null)
  const outputs = number('benchn', single.benchn) ?? 1
  const residualmA = number('residual', single.residual)
  const atHand: AtHand = {
    country: site.request?.site?.country ?? null,
    socket: site.request?.site?.socket ?? null,
    lamps: rows('lamp', (at) => {
      const [ratedV, ratedW] = [number(at('v'), lamp.boxes.v, true), number(at('w'), lamp.boxes.w, true)]
      const many = number(at('n'), count) ?? 1
      return ratedV === null || ratedW === null ? null : { ratedV, ratedW, count: many }
    }),
    resistors: rows('load', (at) => {
      const [ohm, ratedW] = [number(at('ohm'), load.boxes.ohm, true), number(at('w'), load.boxes.w, true)]
      const many = number(at('n'), count) ?? 1
      return ohm === null || ratedW === null ? null : { ohm, ratedW, count: many }
    }),
    benchSupply: benchV === null || benchA === null ? null : { voltageV: benchV, currentA: benchA, outputs },
    transformers: rows('transformer', (at) => {
      const kind = chosen(at('kind'), transformerKinds)
      const ratedVA = number(at('va'), transformer.boxes.va, true)
      return kind === null || ratedVA === null ? null : { kind, ratedVA }
    }),
    meters: rows('meter', (at) => {
      const category = chosen(at('cat'), meterCategories)
      const ratedV = number(at('v'), meter.boxes.v, true)
      return category === null || ratedV === null ? null : { category, ratedV }
    }),
    insulationTesterV: number('tester', single.tester),
    residualCurrentA: residualmA === null ? null : residualmA / 1000,
  }
  return {
    state: {
      values: { ...site.state.values, ...form.state.values },
      errors: { ...site.state.errors, ...form.state.errors },
      shown: { ...site.state.shown, ...form.state.shown },
      read: {},
    },
    faults: [...site.faults, ...form.faults],
    atHand,
  }
}

/** What the boxes hold of what is kept. */
export function atHandState(kept: AtHand): FormState {
  const text = (value: number | null | undefined): string => (value == null ? '' : figures(value))
  const rows = <Row>(group: keyof typeof groups, list: readonly Row[], of: (row: Row) => Record<string, string>) =>
    list.flatMap((row, index) =>
      Object.entries(of(row)).map(([part, value]): [string, string] => [rowName(group, index + 1, part), value]),
    )
  return {
    values: Object.fromEntries([
      ['country', kept.country ?? ''],
      ['socket', kept.socket ?? ''],
      ...rows('lamp', kept.lamps, ({ ratedV, ratedW, count: n }) => ({ v: text(ratedV), w: text(ratedW), n: text(n) })),
      ...rows('load', kept.resistors, ({ ohm, ratedW, count: n }) => ({ ohm: text(ohm), w: text(ratedW), n: text(n) })),
      ...rows('transformer', kept.transformers, ({ kind, ratedVA }) => ({ kind, va: text(ratedVA) })),
      ...rows('meter', kept.meters, ({ category, ratedV }) => ({ cat: category, v: text(ratedV) })),
      ['benchv', text(kept.benchSupply?.voltageV)],
      ['bencha', text(kept.benchSupply?.currentA)],
      ['benchn', text(kept.benchSupply?.outputs)],
      ['tester', text(kept.insulationTesterV)],
      [
        'residual',
        text(kept.residualCurrentA === null ? null : Number((kept.residualCurrentA * 1000).toPrecision(12))),
      ],
    ]),
    errors: {},
    shown: {},
    read: {},
    filled: true,
  }
}

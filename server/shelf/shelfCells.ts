import type { Device, DeviceInput, Output, Supply } from '../chain/request.js'
import type { ShelfItem, ShelfKind } from './shelfItem.js'

/** The columns of the shelf as CSV, in their order; docs/records.md describes each. */
export const columns = [
  'kind',
  'id',
  'version',
  'name',
  'place',
  'note',
  'plate',
  'input V',
  'input Hz',
  'input A',
  'input VA',
  'input W',
  'selector V',
  'technology',
  'regulated',
  'class',
  'inlet',
  'rails',
  'outputs W',
  'plug outer mm',
  'plug inner mm',
  'plug polarity',
  'plug name',
  'lead m',
  'lead mm2',
  'lead AWG',
  'fuse',
  'off-load V',
  'loaded V',
  'measured polarity',
] as const

export type Column = (typeof columns)[number]

export type Cells = Record<Column, string>

/** One cell that cannot be read. */
export interface CellFault {
  column: Column
  message: string
}

const text = (value: unknown): string => (value === null || value === undefined ? '' : String(value))

const yesNo = (value: boolean | null | undefined): string => (value == null ? '' : value ? 'yes' : 'no')

const window = ({ min, max }: { min: number; max: number }): string => (min === max ? text(min) : `${min} to ${max}`)

/** A rail in one phrase: "DC 12 V 1.5 A 18 W", "AC 9 V 1 A measured ±10 %"; "?" where the kind is not known. */
function rail({ kind, voltageV, currentA, ...rest }: Output & DeviceInput): string {
  const { powerW, currentIs, tolerancePercent } = rest as Partial<Output> & Partial<DeviceInput>
  return [
    kind?.toUpperCase() ?? '?',
    `${voltageV} V`,
    currentA == null ? '' : `${currentA} A`,
    powerW == null ? '' : `${powerW} W`,
    currentIs ?? '',
    tolerancePercent == null ? '' : `±${tolerancePercent} %`,
  ]
    .filter(Boolean)
    .join(' ')
}

/** The cells of one row of the shelf; what is not known is an empty cell. */
export function cellsOf(kind: ShelfKind, stamp: { id: string; version: number } | null, item: ShelfItem): Cells {
  const supply = 'supply' in item ? item.supply : null
  const device = 'device' in item ? item.device : null
  const input = supply?.input
  const plug = supply?.plug ?? device?.jack
  return {
    kind,
    id: stamp?.id ?? '',
    version: text(stamp?.version),
    name: item.name,
    place: text(item.place),
    note: text(item.note),
    plate: text(supply?.label ?? device?.label),
    'input V': (input?.voltages ?? []).map(window).join('; '),
    'input Hz': (input?.frequenciesHz ?? []).join('; '),
    'input A': text(input?.currentA),
    'input VA': text(input?.powerVA),
    'input W': text(input?.powerW),
    'selector V': text(input?.selectorV),
    technology: text(supply?.technology),
    regulated: yesNo(supply ? supply.regulated : device?.regulatedNeeded),
    class: text(supply?.protectionClass),
    inlet: text(supply?.inlet),
    rails: ((supply?.outputs ?? device?.inputs ?? []) as (Output & DeviceInput)[]).map(rail).join('; '),
    'outputs W': text(supply?.outputsTotalW),
    'plug outer mm': text(plug?.outerMm),
    'plug inner mm': text(plug?.innerMm),
    'plug polarity': text(plug?.polarity),
    'plug name': text(plug?.name),
    'lead m': text(supply?.lead?.lengthM),
    'lead mm2': text(supply?.lead?.areaMm2),
    'lead AWG': text(supply?.lead?.awg),
    fuse: text(supply?.fuse),
    'off-load V': text(supply?.measured?.offLoadV),
    'loaded V': text(supply?.measured?.loadedV),
    'measured polarity': text(supply?.measured?.polarity),
  }
}

const numberText = /^[-−]?\d+([.,]\d+)?(e-?\d+)?$/i

/** Reads cells and gathers what cannot be read. */
class CellReader {
  readonly faults: CellFault[] = []

  constructor(private readonly cells: Cells) {}

  text(column: Column): string | undefined {
    return this.cells[column] === '' ? undefined : this.cells[column]
  }

  fault(column: Column, message: string): undefined {
    this.faults.push({ column, message })
    return undefined
  }

  private parsed(column: Column, written: string): number | undefined {
    const bare = written.trim()
    if (/^[-−]?[1-9]\d{0,2},\d{3}$/.test(bare))
      return this.fault(
        column,
        `${column}: “${bare}” can be read two ways; write it with a decimal point or without a comma.`,
      )
    if (!numberText.test(bare))
      return this.fault(column, `${column}: “${written.slice(0, 40)}” is not a number; write it like 12.5.`)
    return Number(bare.replace(',', '.').replace('−', '-'))
  }

  number(column: Column): number | undefined {
    const written = this.text(column)
    return written === undefined ? undefined : this.parsed(column, written)
  }

  yesNo(column: Column): boolean | undefined {
    const written = this.text(column)?.trim().toLowerCase()
    if (written === undefined) return undefined
    if (written === 'yes') return true
    if (written === 'no') return false
    return this.fault(column, `${column}: “${written.slice(0, 40)}” must be yes or no, or empty where it is not known.`)
  }

  private list<Entry>(column: Column, read: (entry: string) => Entry | undefined): Entry[] | undefined {
    const written = this.text(column)
    if (written === undefined) return undefined
    return written
      .split(';')
      .map((entry) => entry.trim())
      .filter(Boolean)
      .map(read)
      .filter((entry) => entry !== undefined)
  }

  numbers(column: Column): number[] | undefined {
    return this.list(column, (entry) => this.parsed(column, entry))
  }

  windows(column: Column): { min: number; max: number }[] | undefined {
    return this.list(column, (entry) => {
      const [low = '', high = low, more] = entry.split(/\s*(?:to|–)\s*|(?<=\d)\s*-\s*(?=\d)/)
      if (more !== undefined)
        return this.fault(column, `${column}: “${entry.slice(0, 40)}” must be one voltage or a range like 100 to 240.`)
      const min = this.parsed(column, low)
      const max = high === low ? min : this.parsed(column, high)
      return min === undefined || max === undefined ? undefined : { min, max }
    })
  }

  rails(column: Column): (Output & DeviceInput)[] | undefined {
    return this.list(column, (entry) => {
      const match =
        /^(DC|AC|\?)\s+(\S+)\s*V(?:\s+(\S+)\s*A)?(?:\s+(\S+)\s*W)?(?:\s+(plate|measured))?(?:\s+±\s*(\S+)\s*%)?$/i.exec(
          entry,
        )
      if (!match)
        return this.fault(
          column,
          `${column}: “${entry.slice(0, 60)}” must be written like “DC 12 V 1.5 A”, several parted by “;”.`,
        )
      const [, kind = '', volts = '', amperes, watts, currentIs, tolerance] = match
      const voltageV = this.parsed(column, volts)
      if (voltageV === undefined) return undefined
      return dropUnknown({
        kind: kind === '?' ? null : (kind.toLowerCase() as 'dc' | 'ac'),
        voltageV,
        currentA: amperes === undefined ? undefined : this.parsed(column, amperes),
        powerW: watts === undefined ? undefined : this.parsed(column, watts),
        currentIs: currentIs?.toLowerCase() as 'plate' | 'measured' | undefined,
        tolerancePercent: tolerance === undefined ? undefined : this.parsed(column, tolerance),
      }) as Output & DeviceInput
    })
  }
}

const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** Without what is undefined, and without objects that hold nothing. */
function dropUnknown<Value extends object>(value: Value): Value {
  const entries = Object.entries(value).filter(
    ([, inner]) => inner !== undefined && !(isPlain(inner) && Object.keys(inner).length === 0),
  )
  return Object.fromEntries(entries) as Value
}

/**
 * The same facts in one form: without null, empty text, empty lists and empty objects, keys in order. Two rows of the
 * shelf say the same when their forms are equal as JSON.
 */
export function canonical(value: unknown): unknown {
  if (Array.isArray(value)) return value.map((entry) => canonical(entry))
  if (!isPlain(value)) return value
  const entries = Object.entries(value)
    .map(([key, inner]) => [key, canonical(inner)] as const)
    .filter(
      ([, inner]) =>
        inner !== undefined &&
        inner !== null &&
        inner !== '' &&
        !(Array.isArray(inner) && inner.length === 0) &&
        !(isPlain(inner) && Object.keys(inner).length === 0),
    )
    .sort(([one], [other]) => (one < other ? -1 : 1))
  return Object.fromEntries(entries)
}

export const sayTheSame = (one: unknown, other: unknown): boolean =>
  JSON.stringify(canonical(one)) === JSON.stringify(canonical(other))

const supplyOnly: Column[] = [
  'input V',
  'input Hz',
  'input A',
  'input VA',
  'input W',
  'selector V',
  'technology',
  'class',
  'inlet',
  'outputs W',
  'lead m',
  'lead mm2',
  'lead AWG',
  'fuse',
  'off-load V',
  'loaded V',
  'measured polarity',
]

function supplyOf(read: CellReader, plug: object): Supply {
  return dropUnknown({
    label: read.text('plate'),
    input: dropUnknown({
      voltages: read.windows('input V'),
      frequenciesHz: read.numbers('input Hz'),
      currentA: read.number('input A'),
      powerVA: read.number('input VA'),
      powerW: read.number('input W'),
      selectorV: read.number('selector V'),
    }),
    technology: read.text('technology') as Supply['technology'],
    regulated: read.yesNo('regulated'),
    protectionClass: read.text('class') as Supply['protectionClass'],
    inlet: read.text('inlet'),
    outputs: read.rails('rails'),
    outputsTotalW: read.number('outputs W'),
    plug,
    lead: dropUnknown({
      lengthM: read.number('lead m'),
      areaMm2: read.number('lead mm2'),
      awg: read.number('lead AWG'),
    }) as Supply['lead'],
    fuse: read.text('fuse'),
    measured: dropUnknown({
      offLoadV: read.number('off-load V'),
      loadedV: read.number('loaded V'),
      polarity: read.text('measured polarity') as 'centre-positive' | undefined,
    }),
  })
}

/**
 * A row of the shelf from its cells. Words such as "transformer" are taken as they stand: the schema of a check says
 * afterwards which are accepted.
 *
 * @returns the row, and every cell that cannot be read
 */
export function itemOf(kind: ShelfKind, cells: Cells): { item: ShelfItem; faults: CellFault[] } {
  const read = new CellReader(cells)
  const plug = dropUnknown({
    outerMm: read.number('plug outer mm'),
    innerMm: read.number('plug inner mm'),
    polarity: read.text('plug polarity') as 'centre-positive' | undefined,
    name: read.text('plug name'),
  })
  const common = { name: cells.name, place: read.text('place') ?? null, note: read.text('note') ?? null }
  if (kind === 'supply') return { item: { ...common, supply: supplyOf(read, plug) }, faults: read.faults }
  for (const column of supplyOnly)
    if (cells[column] !== '')
      read.fault(column, `${column}: is for supplies only and must be empty in the row of a machine.`)
  const device: Device = dropUnknown({
    label: read.text('plate'),
    inputs: read.rails('rails'),
    regulatedNeeded: read.yesNo('regulated'),
    jack: plug,
  })
  return { item: { ...common, device }, faults: read.faults }
}

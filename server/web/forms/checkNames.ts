/** How many rails the form has rows for, on either side. An address may carry no more. */
export const railRows = 6

/**
 * Every parameter a check's address may carry, with the label of its field. This is the whole vocabulary: flat, short,
 * and readable. docs/address.md explains each; an empty one is left out of the address.
 */
export const checkLabels = {
  country: 'Country',
  mains: 'Mains voltage',
  hz: 'Mains frequency',
  socket: 'Socket',

  supply: 'Words on the supply’s plate',
  in: 'Input voltage',
  inhz: 'Input frequency',
  ina: 'Input current',
  inva: 'Input apparent power',
  inw: 'Input power',
  selector: 'Voltage selector is set to',
  type: 'Kind of supply',
  regulated: 'Output is regulated',
  class: 'Protection class',
  inlet: 'Mains inlet',
  fuse: 'Marking of the mains fuse-link',
  outtotal: 'Power of all outputs together',

  plugouter: 'Plug, outer diameter',
  pluginner: 'Plug, inner diameter',
  plugpol: 'Plug polarity',
  plugname: 'Plug name',
  leadm: 'Lead length',
  leadmm2: 'Lead conductor area',
  leadawg: 'Lead conductor gauge',

  offload: 'Measured with nothing connected',
  loaded: 'Measured under load',
  measuredpol: 'Measured polarity',

  machine: 'Words on the machine’s plate',
  needreg: 'Needs a regulated supply',
  jackouter: 'Jack, outer diameter of its plug',
  jackinner: 'Jack, inner diameter of its plug',
  jackpol: 'Jack polarity',
  jackname: 'Jack name',

  cordplug: 'Wall plug',
  cordend: 'Cord connector',
  cordv: 'Cord rated voltage',
  corda: 'Cord rated current',
  cordearth: 'Cord carries an earth',
  cordmm2: 'Cord conductor area',
  cordawg: 'Cord conductor gauge',
  cordplugfitted: 'How the plug is fitted',
  adapter: 'Travel adapter',

  converter: 'Voltage converter',
  converterv: 'Converter output',
  converterva: 'Converter rating',
} as const

/** One row of what the supply gives: `out1`, `out1kind`, `out1a`, `out1w`. */
const outputRow = (row: number) =>
  ({ voltage: `out${row}`, kind: `out${row}kind`, current: `out${row}a`, power: `out${row}w` }) as const

/** One row of what the machine takes: `need1`, `need1kind`, `need1a`, `need1by`, `need1tol`. */
const needRow = (row: number) =>
  ({
    voltage: `need${row}`,
    kind: `need${row}kind`,
    current: `need${row}a`,
    currentBy: `need${row}by`,
    tolerance: `need${row}tol`,
  }) as const

/** The rows of rails, 1, 2, …, each with the names of its boxes on either side. */
export const rails = Array.from({ length: railRows }, (_, index) => ({
  row: index + 1,
  out: outputRow(index + 1),
  need: needRow(index + 1),
}))

/** Every parameter name, in the order they stand in an address. */
export const checkNames: readonly string[] = [
  ...Object.keys(checkLabels),
  ...rails.flatMap(({ out }) => Object.values(out)),
  ...rails.flatMap(({ need }) => Object.values(need)),
]

const railLabels = ({ row, out, need }: (typeof rails)[number]): Record<string, string> => ({
  [out.voltage]: `Voltage of output ${row}`,
  [out.kind]: `AC or DC of output ${row}`,
  [out.current]: `Current of output ${row}`,
  [out.power]: `Power of output ${row}`,
  [need.voltage]: `Voltage of machine input ${row}`,
  [need.kind]: `AC or DC of machine input ${row}`,
  [need.current]: `Current of machine input ${row}`,
  [need.currentBy]: `Source of the current of machine input ${row}`,
  [need.tolerance]: `Tolerance of machine input ${row}`,
})

const labels: Record<string, string> = Object.assign(Object.create(null), checkLabels, ...rails.map(railLabels))

/** The label of a parameter's field, as it stands on the page. */
export const labelOf = (name: string): string => labels[name] ?? name

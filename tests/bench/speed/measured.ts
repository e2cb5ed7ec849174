/** One figure of docs/performance.md. */
export interface Measured {
  what: string
  /** for people: "requests per second, ours / bare" */
  unit: string
  /** what was to be reached; absent where the figure is for knowing only */
  target?: { atLeast: number } | { atMost: number }
  value: number
  /** how much it differed between the runs, or what it is made of */
  note?: string
}

/** A group of figures that one command measures. */
export interface Part {
  /** the word that runs it alone: `npm run bench -- http` */
  name: string
  title: string
  /** what is done, in a sentence or two */
  method: string
  measure(): Promise<Measured[]>
}

export const median = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[Math.floor(values.length / 2)] ?? Number.NaN

/** Three digits, or all before the point: 0.612, 43.1, 20 400. */
export function figure(value: number): string {
  if (Math.abs(value) >= 100) return Math.round(value).toLocaleString('en').replaceAll(',', '\u00a0')
  return String(Number(value.toPrecision(3)))
}

/** Judged as it is printed, so that the table agrees with itself. */
const reached = ({ target, value }: Measured): string => {
  if (!target) return ''
  const printed = numberOf(figure(value))
  return ('atLeast' in target ? printed >= target.atLeast : printed <= target.atMost) ? 'met' : 'missed'
}

const wanted = ({ target }: Measured): string =>
  !target ? '' : 'atLeast' in target ? `at least ${figure(target.atLeast)}` : `at most ${figure(target.atMost)}`

const heading = '| what | unit | target | measured | | note |'

/** The figures as a table of Markdown. */
export const tableOf = (figures: readonly Measured[]): string =>
  [
    heading,
    '|---|---|---|---|---|---|',
    ...figures.map(
      (one) =>
        `| ${one.what} | ${one.unit} | ${wanted(one)} | ${figure(one.value)} | ${reached(one)} | ${one.note ?? ''} |`,
    ),
  ].join('\n')

const numberOf = (text: string): number => Number(text.replaceAll('\u00a0', ''))

/** The rows of such tables, read back. */
export const rowsOf = (page: string): { what: string; target: Measured['target']; value: number; said: string }[] =>
  page
    .split('\n')
    .filter((line) => line.startsWith('| ') && line !== heading)
    .map((line) => {
      const [, what = '', , wish = '', measured = '', said = ''] = line.split('|').map((cell) => cell.trim())
      const [, kind, limit = ''] = /^at (least|most) (.+)$/.exec(wish) ?? []
      const target =
        kind === 'least' ? { atLeast: numberOf(limit) } : kind === 'most' ? { atMost: numberOf(limit) } : undefined
      return { what, target, value: numberOf(measured), said }
    })

import { scaleLinear } from 'd3-scale'
import { line } from 'd3-shape'
import { type GlowWord, glowRows } from '../../tables/glow.js'
import { type Phrase, say, type Words } from '../../words/phrase.js'
import { amperes, decimal, plain, seconds, volts } from '../../words/quantity.js'
import { axes } from './axes.js'
import { type Drawing, place, svgFrame, svgLabel, svgLine } from './svgText.js'

/** What is drawn of a switch-on. */
export interface TransientData {
  timeS: readonly number[]
  filamentK: readonly number[]
  glow: readonly GlowWord[]
  bulkV: readonly number[]
  currentA: readonly number[]
  /** what is seen, in one sentence */
  seen: Phrase
}

const size = { width: 420, height: 520 }
const upper = { left: 56, right: 366, top: 44, bottom: 236 }
const lower = { left: 56, right: 366, top: 288, bottom: 466 }

/**
 * Filament temperature, with the words for its glow, above the volts on the reservoir capacitor, over one time axis.
 *
 * @param shortAfterS  marked by an upright line where given
 * @param id           unique on the page
 */
export function transientChart(
  data: TransientData,
  title: Words,
  shortAfterS: number | null = null,
  id = 'transient',
): Drawing {
  const endS = data.timeS[data.timeS.length - 1] ?? 0
  const milli = endS <= 0.5
  const factor = milli ? 1000 : 1
  const hottest = Math.max(1200, ...data.filamentK)
  const highest = Math.max(10, ...data.bulkV)
  const x = scaleLinear([0, endS * factor], [upper.left, upper.right])
  const kelvin = scaleLinear([300, hottest * 1.04], [upper.bottom, upper.top])
  const volt = scaleLinear([0, highest * 1.08], [lower.bottom, lower.top])
  const timeTitle = milli ? 'Time after switch-on (ms)' : 'Time after switch-on (s)'
  const path = (ys: readonly number[], y: (value: number) => number): string =>
    line<number>(
      (_, at) => place(x((data.timeS[at] ?? 0) * factor)),
      (value) => place(y(value)),
    )(ys as number[]) ?? ''
  const words = glowRows.filter((row) => row.fromK < hottest * 1.04)
  const parts: Words[] = [
    ...axes(upper, x, kelvin, { x: null, y: 'Filament (K)' }, { x: String, y: (value) => decimal(value) }),
    ...words.flatMap((row, at) => {
      const from = Math.max(300, row.fromK)
      const to = words[at + 1]?.fromK ?? hottest * 1.04
      const lines =
        row.fromK > 300 ? [svgLine(upper.left, kelvin(from), upper.right, kelvin(from), 'draw-thin', '2 4')] : []
      return [...lines, svgLabel(row.glow, { x: upper.right + 8, y: (kelvin(from) + kelvin(to)) / 2 + 5 })]
    }),
    `<path d="${path(data.filamentK, kelvin)}" class="draw-lamp"/>`,
    ...axes(
      lower,
      x,
      volt,
      { x: timeTitle, y: 'Reservoir capacitor (V)' },
      { x: (value) => decimal(value), y: (value) => decimal(value) },
    ),
    `<path d="${path(data.bulkV, volt)}" class="draw"/>`,
  ]
  if (shortAfterS !== null && shortAfterS <= endS)
    for (const panel of [upper, lower]) {
      const at = x(shortAfterS * factor)
      parts.push(svgLine(at, panel.top, at, panel.bottom, 'draw-stop', '6 3'))
      const late = shortAfterS > endS / 2
      parts.push(svgLabel('shorted', { x: at + (late ? -5 : 5), y: panel.bottom - 8, anchor: late ? 'end' : 'start' }))
    }
  const brightest = data.filamentK.indexOf(Math.max(...data.filamentK))
  const last = data.timeS.length - 1
  const description = say`Hottest ${plain(data.filamentK[brightest] ?? 0, 'K', 3)} (${data.glow[brightest] ?? ''}) after ${seconds(data.timeS[brightest] ?? 0)}; at ${seconds(endS)} the filament is at ${plain(data.filamentK[last] ?? 0, 'K', 3)} (${data.glow[last] ?? ''}) and the capacitor at ${volts(data.bulkV[last] ?? 0)}. Seen: ${data.seen}`
  return {
    svg: svgFrame({ id, ...size, title, description }, parts),
    caption: say`Seen: ${data.seen} Above the filament with its glow in words, below the capacitor.`,
    table: transientTable(data),
  }
}

/** Shares of the run shown as rows: close together at the beginning, where most happens. */
const shares = [0, 0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]

/** The same run as a table of some fifteen moments. */
function transientTable(data: TransientData): Drawing['table'] {
  const last = data.timeS.length - 1
  const picked = [...new Set(shares.map((share) => Math.round(share * last)))]
  return {
    headings: ['Time', 'Filament', 'Glow', 'Capacitor', 'Current (rms)'],
    rows: picked.map((at) => [
      seconds(data.timeS[at] ?? 0),
      plain(data.filamentK[at] ?? 0, 'K', 3),
      data.glow[at] ?? '',
      volts(data.bulkV[at] ?? 0, 3),
      amperes(data.currentA[at] ?? 0, 3),
    ]),
  }
}

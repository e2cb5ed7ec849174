import type { ScaleLinear } from 'd3-scale'
import type { Words } from '../../words/phrase.js'
import { svgLabel, svgLine } from './svgText.js'

export interface Plot {
  left: number
  right: number
  top: number
  bottom: number
}

/** Numbers, marks and titles of two linear axes; the unit stands in each title. */
export function axes(
  plot: Plot,
  x: ScaleLinear<number, number>,
  y: ScaleLinear<number, number>,
  titles: { x: Words | null; y: Words },
  number: { x: (value: number) => Words; y: (value: number) => Words },
): Words[] {
  const parts: Words[] = [
    svgLine(plot.left, plot.bottom, plot.right, plot.bottom),
    svgLine(plot.left, plot.top, plot.left, plot.bottom),
  ]
  for (const tick of x.ticks(5)) {
    parts.push(svgLine(x(tick), plot.bottom, x(tick), plot.bottom + 5))
    if (titles.x !== null)
      parts.push(svgLabel(number.x(tick), { x: x(tick), y: plot.bottom + 20, anchor: 'middle', soft: true }))
  }
  for (const tick of y.ticks(5)) {
    parts.push(svgLine(plot.left - 5, y(tick), plot.left, y(tick)))
    parts.push(svgLabel(number.y(tick), { x: plot.left - 8, y: y(tick) + 5, anchor: 'end', soft: true }))
  }
  if (titles.x !== null)
    parts.push(svgLabel(titles.x, { x: (plot.left + plot.right) / 2, y: plot.bottom + 40, anchor: 'middle' }))
  parts.push(svgLabel(titles.y, { x: plot.left - 42, y: plot.top - 12 }))
  return parts
}

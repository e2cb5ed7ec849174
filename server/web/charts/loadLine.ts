import { scaleLinear } from 'd3-scale'
import { curveMonotoneX, line } from 'd3-shape'
import type { LoadLine } from '../../plan/firstPower/seriesLamp.js'
import { joined, say, type Words } from '../../words/phrase.js'
import { amperes, decimal, volts } from '../../words/quantity.js'
import { axes } from './axes.js'
import { type Drawing, place, svgFrame, svgLabel, svgLine } from './svgText.js'

const size = { width: 420, height: 360 }
const plot = { left: 56, right: 408, top: 66, bottom: 306 }

/**
 * The lamps' line and the load's line over the volts across the lamps; where they meet, current and volts agree.
 *
 * The lamps' line is unbroken, the load's dashed; a stable point is a filled circle, an unstable one a ring, the starved
 * state a cross.
 *
 * @param id  unique on the page
 */
export function loadLineChart(data: LoadLine, names: { lamp: Words; load: Words }, id = 'load-line'): Drawing {
  const highest = Math.max(
    ...data.lamp.map(({ currentA }) => currentA),
    ...data.load.map(({ currentA }) => currentA),
    ...data.points.map(({ currentA }) => currentA),
  )
  const milli = highest < 1
  const factor = milli ? 1000 : 1
  const x = scaleLinear([0, data.mainsV], [plot.left, plot.right])
  const y = scaleLinear([0, highest * 1.08], [plot.bottom, plot.top])
  const inUnit = scaleLinear([0, highest * 1.08 * factor], [plot.bottom, plot.top])
  const path = line<{ voltageV: number; currentA: number }>(
    ({ voltageV }) => place(x(voltageV)),
    ({ currentA }) => place(y(currentA)),
  ).curve(curveMonotoneX)
  const parts: Words[] = [
    ...axes(
      plot,
      x,
      inUnit,
      { x: 'Volts across the lamps (V)', y: milli ? 'Current (mA)' : 'Current (A)' },
      { x: (value) => decimal(value), y: (value) => decimal(value) },
    ),
    `<path d="${path(data.lamp) ?? ''}" class="draw-lamp"/>`,
    svgLine(200, 14, 236, 14, 'draw-lamp'),
    svgLabel(names.lamp, { x: 244, y: 19 }),
    svgLine(200, 36, 236, 36, 'draw', '7 4'),
    svgLabel(names.load, { x: 244, y: 41 }),
  ]
  parts.push(
    data.load.length > 0
      ? `<path d="${path(data.load) ?? ''}" class="draw" stroke-dasharray="7 4"/>`
      : // a short takes any current at no volts, so its line stands upright at the whole mains voltage
        svgLine(x(data.mainsV), plot.top, x(data.mainsV), plot.bottom, 'draw', '7 4'),
  )
  data.points.forEach((point, at) => {
    const cx = place(x(point.lampV))
    const cy = place(y(point.currentA))
    const mark =
      point.name === 'starved'
        ? `<path d="M${cx - 6} ${cy - 6}l12 12m0 -12l-12 12" class="draw-stop"/>`
        : `<circle cx="${cx}" cy="${cy}" r="6" class="${point.stable ? 'draw-mark' : 'draw'}"/>`
    const right = point.lampV > 0.6 * data.mainsV
    parts.push(mark, svgLabel(`${at + 1}`, { x: cx + (right ? -10 : 10), y: cy + 18, anchor: right ? 'end' : 'start' }))
  })
  const described = joined(
    data.points.map(
      (point, at) =>
        say`${at + 1}: ${point.name}, ${volts(point.lampV)} on the lamps, ${amperes(point.currentA)}, ${volts(point.loadV)} left for the load`,
    ),
    '. ',
  )
  return {
    svg: svgFrame(
      {
        id,
        ...size,
        title: say`Load line of ${names.lamp} and ${names.load} on ${volts(data.mainsV)}`,
        description: say`${described}.`,
      },
      parts,
    ),
    caption: say`Lamps: unbroken line. Load: dashed line. ${described}.`,
    table: loadLineTable(data),
  }
}

/** The same points as a table: every tenth of the mains voltage, then where the lines meet. */
function loadLineTable(data: LoadLine): Drawing['table'] {
  const every = Math.max(1, Math.round((data.lamp.length - 1) / 10))
  const rows = data.lamp
    .filter((_, at) => at % every === 0)
    .map(({ voltageV, currentA }) => {
      const load = data.load.find((point) => Math.abs(point.voltageV - voltageV) < 1e-9)
      return [volts(voltageV), amperes(currentA), load ? amperes(load.currentA) : '–', '']
    })
  const meetings = data.points.map((point) => [
    volts(point.lampV),
    amperes(point.currentA),
    point.name === 'starved' ? '–' : amperes(point.currentA),
    point.name,
  ])
  return {
    headings: ['Volts across the lamps', 'Lamps pass', 'Load takes', 'Meeting point'],
    rows: [...rows, ...meetings],
  }
}

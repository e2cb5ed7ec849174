import { scaleLinear } from 'd3-scale'
import type { ReformAnswer } from '../../plan/bench/reform.js'
import { joined, say } from '../../words/phrase.js'
import { amperes, decimal, duration, ohms, volts } from '../../words/quantity.js'
import { axes } from './axes.js'
import { type Drawing, place, svgFrame, svgLabel } from './svgText.js'

const size = { width: 420, height: 330 }
const plot = { left: 56, right: 400, top: 40, bottom: 276 }

/**
 * The reforming steps as a staircase of volts over hours, with the wait and the leakage that must be reached at each.
 *
 * @param id  unique on the page
 */
export function reformingStaircase(answer: ReformAnswer, id = 'reforming'): Drawing {
  const { stages } = answer
  const ends = stages.map((_, at) => stages.slice(0, at + 1).reduce((sum, stage) => sum + stage.holdS, 0))
  const totalS = ends.at(-1) ?? 0
  const long = totalS >= 7200
  const unit = long ? 3600 : 60
  const highest = Math.max(...stages.map(({ voltageV }) => voltageV))
  const x = scaleLinear([0, totalS / unit], [plot.left, plot.right])
  const y = scaleLinear([0, highest * 1.1], [plot.bottom, plot.top])
  const path = stages
    .map(
      ({ voltageV }, at) =>
        `${at === 0 ? `M${plot.left} ${plot.bottom}` : ''}V${place(y(voltageV))}H${place(x((ends[at] ?? 0) / unit))}`,
    )
    .join('')
  // a label at every step would run together where the steps are short
  const every = Math.ceil(stages.length / 6)
  const labels = stages.flatMap((stage, at) =>
    at % every === 0 || at === stages.length - 1
      ? [
          svgLabel(volts(stage.voltageV, 3), {
            x: Math.min(x((ends[at] ?? 0) / unit) + 6, plot.right - 4),
            y: y(stage.voltageV) - 6,
            anchor: at === stages.length - 1 ? 'end' : 'start',
          }),
        ]
      : [],
  )
  const description = say`${stages.length} steps: ${joined(
    stages.map((stage) => say`${volts(stage.voltageV, 3)} for ${duration(stage.holdS)}`),
    ', ',
  )}; ${duration(totalS)} in all, behind ${ohms(stages[0]?.seriesOhm ?? 0)}.`
  return {
    svg: svgFrame({ id, ...size, title: 'Reforming steps', description }, [
      ...axes(
        plot,
        x,
        y,
        { x: long ? 'Time (h)' : 'Time (min)', y: 'Volts before the resistor (V)' },
        { x: (value) => decimal(value), y: (value) => decimal(value) },
      ),
      `<path d="${path}" class="draw-accent"/>`,
      ...labels,
    ]),
    caption: say`${description} The next step is taken only when the leakage has fallen to the figure in the table; the meter reads it as volts across the resistor.`,
    table: {
      headings: ['Step', 'Set', 'Resistor', 'Wait', 'Leakage at most', 'Across the resistor at most'],
      rows: stages.map((stage, at) => [
        `${at + 1}`,
        volts(stage.voltageV, 3),
        ohms(stage.seriesOhm),
        duration(stage.holdS),
        amperes(stage.maxLeakageA, 3, 'down'),
        volts(stage.dropV, 3, 'down'),
      ]),
    },
  }
}

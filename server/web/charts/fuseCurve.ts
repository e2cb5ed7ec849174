import { scaleLog } from 'd3-scale'
import { line } from 'd3-shape'
import { gateTimes } from '../../physics/fuseCurve.js'
import { joined, type Phrase, say, type Words } from '../../words/phrase.js'
import { amperes, decimal, duration } from '../../words/quantity.js'

/** One link to draw. */
export interface CurveLink {
  /** "1" for the link reviewed, P for what is prescribed, A to C for candidates */
  letter: string
  name: Words
  ratedA: number
  points: { multiple: number; minS: number | null; maxS: number | null }[]
}

/** A current marked by an upright line. */
export interface CurveMark {
  kind: 'operating' | 'fault' | 'lamp'
  name: Words
  currentA: number
}

export interface CurveInput {
  links: CurveLink[]
  marks: CurveMark[]
  inrush: { peakA: number; timeS: number } | null
}

interface Tick {
  at: number
  label: Words | null
}

export interface DrawnLink {
  letter: string
  /** path of the lower and the upper limit */
  min: string
  max: string
  /** outline of the band between them; empty where a limit is missing */
  band: string
  /** gates: an upright bar, or an arrow where one side is open */
  gates: string
  dash: string | null
  main: boolean
  label: { x: number; y: number } | null
}

export interface FuseCurveDrawing {
  width: number
  height: number
  plot: { left: number; right: number; top: number; bottom: number }
  x: Tick[]
  y: Tick[]
  /** multiples of the rated current of the link reviewed, along the top */
  multiples: Tick[]
  links: DrawnLink[]
  marks: { kind: CurveMark['kind']; name: Words; x: number; y: number }[]
  inrush: { x: number; y: number } | null
  /** what the drawing shows, in words */
  text: Phrase
}

const size = { width: 380, height: 430 }
const plot = { left: 62, right: 368, top: 46, bottom: 378 }

const dashes: (string | null)[] = [null, '9 4', '2 4', '12 4 2 4', '6 2 2 2 2 2']

/** Where the name of an upright line begins, so that names never stand on one another. */
const nameHeights: Record<CurveMark['kind'], number> = {
  operating: plot.bottom - 6,
  lamp: plot.bottom - 118,
  fault: plot.top + 96,
}

/** Room on both sides, so that nothing stands on the frame [ratio]. */
const room = 1.6

const around = (values: readonly number[]): [number, number] => [Math.min(...values) / room, Math.max(...values) * room]

/** Every power of ten within a domain, and the one below it. */
const powers = ([low, high]: readonly [number, number]): number[] => {
  const from = Math.floor(Math.log10(low))
  const to = Math.floor(Math.log10(high))
  return Array.from({ length: to - from + 1 }, (_, at) => 10 ** (from + at))
}

/** Lines at 1 to 9 of every decade, numbers at 1; on a short axis at 2 and 5 as well, on a long one at every second. */
function ticks(domain: readonly [number, number], at: (value: number) => number, mostNumbers: number): Tick[] {
  const decades = powers(domain)
  return decades.flatMap((decade) =>
    [1, 2, 3, 4, 5, 6, 7, 8, 9]
      .map((step) => ({ step, value: step * decade }))
      .filter(({ value }) => value >= domain[0] && value <= domain[1])
      .filter(({ step }) => step === 1 || decades.length <= 7)
      .map(({ step, value }) => {
        const even = decades.length <= mostNumbers || Math.round(Math.log10(decade)) % 2 === 0
        const numbered = (step === 1 && even) || ((step === 2 || step === 5) && decades.length <= 3)
        return { at: at(value), label: numbered ? decimal(value, 3) : null }
      }),
  )
}

const topMultiples = [0.5, 1, 1.5, 2, 3, 5, 10, 20, 50, 100, 200, 500, 1000]

/**
 * Draws time-current gates on logarithmic axes, in amperes below and in multiples of the first link's rating above, with
 * the currents and the inrush of the circuit on them. The axes grow to hold everything; nothing is cut off.
 *
 * @returns null where no link has a gate to draw
 */
export function fuseCurve({ links, marks, inrush }: CurveInput): FuseCurveDrawing | null {
  const drawn = links.filter((link) => link.points.length > 0)
  const [first] = drawn
  if (!first) return null
  const currents = [
    ...drawn.flatMap((link) => [link.ratedA, ...link.points.map((point) => point.multiple * link.ratedA)]),
    ...marks.map((mark) => mark.currentA),
    ...(inrush ? [inrush.peakA] : []),
  ]
  const limits = drawn.flatMap((link) =>
    link.points.flatMap((point) => [point.minS, point.maxS].flatMap((value) => value ?? [])),
  )
  // 1 ms to 1 h at least, so that one drawing compares with the next
  const timesS = [...limits, 0.001, 3600, ...(inrush ? [inrush.timeS] : [])]
  const xDomain = around(currents)
  const yDomain = around(timesS)
  const x = scaleLog(xDomain, [plot.left, plot.right])
  const y = scaleLog(yDomain, [plot.bottom, plot.top])
  const round = (value: number): number => Math.round(value * 10) / 10
  const px = (currentA: number): number => round(x(currentA))
  const py = (timeS: number): number => round(y(timeS))
  const taken: Place[] = []
  const path = line<readonly [number, number]>()

  const drawLink = (link: CurveLink, index: number): DrawnLink => {
    const side = (of: 'minS' | 'maxS') =>
      link.points.flatMap((point) =>
        point[of] === null ? [] : [[px(point.multiple * link.ratedA), py(point[of])] as const],
      )
    const lower = side('minS')
    const upper = side('maxS')
    // the band ends with the lower limit: beyond it nothing is known on that side
    const lastMultiple = link.points.findLast((point) => point.minS !== null)?.multiple ?? 0
    const closingS = lastMultiple > 0 ? gateTimes(link.points, lastMultiple).maxS : null
    const lastX = px(lastMultiple * link.ratedA)
    const over = [...upper.filter(([x]) => x < lastX), ...(closingS === null ? [] : [[lastX, py(closingS)] as const])]
    const gates = link.points
      .map(({ multiple, minS, maxS }) => {
        const at = px(multiple * link.ratedA)
        if (minS !== null && maxS !== null)
          return `M${at} ${py(minS)}V${py(maxS)}M${at - 4} ${py(minS)}h8M${at - 4} ${py(maxS)}h8`
        // an arrow away from the limit: the side that is open
        if (minS !== null) return `M${at - 5} ${py(minS)}h10M${at} ${py(minS)}v-12m-3 4l3 -4l3 4`
        if (maxS !== null) return `M${at - 5} ${py(maxS)}h10M${at} ${py(maxS)}v12m-3 -4l3 4l3 -4`
        return ''
      })
      .join('')
    const end = upper.at(-1) ?? lower.at(-1)
    return {
      letter: link.letter,
      min: path(lower) ?? '',
      max: path(upper) ?? '',
      band: lower.length > 1 && over.length > 1 ? `${path([...lower, ...over.toReversed()]) ?? ''}Z` : '',
      gates,
      dash: dashes[index % dashes.length] ?? null,
      main: index === 0,
      label: end ? freePlace({ x: Math.min(end[0] + 11, plot.right - 8), y: end[1] - 4 }, taken) : null,
    }
  }

  return {
    ...size,
    plot,
    x: ticks(xDomain, px, 7),
    y: ticks(yDomain, py, 16),
    multiples: multipleTicks(first.ratedA, xDomain, px),
    links: drawn.map(drawLink),
    marks: marks.map((mark) => ({
      kind: mark.kind,
      name: say`${mark.kind} ${amperes(mark.currentA, 3)}`,
      x: px(mark.currentA),
      y: nameHeights[mark.kind],
    })),
    inrush: inrush ? { x: px(inrush.peakA), y: py(inrush.timeS) } : null,
    text: inWords(drawn, marks, inrush),
  }
}

interface Place {
  x: number
  y: number
}

/** Moves a letter upwards until it stands clear of the others. */
function freePlace(wanted: Place, taken: Place[]): Place {
  let place = wanted
  while (taken.some((other) => Math.abs(other.x - place.x) < 13 && Math.abs(other.y - place.y) < 13))
    place = { ...place, y: place.y - 4 }
  taken.push(place)
  return place
}

/** Numbers along the top, left out where they would stand closer than a number is wide. */
function multipleTicks(
  ratedA: number,
  [low, high]: readonly [number, number],
  px: (currentA: number) => number,
): Tick[] {
  let lastAt = Number.NEGATIVE_INFINITY
  return topMultiples
    .filter((multiple) => multiple * ratedA >= low && multiple * ratedA <= high)
    .map((multiple) => {
      const at = px(multiple * ratedA)
      const fits = at - lastAt >= 26
      if (fits) lastAt = at
      return { at, label: fits ? decimal(multiple) : null }
    })
}

function inWords(links: readonly CurveLink[], marks: readonly CurveMark[], inrush: CurveInput['inrush']): Phrase {
  const parts = [
    ...links.map(
      (link) =>
        say`${link.name}: ${link.points.length} gates from ${decimal(link.points[0]?.multiple ?? 0, 3)} to ${decimal(link.points.at(-1)?.multiple ?? 0, 3)} times its rating`,
    ),
    ...marks.map((mark) => say`${mark.name} at ${amperes(mark.currentA)}`),
    ...(inrush ? [say`inrush of ${amperes(inrush.peakA)} for ${duration(inrush.timeS)}`] : []),
  ]
  return say`Melting time against current on logarithmic axes. ${joined(parts, '; ')}. The tables below hold the same points.`
}

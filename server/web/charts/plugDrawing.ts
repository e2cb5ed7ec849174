import type { DcPlug } from '../../chain/case/request.js'
import { polarityText } from '../../facts/plug.js'
import { joined, type Phrase, say, type Words } from '../../words/phrase.js'
import { millimetres } from '../../words/quantity.js'

/** Drawing units for one millimetre. */
export const unitsPerMm = 14

export interface Box {
  x: number
  y: number
  width: number
  height: number
}

export interface Mark {
  x: number
  y: number
  text: Words
  anchor: 'start' | 'middle' | 'end'
}

export interface PlugDrawing {
  width: number
  height: number
  /** metal, cut along the axis: the plug's sleeve above and below its bore, then the jack's pin and opening */
  metal: Box[]
  /** the plugs' plastic bodies */
  body: Box[]
  /** lines to and between dimensions, as path data */
  lines: string[]
  marks: Mark[]
  /** what the drawing shows, in words */
  text: Words
}

export interface Sides {
  plug: DcPlug | null
  jack: DcPlug | null
}

interface Sized {
  outerMm: number
  innerMm: number
  polarity: DcPlug['polarity']
}

const sized = (plug: DcPlug | null): Sized | null =>
  plug?.outerMm != null && plug.innerMm != null && plug.outerMm > plug.innerMm
    ? { outerMm: plug.outerMm, innerMm: plug.innerMm, polarity: plug.polarity }
    : null

const width = 404
/** where the metal begins, right of the plastic body, and how long the contacts are drawn: 9.5 mm for every size */
const metalX = 100
const metalLength = 9.5 * unitsPerMm

const signs = (polarity: DcPlug['polarity']): { centre: string; sleeve: string } | null =>
  polarity == null ? null : polarity === 'centre-positive' ? { centre: '+', sleeve: '−' } : { centre: '−', sleeve: '+' }

const words = (polarity: DcPlug['polarity']): string => (polarity ? polarityText(polarity) : 'polarity not known')

/** An upright line of the given length with a bar at both ends. */
const measure = (x: number, axis: number, length: number): string =>
  `M${x} ${axis - length / 2}v${length}M${x - 4} ${axis - length / 2}h8M${x - 4} ${axis + length / 2}h8`

interface Half extends Sized {
  title: string
  /** what the centre contact is called: "bore" of a plug, "pin" of a jack */
  centre: 'bore' | 'pin'
}

/** One half of the drawing, from `y` down. */
function drawHalf(drawing: PlugDrawing, { title, centre, outerMm, innerMm, polarity }: Half, y: number): number {
  const outer = outerMm * unitsPerMm
  const inner = innerMm * unitsPerMm
  const wall = (outer - inner) / 2
  const top = y + 34
  const axis = top + outer / 2
  drawing.body.push({ x: 4, y: top - 10, width: metalX - 4, height: outer + 20 })
  if (centre === 'bore')
    drawing.metal.push(
      { x: metalX, y: top, width: metalLength, height: wall },
      { x: metalX, y: top + outer - wall, width: metalLength, height: wall },
    )
  else {
    drawing.metal.push({ x: metalX, y: axis - inner / 2, width: metalLength - unitsPerMm, height: inner })
    drawing.body.push(
      { x: metalX, y: top - 10, width: metalLength, height: 10 },
      { x: metalX, y: top + outer, width: metalLength, height: 10 },
    )
  }
  const [innerX, outerX] = [metalX + metalLength + 14, metalX + metalLength + 92]
  drawing.lines.push(`M${metalX} ${axis}H${innerX - 6}`, measure(innerX, axis, inner), measure(outerX, axis, outer))
  drawing.marks.push(
    { x: 4, y: y + 14, text: `${title}: ${words(polarity)}`, anchor: 'start' },
    { x: innerX + 8, y: axis + 5, text: millimetres(innerMm), anchor: 'start' },
    { x: outerX + 8, y: axis + 5, text: millimetres(outerMm), anchor: 'start' },
  )
  const sign = signs(polarity)
  if (sign)
    drawing.marks.push(
      // at the height of the upper wall, but never into the line below
      {
        x: metalX / 2 + 2,
        y: Math.min(top + wall / 2 + 5, axis - 11),
        text: `sleeve ${sign.sleeve}`,
        anchor: 'middle',
      },
      { x: metalX / 2 + 2, y: axis + 6, text: `${centre} ${sign.centre}`, anchor: 'middle' },
    )
  return top + outer + 20
}

/**
 * The plug over the jack's pin, cut along the axis, both at one scale. The jack is drawn with the plug size it is made
 * for: pin as thick as that plug's bore, opening as wide as its outside. `null` unless both diameters of one side are known.
 */
export function plugDrawing({ plug, jack }: Sides): PlugDrawing | null {
  const [over, into] = [sized(plug), sized(jack)]
  if (!over && !into) return null
  const drawing: PlugDrawing = { width, height: 0, metal: [], body: [], lines: [], marks: [], text: '' }
  const said: Phrase[] = []
  let y = 0
  if (over) {
    y = drawHalf(drawing, { title: 'Plug', centre: 'bore', ...over }, y)
    said.push(
      say`Plug: sleeve ${millimetres(over.outerMm)} outside, bore ${millimetres(over.innerMm)}, ${words(over.polarity)}.`,
    )
  }
  if (into) {
    y = drawHalf(drawing, { title: 'Jack', centre: 'pin', ...into }, y)
    said.push(
      say`Jack: made for ${millimetres(into.outerMm)} outside and a bore of ${millimetres(into.innerMm)}, ${words(into.polarity)}.`,
    )
  }
  // a ruler of 5 mm, so that the scale can be checked by eye
  const end = metalX + 5 * unitsPerMm
  drawing.lines.push(`M${metalX} ${y + 8}H${end}M${metalX} ${y + 3}v10M${end} ${y + 3}v10`)
  drawing.marks.push({ x: end + 10, y: y + 13, text: '5\u00a0mm', anchor: 'start' })
  drawing.height = y + 20
  drawing.text = joined(said)
  return drawing
}

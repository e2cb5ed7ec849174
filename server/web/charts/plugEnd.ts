import { type Phrase, say } from '../../words/phrase.js'
import { millimetres } from '../../words/quantity.js'
import { place, svgFrame } from './svgText.js'

/** Drawing units for one millimetre, the same for every plug, so that plugs can be compared by eye. */
const unitsPerMm = 9

/**
 * A coaxial plug seen from its open end, all plugs at one scale: sleeve as a ring, its bore, and the plug's own pin where it has one.
 *
 * @param id  unique on the page
 */
export function plugEndDrawing(
  id: string,
  {
    name,
    outerMm,
    innerMm,
    centrePinMm,
  }: { name: string; outerMm: number; innerMm: number; centrePinMm: number | null },
): Phrase {
  const size = place((outerMm + 0.6) * unitsPerMm)
  const circle = (diameterMm: number, kind: string): string =>
    `<circle class="${kind}" cx="${place(size / 2)}" cy="${place(size / 2)}" r="${place((diameterMm / 2) * unitsPerMm)}"/>`
  const pin = centrePinMm === null ? '' : say`, with a pin of ${millimetres(centrePinMm)}`
  return svgFrame(
    {
      id: `plug-${id}`,
      width: size,
      height: size,
      title: name,
      description: say`${millimetres(outerMm)} outside, ${millimetres(innerMm)} bore${pin}`,
      fixed: 'plug-end',
    },
    [
      circle(outerMm, 'draw-fill'),
      circle(innerMm, 'bore'),
      centrePinMm === null ? '' : circle(centrePinMm, 'draw-mark'),
    ],
  )
}

import type { DcPlugRow } from '../../tables/dcPlugRows.js'
import { place } from '../charts/svgText.js'

/**
 * A coaxial plug seen from its open end, as large as it is where the page is shown or printed at its own scale.
 *
 * The file's size is in millimetres, so that it can be compared with a ruler drawn in millimetres beside it.
 */
export function plugSvg({
  outerMm,
  innerMm,
  centrePinMm,
}: Pick<DcPlugRow, 'outerMm' | 'innerMm' | 'centrePinMm'>): string {
  const size = place(outerMm + 1)
  const circle = (diameterMm: number, fill: string): string =>
    `<circle cx="${place(size / 2)}" cy="${place(size / 2)}" r="${diameterMm / 2}" fill="${fill}"/>`
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" width="${size}mm" height="${size}mm" stroke="#000" stroke-width=".15">${circle(outerMm, '#bbb')}${circle(innerMm, '#fff')}${centrePinMm === null ? '' : circle(centrePinMm, '#000')}</svg>`
}

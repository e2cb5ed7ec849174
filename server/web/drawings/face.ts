import type { ContactFace } from '../../tables/contactFaces.js'
import type { FacePart } from '../../tables/socketFaces.js'
import { place } from '../charts/svgText.js'

/** Drawing units for one millimetre, the same for all faces, so that they can be compared by eye. */
const unitsPerMm = 4
const marginMm = 3

/** Black on nothing: the page turns it round where it is dark. */
export const svg = (width: number, height: number, ...content: string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${place(width)} ${place(height)}" width="${place(width)}" height="${place(height)}" fill="none" stroke="#000" stroke-width="1.5">${content.join('')}</svg>`

function contact({ shape, kind, xMm, yMm, widthMm, heightMm, turnedDeg }: FacePart): string {
  const filled = kind === 'hole' ? '' : ' fill="#000"'
  const turned = turnedDeg === 0 ? '' : ` transform="rotate(${turnedDeg} ${place(xMm)} ${place(-yMm)})"`
  return shape === 'round'
    ? `<circle cx="${place(xMm)}" cy="${place(-yMm)}" r="${place(widthMm / 2)}"${filled}/>`
    : `<rect x="${place(xMm - widthMm / 2)}" y="${place(-yMm - heightMm / 2)}" width="${place(widthMm)}" height="${place(heightMm)}"${turned}${filled}/>`
}

/** The sign of an earth, beside its contact and clear of the others. */
const earthSign = ({ xMm, yMm, widthMm }: FacePart): string =>
  `<path d="M${place(xMm + widthMm / 2 + 3)} ${place(-yMm - 2)}v2m-2 0h4m-3.2 1h2.4m-1.6 1h.8"/>`

/**
 * A face as its contacts point at you: openings outlined, metal that stands out filled, each earth with its sign.
 *
 * @param extentMm  half the width and half the height that are drawn at least
 */
export function faceSvg({ parts, body }: Pick<ContactFace, 'parts' | 'body'>, extentMm = { x: 12, y: 12 }): string {
  const up = Math.max(extentMm.y, ...parts.map(({ yMm, heightMm }) => yMm + heightMm / 2))
  const down = Math.max(extentMm.y, ...parts.map(({ yMm, heightMm }) => heightMm / 2 - yMm))
  const wide = Math.max(extentMm.x, ...parts.map(({ xMm, widthMm }) => Math.abs(xMm) + widthMm / 2)) + marginMm
  const [width, height] = [2 * wide, up + down + 2 * marginMm]
  return svg(
    width * unitsPerMm,
    height * unitsPerMm,
    `<g transform="translate(${place(wide * unitsPerMm)} ${place((up + marginMm) * unitsPerMm)}) scale(${unitsPerMm})" stroke-width=".4">`,
    body === '' ? '' : `<path d="${body}" stroke-width=".25"/>`,
    ...parts.map(contact),
    ...parts.filter(({ earth, kind }) => earth && kind !== 'spring').map(earthSign),
    '</g>',
  )
}

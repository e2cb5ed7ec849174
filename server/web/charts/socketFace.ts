import type { FacePart, SocketFace } from '../../tables/socketFaces.js'
import type { Phrase } from '../../words/phrase.js'
import { prose } from '../../words/prose.js'
import { place, svgFrame } from './svgText.js'

/** Drawing units for one millimetre, the same for every face, so that faces can be compared by eye. */
const unitsPerMm = 4
const halfMm = { width: 22, up: 36 }

/** Least height above and below the middle that is drawn [mm]. */
const extentMm: Record<SocketFace['surround'], number> = { none: 9, round: 20, hexagon: 12 }

const x = (xMm: number): number => place((halfMm.width + xMm) * unitsPerMm)
const y = (yMm: number): number => place((halfMm.up - yMm) * unitsPerMm)

/** Holes are outlined, what stands out of the socket is filled, an earth has a bar across a ring around it. */
function part({ shape, kind, earth, xMm, yMm, widthMm, heightMm, turnedDeg }: FacePart): string {
  const name = kind === 'hole' ? 'draw' : 'draw-mark'
  const [width, height] = [place(widthMm * unitsPerMm), place(heightMm * unitsPerMm)]
  const [atX, atY] = [x(xMm), y(yMm)]
  const turned = turnedDeg === 0 ? '' : ` transform="rotate(${turnedDeg} ${atX} ${atY})"`
  const outline =
    shape === 'round'
      ? `<circle class="${name}" cx="${atX}" cy="${atY}" r="${place(width / 2)}"/>`
      : `<rect class="${name}" x="${place(atX - width / 2)}" y="${place(atY - height / 2)}" width="${width}" height="${height}"${turned}/>`
  if (!earth) return outline
  // letter E at an earth, so that it is told apart without colour; below it where the other holes are near
  const [labelX, labelY] =
    Math.abs(yMm) > 8 ? [atX + Math.max(width, 8) / 2 + 11, atY + 5] : [atX, atY + height / 2 + 14]
  return `${outline}<text x="${place(labelX)}" y="${place(labelY)}" text-anchor="middle">E</text>`
}

function surround(kind: SocketFace['surround']): string {
  if (kind === 'none') return ''
  const [middleX, middleY] = [x(0), y(0)]
  if (kind === 'round') return `<circle class="draw-thin" cx="${middleX}" cy="${middleY}" r="${19.5 * unitsPerMm}"/>`
  const [long, short, high] = [18.5 * unitsPerMm, 12 * unitsPerMm, 11.5 * unitsPerMm]
  return `<path class="draw-thin" d="M${middleX - long} ${middleY}l${long - short} ${-high}h${2 * short}l${long - short} ${high}l${short - long} ${high}h${-2 * short}Z"/>`
}

/**
 * The face of a socket as one looks at it; openings as large and as far apart as the pins of its plug, all faces at one
 * scale. Null where the shape is described in words only.
 */
export function socketFaceDrawing(face: SocketFace): Phrase | null {
  if (face.parts.length === 0) return null
  const up = Math.max(...face.parts.map(({ yMm, heightMm }) => yMm + heightMm / 2), extentMm[face.surround])
  const down = Math.max(...face.parts.map(({ yMm, heightMm }) => heightMm / 2 - yMm), extentMm[face.surround])
  const [top, height] = [(halfMm.up - up - 2) * unitsPerMm, (up + down + 4) * unitsPerMm]
  return svgFrame(
    {
      id: `face-${face.id}`,
      width: 2 * halfMm.width * unitsPerMm,
      height: place(height),
      title: `Socket ${face.letter}, ${face.form}`,
      description: prose(face.seen),
      fixed: 'socket-face',
    },
    [`<g transform="translate(0 ${place(-top)})">`, surround(face.surround), ...face.parts.map(part), '</g>'],
  )
}

import { frozen } from './frozen.js'
import { commonPractice, fromMemory, type Source } from './source.js'
import type { Sourced } from './sourced.js'

/** One opening or contact of a socket's face, drawn as large as the pin that goes there. */
export interface FacePart {
  readonly shape: 'round' | 'flat'
  /** a hole for a pin of the plug, a pin of the socket itself, or a spring contact at the rim */
  readonly kind: 'hole' | 'pin' | 'spring'
  readonly earth: boolean
  /** centre, from the middle between line and neutral, to the right and upwards [mm] */
  readonly xMm: number
  readonly yMm: number
  /** across and along; equal for a round one [mm] */
  readonly widthMm: number
  readonly heightMm: number
  /** turned to the right, clockwise [°] */
  readonly turnedDeg: number
}

/** The face of a wall socket, as one looks at it. */
export interface SocketFace extends Sourced {
  /** stable name of the row */
  readonly id: string
  readonly letter: string
  readonly form: string
  /** what is seen, in words */
  readonly seen: string
  /** the recess or collar around the openings; it is only indicated, not to scale */
  readonly surround: 'none' | 'round' | 'hexagon'
  /** empty: the shape is not known well enough to be drawn */
  readonly parts: readonly FacePart[]
}

const round = (
  diameterMm: number,
  xMm: number,
  yMm: number,
  earth = false,
  kind: FacePart['kind'] = 'hole',
): FacePart => ({
  shape: 'round',
  kind,
  earth,
  xMm,
  yMm,
  widthMm: diameterMm,
  heightMm: diameterMm,
  turnedDeg: 0,
})

const flat = (
  [widthMm, heightMm]: readonly [number, number],
  [xMm, yMm]: readonly [number, number],
  {
    earth = false,
    turnedDeg = 0,
    kind = 'hole',
  }: { earth?: boolean; turnedDeg?: number; kind?: FacePart['kind'] } = {},
): FacePart => ({ shape: 'flat', kind, earth, xMm, yMm, widthMm, heightMm, turnedDeg })

/** Two round pins side by side. */
const pair = (diameterMm: number, apartMm: number): FacePart[] => [
  round(diameterMm, -apartMm / 2, 0),
  round(diameterMm, apartMm / 2, 0),
]

const clip = (yMm: number): FacePart => flat([6, 2.5], [0, yMm], { earth: true, kind: 'spring' })
const dimensions = (standard: string, detail: string): readonly Source[] => [fromMemory(standard, detail)]
const wordsOnly: Source = commonPractice(
  'Described, not drawn',
  'the dimensions of this face are not known here well enough to draw it',
)

const nemaFlat: readonly FacePart[] = [flat([1.5, 7.9], [-6.35, 0]), flat([1.5, 6.3], [6.35, 0])]

/** One row a form. Which pole is live is left out on purpose: wiring differs, and is found by measuring only. */
export const socketFaces: readonly SocketFace[] = frozen<SocketFace[]>([
  {
    id: 'a',
    letter: 'A',
    form: 'NEMA 1-15R',
    seen: 'Two upright parallel slots, 12.7 mm apart, the left one usually taller; no earth. Very old ones have two equal slots.',
    surround: 'none',
    parts: nemaFlat,
    sources: dimensions('NEMA WD 6', 'blades 1.5 mm thick, 6.3 mm and 7.9 mm wide, 12.7 mm apart'),
  },
  {
    id: 'b',
    letter: 'B',
    form: 'NEMA 5-15R',
    seen: 'The two upright slots of type A and a round or D-shaped earth hole 11.9 mm below; often mounted the other way up.',
    surround: 'none',
    parts: [...nemaFlat, round(4.8, 0, -11.9, true)],
    sources: dimensions('NEMA WD 6', 'earth pin 4.8 mm, 11.9 mm from the line between the blades'),
  },
  {
    id: 'c',
    letter: 'C',
    form: 'CEE 7/1',
    seen: 'Two round holes, 19 mm apart, and no earth contact of any kind.',
    surround: 'round',
    parts: pair(4.8, 19),
    sources: dimensions('CEE 7, sheet 1', 'pins of 4.8 mm on 19 mm; the flat two-pin plug has 4 mm pins'),
  },
  {
    id: 'd',
    letter: 'D',
    form: 'BS 546, 5 A',
    seen: 'Three round holes in a triangle, the two lower ones 19.1 mm apart, the thicker earth on top.',
    surround: 'none',
    parts: [...pair(5.1, 19.1), round(7.1, 0, 22.2, true)],
    sources: dimensions('BS 546', '5 A: pins 5.1 mm on 19.1 mm, earth pin 7.1 mm, 22.2 mm above'),
  },
  {
    id: 'e',
    letter: 'E',
    form: 'CEE 7/5',
    seen: 'A round recess with two holes 19 mm apart and an earth pin that stands out of the socket.',
    surround: 'round',
    parts: [...pair(4.8, 19), round(4.8, 0, 10, true, 'pin')],
    sources: dimensions('CEE 7, sheet 5', 'earth pin 4.8 mm, 10 mm from the line between the holes'),
  },
  {
    id: 'f',
    letter: 'F',
    form: 'CEE 7/3',
    seen: 'A round recess with two holes 19 mm apart and an earth spring at the rim on two opposite sides.',
    surround: 'round',
    parts: [...pair(4.8, 19), clip(17), clip(-17)],
    sources: dimensions('CEE 7, sheet 3', 'pins of 4.8 mm on 19 mm; the place of the springs is only indicated'),
  },
  {
    id: 'g',
    letter: 'G',
    form: 'BS 1363-2',
    seen: 'Three rectangular slots: two lying below, 22.2 mm apart, and the larger upright earth slot on top; shutters behind the lower two.',
    surround: 'none',
    parts: [flat([6.35, 4], [-11.1, 0]), flat([6.35, 4], [11.1, 0]), flat([4, 7.9], [0, 22.2], { earth: true })],
    sources: dimensions('BS 1363', 'pins 6.35 mm × 4 mm on 22.2 mm, earth pin 4 mm × 7.9 mm, 22.2 mm above'),
  },
  {
    id: 'h',
    letter: 'H',
    form: 'SI 32',
    seen: 'Three openings in a triangle of their own, the earth below; older ones take flat slanted pins, newer ones round pins as well.',
    surround: 'none',
    parts: [],
    sources: [wordsOnly],
  },
  {
    id: 'i',
    letter: 'I',
    form: 'AS/NZS 3112, 10 A',
    seen: 'Two slanted slots that lean together at the top and an upright earth slot below them. Chinese ones are the same, mostly mounted the other way up.',
    surround: 'none',
    parts: [
      flat([1.6, 6.5], [-6.85, 0], { turnedDeg: 30 }),
      flat([1.6, 6.5], [6.85, 0], { turnedDeg: -30 }),
      flat([1.6, 6.5], [0, -14.3], { earth: true }),
    ],
    sources: dimensions(
      'AS/NZS 3112',
      'flat pins 6.5 mm × 1.6 mm, slanted by 30°, 13.7 mm apart; the earth pin 14.3 mm below the line between them',
    ),
  },
  {
    id: 'j',
    letter: 'J',
    form: 'SN 441011, 10 A',
    seen: 'A six-sided recess with three round holes, the outer two 19 mm apart, the earth 5 mm off the line between them.',
    surround: 'hexagon',
    parts: [...pair(4, 19), round(4, 0, -5, true)],
    sources: dimensions('SN 441011', 'pins of 4 mm on 19 mm, earth 5 mm off the line; the recess is only indicated'),
  },
  {
    id: 'k',
    letter: 'K',
    form: 'DS 60884-2-D1',
    seen: 'Two round holes 19 mm apart and a half-round earth opening below them: a face with a smile.',
    surround: 'none',
    parts: [],
    sources: [wordsOnly],
  },
  {
    id: 'l-10',
    letter: 'L',
    form: 'CEI 23-50, 10 A',
    seen: 'Three round holes of 4 mm in one line, the outer two 19 mm apart, the earth in the middle.',
    surround: 'none',
    parts: [...pair(4, 19), round(4, 0, 0, true)],
    sources: dimensions('CEI 23-50', '10 A: pins of 4 mm, 19 mm between the outer ones'),
  },
  {
    id: 'l-16',
    letter: 'L',
    form: 'CEI 23-50, 16 A',
    seen: 'Three round holes of 5 mm in one line, the outer two 26 mm apart, the earth in the middle. Sockets that take both sizes have overlapping holes.',
    surround: 'none',
    parts: [...pair(5, 26), round(5, 0, 0, true)],
    sources: dimensions('CEI 23-50', '16 A: pins of 5 mm, 26 mm between the outer ones'),
  },
  {
    id: 'm',
    letter: 'M',
    form: 'BS 546, 15 A',
    seen: 'The triangle of type D, larger: the two lower holes 25.4 mm apart.',
    surround: 'none',
    parts: [...pair(7.1, 25.4), round(8.7, 0, 28.6, true)],
    sources: dimensions('BS 546', '15 A: pins 7.1 mm on 25.4 mm, earth pin 8.7 mm, 28.6 mm above'),
  },
  {
    id: 'n',
    letter: 'N',
    form: 'IEC 60906-1, NBR 14136',
    seen: 'A six-sided recess with three round holes, the outer two 19 mm apart, the earth only 3 mm off the line between them: next to type J, which it is not.',
    surround: 'hexagon',
    parts: [...pair(4.5, 19), round(4.5, 0, -3, true)],
    sources: dimensions(
      'IEC 60906-1',
      'pins of 4.5 mm on 19 mm, earth 3 mm off the line; in Brazil 4 mm for 10 A and 4.8 mm for 20 A',
    ),
  },
  {
    id: 'o',
    letter: 'O',
    form: 'TIS 166-2549',
    seen: 'Two round holes 19 mm apart and a round earth hole 11.9 mm below; most sockets take flat blades as well.',
    surround: 'none',
    parts: [...pair(4.8, 19), round(4.8, 0, -11.9, true)],
    sources: dimensions('TIS 166-2549', 'pins of 4.8 mm on 19 mm, earth 11.9 mm from the line between them'),
  },
])

import { socketLetters } from './socketLetters.js'
import { commonPractice, fromMemory, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

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
// biome-ignore format: a row a line
export const socketFaces = rows<SocketFace>()(['id', 'letter', 'form', 'seen', 'surround', 'parts', 'sources'], [
  ['a', 'A', 'NEMA 1-15R', 'Two upright parallel slots, 12.7 mm apart, the left one usually taller; no earth. Very old ones have two equal slots.', 'none', nemaFlat, dimensions('NEMA WD 6', 'blades 1.5 mm thick, 6.3 mm and 7.9 mm wide, 12.7 mm apart')],
  ['b', 'B', 'NEMA 5-15R', 'The two upright slots of type A and a round or D-shaped earth hole 11.9 mm below; often mounted the other way up.', 'none', [...nemaFlat, round(4.8, 0, -11.9, true)], dimensions('NEMA WD 6', 'earth pin 4.8 mm, 11.9 mm from the line between the blades')],
  ['c', 'C', 'CEE 7/1', 'Two round holes, 19 mm apart, and no earth contact of any kind.', 'round', pair(4.8, 19), dimensions('CEE 7, sheet 1', 'pins of 4.8 mm on 19 mm; the flat two-pin plug has 4 mm pins')],
  ['d', 'D', 'BS 546, 5 A', 'Three round holes in a triangle, the two lower ones 19.1 mm apart, the thicker earth on top.', 'none', [...pair(5.1, 19.1), round(7.1, 0, 22.2, true)], dimensions('BS 546', '5 A: pins 5.1 mm on 19.1 mm, earth pin 7.1 mm, 22.2 mm above')],
  ['e', 'E', 'CEE 7/5', 'A round recess with two holes 19 mm apart and an earth pin that stands out of the socket.', 'round', [...pair(4.8, 19), round(4.8, 0, 10, true, 'pin')], dimensions('CEE 7, sheet 5', 'earth pin 4.8 mm, 10 mm from the line between the holes')],
  ['f', 'F', 'CEE 7/3', 'A round recess with two holes 19 mm apart and an earth spring at the rim on two opposite sides.', 'round', [...pair(4.8, 19), clip(17), clip(-17)], dimensions('CEE 7, sheet 3', 'pins of 4.8 mm on 19 mm; the place of the springs is only indicated')],
  ['g', 'G', 'BS 1363-2', 'Three rectangular slots: two lying below, 22.2 mm apart, and the larger upright earth slot on top; shutters behind the lower two.', 'none', [flat([6.35, 4], [-11.1, 0]), flat([6.35, 4], [11.1, 0]), flat([4, 7.9], [0, 22.2], { earth: true })], dimensions('BS 1363', 'pins 6.35 mm × 4 mm on 22.2 mm, earth pin 4 mm × 7.9 mm, 22.2 mm above')],
  ['h', 'H', 'SI 32', 'Three openings in a triangle of their own, the earth below; older ones take flat slanted pins, newer ones round pins as well.', 'none', [], [wordsOnly]],
  ['i', 'I', 'AS/NZS 3112, 10 A', 'Two slanted slots that lean together at the top and an upright earth slot below them. Chinese ones are the same, mostly mounted the other way up.', 'none', [flat([1.6, 6.5], [-6.85, 0], { turnedDeg: 30 }), flat([1.6, 6.5], [6.85, 0], { turnedDeg: -30 }), flat([1.6, 6.5], [0, -14.3], { earth: true })], dimensions('AS/NZS 3112', 'flat pins 6.5 mm × 1.6 mm, slanted by 30°, 13.7 mm apart; the earth pin 14.3 mm below the line between them')],
  ['j', 'J', 'SN 441011, 10 A', 'A six-sided recess with three round holes, the outer two 19 mm apart, the earth 5 mm off the line between them.', 'hexagon', [...pair(4, 19), round(4, 0, -5, true)], dimensions('SN 441011', 'pins of 4 mm on 19 mm, earth 5 mm off the line; the recess is only indicated')],
  ['k', 'K', 'DS 60884-2-D1', 'Two round holes 19 mm apart and a half-round earth opening below them: a face with a smile.', 'none', [], [wordsOnly]],
  ['l-10', 'L', 'CEI 23-50, 10 A', 'Three round holes of 4 mm in one line, the outer two 19 mm apart, the earth in the middle.', 'none', [...pair(4, 19), round(4, 0, 0, true)], dimensions('CEI 23-50', '10 A: pins of 4 mm, 19 mm between the outer ones')],
  ['l-16', 'L', 'CEI 23-50, 16 A', 'Three round holes of 5 mm in one line, the outer two 26 mm apart, the earth in the middle. Sockets that take both sizes have overlapping holes.', 'none', [...pair(5, 26), round(5, 0, 0, true)], dimensions('CEI 23-50', '16 A: pins of 5 mm, 26 mm between the outer ones')],
  ['m', 'M', 'BS 546, 15 A', 'The triangle of type D, larger: the two lower holes 25.4 mm apart.', 'none', [...pair(7.1, 25.4), round(8.7, 0, 28.6, true)], dimensions('BS 546', '15 A: pins 7.1 mm on 25.4 mm, earth pin 8.7 mm, 28.6 mm above')],
  ['n', 'N', 'IEC 60906-1, NBR 14136', 'A six-sided recess with three round holes, the outer two 19 mm apart, the earth only 3 mm off the line between them: next to type J, which it is not.', 'hexagon', [...pair(4.5, 19), round(4.5, 0, -3, true)], dimensions('IEC 60906-1', 'pins of 4.5 mm on 19 mm, earth 3 mm off the line; in Brazil 4 mm for 10 A and 4.8 mm for 20 A')],
  ['o', 'O', 'TIS 166-2549', 'Two round holes 19 mm apart and a round earth hole 11.9 mm below; most sockets take flat blades as well.', 'none', [...pair(4.8, 19), round(4.8, 0, -11.9, true)], dimensions('TIS 166-2549', 'pins of 4.8 mm on 19 mm, earth 11.9 mm from the line between them')],
])

export const socketsTable = table<SocketFace>({
  name: 'sockets',
  title: 'Wall sockets',
  intro:
    'The faces as one looks at them. Openings are as large and as far apart as the pins of the plug, all drawings at one scale; the recess around them is only indicated. E marks the earth, filled parts stand out of the socket. A face whose dimensions are not known well enough is described in words only.',
  warning:
    'The shape proves neither voltage nor earth: the same socket carries 120 V in one place and 230 V in another, and an earth contact may be connected to nothing. Measure.',
  rows: socketFaces,
  id: ({ id }) => [id],
  columns: [
    {
      key: 'letter',
      title: 'Letter and form',
      of: ({ letter, form }) => `${letter}: ${form}`,
      known: () => socketLetters,
    },
    { key: 'parts', title: 'Face', as: 'socket-face' },
    { key: 'seen', title: 'What is seen' },
  ],
  rules: [
    {
      fault: 'has a part that no socket has',
      broken: ({ parts }) =>
        !parts.every(
          ({ xMm, yMm, widthMm, heightMm }) => Math.hypot(xMm, yMm) <= 30 && widthMm <= 10 && heightMm <= 10,
        ),
    },
  ],
  whole: (rows) =>
    socketLetters
      .filter((letter) => !rows.some((face) => face.letter === letter))
      .map((letter) => `no face of socket ${letter}`),
})

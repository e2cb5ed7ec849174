import { frozen } from './frozen.js'
import { type FacePart, socketFaces } from './socketFaces.js'
import { commonPractice, fromMemory, type Source } from './source.js'

/** How the metal of a plug, an inlet or a connector stands, seen as its contacts point at you. */
export interface ContactFace {
  /** as in plugTypes.ts and inletPairs.ts */
  readonly name: string
  readonly parts: readonly FacePart[]
  /** the body around it as path data, from the middle between line and neutral, y downwards [mm]; only indicated */
  readonly body: string
  readonly source: Source
}

const mirrored = commonPractice(
  'Pins of a plug',
  'those of the socket it is made for, the other way round; the body is not drawn',
)

/** The pins of a plug from the face of a socket: what is a hole there is a pin here, what stands out there is a hole here. */
const fromSocket = (id: string): readonly FacePart[] =>
  (socketFaces.find((face) => face.id === id)?.parts ?? []).map((part) => ({
    ...part,
    kind: part.kind === 'hole' ? 'pin' : part.kind === 'pin' ? 'hole' : part.kind,
    xMm: 0 - part.xMm,
    turnedDeg: 0 - part.turnedDeg,
  }))

const plug = (name: string, socket: string, keep: (part: FacePart) => boolean = () => true): ContactFace => ({
  name,
  parts: fromSocket(socket).filter(keep),
  body: '',
  source: mirrored,
})

const unearthed = (part: FacePart): boolean => !part.earth
const hole = (part: FacePart): FacePart => ({ ...part, kind: 'hole' })
const thin = (diameterMm: number) => (part: FacePart) => ({ ...part, widthMm: diameterMm, heightMm: diameterMm })

const bothEarths: ContactFace = {
  name: 'CEE 7/7',
  parts: [
    ...fromSocket('f'),
    ...fromSocket('e')
      .filter(({ earth }) => earth)
      .map(hole),
  ],
  body: '',
  source: mirrored,
}

/** Plugs whose pins are known well enough to be drawn. */
export const plugFaces: readonly ContactFace[] = frozen([
  plug('NEMA 1-15P', 'a'),
  plug('NEMA 5-15P', 'b'),
  plug('JIS C 8303 three-pin', 'b'),
  { ...plug('CEE 7/16', 'c'), parts: fromSocket('c').map(thin(4)) },
  plug('CEE 7/17', 'c'),
  plug('BS 546 5 A', 'd'),
  plug('BS 546 15 A', 'm'),
  { ...plug('CEE 7/6', 'e'), parts: fromSocket('e') },
  plug('CEE 7/4', 'f'),
  bothEarths,
  plug('BS 1363', 'g'),
  plug('AS/NZS 3112 10 A', 'i'),
  plug('AS/NZS 3112 10 A two-pin', 'i', unearthed),
  plug('IRAM 2073 10 A', 'i'),
  plug('GB 1002 three-pin', 'i'),
  plug('SN 441011 T12', 'j'),
  plug('SN 441011 T11', 'j', unearthed),
  plug('CEI 23-50 S11', 'l-10'),
  plug('CEI 23-50 S17', 'l-16'),
  plug('IEC 60906-1', 'n'),
  plug('TIS 166-2549', 'o'),
])

const sheets = fromMemory(
  'IEC 60320-3, standard sheets',
  'contacts as they are remembered; the outline is only indicated',
)

const blade = (xMm: number, yMm: number, [widthMm, heightMm] = [2, 4], earth = false): FacePart => ({
  shape: 'flat',
  kind: 'pin',
  earth,
  xMm,
  yMm,
  widthMm: widthMm ?? 2,
  heightMm: heightMm ?? 4,
  turnedDeg: 0,
})
const pin = (xMm: number, yMm: number, diameterMm: number, earth = false): FacePart => ({
  ...blade(xMm, yMm, [diameterMm, diameterMm], earth),
  shape: 'round',
})

const inlet = (name: string, body: string, ...parts: FacePart[]): ContactFace => ({ name, parts, body, source: sheets })

/** Two corners cut on the side of the earth. */
const cutCorners = 'M-12 8V-3L-7 -9H7L12 -3V8Z'
const notched = 'M-12 8V-3L-7 -9H7L12 -3V8H2V6H-2V8Z'
const square = 'M-14 8V-12H14V8Z'

/** Appliance inlets whose contacts are known well enough to be drawn; the connector is the same with holes. */
export const inletFaces: readonly ContactFace[] = frozen([
  inlet(
    'C6',
    'M-5 5A5 5 0 1 1 -4 -5A5 5 0 0 1 -3 -9A5 5 0 1 1 3 -9A5 5 0 0 1 4 -5A5 5 0 1 1 5 5Z',
    pin(-5, 0, 2.8),
    pin(5, 0, 2.8),
    pin(0, 7.5, 2.8, true),
  ),
  inlet(
    'C8',
    'M-4.3 -4A4 4 0 1 0 -4.3 4Q0 2 4.3 4A4 4 0 1 0 4.3 -4Q0 -2 -4.3 -4Z',
    pin(-4.3, 0, 2.4),
    pin(4.3, 0, 2.4),
  ),
  inlet('C8A', 'M-4.3 -4H-8.3V4H-4.3Q0 2 4.3 4A4 4 0 1 0 4.3 -4Q0 -2 -4.3 -4Z', pin(-4.3, 0, 2.4), pin(4.3, 0, 2.4)),
  inlet('C14', cutCorners, blade(-7, 0), blade(7, 0), blade(0, 4, [2, 4], true)),
  inlet('C16', notched, blade(-7, 0), blade(7, 0), blade(0, 4, [2, 4], true)),
  inlet('C18', cutCorners, blade(-7, 0), blade(7, 0)),
  inlet('C20', square, blade(-6.5, 0, [8, 2]), blade(6.5, 0, [8, 2]), blade(0, 8, [8, 2], true)),
  inlet('C24', square, blade(-6.5, 0, [8, 2]), blade(6.5, 0, [8, 2])),
])

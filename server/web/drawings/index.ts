import { drawingKey } from '../../facts/drawingKey.js'
import { type ContactFace, inletFaces, plugFaces } from '../../tables/contactFaces.js'
import { dcPlugRows } from '../../tables/dcPlugRows.js'
import { inletPairs } from '../../tables/inletPairs.js'
import { socketFaces } from '../../tables/socketFaces.js'
import { plugSvg } from './dcPlug.js'
import { faceSvg } from './face.js'
import { symbols } from './symbols.js'

const bodies = {
  none: '',
  round: 'M-19.5 0a19.5 19.5 0 1 0 39 0a19.5 19.5 0 1 0 -39 0',
  hexagon: 'M-18.5 0l6.5 -11.5h24l6.5 11.5l-6.5 11.5h-24Z',
}

/** A connector is its inlet with holes for pins, the other way round. */
const connectorOf = ({ parts, body }: ContactFace): Pick<ContactFace, 'parts' | 'body'> => ({
  body,
  parts: parts.map((part) => ({ ...part, kind: 'hole', xMm: 0 - part.xMm })),
})

/** Every drawing by its key, as a file of its own. */
export const drawings: ReadonlyMap<string, string> = new Map([
  ...Object.entries(symbols),
  ...socketFaces
    .filter(({ parts }) => parts.length > 0)
    .map(({ letter, parts, surround }): [string, string] => [
      drawingKey('socket', letter),
      faceSvg({ parts, body: bodies[surround] }, surround === 'none' ? undefined : { x: 18, y: 18 }),
    ]),
  ...plugFaces.map((face): [string, string] => [drawingKey('plug', face.name), faceSvg(face)]),
  ...inletFaces.flatMap((face): [string, string][] => {
    const pair = inletPairs.find(({ inlet }) => inlet === face.name)
    return [
      [drawingKey('inlet', face.name), faceSvg(face)],
      ...(pair ? [[drawingKey('connector', pair.connector), faceSvg(connectorOf(face))] as [string, string]] : []),
    ]
  }),
  ...dcPlugRows.map((row): [string, string] => [drawingKey('dc', row.name), plugSvg(row)]),
])

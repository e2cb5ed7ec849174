import { crossMatings, type InletPair, inletPairs } from './inletPairs.js'
import { fromMemory, type Source } from './source.js'

const shape = (text: string): string =>
  text
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '')
    .replace(/^(IEC|EN)?(60320|320)?[13]?(?=C)/, '')
    .replace(/(APPLIANCE)?(INLET|CONNECTOR)$/, '')
    .replace(/^C7POLARI[SZ]ED$/, 'C7P')

const byInlet = new Map(inletPairs.map((pair) => [pair.inlet, pair]))
const byConnector = new Map(inletPairs.map((pair) => [pair.connector, pair]))

/** The pair of an inlet's name: "C14", "iec c14", "IEC 60320 C14 inlet"; undefined when it is none of IEC 60320. */
export const inletByName = (name: string): InletPair | undefined => {
  const wanted = byInlet.has(name) ? name : shape(name)
  // a C8B differs from a C8 in the outline only
  return byInlet.get(wanted === 'C8B' ? 'C8' : wanted)
}

/** The pair of a connector's name: "C13", "iec c13"; undefined when it is none of IEC 60320. A C7 belongs to the plain C8. */
export const connectorByName = (name: string): InletPair | undefined =>
  byConnector.get(name) ?? byConnector.get(shape(name))

export interface Mating {
  readonly fits: boolean
  readonly why: string
  readonly doubt?: string
  readonly sources: readonly Source[]
}

/** Why a pair that no row names does not mate. @public */
export const keyed = fromMemory(
  'IEC 60320-1',
  'connectors and inlets of different standard sheets are shaped not to mate',
)

/**
 * Whether a connector goes into an appliance inlet: its own pair does, a hotter connector goes into a cooler inlet,
 * the reverse does not, and any other pair does not. Undefined where either name is not one of IEC 60320.
 *
 * @source the rows of inletPairs.ts
 */
export function connectorFits(connector: string, inlet: string): Mating | undefined {
  const own = connectorByName(connector)
  const wanted = inletByName(inlet)
  if (!own || !wanted) return undefined
  const cross = crossMatings.find((row) => row.connector === own.connector && row.inlet === wanted.inlet)
  if (cross) return cross
  if (own.connector === wanted.connector)
    return {
      fits: true,
      why: `${own.connector} is the connector made for the ${wanted.inlet} inlet.`,
      doubt: wanted.doubt,
      sources: wanted.sources,
    }
  return {
    fits: false,
    why: `${own.connector} belongs to a ${own.inlet} inlet; a ${wanted.inlet} inlet takes a ${wanted.connector}.`,
    sources: [keyed],
  }
}

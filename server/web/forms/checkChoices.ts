import { inletPairs } from '../../reference/inletPairs.js'
import { plugTypes } from '../../reference/plugTypes.js'
import { socketLetters } from '../../reference/sockets.js'

export interface Choice<Value extends string = string> {
  value: Value
  label: string
}

export const technologies: readonly Choice<'switch-mode' | 'transformer'>[] = [
  { value: 'switch-mode', label: 'Switch-mode (light for its power)' },
  { value: 'transformer', label: 'Transformer (heavy for its power)' },
]

export const yesNo: readonly Choice<'yes' | 'no'>[] = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
]

export const kinds: readonly Choice<'dc' | 'ac'>[] = [
  { value: 'dc', label: 'DC' },
  { value: 'ac', label: 'AC' },
]

export const protectionClasses: readonly Choice<'I' | 'II' | 'III'>[] = [
  { value: 'I', label: 'Class I: relies on an earth' },
  { value: 'II', label: 'Class II: square in a square' },
  { value: 'III', label: 'Class III: extra-low voltage only' },
]

export const polarities: readonly Choice<'centre-positive' | 'centre-negative'>[] = [
  { value: 'centre-positive', label: 'Centre positive' },
  { value: 'centre-negative', label: 'Centre negative' },
]

export const currentSources: readonly Choice<'plate' | 'measured'>[] = [
  { value: 'plate', label: 'its plate' },
  { value: 'measured', label: 'a measurement' },
]

export const plugFittings: readonly Choice<'moulded' | 'rewired'>[] = [
  { value: 'moulded', label: 'Moulded on' },
  { value: 'rewired', label: 'Fitted by hand' },
]

export const adapters: readonly Choice<'earthed' | 'unearthed' | 'unknown'>[] = [
  { value: 'earthed', label: 'Yes, and it passes the earth on' },
  { value: 'unearthed', label: 'Yes, without an earth' },
  { value: 'unknown', label: 'Yes, earth not known' },
]

export const converterKinds: readonly Choice<'autotransformer' | 'isolating' | 'electronic' | 'unknown'>[] = [
  { value: 'autotransformer', label: 'Autotransformer' },
  { value: 'isolating', label: 'Isolating transformer' },
  { value: 'electronic', label: 'Electronic (light, for heaters)' },
  { value: 'unknown', label: 'One is used, kind not known' },
]

/** What a socket of each letter looks like from the front. */
const socketShapes: Record<(typeof socketLetters)[number], string> = {
  A: 'two flat slots',
  B: 'two flat slots and a round earth hole',
  C: 'two round holes, no earth',
  D: 'three large round holes in a triangle',
  E: 'two round holes, an earth pin standing out',
  F: 'round recess, two earth clips at its rim',
  G: 'three rectangular slots',
  H: 'three holes in a V',
  I: 'two slanted slots, a third upright',
  J: 'three round holes close together, flat hexagon',
  K: 'two round holes and a half-round earth hole',
  L: 'three round holes in a row',
  M: 'three very large round holes in a triangle',
  N: 'three round holes, hexagonal recess',
  O: 'three round holes, the earth one wider apart',
}

export const sockets: readonly Choice[] = socketLetters.map((letter) => ({
  value: letter,
  label: `${letter}: ${socketShapes[letter]}`,
}))

const captive: Choice = { value: 'captive', label: 'None: the cord is fixed on' }

export const plugs: readonly Choice[] = plugTypes.map(({ name, letters }) => ({
  value: name,
  label: letters.length > 0 ? `${name} (type ${letters.join(', ')})` : name,
}))

const named = (value: string, nicknames: readonly string[]): Choice => ({
  value,
  label: nicknames[0] ? `${value} (${nicknames[0]})` : value,
})

// one connector may stand in two rows, once for each inlet it is sold for
const once = (choices: Choice[]): Choice[] =>
  choices.filter(({ value }, index) => choices.findIndex((choice) => choice.value === value) === index)

export const inlets: readonly Choice[] = [
  captive,
  ...once(inletPairs.map(({ inlet, nicknames }) => named(inlet, nicknames))),
]

export const connectors: readonly Choice[] = [
  captive,
  ...once(inletPairs.map(({ connector, nicknames }) => named(connector, nicknames))),
]

import { frozen } from './frozen.js'
import { commonPractice, published } from './source.js'
import type { Sourced } from './sourced.js'

export const glowWords = frozen(['none', 'dull', 'part', 'bright', 'full'] as const)

export type GlowWord = (typeof glowWords)[number]

/** The glow from this filament temperature upwards, until the next row. */
export interface GlowRow extends Sourced {
  readonly glow: GlowWord
  readonly fromK: number
  /** what is seen, in words */
  readonly seen: string
}

const byEye = commonPractice(
  'Project estimate: glow in words',
  'from the colour and the share of the light at that filament temperature of a 60 W lamp; limits good to about 100 K',
)

export const glowRows: readonly GlowRow[] = frozen<GlowRow[]>([
  { glow: 'none', fromK: 0, seen: 'dark', sources: [byEye] },
  {
    glow: 'dull',
    fromK: 798,
    seen: 'a dull red filament, seen only in a darkened room below about 1000\u00a0K',
    sources: [published('Draper point', 'hot solids begin to be seen to glow in the dark at about 798 K (525 °C)')],
  },
  {
    glow: 'part',
    fromK: 1500,
    seen: 'an orange filament, from 1\u00a0% to a tenth of the full light',
    sources: [byEye],
  },
  {
    glow: 'bright',
    fromK: 2200,
    seen: 'yellow light, from a tenth to two fifths of the full light',
    sources: [byEye],
  },
  {
    glow: 'full',
    fromK: 2500,
    seen: 'white light, as bright as the lamp at its rated voltage or nearly so',
    sources: [byEye],
  },
])

import { frozen } from './frozen.js'
import { commonPractice, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

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

// biome-ignore format: a row a line
export const glowRows = rows<GlowRow>()(['glow', 'fromK', 'seen', 'sources'], [
  ['none', 0, 'dark', [byEye]],
  ['dull', 798, 'a dull red filament, seen only in a darkened room below about 1000\u00a0K', [published('Draper point', 'hot solids begin to be seen to glow in the dark at about 798 K (525 °C)')]],
  ['part', 1500, 'an orange filament, from 1\u00a0% to a tenth of the full light', [byEye]],
  ['bright', 2200, 'yellow light, from a tenth to two fifths of the full light', [byEye]],
  ['full', 2500, 'white light, as bright as the lamp at its rated voltage or nearly so', [byEye]],
])

export const glowTable = table<GlowRow>({
  name: 'glow',
  title: 'Glow of the lamp in words',
  intro:
    'What is seen of a filament from this temperature upwards, until the next row. The meter decides, not the eye.',
  rows: glowRows,
  id: ({ glow }) => [glow],
  columns: [
    { key: 'glow', title: 'Word' },
    { key: 'fromK', title: 'From', unit: 'K', from: 0, rises: true },
    { key: 'seen', title: 'Seen' },
  ],
})

import { frozen } from './frozen.js'
import { fromMemory } from './source.js'
import { table } from './table.js'

/** Words beside the sizes of a plug, in capitals and without accents, as parts of a pattern. */
export const plugWords = frozen({
  outer: [
    'OUTER DIAMETER',
    'OUTSIDE DIAMETER',
    'OUTER DIA\\.?',
    'OUTER',
    'OUTSIDE',
    'O\\.?D\\.?(?![A-Z])',
    'AUSSENDURCHMESSER',
    'AUSSEN',
    '外径',
    '외경',
    'EXTERIEUR',
    'ESTERNO',
    'EXTERIOR',
    'EXTERNO',
    'UTVANDIG',
    'BUITEN',
    'НАРУЖНЫИ',
  ],
  inner: [
    'INNER DIAMETER',
    'INSIDE DIAMETER',
    'INNER DIA\\.?',
    'INNER',
    'INSIDE',
    'BORE',
    'I\\.?D\\.?(?![A-Z])',
    'INNENDURCHMESSER',
    'INNEN',
    '内径',
    '내경',
    'INTERIEUR',
    'INTERNO',
    'INTERIOR',
    'INVANDIG',
    'BINNEN',
    'ВНУТРЕННИИ',
    'PIN(?:NE)?(?![A-Z])',
  ],
  barrel: ['BARREL', 'HOHLSTECKER', 'COAXIAL', 'DC PLUG', 'DC JACK', 'PLUG', 'JACK', 'STECKER', 'CONNECTOR'],
  plug: [
    'PLUG',
    'PLUGG',
    'JACK',
    'BARREL',
    'CONNECTOR',
    'CONNECTEUR',
    'FICHE',
    'PRISE',
    'STECKER',
    'BUCHSE',
    'SPINOTTO',
    'CONNETTORE',
    'CONECTOR',
    'CLAVIJA',
    'PINO',
    'STEKKER',
    'KONTAKT',
    'LIITIN',
    'WTYK',
    'KONEKTOR',
    'ШТЕКЕР',
    'РАЗЪЕМ',
    'プラグ',
    '插头',
    '接口',
    '母头',
    '公头',
    '플러그',
    'TIP',
    'DC(?![A-Z])',
  ],
  source: fromMemory('Rating plates and data sheets of power supplies', 'wording common in the trade, not looked up'),
} as const)

const { source, ...kinds } = plugWords
/** A part of a pattern as one would print it. */
const printed = (word: string): string => word.replace(/\(\?[^)]*\)|[\\?]/g, '')
const shown = Object.entries(kinds).map(([kind, words]) => ({
  kind,
  words: [...new Set(words.map(printed))],
  source,
}))

export const plugWordsTable = table<(typeof shown)[number]>({
  name: 'plug-words',
  title: 'Words beside the sizes of a plug',
  intro:
    'What tells the outside, the bore and the plug itself where its sizes are printed. Case and accents do not matter.',
  rows: shown,
  id: ({ kind }) => [kind],
  columns: [
    { key: 'kind', title: 'What they tell' },
    { key: 'words', title: 'Words', between: '; ', filled: true },
  ],
})

import { commonPractice, fromMemory, published } from './source.js'
import type { Sourced } from './sourced.js'
import { rows, table } from './table.js'

/** What stands behind the socket. */
export const mainsSourceNames = [
  'wall',
  'two-live',
  'isolating-transformer',
  'site-transformer',
  'shaver-outlet',
  'inverter-sine',
  'inverter-stepped',
  'generator',
] as const

export type MainsSource = (typeof mainsSourceNames)[number]

export interface MainsSourceRow extends Sourced {
  readonly source: Exclude<MainsSource, 'wall'>
  readonly says: string
  readonly wrong: string
  readonly wants: string
  /** where earth stands to its two conductors */
  readonly earth: string
  /** whether both conductors stand at a voltage to earth: a single-pole switch, fuse-link or lamp leaves one of them on the inside */
  readonly bothLive: (typeof bothLiveWords)[number]
  /** what the wall before it says nothing of: a transformer keeps the wall's frequency, what makes its own mains keeps nothing */
  readonly own: (typeof ownWords)[number]
  /** whether a residual-current device before it opens for a fault to earth behind it */
  readonly residual: (typeof residualWords)[number]
}

const bothLiveWords = ['no', 'perhaps', 'yes'] as const
const ownWords = ['nothing', 'voltage', 'voltage and frequency'] as const
const residualWords = ['acts', 'may not act', 'does not act'] as const

const twoConductors = published(
  'Forum answers of electricians on European appliances at 240 V outlets of North America',
  'cut both conductors; a fitting plug; the appliance expects an earthed conductor',
)
const siteTransformers = published(
  'Maker’s page on 110 V supply systems of building sites; forum on imported equipment',
  '55-0-55 V, fuse and switch in one conductor only',
)
const shavers = published(
  'BS EN 61558-2-5:2010, scope, and a trade article on shaver sockets',
  '20 VA to 50 VA, up to 275 V with nothing connected',
)
const phases = published(
  'Pages on 120/208 V and on the 230 V between phases of Norway',
  '120 V to earth of 208 V and 133 V of 230 V, 1/√3; such a net has no earthed conductor and may float',
)
const isolating = published(
  'Texts on entertainers’ safety and on residual-current devices behind isolating transformers',
  'the first fault only makes it an earthed supply again; one machine',
)
const generators = published(
  'Generator manual, page 40',
  '±10 % of the voltage and ±3 Hz; loaded before anything is plugged in',
)
const stepped = published(
  'Inverter makers’ pages, of low trust, and a repair guide',
  'steps with gaps; 5 to 7 times the current at the start of a motor',
)
const practice = commonPractice(
  'Stepped inverters',
  'transformers and motors run hotter on them, capacitor droppers overheat, a rectifier sees a lower crest',
)

const floating = fromMemory(
  'Inverters and their earth',
  'the outlet of many small ones is joined to no earth, that of others to the middle or to one side: its manual says which',
)

/** Sources other than a live conductor and a neutral of the wall: what goes wrong, and what they want. */
// biome-ignore format: a row a line
export const mainsSourceRows = rows<MainsSourceRow>()(['source', 'says', 'wrong', 'wants', 'earth', 'bothLive', 'own', 'residual', 'sources'], [
  ['two-live', 'two live conductors', 'What a neutral would be stands at half the voltage to earth: a single-pole switch or fuse-link leaves one live conductor on the whole inside.', 'A switch and an overcurrent device in both conductors; the plug pulled, not only the switch.', 'Earth is joined to the middle between them, so each stands at half the voltage to earth; to the middle of three phases, so each stands at 0.58 of it; in some nets to nothing.', 'yes', 'nothing', 'acts', [twoConductors, phases]],
  ['isolating-transformer', 'an isolating transformer', 'A residual-current device before it sees nothing behind it. The first fault only makes it an earthed supply again; the second can kill. It takes away neither the shock across its two conductors nor stored charge.', 'One machine alone on it, its case joined to nothing else.', 'Earth is joined to neither conductor; the first fault joins it to one, and the other then stands at the whole voltage to it.', 'perhaps', 'voltage', 'does not act', [isolating]],
  ['site-transformer', 'a site transformer with its middle earthed', 'Both conductors are live, half the voltage to earth: a single-pole switch or fuse-link of the machine leaves the other on the inside. Many are rated for minutes.', 'A switch and an overcurrent device in both conductors; for hours no more than half of its rating. Nobody joins one end to earth to make a neutral: that shorts half of the winding.', 'Earth is joined to the middle of the winding: each conductor stands at half the voltage to it.', 'yes', 'voltage', 'does not act', [siteTransformers]],
  ['shaver-outlet', 'a shaver outlet', 'It gives 20 VA to 50 VA, up to 275 V with nothing connected, and opens when it is warm; some have no transformer at all.', 'Another outlet: this one is for shavers alone.', 'Earth is joined to neither conductor where it has a transformer, to one of them in the building where it has none.', 'perhaps', 'voltage', 'does not act', [shavers]],
  ['inverter-stepped', 'an inverter that gives steps instead of a sine', 'Transformers and motors run hotter and hum, clocks and dimmers go wrong, and a rectifier gets a lower crest.', 'An inverter with a sine for anything with a transformer, a motor or a clock.', 'Earth is joined to nothing, to the middle or to one conductor: its manual says which.', 'perhaps', 'voltage and frequency', 'may not act', [stepped, practice, floating]],
  ['inverter-sine', 'an inverter with a sine', 'It switches off within milliseconds where a start asks for more than its peak rating.', 'A peak rating of at least what the machine asks for at its start.', 'Earth is joined to nothing, to the middle or to one conductor: its manual says which.', 'perhaps', 'voltage and frequency', 'may not act', [stepped, floating]],
  ['generator', 'a generator', 'Voltage and frequency sag under load and run away without; its windings may float, so that both conductors are live and a residual-current device may not act.', 'Voltage and frequency measured with another load on it before the machine is plugged in, and its bond and earth as its maker says.', 'Earth is joined to nothing, or to one conductor by a bond: its maker says which.', 'perhaps', 'voltage and frequency', 'may not act', [generators]],
])

export const mainsSourcesTable = table({
  name: 'mains-sources',
  title: 'Sources other than the wall',
  intro: 'What may stand behind a socket, what goes wrong on it and what it wants.',
  rows: mainsSourceRows,
  id: ({ source }) => [source],
  columns: [
    { key: 'source', title: 'Source', unique: true, oneOf: mainsSourceNames },
    { key: 'says', title: 'In words' },
    { key: 'wrong', title: 'What goes wrong' },
    { key: 'wants', title: 'What it wants' },
    { key: 'earth', title: 'Where earth stands' },
    { key: 'bothLive', title: 'Both conductors live', oneOf: bothLiveWords },
    { key: 'own', title: 'Gives of its own', oneOf: ownWords },
    { key: 'residual', title: 'Residual-current device before it', oneOf: residualWords },
  ],
})

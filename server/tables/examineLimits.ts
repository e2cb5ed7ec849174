import { examineSources } from './examineSources.js'
import { frozen } from './frozen.js'
import { commonPractice, type Source } from './source.js'
import { figure, table, type Unit } from './table.js'

/** One limit, or one round figure, by which a reading becomes a sign or a figure to expect is worked out. */
export interface ExamineLimit {
  readonly value: number
  /** '%' of a share, '' for a multiple */
  readonly unit: Unit
  /** what it is of, and from or below which side it counts */
  readonly of: string
  readonly source: Source
}

const signs = commonPractice(
  'Signs that restorers go by',
  'lamp over 90 % of the mains; unregulated units stand 20 % to 60 % high; a drop of 10 % under load; 1.5 times the plate; 1 Ω is a short until explained',
)
const workshop = commonPractice(
  'Workshop figures of restorers',
  'over 5 % of the rail lost along a path is too much, under 2 % right; a protection fires at 1.1 to 1.3 times the rail; over 3 V between in and out keep a regulator',
)
const ownRule = commonPractice(
  'Project rule for frequencies read on a ripple',
  'a mains is held within 1 %, a meter reads a ripple less well: a tenth of the mains lies far from the next multiple; what switches lies far above ten times the mains',
)
const bodyRule = commonPractice(
  'Volts on a case that floats',
  'two equal filter capacitors put half the mains there; nearly all of it comes of the line conductor itself; a few volts of a long lead come of nothing',
)
const usualFilter = commonPractice(
  'Filter capacitors of small supplies',
  'often 2 × 2.2 nF to the case, and 0.1 µF where an older unit has one from the line conductor; a meter loaded with 10 kΩ tells such a source from a live one',
)
const steps = commonPractice(
  'A dummy load in steps',
  'lightly, at half and in full: a weak part shows before it is destroyed',
)

const limit = (value: number, unit: Unit, of: string, source: Source): ExamineLimit => ({ value, unit, of, source })

/** What a reading must come to before it is something seen, and the round figures that are told with an examination. */
// biome-ignore format: a row a line
export const examineLimits = frozen({
  lampBright: limit(0.9, '%', 'of the mains across the lamp, from which it stays at full brightness', signs),
  lampHalf: limit(0.4, '%', 'of the mains across the lamp, from which it is half bright', signs),
  lampHealthy: limit(0.2, '%', 'of the mains across the lamp, under which a healthy unit leaves it after 1 s', signs),
  lampDark: limit(0.01, '%', 'of the mains across the lamp, below which it is dark', signs),
  noOutput: limit(0.05, '%', 'of the rail, below which there is no output', signs),
  unregulatedRise: limit(0.6, '%', 'over the rail, without load, up to which an unregulated unit is in no fault', signs),
  collapse: limit(0.1, '%', 'of the rail lost under load, from which an output collapses', signs),
  rippleShare: limit(0.01, '%', 'of the rail, above which ripple counts as high where no limit is published', signs),
  tooMuchCurrent: limit(1.5, '', 'times the current on the plate, above which the machine takes too much', signs),
  noCurrent: limit(0.02, '%', 'of the current on the plate, below which the machine takes none', signs),
  short: limit(1, 'Ω', 'of an output to ground, below which it is a short until explained', signs),
  rippleNear: limit(0.1, '%', 'of the mains frequency, within which a ripple counts as at it, or at twice it', ownRule),
  rippleSwitching: limit(10, '', 'times the mains frequency, above which a ripple comes of what switches', ownRule),
  caseTingle: limit(0.1, '%', 'of the mains from the case to earth, above which it is felt', bodyRule),
  caseLive: limit(0.9, '%', 'of the mains from the case to earth, above which it speaks for the line conductor', bodyRule),
  filterCapacitor: limit(2.2e-9, 'F', 'of each of two filter capacitors to the case', usualFilter),
  lineCapacitor: limit(0.1e-6, 'F', 'of a large capacitor on the line conductor', usualFilter),
  caseLoad: limit(10e3, 'Ω', 'across the meter, by which a filter is told from a live case', usualFilter),
  pathLost: limit(0.05, '%', 'of the rail lost along the path, above which it is too much', workshop),
  pathRight: limit(0.02, '%', 'of the rail lost along the path, under which it is right', workshop),
  protectionFrom: limit(1.1, '', 'times the rail, from which a protection against too high a voltage fires', workshop),
  protectionTo: limit(1.3, '', 'times the rail, by which such a protection has fired', workshop),
  regulatorOver: limit(3, 'V', 'over the rail, which a regulator needs going in at full load', workshop),
  leastLoadFrom: limit(0.1, '%', 'of its current, the least load that is tried', examineSources.named9),
  leastLoadTo: limit(0.2, '%', 'of its current, the most of a least load that is tried', examineSources.named9),
  loadLight: limit(0.2, '%', 'of its current, a light step of the dummy load', steps),
  loadHalf: limit(0.5, '%', 'of its current, half of the dummy load', steps),
})

type Row = ExamineLimit & { readonly key: string }

/** The limits as a page. */
export const examineLimitsTable = table<Row>({
  name: 'examine-limits',
  title: 'Limits and figures of what to examine',
  intro: 'By these a reading becomes a sign of something, and the figures to expect of an examination are worked out.',
  rows: Object.entries(examineLimits).map(([key, row]) => ({ key, ...row })),
  id: ({ key }) => [key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)],
  columns: [
    { key: 'of', title: 'What counts', unique: true },
    { title: 'From', of: ({ value, unit }) => figure(value, unit) },
    { key: 'value', above: 0 },
  ],
})

import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import { figure, rows, table } from './table.js'

const maker1993 = published(
  'Capacitor maker’s note on storage and re-ageing, October 1993 (copy on an amateur-radio site)',
  'storage table and re-ageing: 10 kΩ up to 75 V, 100 kΩ above, at most 1 mA, at least 4 h at rated voltage',
)

export interface StorageAge {
  /** unpowered for at most this long [years]; null for longer than every row */
  readonly toYears: number | null
  readonly advice: string
  readonly source: Source
}

/** Makers' advice by years without power. They disagree because sealing, electrolyte and voltage differ. */
// biome-ignore format: a row a line
export const storageAges = rows<StorageAge>()(['toYears', 'advice', 'source'], [
  [1, 'meets its first limits', maker1993],
  [2, 'usable without treatment if kept at 5 °C to 35 °C', published('Equipment maker’s text quoted in an audio forum, thread 95835', 'storage up to 2 years')],
  [3, 'leakage to be measured before use', maker1993],
  [4, 're-ageing usually needed', maker1993],
  [5, 'expected to meet its limits after re-ageing', maker1993],
  [10, 'typical end of shelf life, with many variables', maker1993],
  [null, 'plan to replace it; re-ageing shows whether it can be used meanwhile', commonPractice('Over ten years without power', 'past the shelf life makers give')],
])

/** After how many years without power an electrolytic is reformed. */
export const reformingNeed = frozen({
  highVoltageV: 100,
  highVoltageYears: 2,
  lowVoltageYears: 5,
  replaceYears: 10,
  source: commonPractice(
    'Who reforms: above 100 V after 2 years, up to 100 V after 5 years, plan for replacement after 10',
    'the cautious side of the makers’ storage tables; leakage grows faster in high-voltage types',
  ),
})

export interface ReformingProcedure {
  readonly resistor: string
  readonly voltage: string
  readonly time: string
  readonly source: Source
}

/** Published ways to reform, side by side. */
// biome-ignore format: a row a line
export const reformingProcedures = rows<ReformingProcedure>()(['resistor', 'voltage', 'time', 'source'], [
  ['10 kΩ up to 75 V, 100 kΩ above', 'raised slowly to rated, at most 1 mA', 'at least 4 h at rated, then leakage again', maker1993],
  ['about 1 kΩ', 'rated', '30 min to 60 min', published('Capacitor maker’s answers on storage', 'for factory stock on a limited source')],
  ['100 Ω up to 100 V, 1 kΩ above', 'rated', '1 h, rest 12 h to 48 h, then leakage', published('Capacitor data book; ECIA EIA-815-1999', 'preconditioning before measurement')],
  ['none, built in, adjustable source', 'half of rated for 10 min, then step by step', 'watching the unit', published('Equipment maker’s text quoted in an audio forum, thread 95835', 'capacitors built in')],
  ['20 kΩ to 50 kΩ', 'rated', '5 min and 1 min for each month of storage', published('Two hobby copies of one text', 'origin unknown, doubtful')],
])

/** What the stages are worked out from. */
export const reformingRules = frozen({
  lowVoltageV: 75,
  lowSeriesOhm: 10_000,
  highSeriesOhm: 100_000,
  chargeA: 0.001,
  fewestSteps: 4,
  largestDrop: 0.25,
  stepS: 600,
  lastS: 14_400,
  settling: 5,
  source: maker1993,
})

export const reformingSteps = published(
  'Equipment maker’s text quoted in an audio forum, thread 95835',
  '10 min at half the rated voltage, then step by step',
)

export const reformingDrop = commonPractice(
  'The series resistor takes at most a quarter of the voltage at the leakage still accepted',
  'a project rule: behind a larger one a big capacitor could never reach its voltage; makers use down to 100 Ω and 1 kΩ',
)

export interface LeakageRule {
  readonly name: string
  /** k in k C V [1/s]; null for the square-root rule and the older one */
  readonly factor: number | null
  readonly addA: number
  readonly floorA: number
  /** when it is read */
  readonly after: string
  /** rated voltages it is meant for [V] */
  readonly fromV: number
  readonly toV: number
  readonly kind: 'proportional' | 'square-root' | 'older'
  readonly source: Source
}

const radialSheet = published('Data sheet of a radial-lead series of aluminium electrolytics', 'leakage current')
const olderStandard = published(
  'Amateur-radio and boat-anchor mailing lists (message 21215; May 1999, 5362), quoting JAN-C-62 and the old EIA rule',
  'K C + 0.3 mA; K 0.01 to 100 V, 0.02 to 250 V, 0.025 to 350 V, 0.04 to 500 V, mA per µF',
)

const rule = (
  name: string,
  kind: LeakageRule['kind'],
  factor: number | null,
  addA: number,
  floorA: number,
  after: string,
  fromV: number,
  toV: number,
  source: Source,
): LeakageRule => ({ name, kind, factor, addA, floorA, after, fromV, toV, source })

/** Leakage that is accepted, modern rules and older ones side by side, each for the rated voltages its source gives. */
// biome-ignore format: a row a line
export const leakageRules: readonly LeakageRule[] = frozen([
  rule('0.01 CV, at least 3 µA', 'proportional', 0.01, 0, 3e-6, '2 min', 6.3, 100, radialSheet),
  rule('0.03 CV, at least 4 µA', 'proportional', 0.03, 0, 4e-6, '1 min', 0, 1000, radialSheet),
  rule('0.06 CV + 10 µA', 'proportional', 0.06, 1e-5, 0, '2 min', 160, 450, radialSheet),
  rule('3 √(CV)', 'square-root', null, 0, 0, '5 min', 0, 1000, fromMemory('Data sheets of snap-in and screw types', '3 √(CV) µA after 5 min')),
  rule('K C + 0.3 mA (older equipment)', 'older', null, 3e-4, 0, 'minutes', 0, 500, olderStandard),
])

/** K of the older rule by rated voltage, [A/F], that is mA per µF times 1000. */
export const olderLeakageFactors = frozen([
  { toV: 100, factor: 10, source: olderStandard },
  { toV: 250, factor: 20, source: olderStandard },
  { toV: 350, factor: 25, source: olderStandard },
  { toV: 500, factor: 40, source: olderStandard },
])

/** The rule a capacitor is accepted by after reforming. */
export const acceptedLeakage = frozen({
  factor: 0.03,
  floorA: 4e-6,
  source: commonPractice(
    'Accepted after reforming at 0.03 CV, with care up to the older K C + 0.3 mA',
    'the modern figure for a good part; the older one was the limit when the part was made',
  ),
})

export interface TouchLimit {
  readonly limitV: number
  readonly what: string
  readonly source: Source
}

const es1 = published('IEC 62368-1, table 4 (text in a public repository)', 'ES1 limit')

/** Above this a DC voltage counts as hazardous to touch. */
export const dcTouchLimit: TouchLimit = frozen({ limitV: 60, what: 'DC limit of IEC 62368-1', source: es1 })

/** The lowest DC limit for a part that may be touched. */
export const accessibleLimit: TouchLimit = frozen({
  limitV: 42.4,
  what: 'limit of IEC 60335-1 for accessible parts, peak and DC',
  source: published('IEC 60335-1, clause 8.1.4 (quoted in engineering forums)', '42.4 V'),
})

const plugPins = published(
  'IEC 60335-1 (newsletter of a power-sources association, first quarter 2020)',
  '34 V, 1 s after unplugging, above 0.1 µF',
)

/** The lowest voltage to which a capacitor is let down before a hand goes near. */
export const plugPinLimit: TouchLimit = frozen({
  limitV: 34,
  what: 'limit of IEC 60335-1 for plug pins',
  source: plugPins,
})

/** Voltages below which a charged part is no longer counted as hazardous to touch. */
export const dischargeLimits: readonly TouchLimit[] = frozen([dcTouchLimit, accessibleLimit, plugPinLimit])

export interface PlugPinRule {
  readonly name: string
  /** to fall to [V]; null where the rule is a time constant */
  readonly limitV: number | null
  readonly withinS: number
  readonly source: Source
}

/** How soon the pins of a plug must be discharged by the capacitors inside. */
// biome-ignore format: a row a line
export const plugPinRules = rows<PlugPinRule>()(['name', 'limitV', 'withinS', 'source'], [
  ['time constant of 1 s (IEC 60950-1, pluggable)', null, 1, published('IEC 60950-1, clause 2.1.1.7 (quoted in engineering forums)', 'time constant at most 1 s above 0.1 µF')],
  ['34 V in 1 s (IEC 60335-1)', 34, 1, plugPins],
  ['60 V in 2 s (IEC 62368-1)', 60, 2, published('IEC 62368-1, clause 5.5.2.2 (blank test-report form)', 'measured 2 s after disconnection')],
  ['60 V in 5 s (IEC 61010-1, IEC 60204-1)', 60, 5, published('Engineers’ mailing list, message 65744; a machine-engineering page on IEC 60204-1, 6.2.4', '5 s')],
])

/** Time for a discharge tool where none is asked for [s]. */
export const dischargeWithin = frozen({
  timeS: 5,
  source: published('Machine-engineering page on IEC 60204-1, clause 6.2.4', '60 V within 5 s inside an enclosure'),
})

/** Stored energy that counts as hazardous by itself [J]. */
export const hazardousEnergy = frozen({
  energyJ: 20,
  source: published('IEC 60950-1, definition quoted in an engineering forum', '20 J or more at 2 V or more'),
})

/** Voltage one resistor of a bleeder may carry [V]. */
export const resistorVoltage = frozen({
  voltageV: 250,
  source: fromMemory(
    'Data sheets of carbon-film resistors',
    '250 V for 0.25 W, 350 V for 0.5 W, 500 V for 1 W; the lowest is used',
  ),
})

export const measureAfter = commonPractice(
  'Wait, then measure',
  'a bleeder can be open, and dielectric absorption brings some volts back',
)

export interface TouchCurrentLimit {
  readonly limitA: number
  readonly what: string
  readonly source: Source
}

/** Limits of the current that flows through a person who touches a case or an output. */
// biome-ignore format: a row a line
export const touchCurrentLimits = rows<TouchCurrentLimit>()(['limitA', 'what', 'source'], [
  [0.25e-3, 'class II, IEC 60950-1', published('IEC 60950-1, test report 68.210.18.0104.01, page 19', '0.25 mA')],
  [0.5e-3, 'ES1 AC, IEC 62368-1; usual threshold of feeling', es1],
  [0.75e-3, 'hand-held class I, older UK practice', published('UK code of practice for in-service inspection, 4th edition (training article)', '0.75 mA')],
  [3.5e-3, 'protective conductor of class I', published('VDE 0701-0702:2008 (manual of an appliance tester, page 34)', '3.5 mA')],
])

export const impregnatedPaper = published(
  'Wiki page and repairers’ reports on clear-resin paper capacitors of the 1970s to 1990s',
  'they crack, take in moisture and fail with much smoke, some before the mains switch',
)

export const storageTable = table<StorageAge>({
  name: 'capacitor-storage',
  title: 'Electrolytic capacitors without power',
  intro:
    'Makers’ advice by the years a capacitor lay without voltage. It differs with sealing, electrolyte and voltage.',
  rows: storageAges,
  id: ({ toYears }) => (toYears === null ? ['longer'] : ['to', toYears, 'years']),
  columns: [
    {
      key: 'toYears',
      title: 'Without power',
      of: ({ toYears }) => toYears && `up to ${toYears} ${toYears === 1 ? 'year' : 'years'}`,
      none: 'longer',
      above: 0,
      rises: true,
    },
    { key: 'advice', title: 'Advice' },
  ],
})

export const reformingTable = table<ReformingProcedure>({
  name: 'reforming',
  title: 'Ways to reform an electrolytic capacitor',
  intro: 'Published procedures side by side.',
  rows: reformingProcedures,
  id: ({ resistor, voltage }) => [resistor, voltage],
  columns: [
    { key: 'resistor', title: 'Resistor' },
    { key: 'voltage', title: 'Voltage' },
    { key: 'time', title: 'Time' },
  ],
})

const shownLeakage = [
  ...leakageRules.map(({ name, after, fromV, toV, source }) => ({
    id: [name],
    name,
    after,
    fromV,
    toV,
    k: null,
    source,
  })),
  ...olderLeakageFactors.map(({ toV, factor, source }) => ({
    id: ['older k to', toV, 'v'],
    name: 'K of the older rule',
    after: null,
    fromV: 0,
    toV,
    k: factor / 1000,
    source,
  })),
]

export const leakageTable = table<(typeof shownLeakage)[number]>({
  name: 'capacitor-leakage',
  title: 'Leakage of electrolytic capacitors',
  intro:
    'Largest leakage by rule, C the capacitance and V the rated voltage. The older rule uses K by the rated voltage.',
  rows: shownLeakage,
  id: ({ id }) => id,
  columns: [
    { key: 'name', title: 'Rule' },
    { key: 'after', title: 'Read after' },
    {
      key: 'fromV',
      title: 'For rated voltages',
      of: ({ fromV, toV }) => (fromV === 0 ? ['up to ', figure(toV, 'V')] : figure(fromV, 'V', { to: toV })),
      from: 0,
    },
    { key: 'k', title: 'K', unit: 'mA/µF', above: 0 },
  ],
  rules: [{ fault: 'has its voltages upside down', broken: ({ fromV, toV }) => !(fromV < toV) }],
})

const shownTouch = [
  ...dischargeLimits.map(({ limitV, what, source }) => ({
    kind: 'voltage',
    what,
    limit: figure(limitV, 'V'),
    withinS: null,
    source,
  })),
  ...plugPinRules.map(({ name, limitV, withinS, source }) => ({
    kind: '',
    what: `plug pins: ${name}`,
    limit: limitV === null ? 'time constant' : figure(limitV, 'V'),
    withinS,
    source,
  })),
  ...touchCurrentLimits.map(({ limitA, what, source }) => ({
    kind: 'current',
    what,
    limit: figure(limitA, 'A'),
    withinS: null,
    source,
  })),
]

export const touchTable = table<(typeof shownTouch)[number]>({
  name: 'touch-limits',
  title: 'Voltages and currents a person may meet',
  intro:
    'What a charged part must have fallen to before it is touched, how soon plug pins must be there, and how much may flow through a person.',
  rows: shownTouch,
  id: ({ kind, what }) => [kind, what],
  columns: [
    { key: 'what', title: 'What' },
    { key: 'limit', title: 'Limit' },
    { key: 'withinS', title: 'Within', each: 's', above: 0 },
  ],
})

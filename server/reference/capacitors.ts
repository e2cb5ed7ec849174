import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'

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
export const storageAges: readonly StorageAge[] = frozen([
  { toYears: 1, advice: 'meets its first limits', source: maker1993 },
  {
    toYears: 2,
    advice: 'usable without treatment if kept at 5 °C to 35 °C',
    source: published('Equipment maker’s text quoted in an audio forum, thread 95835', 'storage up to 2 years'),
  },
  { toYears: 3, advice: 'leakage to be measured before use', source: maker1993 },
  { toYears: 4, advice: 're-ageing usually needed', source: maker1993 },
  { toYears: 5, advice: 'expected to meet its limits after re-ageing', source: maker1993 },
  { toYears: 10, advice: 'typical end of shelf life, with many variables', source: maker1993 },
  {
    toYears: null,
    advice: 'plan to replace it; re-ageing shows whether it can be used meanwhile',
    source: commonPractice('Over ten years without power', 'past the shelf life makers give'),
  },
])

/** From how many years without power an electrolytic is reformed. */
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
export const reformingProcedures: readonly ReformingProcedure[] = frozen([
  {
    resistor: '10 kΩ up to 75 V, 100 kΩ above',
    voltage: 'raised slowly to rated, at most 1 mA',
    time: 'at least 4 h at rated, then leakage again',
    source: maker1993,
  },
  {
    resistor: 'about 1 kΩ',
    voltage: 'rated',
    time: '30 min to 60 min',
    source: published('Capacitor maker’s answers on storage', 'for factory stock on a limited source'),
  },
  {
    resistor: '100 Ω up to 100 V, 1 kΩ above',
    voltage: 'rated',
    time: '1 h, rest 12 h to 48 h, then leakage',
    source: published('Capacitor data book; ECIA EIA-815-1999', 'preconditioning before measurement'),
  },
  {
    resistor: 'none, built in, adjustable source',
    voltage: 'half of rated for 10 min, then step by step',
    time: 'watching the unit',
    source: published('Equipment maker’s text quoted in an audio forum, thread 95835', 'capacitors built in'),
  },
  {
    resistor: '20 kΩ to 50 kΩ',
    voltage: 'rated',
    time: '5 min and 1 min for each month of storage',
    source: published('Two hobby copies of one text', 'origin unknown, doubtful'),
  },
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
export const leakageRules: readonly LeakageRule[] = frozen([
  rule('0.01 CV, at least 3 µA', 'proportional', 0.01, 0, 3e-6, '2 min', 6.3, 100, radialSheet),
  rule('0.03 CV, at least 4 µA', 'proportional', 0.03, 0, 4e-6, '1 min', 0, 1000, radialSheet),
  rule('0.06 CV + 10 µA', 'proportional', 0.06, 1e-5, 0, '2 min', 160, 450, radialSheet),
  rule(
    '3 √(CV)',
    'square-root',
    null,
    0,
    0,
    '5 min',
    0,
    1000,
    fromMemory('Data sheets of snap-in and screw types', '3 √(CV) µA after 5 min'),
  ),
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
export const plugPinRules: readonly PlugPinRule[] = frozen([
  {
    name: 'time constant of 1 s (IEC 60950-1, pluggable)',
    limitV: null,
    withinS: 1,
    source: published(
      'IEC 60950-1, clause 2.1.1.7 (quoted in engineering forums)',
      'time constant at most 1 s above 0.1 µF',
    ),
  },
  { name: '34 V in 1 s (IEC 60335-1)', limitV: 34, withinS: 1, source: plugPins },
  {
    name: '60 V in 2 s (IEC 62368-1)',
    limitV: 60,
    withinS: 2,
    source: published('IEC 62368-1, clause 5.5.2.2 (blank test-report form)', 'measured 2 s after disconnection'),
  },
  {
    name: '60 V in 5 s (IEC 61010-1, IEC 60204-1)',
    limitV: 60,
    withinS: 5,
    source: published(
      'Engineers’ mailing list, message 65744; a machine-engineering page on IEC 60204-1, 6.2.4',
      '5 s',
    ),
  },
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
export const touchCurrentLimits: readonly TouchCurrentLimit[] = frozen([
  {
    limitA: 0.25e-3,
    what: 'class II, IEC 60950-1',
    source: published('IEC 60950-1, test report 68.210.18.0104.01, page 19', '0.25 mA'),
  },
  { limitA: 0.5e-3, what: 'ES1 AC, IEC 62368-1; usual threshold of feeling', source: es1 },
  {
    limitA: 0.75e-3,
    what: 'hand-held class I, older UK practice',
    source: published('UK code of practice for in-service inspection, 4th edition (training article)', '0.75 mA'),
  },
  {
    limitA: 3.5e-3,
    what: 'protective conductor of class I',
    source: published('VDE 0701-0702:2008 (manual of an appliance tester, page 34)', '3.5 mA'),
  },
])

export const impregnatedPaper = published(
  'Wiki page and repairers’ reports on clear-resin paper capacitors of the 1970s to 1990s',
  'they crack, take in moisture and fail with much smoke, some before the mains switch',
)

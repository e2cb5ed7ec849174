import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import { figure, table } from './table.js'

type SafetyTest = 'earth-resistance' | 'insulation' | 'protective-conductor-current' | 'touch-current'

export const safetySchemes = frozen([
  { key: 'vde-2008', title: 'VDE 0701-0702:2008', place: 'Germany, older', typeTest: false },
  { key: 'en-2020', title: 'EN 50678:2020 and EN 50699:2020', place: 'Europe', typeTest: false },
  { key: 'iet-4', title: 'IET Code of Practice, 4th edition', place: 'United Kingdom, older', typeTest: false },
  { key: 'iet-5', title: 'IET Code of Practice, 5th edition', place: 'United Kingdom', typeTest: false },
  { key: 'as-nzs-3760', title: 'AS/NZS 3760', place: 'Australia and New Zealand', typeTest: false },
  { key: 'ul-ansi', title: 'UL / ANSI C101', place: 'North America', typeTest: false },
  { key: 'nfpa-99', title: 'NFPA 99', place: 'United States, health care', typeTest: false },
  { key: 'iec-60950-1', title: 'IEC 60950-1', place: 'type test, for comparison', typeTest: true },
  { key: 'iec-62368-1', title: 'IEC 62368-1', place: 'type test, for comparison', typeTest: true },
] as const)

export type SafetyScheme = (typeof safetySchemes)[number]['key']

export interface SafetyLimit {
  readonly scheme: SafetyScheme
  readonly test: SafetyTest
  /** protection classes it is for */
  readonly classes: readonly ('I' | 'II' | 'III')[]
  /** Ω, MΩ or mA, by `unit`; null where the scheme publishes none */
  readonly limit: number | null
  readonly unit: 'Ω' | 'MΩ' | 'mA'
  /** the cord's earth conductor is added to the limit ("0.1 + R") */
  readonly addsConductor?: true
  /** the limit grows with the cord: a step for each further stretch, up to a ceiling */
  readonly stepped?: Readonly<{ baseLengthM: number; stepOhm: number; stepLengthM: number; mostOhm: number }>
  readonly condition: string
  /** false for a special case that is shown but does not decide */
  readonly general: boolean
  readonly source: Source
}

const tester = published(
  'VDE 0701-0702:2008 as given in the manual of an appliance tester (BENNING ST 755)',
  'page 34, section 12.1',
)
const limitChange = published(
  'Test-equipment maker’s support page on the earth-path limit',
  'why the limit changed from 0.3 Ω to 0.1 Ω',
)
const changeNote = published('Test-equipment maker’s change note on EN 50678 and EN 50699', 'earth path')
const en = (detail: string): Source => fromMemory('EN 50678:2020 / EN 50699:2020', detail)
const ukTesting = published('UK appliance-testing pages quoting the code of practice, 4th edition', 'test values')
const ukTraining = published(
  'UK training article on the 5th edition of the code of practice',
  'touch and protective conductor current',
)
const iet5 = (detail: string): Source => fromMemory('IET Code of Practice, 5th edition', detail)
const reference3760 = fromMemory('AS/NZS 3760', 'surge-protected equipment; heating elements')
const ul = published(
  'UL 8750, clause 8.7.1, quoting ANSI C101 (certification consultant’s page)',
  'leakage current in MIU, read as mA',
)
const es1 = published('IEC 62368-1, table 4 (text in a public repository)', 'ES1 and ES2 touch current')

const I = ['I'] as const
const II = ['II'] as const
const III = ['III'] as const
const both = ['I', 'II'] as const

type Extra = Pick<SafetyLimit, 'addsConductor' | 'stepped'>

function row(
  scheme: SafetyScheme,
  test: SafetyTest,
  classes: SafetyLimit['classes'],
  limit: number | null,
  condition: string,
  source: Source,
  extra: Extra & { special?: true } = {},
): SafetyLimit {
  const unit = test === 'earth-resistance' ? 'Ω' : test === 'insulation' ? 'MΩ' : 'mA'
  const { special, ...rest } = extra
  return frozen({ scheme, test, classes, limit, unit, condition, general: !special, source, ...rest })
}

const stepped = { baseLengthM: 5, stepOhm: 0.1, stepLengthM: 7.5, mostOhm: 1 } as const
const special = { special: true } as const

/** Limits of in-service and type tests. Earth and insulation of a machine are tested by a competent person. */
// biome-ignore format: a row a line
export const safetyLimits: readonly SafetyLimit[] = frozen([
  row('vde-2008', 'earth-resistance', I, 0.3, 'cord up to 5 m, rated current up to 16 A; 0.1 Ω more for each further 7.5 m, at most 1 Ω', tester, { stepped }),
  row('vde-2008', 'insulation', I, 1, '500 V d.c.', tester),
  row('vde-2008', 'insulation', I, 2, 'proof of isolation between an extra-low-voltage output and the mains side', tester, special),
  row('vde-2008', 'insulation', I, 0.3, 'with heating elements', tester, special),
  row('vde-2008', 'insulation', II, 2, '500 V d.c., to every touchable conductive part', tester),
  row('vde-2008', 'insulation', III, 0.25, 'extra-low-voltage equipment', tester),
  row('vde-2008', 'protective-conductor-current', I, 3.5, 'general', tester),
  row('vde-2008', 'touch-current', I, 0.5, 'conductive parts that are not earthed', tester),
  row('vde-2008', 'touch-current', II, 0.5, 'touchable conductive parts', tester),
  row('en-2020', 'earth-resistance', I, 0.3, 'cord up to 5 m and up to 1.5 mm²; larger areas are calculated, smallest limit 0.1 Ω; at most 1 Ω', limitChange, { stepped }),
  row('en-2020', 'earth-resistance', I, 0.1, 'smallest limit, single-core cords and larger areas', changeNote, special),
  row('en-2020', 'insulation', I, 1, '500 V d.c.; 250 V allowed for surge-protected parts', en('believed unchanged from VDE 0701-0702')),
  row('en-2020', 'insulation', II, 2, '500 V d.c.', en('believed unchanged from VDE 0701-0702')),
  row('en-2020', 'insulation', III, 0.25, '250 V d.c.', en('believed unchanged from VDE 0701-0702')),
  row('en-2020', 'protective-conductor-current', I, 3.5, 'general', en('believed unchanged from VDE 0701-0702')),
  row('en-2020', 'touch-current', I, 0.5, 'conductive parts that are not earthed', en('believed unchanged from VDE 0701-0702')),
  row('en-2020', 'touch-current', II, 0.5, 'general', en('believed unchanged; a forum page gives 0.75 mA, which is not used')),
  row('iet-4', 'earth-resistance', I, 0.1, '0.1 Ω and the resistance of the cord’s earth conductor', ukTesting, { addsConductor: true }),
  row('iet-4', 'insulation', I, 1, '500 V d.c.; 250 V for surge-protected equipment', ukTesting),
  row('iet-4', 'insulation', II, 2, '500 V d.c.; 250 V for surge-protected equipment', ukTesting),
  row('iet-4', 'insulation', III, 0.25, 'test voltage as suits the rating', ukTesting),
  row('iet-4', 'insulation', I, 0.3, 'heating under 3 kW', ukTesting, special),
  row('iet-4', 'touch-current', I, 0.75, 'hand-held or portable', ukTraining),
  row('iet-4', 'touch-current', I, 3.5, 'movable, stationary or fixed', ukTraining, special),
  row('iet-4', 'touch-current', II, 0.25, 'general', ukTraining),
  row('iet-5', 'earth-resistance', I, 0.1, '0.1 Ω and the resistance of the cord’s earth conductor', iet5('value believed kept'), { addsConductor: true }),
  row('iet-5', 'insulation', I, 1, '500 V d.c.; 250 V for sensitive or surge-protected equipment', published('UK appliance-testing page', 'edition not stated')),
  row('iet-5', 'insulation', II, 2, '500 V d.c.', iet5('value believed kept')),
  row('iet-5', 'touch-current', both, 5, 'all equipment, optional test', ukTraining),
  row('as-nzs-3760', 'earth-resistance', I, 1, 'earth pin of the plug to exposed metal; an older edition may have said 0.5 Ω', published('Work-safety consultant’s page quoting AS/NZS 3760:2003', 'page 241')),
  row('as-nzs-3760', 'insulation', both, 1, '500 V d.c. between live parts and earth or external metal', published('Training article quoting AS/NZS 3760:2010', 'clause 2.3.3.2')),
  row('as-nzs-3760', 'insulation', I, 0.01, 'sheathed heating elements', reference3760, special),
  row('as-nzs-3760', 'touch-current', I, 5, 'energised at rated voltage', published('Article on AS 3760:2003, 26 August 2004', 'leakage current')),
  row('as-nzs-3760', 'touch-current', II, 1, 'energised at rated voltage', published('Article on AS 3760:2003, 26 August 2004', 'leakage current')),
  row('ul-ansi', 'touch-current', II, 0.5, 'two-wire, up to 250 V', ul),
  row('ul-ansi', 'touch-current', I, 0.5, 'three-wire portable', ul),
  row('ul-ansi', 'touch-current', I, 0.75, 'three-wire stationary or fixed', ul, special),
  row('ul-ansi', 'insulation', both, null, 'no in-service insulation limit published', fromMemory('OSHA assured equipment grounding programme, 29 CFR 1926.404', 'visual inspection and continuity only')),
  row('nfpa-99', 'earth-resistance', I, 0.5, 'cord-connected patient-care equipment', fromMemory('NFPA 99', '0.50 Ω; 0.15 Ω was the older factory figure')),
  row('nfpa-99', 'touch-current', I, 0.5, 'chassis, earth open', fromMemory('NFPA 99', '0.3 mA in older editions')),
  row('iec-60950-1', 'earth-resistance', I, 0.1, 'excluding the cord, at 25 A or more', fromMemory('IEC 60950-1, clause 2.6.3.4', 'protective bonding')),
  row('iec-60950-1', 'touch-current', II, 0.25, 'accessible parts and circuits not earthed', published('IEC 60950-1, test report 68.210.18.0104.01, page 19', 'limit 0.25 mA')),
  row('iec-60950-1', 'touch-current', I, 3.5, 'movable equipment', published('Power-supply article, page 61', '3.5 mA; hand-held 0.75 mA')),
  row('iec-62368-1', 'earth-resistance', I, 0.1, 'protective bonding', fromMemory('IEC 62368-1, clause 5.6.6', 'above 16 A by voltage drop, 2.5 V')),
  row('iec-62368-1', 'touch-current', II, 0.5, 'accessible parts, a.c. rms', es1),
  row('iec-62368-1', 'protective-conductor-current', I, 5, 'with the earth broken', es1),
])

/** Insulation between the mains and an extra-low-voltage output that proves their isolation [MΩ]. */
export const isolationInsulation = frozen({ value: 2, unit: 'MΩ', source: tester })

/** What a cord's earth conductor may add where its length is not given. */
export const longestCord = frozen({
  lengthM: 10,
  source: commonPractice(
    'Project rule: longest appliance cord',
    'where its length is not given, up to 10 m is allowed for',
  ),
})

export const competentPerson = fromMemory(
  'Practice of in-service inspection and testing in Europe',
  'tests of earth path, insulation and leakage are for a competent person with the instrument made for them',
)

export const insulationVoltage = fromMemory(
  'Practice of in-service inspection',
  'the 500 V d.c. of an insulation test can destroy surge suppressors, filters and semiconductors; 250 V is allowed for such parts',
)

const schemeOf = (scheme: SafetyScheme) => safetySchemes.find(({ key }) => key === scheme)

export const safetyLimitsTable = table<SafetyLimit>({
  name: 'safety-limits',
  title: 'Limits of safety tests',
  intro:
    'Limits of the tests a competent person makes with the instrument for them, by scheme and class of protection. Type-test rows stand for comparison. Where a scheme publishes no figure, none is made up.',
  warning: 'A passed test is a reading on one day. It certifies nothing about what comes later.',
  rows: safetyLimits,
  id: ({ scheme, test, classes, limit, condition }) => [
    scheme,
    test,
    ...classes,
    limit ?? 'none',
    condition.replace(/[,;(].*/, ''),
  ],
  columns: [
    {
      key: 'scheme',
      title: 'Scheme and test',
      of: ({ scheme, test }) => `${schemeOf(scheme)?.title}: ${test.replace(/-/g, ' ')}`,
      known: () => safetySchemes.map(({ key }) => key),
    },
    { title: 'Place', of: ({ scheme }) => schemeOf(scheme)?.place },
    { key: 'classes', title: 'Classes', filled: true },
    {
      key: 'limit',
      title: 'Limit',
      of: ({ limit, unit, addsConductor }) =>
        limit === null
          ? null
          : [figure(limit, unit, { prefix: 'none' }), addsConductor ? ' and the cord’s conductor' : ''],
      none: 'none published',
      above: 0,
    },
    { key: 'condition', title: 'Condition' },
    {
      key: 'general',
      title: 'Decides',
      of: ({ scheme, general }) =>
        schemeOf(scheme)?.typeTest ? 'no, type test' : general ? 'yes' : 'no, special case',
    },
  ],
})

import { frozen } from './frozen.js'
import { fromMemory, published, type Source } from './source.js'
import { table } from './table.js'

/** Pre-arcing behaviour by its IEC letter, fastest first. */
export const characteristics = frozen(['FF', 'F', 'M', 'T', 'TT'] as const)

export type Characteristic = (typeof characteristics)[number]

/** Breaking-capacity letter, lowest first. */
export const breakingLetters = frozen(['L', 'E', 'H'] as const)

export type BreakingLetter = (typeof breakingLetters)[number]

/** Which family of standards a link is rated by. */
export type FuseScheme = 'IEC' | 'UL' | 'BS1362' | 'BS646'

export const iecMarking = published(
  'IEC 60127-1',
  'clause 6.1: characteristic letter directly before the rated current',
)
export const iecBreakingMark = published(
  'IEC 60127-2:2003 (GOST R IEC 60127-2-2010)',
  'clause 6.1: letter L, E or H between rated current and rated voltage; mA below 1 A',
)
export const iecColourCode = published('IEC 60127-1 (GOST IEC 60127-1-2010)', 'table A.1: colour bands')
const germanWords = published('Overview of fuse markings in German', 'flink, mittelträge, träge, superträge')
const britishTerm = published(
  'Handbook of electrical applications, chapter 80',
  'anti-surge: the British word for time-lag',
)
const catalogueWords = published(
  'Glass and ceramic tube fuse catalogue',
  'time-delay, fast-acting with North American links',
)
const words = (language: string): Source => fromMemory('Plates and data sheets', `words for fuse speed in ${language}`)

export interface SpeedWord {
  readonly characteristic: Characteristic
  /** lower case; a space stands for a space, a hyphen or nothing */
  readonly phrase: string
  /** where the word itself tells the family of standards */
  readonly scheme: FuseScheme | null
  readonly source: Source
}

const speed = (
  characteristic: Characteristic,
  phrases: readonly string[],
  source: Source,
  scheme: FuseScheme | null = null,
): readonly SpeedWord[] => phrases.map((phrase) => ({ characteristic, phrase, scheme, source }))

/** Words for the speed of a link, in the languages plates are printed in. */
export const speedWords: readonly SpeedWord[] = frozen([
  ...speed('T', ['time delay', 't-d', 't/d', 'sb', 's/b', 'slo blo', 'slo blow'], catalogueWords, 'UL'),
  ...speed('T', ['time lag', 'timelag'], iecMarking, 'IEC'),
  ...speed('T', ['slow blow', 'slow blowing', 'slow acting', 'slow', 'delayed'], words('English')),
  ...speed('T', ['a/s', 'anti surge'], britishTerm),
  ...speed('F', ['quick acting', 'quick'], iecMarking),
  ...speed('F', ['fast acting', 'fast blow', 'quick blow', 'fast', 'normal blow', 'f/b'], catalogueWords),
  ...speed('FF', ['very fast acting', 'very quick acting', 'very fast', 'super fast', 'super quick'], words('English')),
  ...speed('M', ['medium time lag', 'medium acting', 'medium blow', 'semi delay', 'semi time lag'], words('English')),
  ...speed('TT', ['long time lag', 'super time lag', 'very slow'], words('English')),
  ...speed('FF', ['superflink', 'super flink'], germanWords, 'IEC'),
  ...speed('F', ['flink', 'flinke', 'flinker'], germanWords, 'IEC'),
  ...speed('M', ['mittelträge', 'mittelträger', 'mitteltraege', 'mittel träge'], germanWords, 'IEC'),
  ...speed('T', ['träge', 'träger', 'traege'], germanWords, 'IEC'),
  ...speed('TT', ['superträge', 'supertraege', 'super träge'], germanWords, 'IEC'),
  ...speed(
    'T',
    ['temporisé', 'temporisée', 'retardé', 'retardée', 'à fusion lente', 'fusion lente', 'lent', 'lente'],
    words('French'),
  ),
  ...speed('F', ['rapide', 'fusion rapide'], words('French')),
  ...speed('FF', ['très rapide', 'ultra rapide'], words('French')),
  ...speed('M', ['semi temporisé', 'semi retardé'], words('French')),
  ...speed('T', ['lento', 'lenta', 'retardado', 'de retardo'], words('Spanish and Portuguese')),
  ...speed('F', ['rápido', 'rápida'], words('Spanish, Portuguese and Italian')),
  ...speed('FF', ['muy rápido', 'ultra rápido'], words('Spanish')),
  ...speed('T', ['ritardato', 'ritardata'], words('Italian')),
  ...speed('M', ['semiritardato', 'semi ritardato'], words('Italian')),
  ...speed('T', ['traag'], words('Dutch')),
  ...speed('F', ['snel'], words('Dutch')),
  ...speed('M', ['middeltraag', 'halftraag'], words('Dutch')),
  ...speed('T', ['trög', 'træg', 'treg'], words('Swedish, Danish and Norwegian')),
  ...speed('F', ['snabb', 'hurtig', 'rask'], words('Swedish, Danish and Norwegian')),
  ...speed('T', ['hidas'], words('Finnish')),
  ...speed('F', ['nopea'], words('Finnish')),
  ...speed('T', ['zwłoczny', 'zwłoczna'], words('Polish')),
  ...speed('F', ['szybki', 'szybka'], words('Polish')),
  ...speed('T', ['pomalá', 'pomalý', 'zpožděná'], words('Czech')),
  ...speed('F', ['rychlá', 'rychlý'], words('Czech')),
  ...speed('T', ['lomha'], words('Hungarian')),
  ...speed('F', ['gyors'], words('Hungarian')),
  ...speed('T', ['инерционный', 'замедленный', 'медленный'], words('Russian')),
  ...speed('F', ['быстродействующий', 'быстрый'], words('Russian')),
  ...speed('T', ['タイムラグ', 'タイムラグヒューズ', '慢断', '慢熔', '延时'], words('Japanese and Chinese')),
  ...speed('F', ['速断', '快断', '快熔'], words('Japanese and Chinese')),
])

/** Approval marks and words of North American practice: what carries them is rated by UL 248-14. */
export const northAmericanMarks: readonly string[] = frozen([
  'ul listed',
  'csa certified',
  'c ul us',
  'culus',
  'cul',
  'ul',
  'csa',
  'listed',
])

/** What a fuse-link is taken for, and is not. */
export type NoLink = 'thermal cut-off' | 'resettable protector' | 'fusible resistor'

export interface NoLinkWord {
  readonly thing: NoLink
  /** lower case; a space stands for a space, a hyphen or nothing */
  readonly phrase: string
  readonly source: Source
}

const protector = (thing: NoLink, language: string, phrases: readonly string[]): readonly NoLinkWord[] => {
  const source = fromMemory('Plates and data sheets', `words for a ${thing} in ${language}`)
  return phrases.map((phrase) => ({ thing, phrase, source }))
}

/** Words of things that open a circuit and are no fuse-link: none of them is rated, compared or replaced as one. */
export const noLinkWords: readonly NoLinkWord[] = frozen([
  ...protector('resettable protector', 'English', [
    'resettable',
    'self resetting',
    'reset button',
    'push to reset',
    'press to reset',
    'poly fuse',
    'polyswitch',
    'ptc',
    'pptc',
    'circuit breaker',
    'breaker',
    'mcb',
    'overload protector',
  ]),
  ...protector('resettable protector', 'German', [
    'rückstellbar',
    'rückstellbare',
    'selbstrückstellend',
    'selbstrückstellende',
    'kaltleiter',
    'sicherungsautomat',
    'geräteschutzschalter',
    'schutzschalter',
  ]),
  ...protector('resettable protector', 'French', ['réarmable', 'disjoncteur']),
  ...protector('resettable protector', 'Spanish and Portuguese', [
    'rearmable',
    'rearmável',
    'reiniciable',
    'disyuntor',
    'disjuntor',
    'interruptor automático',
  ]),
  ...protector('resettable protector', 'Italian', ['ripristinabile', 'autoripristinante', 'magnetotermico']),
  ...protector('resettable protector', 'Dutch', ['zelfherstellend', 'zelfherstellende', 'automaat']),
  ...protector('resettable protector', 'Polish and Czech', ['bezpiecznik polimerowy', 'vratná pojistka', 'jistič']),
  ...protector('resettable protector', 'Russian', ['самовосстанавливающийся', 'автоматический выключатель']),
  ...protector('resettable protector', 'Japanese and Chinese', [
    'ポリヒューズ',
    'ポリスイッチ',
    'サーキットブレーカ',
    'ブレーカ',
    '自恢复',
    '自復',
    '断路器',
  ]),
  ...protector('thermal cut-off', 'English', [
    'thermal',
    'thermo fuse',
    'thermofuse',
    'tco',
    'temperature fuse',
    'over temperature',
  ]),
  ...protector('thermal cut-off', 'German', [
    'temperatursicherung',
    'thermosicherung',
    'thermoschalter',
    'übertemperatursicherung',
    'temperaturbegrenzer',
  ]),
  ...protector('thermal cut-off', 'French', ['thermique', 'thermofusible']),
  ...protector('thermal cut-off', 'Spanish, Portuguese and Italian', [
    'térmico',
    'térmica',
    'termico',
    'termofusibile',
    'termofusível',
  ]),
  ...protector('thermal cut-off', 'Dutch and Scandinavian', [
    'thermische',
    'thermozekering',
    'termosikring',
    'termosäkring',
    'lämpösulake',
  ]),
  ...protector('thermal cut-off', 'Polish and Czech', ['termiczny', 'termobezpiecznik', 'tepelná']),
  ...protector('thermal cut-off', 'Russian', ['термопредохранитель', 'тепловой']),
  ...protector('thermal cut-off', 'Japanese and Chinese', ['温度ヒューズ', '温度保险', '热熔断', '溫度']),
  ...protector('fusible resistor', 'English', ['fusible resistor', 'fuse resistor', 'resistor']),
  ...protector('fusible resistor', 'German and French', [
    'sicherungswiderstand',
    'widerstand',
    'résistance',
    'resistance fusible',
  ]),
])

/** Words that only say "fuse": they carry no fact and leave nothing unread. */
export const fuseWords: readonly string[] = frozen([
  'fuse-link',
  'fuse link',
  'fuselink',
  'fuses',
  'fuse',
  'sicherung',
  'feinsicherung',
  'feinsicherungen',
  'schmelzsicherung',
  'schmelzsicherungen',
  'sigorta',
  'si',
  'fusible',
  'fusibile',
  'fusível',
  'zekering',
  'säkring',
  'sikring',
  'sulake',
  'bezpiecznik',
  'pojistka',
  'biztosíték',
  'предохранитель',
  'ヒューズ',
  '保险丝',
  '熔断器',
  'rated',
  'rating',
  'type',
])

/** What a maker's catalogue symbol says besides the number that follows it. */
export interface ShortForm {
  readonly symbol: string
  readonly characteristic: Characteristic
  readonly scheme: FuseScheme
  readonly breaking: BreakingLetter | null
  /** [V]; null where it depends on the rating */
  readonly ratedV: number | null
  readonly sizeMm: string
  readonly source: Source
}

const short = (
  symbol: string,
  characteristic: Characteristic,
  scheme: FuseScheme,
  sizeMm: string,
  source: Source,
  breaking: BreakingLetter | null = null,
  ratedV: number | null = null,
): ShortForm => frozen({ symbol, characteristic, scheme, breaking, ratedV, sizeMm, source })

export const shortForms: readonly ShortForm[] = frozen([
  short(
    'MDL',
    'T',
    'UL',
    '6.3x32',
    published('Bussmann MDL data sheet', 'catalogue symbol; voltage depends on the rating'),
  ),
  short('GMA', 'F', 'UL', '5x20', published('Eaton GMA data sheet, May 2017', 'catalogue symbol')),
  short(
    'GMD',
    'T',
    'UL',
    '5x20',
    published('Bussmann GMD data sheet SB98107, 12-18-98', 'catalogue symbol'),
    null,
    250,
  ),
  short('AGC', 'F', 'UL', '6.3x32', fromMemory('Bussmann AGC data sheet', 'catalogue symbol')),
  short(
    'S500',
    'F',
    'IEC',
    '5x20',
    published('Cooper Bussmann S500 data sheet', 'ordering numbers, mA below 1 A'),
    'L',
    250,
  ),
  short(
    'S501',
    'F',
    'IEC',
    '5x20',
    published('Eaton S501 data sheet', 'Electrical Characteristics; mA below 1 A'),
    'H',
    250,
  ),
  short(
    'S505',
    'T',
    'IEC',
    '5x20',
    published('Cooper Bussmann S505 data sheet BU-SB11758', 'ordering numbers'),
    'H',
    250,
  ),
])

/** Body-size names of the North American trade. */
export const sizeNames: readonly { readonly name: string; readonly sizeMm: string; readonly source: Source }[] = frozen(
  [
    { name: '3AG', sizeMm: '6.3x32', source: published('Littelfuse 312/318 series data sheet', '3AG: 1/4 x 1-1/4 in') },
    { name: '3AB', sizeMm: '6.3x32', source: fromMemory('Littelfuse catalogue', '3AB: 1/4 x 1-1/4 in, ceramic') },
    { name: '2AG', sizeMm: '4.5x15', source: fromMemory('Littelfuse catalogue', '2AG: 0.177 x 0.588 in') },
  ],
)

/** Colours of the bands, with the digit each stands for. */
export const bandDigits: Readonly<Record<string, number>> = frozen({
  black: 0,
  brown: 1,
  red: 2,
  orange: 3,
  yellow: 4,
  green: 5,
  blue: 6,
  violet: 7,
  grey: 8,
  white: 9,
})

/** The fourth, broader band: the characteristic. IEC 60127-1, table A.1. */
export const bandCharacteristics: Readonly<Record<string, Characteristic>> = frozen({
  black: 'FF',
  red: 'F',
  yellow: 'M',
  blue: 'T',
  grey: 'TT',
})

export const fuseWordsTable = table<SpeedWord>({
  name: 'fuse-words',
  title: 'Words and letters for the speed of a link',
  intro:
    'What is printed on caps, holders and in manuals, and the letter it stands for: FF, F, M, T, TT from very quick to very slow.',
  rows: speedWords,
  // two ways of writing one thing, with a hyphen and with a stroke
  id: ({ phrase }) => [phrase.replace('/', ' stroke ')],
  columns: [
    { key: 'phrase', title: 'Printed', unique: true },
    { key: 'characteristic', title: 'Letter', oneOf: characteristics },
    { key: 'scheme', title: 'Family it tells' },
  ],
})

const shownSymbols = [
  ...shortForms.map((form) => ({ id: form.symbol, ...form })),
  ...sizeNames.map(({ name, sizeMm, source }) => ({
    id: `size ${name}`,
    symbol: name,
    characteristic: null,
    scheme: null,
    breaking: null,
    ratedV: null,
    sizeMm,
    source,
  })),
]

export const fuseSymbolsTable = table<(typeof shownSymbols)[number]>({
  name: 'fuse-symbols',
  title: 'Catalogue symbols and sizes of links',
  intro: 'What a symbol on the cap says besides the number that follows it, and what North American size names mean.',
  rows: shownSymbols,
  id: ({ id }) => [id],
  columns: [
    { key: 'symbol', title: 'Symbol', unique: true },
    { key: 'characteristic', title: 'Speed' },
    { key: 'scheme', title: 'Family' },
    { key: 'breaking', title: 'Breaking letter' },
    { key: 'ratedV', title: 'Rated voltage', each: 'V', above: 0 },
    { key: 'sizeMm', title: 'Size', of: ({ sizeMm }) => `${sizeMm.replace('x', ' × ')} mm` },
  ],
})

const shownBands = Object.entries(bandDigits).map(([colour, digit]) => ({
  colour,
  digit,
  characteristic: bandCharacteristics[colour] ?? null,
  source: iecColourCode,
}))

export const fuseColoursTable = table<(typeof shownBands)[number]>({
  name: 'fuse-colours',
  title: 'Colour bands of links',
  intro:
    'The first three bands give the rated current in milliamperes, two figures and the noughts that follow; the fourth, broader band gives the speed.',
  rows: shownBands,
  id: ({ colour }) => [colour],
  columns: [
    { key: 'colour', title: 'Colour' },
    { key: 'digit', title: 'Figure', unit: '', from: 0, to: 9, rises: true },
    { key: 'characteristic', title: 'Speed, fourth band' },
  ],
})

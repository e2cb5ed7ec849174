import { frozen } from './frozen.js'
import { fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'

export interface CountryRow extends Sourced {
  /** ISO 3166-1 alpha-2 */
  readonly country: string
  readonly name: string
  /** nominal voltage [V] and frequency [Hz] of each system met there */
  readonly systems: readonly (readonly [voltageV: number, frequencyHz: number])[]
  /** IEC letters */
  readonly sockets: readonly string[]
  readonly notes: readonly string[]
}

const worldPlugs = published('IEC World Plugs', 'list by location, as of 2017-10-17')
const wikipedia = published('Wikipedia, "Mains electricity by country"', 'table, as of 2026-09-28')
const worldStandards = published('World Standards, "Plug, socket & voltage by country"', 'table, as of 2025-10-24')
const saudiChange = published(
  'Saudi Electricity Company, "Change of Electric Voltage" (se.com.sa)',
  'change of the supply, citing Council of Ministers Resolution 324',
)
const threeLists: readonly Source[] = [worldPlugs, wikipedia, worldStandards]

/** `sockets`: IEC letters, parted by spaces. Sources unless given: the three lists. */
const country = (
  country: string,
  name: string,
  systems: CountryRow['systems'],
  sockets: string,
  { notes = [], doubt, sources = threeLists }: Partial<CountryRow> = {},
): CountryRow => ({ country, name, systems, sockets: sockets.split(' '), notes, doubt, sources })

/**
 * Where lists disagree within one voltage class the row takes the figure of most of them and its doubt says so;
 * where they disagree on the class both are kept as systems.
 */
export const countryRows: readonly CountryRow[] = frozen([
  country('AD', 'Andorra', [[230, 50]], 'C F'),
  country('AE', 'United Arab Emirates', [[230, 50]], 'G', {
    doubt:
      'IEC 220 V; Wikipedia 230 V; World Standards 230 V. Socket letters named by one list only: C (IEC), D (IEC).',
  }),
  country('AF', 'Afghanistan', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country(
    'AG',
    'Antigua and Barbuda',
    [
      [110, 60],
      [230, 60],
    ],
    'A B',
    {
      notes: ['Both voltage classes occur: check the socket before use.'],
      doubt: 'IEC and Wikipedia say 230 V, World Standards says 110/220 V: treat as either, measure first.',
    },
  ),
  country('AI', 'Anguilla', [[110, 60]], 'A B'),
  country('AL', 'Albania', [[230, 50]], 'C F'),
  country('AM', 'Armenia', [[230, 50]], 'C F'),
  country('AO', 'Angola', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('AR', 'Argentina', [[220, 50]], 'C I', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('AS', 'American Samoa', [[120, 60]], 'A B I', { doubt: 'Socket letters named by one list only: F (IEC).' }),
  country('AT', 'Austria', [[230, 50]], 'C F'),
  country('AU', 'Australia', [[230, 50]], 'I', {
    notes: ['Nominal 230 V since 2000.', 'Western Australia stays at 240 V according to Wikipedia, "AS/NZS 3112".'],
  }),
  country('AW', 'Aruba', [[127, 60]], 'A B F', {
    notes: ['Round- or rectangular-pin sockets here carry 100 to 127 V.'],
    doubt: 'IEC 127 V; Wikipedia 127 V; World Standards 120 V.',
  }),
  country('AX', 'Åland Islands', [[230, 50]], 'C F', {
    doubt: 'In none of the lists: supply of Finland assumed.',
    sources: [
      fromMemory('Finnish mains supply', 'an autonomous part of Finland: 230 V 50 Hz and sockets C and F assumed'),
    ],
  }),
  country('AZ', 'Azerbaijan', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('BA', 'Bosnia and Herzegovina', [[230, 50]], 'C F'),
  country('BB', 'Barbados', [[115, 50]], 'A B'),
  country('BD', 'Bangladesh', [[220, 50]], 'A C D G', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: K (IEC), M (World Standards).',
  }),
  country('BE', 'Belgium', [[230, 50]], 'C E'),
  country('BF', 'Burkina Faso', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('BG', 'Bulgaria', [[230, 50]], 'C F'),
  country('BH', 'Bahrain', [[230, 50]], 'G'),
  country('BI', 'Burundi', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('BJ', 'Benin', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('BL', 'St. Barthélemy', [[230, 60]], 'C E', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('BM', 'Bermuda', [[120, 60]], 'A B'),
  country('BN', 'Brunei', [[240, 50]], 'G'),
  country(
    'BO',
    'Bolivia',
    [
      [115, 50],
      [230, 50],
    ],
    'A B C',
    {
      notes: ['115 V may survive in some districts.', 'Both voltage classes occur: check the socket before use.'],
      doubt: 'IEC 115 and 230 V; Wikipedia and World Standards 230 V only.',
    },
  ),
  country(
    'BQ',
    'Caribbean Netherlands',
    [
      [110, 60],
      [127, 50],
      [220, 50],
    ],
    'A B C F',
    {
      notes: [
        'Bonaire: 127 and 220 V 50 Hz; Saba and Sint Eustatius: 110 V 60 Hz.',
        'Both voltage classes occur: check the socket before use.',
      ],
      doubt: 'Islands differ; from one list only (World Standards).',
      sources: [worldStandards],
    },
  ),
  country(
    'BR',
    'Brazil',
    [
      [127, 60],
      [220, 60],
    ],
    'C N',
    {
      notes: [
        'Voltage depends on the city; both occur on the same N-type socket.',
        'Both voltage classes occur: check the socket before use.',
      ],
    },
  ),
  country('BS', 'Bahamas', [[120, 60]], 'A B'),
  country('BT', 'Bhutan', [[230, 50]], 'C D F G M'),
  country('BW', 'Botswana', [[230, 50]], 'D G M'),
  country('BY', 'Belarus', [[230, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country(
    'BZ',
    'Belize',
    [
      [110, 60],
      [220, 60],
    ],
    'A B G',
    {
      notes: ['Both voltage classes occur: check the socket before use.'],
      doubt: 'IEC 110 and 220 V; Wikipedia and World Standards 110 V.',
    },
  ),
  country('CA', 'Canada', [[120, 60]], 'A B', { notes: ['Split phase: 240 V between the two lines for large loads.'] }),
  country('CC', 'Cocos (Keeling) Islands', [[230, 50]], 'I', {
    doubt: 'From one list only.',
    sources: [worldStandards],
  }),
  country('CD', 'Congo (Kinshasa)', [[220, 50]], 'C E', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: D (IEC).',
  }),
  country('CF', 'Central African Republic', [[220, 50]], 'C E', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country('CG', 'Congo (Brazzaville)', [[230, 50]], 'C E'),
  country('CH', 'Switzerland', [[230, 50]], 'C J'),
  country('CI', 'Côte d’Ivoire', [[230, 50]], 'C E'),
  country('CK', 'Cook Islands', [[240, 50]], 'I'),
  country('CL', 'Chile', [[220, 50]], 'C L', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: F (Wikipedia).',
  }),
  country('CM', 'Cameroon', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('CN', 'China', [[220, 50]], 'A C I', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country(
    'CO',
    'Colombia',
    [
      [110, 60],
      [120, 60],
    ],
    'A B',
    { doubt: 'IEC and World Standards 110 V; Wikipedia 120 V.' },
  ),
  country('CR', 'Costa Rica', [[120, 60]], 'A B'),
  country('CU', 'Cuba', [[110, 60]], 'A B', {
    doubt:
      'IEC 110 V; Wikipedia 110 V; World Standards 120 V. Socket letters named by one list only: C (Wikipedia), L (Wikipedia).',
  }),
  country('CV', 'Cape Verde', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country(
    'CW',
    'Curaçao',
    [
      [127, 50],
      [220, 50],
    ],
    'A B F',
    {
      notes: ['Both voltage classes occur: check the socket before use.'],
      doubt:
        'IEC row is for the former Netherlands Antilles (127 and 220 V); Wikipedia and World Standards 127 V. Socket letters named by one list only: C (IEC).',
    },
  ),
  country('CX', 'Christmas Island', [[230, 50]], 'I', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('CY', 'Cyprus', [[230, 50]], 'G', {
    notes: ['Member of the European Union, harmonised at 230 V (EN 50160).'],
    doubt: 'IEC and Wikipedia list 240 V; World Standards 230 V.',
  }),
  country('CZ', 'Czechia', [[230, 50]], 'C E'),
  country('DE', 'Germany', [[230, 50]], 'C F'),
  country('DJ', 'Djibouti', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('DK', 'Denmark', [[230, 50]], 'C E F K', {
    notes: ['K is the national earthed socket; E and F earthed sockets also permitted.'],
  }),
  country('DM', 'Dominica', [[230, 50]], 'D G'),
  country('DO', 'Dominican Republic', [[120, 60]], 'A B', {
    doubt: 'IEC 110 V; Wikipedia 120 V; World Standards 120 V. Socket letters named by one list only: C (Wikipedia).',
  }),
  country('DZ', 'Algeria', [[230, 50]], 'C F'),
  country('EC', 'Ecuador', [[120, 60]], 'A B'),
  country('EE', 'Estonia', [[230, 50]], 'C F'),
  country('EG', 'Egypt', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('EH', 'Western Sahara', [[230, 50]], 'C E', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('ER', 'Eritrea', [[230, 50]], 'C L', {
    doubt: 'Socket letters named by one list only: E (World Standards).',
  }),
  country('ES', 'Spain', [[230, 50]], 'C F'),
  country('ET', 'Ethiopia', [[220, 50]], 'C E F L', {
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: G (World Standards).',
  }),
  country('FI', 'Finland', [[230, 50]], 'C F'),
  country('FJ', 'Fiji', [[240, 50]], 'I'),
  country('FK', 'Falkland Islands', [[240, 50]], 'G'),
  country('FM', 'Micronesia', [[120, 60]], 'A B', { sources: [worldPlugs, wikipedia] }),
  country('FO', 'Faroe Islands', [[230, 50]], 'C E F K'),
  country('FR', 'France', [[230, 50]], 'C E'),
  country('GA', 'Gabon', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('GB', 'United Kingdom', [[230, 50]], 'G', {
    notes: ['Round-pin sockets (D, M) only in old or special installations.'],
    doubt: 'Socket letters named by one list only: D (Wikipedia), M (Wikipedia).',
  }),
  country('GD', 'Grenada', [[230, 50]], 'G'),
  country('GE', 'Georgia', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('GF', 'French Guiana', [[220, 50]], 'C E', {
    doubt: 'IEC 220 V; World Standards 230 V. Socket letters named by one list only: D (IEC).',
    sources: [worldPlugs, worldStandards],
  }),
  country('GG', 'Guernsey', [[230, 50]], 'G', { sources: [wikipedia, worldStandards] }),
  country('GH', 'Ghana', [[230, 50]], 'D G'),
  country('GI', 'Gibraltar', [[240, 50]], 'C G', { doubt: 'IEC 240 V; Wikipedia 240 V; World Standards 230 V.' }),
  country('GL', 'Greenland', [[230, 50]], 'C E F K'),
  country('GM', 'Gambia', [[230, 50]], 'G'),
  country('GN', 'Guinea', [[220, 50]], 'C F K', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('GP', 'Guadeloupe', [[230, 50]], 'C E', {
    doubt: 'Socket letters named by one list only: D (IEC).',
    sources: [worldPlugs, worldStandards],
  }),
  country('GQ', 'Equatorial Guinea', [[220, 50]], 'C E', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country('GR', 'Greece', [[230, 50]], 'C F'),
  country('GT', 'Guatemala', [[120, 60]], 'A B'),
  country(
    'GU',
    'Guam',
    [
      [110, 60],
      [120, 60],
    ],
    'A B',
    {
      notes: ['Territory of the United States, whose nominal voltage is 120 V by ANSI C84.1.'],
      doubt: 'The lists say 110 V; the nominal voltage of the United States is 120 V. Both are kept.',
    },
  ),
  country('GW', 'Guinea-Bissau', [[220, 50]], 'C F', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: E (Wikipedia).',
  }),
  country(
    'GY',
    'Guyana',
    [
      [110, 50],
      [110, 60],
      [240, 50],
      [240, 60],
    ],
    'A B D G',
    {
      notes: ['Both voltage classes occur: check the socket before use.'],
      doubt:
        'IEC and Wikipedia say 240 V 60 Hz; World Standards says 110/220 V and 50/60 Hz; an older Wikipedia list said 110 V: measure the voltage and ask the utility for the frequency.',
    },
  ),
  country('HK', 'Hong Kong SAR', [[220, 50]], 'D G', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: M (Wikipedia).',
  }),
  country('HN', 'Honduras', [[120, 60]], 'A B', { doubt: 'IEC 110 V; Wikipedia 120 V; World Standards 120 V.' }),
  country('HR', 'Croatia', [[230, 50]], 'C F'),
  country('HT', 'Haiti', [[110, 60]], 'A B'),
  country('HU', 'Hungary', [[230, 50]], 'C F'),
  country('ID', 'Indonesia', [[230, 50]], 'C F', {
    notes: ['Older installations of 220 V, and of 110 V, are reported.'],
    doubt: 'IEC also lists 110 V; Wikipedia says the national standard SPLN 1 gives 230 V.',
  }),
  country('IE', 'Ireland', [[230, 50]], 'G'),
  country('IL', 'Israel', [[230, 50]], 'C H', { doubt: 'Socket letters named by one list only: M (IEC).' }),
  country('IM', 'Isle of Man', [[230, 50]], 'G', {
    doubt: 'IEC 240 V; Wikipedia 230 V; World Standards 230 V. Socket letters named by one list only: C (IEC).',
  }),
  country('IN', 'India', [[230, 50]], 'C D M'),
  country('IQ', 'Iraq', [[230, 50]], 'C D G'),
  country('IR', 'Iran', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('IS', 'Iceland', [[230, 50]], 'C F'),
  country('IT', 'Italy', [[230, 50]], 'C F L'),
  country('JE', 'Jersey', [[230, 50]], 'G', { sources: [wikipedia, worldStandards] }),
  country('JM', 'Jamaica', [[110, 50]], 'A B'),
  country('JO', 'Jordan', [[230, 50]], 'B C D F G J', { notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'] }),
  country(
    'JP',
    'Japan',
    [
      [100, 50],
      [100, 60],
    ],
    'A B',
    {
      notes: [
        '100 V everywhere; 50 Hz in the east (Tokyo, Tohoku, Hokkaido), 60 Hz in the west (Nagoya, Osaka, Kyoto, Hiroshima, Shikoku, Kyushu).',
        '200 V between the two lines for large loads, on sockets of another shape.',
      ],
    },
  ),
  country('KE', 'Kenya', [[240, 50]], 'G'),
  country('KG', 'Kyrgyzstan', [[220, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('KH', 'Cambodia', [[230, 50]], 'A C G', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'Socket letters named by one list only: B (World Standards), F (World Standards).',
  }),
  country('KI', 'Kiribati', [[240, 50]], 'I', { doubt: 'IEC 240 V; Wikipedia 230 V; World Standards 240 V.' }),
  country('KM', 'Comoros', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('KN', 'St. Kitts and Nevis', [[230, 60]], 'A B D G', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
  }),
  country(
    'KP',
    'North Korea',
    [
      [110, 50],
      [110, 60],
      [220, 50],
      [220, 60],
    ],
    'C F',
    {
      notes: ['Both voltage classes occur: check the socket before use.'],
      doubt:
        'IEC 110 and 220 V, 50 and 60 Hz; Wikipedia 220 V 50 Hz; World Standards 230 V 50 Hz. Socket letters named by one list only: A (IEC).',
    },
  ),
  country('KR', 'South Korea', [[220, 60]], 'C F', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V. 230 V-style F sockets at 60 Hz.',
  }),
  country('KW', 'Kuwait', [[240, 50]], 'C G', { doubt: 'IEC 240 V; Wikipedia 240 V; World Standards 230 V.' }),
  country('KY', 'Cayman Islands', [[120, 60]], 'A B'),
  country('KZ', 'Kazakhstan', [[230, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country('LA', 'Laos', [[230, 50]], 'A B C E F', { notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'] }),
  country('LB', 'Lebanon', [[220, 50]], 'A B C D G', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: F (World Standards).',
  }),
  country('LC', 'St. Lucia', [[240, 50]], 'G', {
    doubt: 'IEC 240 V; World Standards 230 V.',
    sources: [worldPlugs, worldStandards],
  }),
  country('LI', 'Liechtenstein', [[230, 50]], 'C J'),
  country('LK', 'Sri Lanka', [[230, 50]], 'D G M'),
  country(
    'LR',
    'Liberia',
    [
      [120, 50],
      [120, 60],
      [220, 50],
      [220, 60],
    ],
    'A B C F',
    {
      notes: ['Both voltage classes occur: check the socket before use.'],
      doubt:
        'IEC 120 and 220 V, 50 and 60 Hz; Wikipedia 120 V 60 Hz; World Standards 230 V 50 Hz: measure first. Socket letters named by one list only: D (World Standards), E (IEC), G (World Standards).',
    },
  ),
  country('LS', 'Lesotho', [[220, 50]], 'M', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('LT', 'Lithuania', [[230, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country('LU', 'Luxembourg', [[230, 50]], 'C F'),
  country('LV', 'Latvia', [[230, 50]], 'C F'),
  country(
    'LY',
    'Libya',
    [
      [127, 50],
      [230, 50],
    ],
    'C F L',
    {
      notes: ['127 V is the older supply.', 'Both voltage classes occur: check the socket before use.'],
      doubt:
        'IEC 127 and 230 V; Wikipedia and World Standards 230 V only. Socket letters named by one list only: D (IEC).',
    },
  ),
  country(
    'MA',
    'Morocco',
    [
      [127, 50],
      [220, 50],
    ],
    'C E',
    {
      notes: ['127 V is the older supply.', 'Both voltage classes occur: check the socket before use.'],
      doubt: 'IEC 127 and 220 V; Wikipedia 220 V; World Standards 230 V.',
    },
  ),
  country('MC', 'Monaco', [[230, 50]], 'C E', { doubt: 'Socket letters named by one list only: D (IEC), F (IEC).' }),
  country('MD', 'Moldova', [[230, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country('ME', 'Montenegro', [[230, 50]], 'C F'),
  country(
    'MF',
    'St. Martin',
    [
      [120, 60],
      [220, 60],
    ],
    'C E',
    {
      notes: [
        '220 to 230 V 60 Hz on this side; 110 to 120 V across the border (SX).',
        'Both voltage classes occur: check the socket before use.',
      ],
      doubt:
        'IEC 120 and 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: F (IEC).',
    },
  ),
  country(
    'MG',
    'Madagascar',
    [
      [127, 50],
      [220, 50],
    ],
    'C E',
    {
      notes: ['127 V is the older supply.', 'Both voltage classes occur: check the socket before use.'],
      doubt:
        'IEC 127 and 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: D (IEC), J (IEC), K (IEC).',
    },
  ),
  country('MH', 'Marshall Islands', [[120, 60]], 'A B', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('MK', 'North Macedonia', [[230, 50]], 'C F'),
  country('ML', 'Mali', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('MM', 'Myanmar (Burma)', [[230, 50]], 'A C D F G I', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'Socket letters named by one list only: B (World Standards), E (World Standards).',
  }),
  country('MN', 'Mongolia', [[220, 50]], 'C E F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('MO', 'Macao SAR', [[230, 50]], 'D G M', {
    doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V. Socket letters named by one list only: F (IEC).',
  }),
  country('MP', 'Northern Mariana Islands', [[120, 60]], 'A B', {
    doubt:
      'In none of the lists: practice of the United States assumed (lists give 110 to 120 V for neighbouring Guam).',
    sources: [
      fromMemory(
        'Mains supply of the United States',
        'a commonwealth of the United States: 120 V 60 Hz and sockets A and B assumed',
      ),
    ],
  }),
  country('MQ', 'Martinique', [[220, 50]], 'C E', {
    doubt: 'IEC 220 V; World Standards 230 V. Socket letters named by one list only: D (IEC).',
    sources: [worldPlugs, worldStandards],
  }),
  country('MR', 'Mauritania', [[220, 50]], 'C E', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: F (Wikipedia).',
  }),
  country('MS', 'Montserrat', [[230, 60]], 'A B', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'Socket letters named by one list only: G (World Standards).',
  }),
  country('MT', 'Malta', [[230, 50]], 'G'),
  country('MU', 'Mauritius', [[230, 50]], 'C E G'),
  country('MV', 'Maldives', [[230, 50]], 'C D G J K L', { doubt: 'Socket letters named by one list only: A (IEC).' }),
  country('MW', 'Malawi', [[230, 50]], 'G'),
  country(
    'MX',
    'Mexico',
    [
      [120, 60],
      [127, 60],
    ],
    'A B',
    { doubt: 'IEC and World Standards list 127 V; Wikipedia lists 120 V first.' },
  ),
  country('MY', 'Malaysia', [[230, 50]], 'C G M', {
    doubt: 'IEC 240 V; Wikipedia 230 V; World Standards 230 V. Socket letters named by one list only: A (IEC).',
  }),
  country('MZ', 'Mozambique', [[220, 50]], 'C F M', {
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: N (World Standards).',
  }),
  country('NA', 'Namibia', [[220, 50]], 'D M', {
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: C (World Standards), N (World Standards).',
  }),
  country('NC', 'New Caledonia', [[220, 50]], 'C F', {
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: E (World Standards).',
  }),
  country('NE', 'Niger', [[220, 50]], 'A B C D E F', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country('NF', 'Norfolk Island', [[230, 50]], 'I', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('NG', 'Nigeria', [[230, 50]], 'D G'),
  country('NI', 'Nicaragua', [[120, 60]], 'A B'),
  country('NL', 'Netherlands', [[230, 50]], 'C F'),
  country('NO', 'Norway', [[230, 50]], 'C F'),
  country('NP', 'Nepal', [[230, 50]], 'C D M'),
  country('NR', 'Nauru', [[240, 50]], 'I'),
  country('NU', 'Niue', [[230, 50]], 'I', { sources: [wikipedia, worldStandards] }),
  country('NZ', 'New Zealand', [[230, 50]], 'I'),
  country('OM', 'Oman', [[240, 50]], 'G', {
    doubt: 'IEC 240 V; Wikipedia 240 V; World Standards 230 V. Socket letters named by one list only: C (IEC).',
  }),
  country('PA', 'Panama', [[120, 60]], 'A B', { doubt: 'IEC 110 V; Wikipedia 120 V; World Standards 120 V.' }),
  country('PE', 'Peru', [[220, 60]], 'A B C', {
    notes: ['Flat-pin A/B sockets here carry 220 V.'],
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country(
    'PF',
    'French Polynesia',
    [
      [110, 50],
      [110, 60],
      [220, 50],
      [220, 60],
    ],
    'C E',
    {
      notes: ['Both voltage classes occur: check the socket before use.'],
      doubt:
        'Wikipedia lists 110 V first of several, 50 and 60 Hz; World Standards lists 230 V 60 Hz; 220 V is remembered as the usual higher value: measure first. Socket letters named by one list only: A (Wikipedia), B (Wikipedia), F (Wikipedia).',
      sources: [wikipedia, worldStandards],
    },
  ),
  country('PG', 'Papua New Guinea', [[240, 50]], 'I'),
  country('PH', 'Philippines', [[230, 60]], 'A B C', {
    notes: ['US-shaped sockets at 220-230 V.', 'Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.',
  }),
  country('PK', 'Pakistan', [[230, 50]], 'C D G M'),
  country('PL', 'Poland', [[230, 50]], 'C E'),
  country('PM', 'St. Pierre and Miquelon', [[230, 50]], 'C E', {
    doubt: 'Socket letters named by one list only: F (Wikipedia).',
    sources: [wikipedia, worldStandards],
  }),
  country('PN', 'Pitcairn Islands', [[230, 50]], 'I', { sources: [wikipedia, worldStandards] }),
  country('PR', 'Puerto Rico', [[120, 60]], 'A B'),
  country('PS', 'Palestinian Territories', [[230, 50]], 'C H', { sources: [wikipedia, worldStandards] }),
  country('PT', 'Portugal', [[230, 50]], 'C F', { doubt: 'Socket letters named by one list only: E (Wikipedia).' }),
  country('PW', 'Palau', [[120, 60]], 'A B'),
  country('PY', 'Paraguay', [[220, 50]], 'A B C N', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country('QA', 'Qatar', [[240, 50]], 'D G', {
    doubt: 'Socket letters named by one list only: F (Wikipedia), L (Wikipedia).',
  }),
  country('RE', 'Réunion', [[220, 50]], 'E', {
    doubt: 'IEC 220 V; World Standards 230 V. Socket letters named by one list only: C (World Standards).',
    sources: [worldPlugs, worldStandards],
  }),
  country('RO', 'Romania', [[230, 50]], 'C F'),
  country('RS', 'Serbia', [[230, 50]], 'C F'),
  country('RU', 'Russia', [[230, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country('RW', 'Rwanda', [[230, 50]], 'C E G', {
    doubt: 'Socket letters named by one list only: F (World Standards), J (IEC).',
  }),
  country(
    'SA',
    'Saudi Arabia',
    [
      [127, 60],
      [220, 60],
      [230, 60],
    ],
    'G',
    {
      notes: [
        'Being changed from 127/220 V to 230/400 V over 25 years from 2010; 127 V sockets can still be met; 60 Hz throughout.',
        'Both voltage classes occur: check the socket before use.',
      ],
      doubt: 'IEC lists 220 and 230 V; Wikipedia and World Standards 230 V.',
      sources: [...threeLists, saudiChange],
    },
  ),
  country('SB', 'Solomon Islands', [[230, 50]], 'I', {
    doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V. Socket letters named by one list only: G (IEC).',
  }),
  country('SC', 'Seychelles', [[240, 50]], 'G'),
  country('SD', 'Sudan', [[230, 50]], 'C D G', { doubt: 'Socket letters named by one list only: F (Wikipedia).' }),
  country('SE', 'Sweden', [[230, 50]], 'C F'),
  country('SG', 'Singapore', [[230, 50]], 'C G M'),
  country('SH', 'St. Helena', [[230, 50]], 'G', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('SI', 'Slovenia', [[230, 50]], 'C F'),
  country('SJ', 'Svalbard and Jan Mayen', [[230, 50]], 'C F', {
    doubt: 'In none of the lists: supply of Norway assumed.',
    sources: [fromMemory('Norwegian mains supply', 'a territory of Norway: 230 V 50 Hz and sockets C and F assumed')],
  }),
  country('SK', 'Slovakia', [[230, 50]], 'C E', { doubt: 'Socket letters named by one list only: F (Wikipedia).' }),
  country('SL', 'Sierra Leone', [[230, 50]], 'D G'),
  country('SM', 'San Marino', [[230, 50]], 'C F L'),
  country('SN', 'Senegal', [[230, 50]], 'C D E K'),
  country('SO', 'Somalia', [[220, 50]], 'C G', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('SR', 'Suriname', [[127, 60]], 'C F', {
    notes: ['Round- or rectangular-pin sockets here carry 100 to 127 V.'],
    doubt:
      'IEC 127 V; Wikipedia 127 V; World Standards 110 V. Socket letters named by one list only: A (World Standards), B (World Standards).',
  }),
  country('SS', 'South Sudan', [[230, 50]], 'C D G', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('ST', 'São Tomé and Príncipe', [[220, 50]], 'C F', {
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country('SV', 'El Salvador', [[115, 60]], 'A B', { doubt: 'IEC 115 V; Wikipedia 115 V; World Standards 120 V.' }),
  country('SX', 'Sint Maarten', [[120, 60]], 'A B', {
    doubt: 'Wikipedia 120 V; World Standards 110 V.',
    sources: [wikipedia, worldStandards],
  }),
  country('SY', 'Syria', [[220, 50]], 'C E L', {
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: F (World Standards).',
  }),
  country('SZ', 'Eswatini', [[230, 50]], 'M', {
    doubt: 'Socket letters named by one list only: C (World Standards), N (World Standards).',
  }),
  country('TC', 'Turks and Caicos Islands', [[120, 60]], 'A B', { sources: [worldPlugs, worldStandards] }),
  country('TD', 'Chad', [[220, 50]], 'C D E F', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('TG', 'Togo', [[220, 50]], 'C E', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('TH', 'Thailand', [[230, 50]], 'A B C O', {
    notes: [
      'Type O sockets sold are hybrids that also take A, B and C plugs; E and F plugs enter but are not earthed.',
      'Flat-pin A/B sockets here carry 220 to 240 V.',
    ],
    doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V. Socket letters named by one list only: F (IEC).',
  }),
  country('TJ', 'Tajikistan', [[220, 50]], 'C F I', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('TK', 'Tokelau', [[230, 50]], 'I', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('TL', 'Timor-Leste', [[220, 50]], 'C E F I', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
  country('TM', 'Turkmenistan', [[220, 50]], 'B C F', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country('TN', 'Tunisia', [[230, 50]], 'C E'),
  country('TO', 'Tonga', [[240, 50]], 'I', { doubt: 'IEC 240 V; Wikipedia 230 V; World Standards 240 V.' }),
  country('TR', 'Türkiye', [[230, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country('TT', 'Trinidad and Tobago', [[115, 60]], 'A B'),
  country('TV', 'Tuvalu', [[230, 50]], 'I', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country('TW', 'Taiwan', [[110, 60]], 'A B'),
  country('TZ', 'Tanzania', [[230, 50]], 'D G'),
  country('UA', 'Ukraine', [[230, 50]], 'C F', { doubt: 'IEC 220 V; Wikipedia 230 V; World Standards 230 V.' }),
  country('UG', 'Uganda', [[240, 50]], 'G'),
  country('US', 'United States', [[120, 60]], 'A B', {
    notes: ['Split phase: 240 V between the two lines for large loads.'],
  }),
  country('UY', 'Uruguay', [[230, 50]], 'C F I L'),
  country('UZ', 'Uzbekistan', [[220, 50]], 'C F', {
    doubt:
      'IEC 220 V; Wikipedia 220 V; World Standards 230 V. Socket letters named by one list only: E (Wikipedia), I (IEC).',
  }),
  country('VA', 'Vatican City', [[230, 50]], 'C F L', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('VC', 'St. Vincent and Grenadines', [[230, 50]], 'A G', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'Socket letters named by one list only: B (World Standards), C (IEC), E (IEC), I (IEC), K (IEC).',
    sources: [worldPlugs, worldStandards],
  }),
  country('VE', 'Venezuela', [[120, 60]], 'A B'),
  country('VG', 'British Virgin Islands', [[110, 60]], 'A B'),
  country(
    'VI',
    'U.S. Virgin Islands',
    [
      [110, 60],
      [120, 60],
    ],
    'A B',
    {
      notes: ['Territory of the United States, whose nominal voltage is 120 V by ANSI C84.1.'],
      doubt: 'The lists say 110 V; the nominal voltage of the United States is 120 V. Both are kept.',
    },
  ),
  country('VN', 'Vietnam', [[220, 50]], 'A B C F', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.',
  }),
  country('VU', 'Vanuatu', [[230, 50]], 'I', {
    doubt:
      'IEC 220 V; Wikipedia 230 V; World Standards 230 V. Socket letters named by one list only: C (IEC), G (IEC).',
  }),
  country('WF', 'Wallis and Futuna', [[230, 50]], 'C E', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('WS', 'Samoa', [[230, 50]], 'I'),
  country('XK', 'Kosovo (user-assigned code, not ISO 3166-1)', [[230, 50]], 'C F', {
    notes: ['The letters XK are user-assigned, not in ISO 3166-1.'],
    sources: [wikipedia, worldStandards],
  }),
  country('YE', 'Yemen', [[230, 50]], 'A D G', {
    notes: ['Flat-pin A/B sockets here carry 220 to 240 V.'],
    doubt:
      'IEC 230 V; Wikipedia 240 V; World Standards 230 V. Socket letters named by one list only: C (World Standards).',
  }),
  country('YT', 'Mayotte', [[230, 50]], 'C E', { doubt: 'From one list only.', sources: [worldStandards] }),
  country('ZA', 'South Africa', [[230, 50]], 'C M N', { doubt: 'Socket letters named by one list only: D (IEC).' }),
  country('ZM', 'Zambia', [[230, 50]], 'C D G'),
  country('ZW', 'Zimbabwe', [[220, 50]], 'D G', { doubt: 'IEC 220 V; Wikipedia 220 V; World Standards 230 V.' }),
])

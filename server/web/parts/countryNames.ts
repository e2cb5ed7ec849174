import { countries } from '../../tables/mains.js'
import { byName, language } from '../language.js'

const names = new Intl.DisplayNames([language], { type: 'region' })

export interface CountryName {
  /** ISO 3166-1 alpha-2 */
  code: string
  name: string
}

/** Every country of the mains table under its name in the language of the pages, in the order of the names. */
export const countryNames: readonly CountryName[] = countries
  .map(({ country }) => ({ code: country, name: names.of(country) ?? country }))
  .sort((one, other) => byName(one.name, other.name))

/** The languages of the plates, in which each land has a name of its own. */
const spoken =
  'en de fr es pt it nl sv da nb fi is pl cs sk hu sl hr ro bg el tr ru uk et lv lt ja ko zh zh-Hant'.split(' ')

/** Everyday names that no language's list has. */
const everyday: Readonly<Record<string, string>> = {
  UK: 'GB',
  England: 'GB',
  Scotland: 'GB',
  Wales: 'GB',
  'Northern Ireland': 'GB',
  Britain: 'GB',
  'Great Britain': 'GB',
  Grossbritannien: 'GB',
  USA: 'US',
  America: 'US',
  'United States of America': 'US',
  Amerika: 'US',
  Holland: 'NL',
  'Republic of Ireland': 'IE',
  'Czech Republic': 'CZ',
  Turkey: 'TR',
  UAE: 'AE',
  Korea: 'KR',
  'Hong Kong': 'HK',
  Macau: 'MO',
  Burma: 'MM',
  Swaziland: 'SZ',
  'Ivory Coast': 'CI',
  'Cape Verde': 'CV',
  'East Timor': 'TL',
}

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}]/gu, '')

let byText: ReadonlyMap<string, string> | undefined

/** Made when the first name is asked for: the names of all lands in all these languages. */
function codesByText(): ReadonlyMap<string, string> {
  const codes = new Map<string, string>()
  for (const tongue of spoken) {
    const list = new Intl.DisplayNames([tongue], { type: 'region' })
    for (const { country } of countries) {
      const name = plain(list.of(country) ?? '')
      if (name !== '' && !codes.has(name)) codes.set(name, country)
    }
  }
  for (const { country, name } of countries) codes.set(plain(name), country)
  for (const { code, name } of countryNames) codes.set(plain(name), code)
  const listed = new Set(countryNames.map(({ code }) => code))
  for (const [name, code] of Object.entries(everyday)) if (listed.has(code)) codes.set(plain(name), code)
  // codes last: a code must win
  for (const { code } of countryNames) codes.set(plain(code), code)
  return codes
}

/** The code of a country written as its code, or as its name in one of the languages of the plates, without regard to case and accents. */
export function countryCode(text: string): string | undefined {
  if (byCode.has(text)) return text
  byText ??= codesByText()
  return byText.get(plain(text))
}

const byCode = new Map(countryNames.map(({ code, name }) => [code, name]))

/** "Germany" for "DE"; the text itself where it is no code of the table. */
export const countryName = (code: string): string => byCode.get(code.toUpperCase()) ?? code

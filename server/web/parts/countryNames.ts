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

const plain = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z]/g, '')

const byText = new Map<string, string>()
for (const { country, name } of countries) byText.set(plain(name), country)
for (const { code, name } of countryNames) byText.set(plain(name), code)
// codes last: no name has two letters, but a code must win
for (const { code } of countryNames) byText.set(plain(code), code).set(code, code)

/** The code of a country written as its code or its name on the pages, without regard to case and accents. */
export const countryCode = (text: string): string | undefined => byText.get(text) ?? byText.get(plain(text))

const byCode = new Map(countryNames.map(({ code, name }) => [code, name]))

/** "Germany" for "DE"; the text itself where it is no code of the table. */
export const countryName = (code: string): string => byCode.get(code.toUpperCase()) ?? code

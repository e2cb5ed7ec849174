import { countries } from '../../reference/mains.js'

const english = new Intl.DisplayNames(['en'], { type: 'region' })

export interface CountryName {
  /** ISO 3166-1 alpha-2 */
  code: string
  name: string
}

/** Every country of the mains table under its English name, in the order of the names. */
export const countryNames: readonly CountryName[] = countries
  .map(({ country }) => ({ code: country, name: english.of(country) ?? country }))
  .sort((a, b) => a.name.localeCompare(b.name, 'en'))

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
for (const { code } of countryNames) byText.set(plain(code), code)

/** The code of a country written as its code or its English name, without regard to case and accents. */
export const countryCode = (text: string): string | undefined => byText.get(plain(text))

/** "Germany" for "DE"; the text itself where it is no code of the table. */
export const countryName = (code: string): string =>
  countryNames.find((country) => country.code === code.toUpperCase())?.name ?? code

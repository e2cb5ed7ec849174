import { describe, expect, it } from 'vitest'
import { countryCode, countryName, countryNames } from '../../../server/web/parts/countryNames.js'

describe('the names of countries', () => {
  // ISO 3166-1, from memory
  it.each([
    ['Germany', 'DE'],
    ['japan', 'JP'],
    ['Côte d’Ivoire', 'CI'],
    ['cote divoire', 'CI'],
    ['gb', 'GB'],
    ['United Kingdom', 'GB'],
    // as people say it, and in the languages of the plates
    ['UK', 'GB'],
    ['England', 'GB'],
    ['Holland', 'NL'],
    ['USA', 'US'],
    ['Deutschland', 'DE'],
    ['Schweiz', 'CH'],
    ['España', 'ES'],
    ['Österreich', 'AT'],
    ['日本', 'JP'],
    ['Россия', 'RU'],
    ['대한민국', 'KR'],
  ])('%s is %s', (typed, code) => {
    expect(countryCode(typed)).toBe(code)
  })

  it('nothing else is a country', () => {
    for (const typed of ['', 'Atlantis', 'ZZ', 'constructor']) expect(countryCode(typed)).toBeUndefined()
  })

  it('every listed name leads back to its code', () => {
    expect(countryNames.length).toBeGreaterThan(190)
    for (const { code, name } of countryNames) {
      expect(countryCode(name)).toBe(code)
      expect(countryName(code)).toBe(name)
    }
  })
})

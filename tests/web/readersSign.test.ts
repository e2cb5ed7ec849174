import { describe, expect, it } from 'vitest'
import { decimalSign } from '../../server/web/decimalSign.js'

describe('the reader’s decimal sign', () => {
  // Unicode CLDR, numbers: symbols-numberSystem-latn, decimal
  it.each([
    ['de', ','],
    ['de-AT', ','],
    ['fr-FR', ','],
    ['pl', ','],
    ['pt-BR', ','],
    ['sv', ','],
    ['en', '.'],
    ['en-GB', '.'],
    ['de-CH', '.'],
    ['ja', '.'],
    ['zh-CN', '.'],
    ['ko', '.'],
  ])('of %s is “%s”', (tag, sign) => {
    expect(decimalSign([tag])).toBe(sign)
  })

  it('is that of the first language asked for', () => {
    expect(decimalSign(['de', 'en'])).toBe(',')
    expect(decimalSign(['en', 'de'])).toBe('.')
  })

  it('is the point where the sign is a third one, as in Arabic script', () => {
    expect(decimalSign(['ar-EG'])).toBe('.')
    expect(decimalSign(['fa'])).toBe('.')
  })

  it.each(['', '*', 'de_DE', 'x', 'no such', '../de', 'de-'.repeat(500), 'tlh', 'qaa'])(
    'is the point for the tag “%.20s”, which is none or is not known',
    (tag) => {
      expect(decimalSign([tag])).toBe('.')
    },
  )

  it('is the point where no language is asked for', () => {
    expect(decimalSign([])).toBe('.')
  })
})

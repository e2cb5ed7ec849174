import { describe, expect, it } from 'vitest'
import { glow } from '../../server/physics/glow.js'
import { glowRows } from '../../server/tables/glow.js'

describe('the glow in words', () => {
  // 798 K is the Draper point; the colours of hot bodies: 853 K dark red, 1203 K bright orange (encyclopaedia, Draper point);
  // the light of a 60 W lamp at half its voltage is a tenth of the full light, at 2139 K, by the handbook exponent 3.38
  it.each([
    { kelvin: 300, word: 'none' },
    { kelvin: 797.9, word: 'none' },
    { kelvin: 798, word: 'dull' },
    { kelvin: 1203, word: 'dull' },
    { kelvin: 1499, word: 'dull' },
    { kelvin: 1500, word: 'part' },
    { kelvin: 2139, word: 'part' },
    { kelvin: 2200, word: 'bright' },
    { kelvin: 2499, word: 'bright' },
    { kelvin: 2500, word: 'full' },
    { kelvin: 3655, word: 'full' },
  ])('is $word at $kelvin K', ({ kelvin, word }) => {
    expect(glow(kelvin, glowRows)).toBe(word)
  })

  it('refuses a negative temperature and NaN', () => {
    for (const kelvin of [-1, Number.NaN]) expect(() => glow(kelvin, glowRows)).toThrow(RangeError)
  })
})

import { describe, expect, it } from 'vitest'
import { prose } from '../../server/words/prose.js'
import { tell } from '../../server/words/tell.js'

const comma = (text: string): string => tell(prose(text), { decimal: ',' })

describe('words of a table for a reader who writes a comma', () => {
  it.each([
    ['a quantity', '12.5\u00a0V', '12,5\u00a0V'],
    ['a range', '11.4\u00a0V to 12.6\u00a0V', '11,4\u00a0V to 12,6\u00a0V'],
    ['a size', '5.5 × 2.1\u00a0mm', '5,5 × 2,1\u00a0mm'],
    ['grouped figures', '12\u00a0345.6\u00a0Ω', '12\u00a0345,6\u00a0Ω'],
    ['a negative number', '−0.25\u00a0V', '−0,25\u00a0V'],
    ['the end of a sentence', 'It is 1.5.', 'It is 1,5.'],
    ['pairs', '2.0/2.1', '2,0/2,1'],
  ])('have it in %s', (_name, text, expected) => {
    expect(comma(text)).toBe(expected)
  })

  it.each([
    ['a whole number', '12\u00a0V and 1500\u00a0W.'],
    ['a clause', 'clause 8.1.4, 1.2.3.4, AS/NZS 60320.1:2004'],
    ['a marking', 'T1.6AL250V F1.6A 12.5V 5.5x2.1mm'],
    ['an address', 'http://192.168.0.7:3000'],
    ['a quotation', 'Plug “5.5 x 2.1” with “1.500” is not in the table'],
  ])('keep %s as it is', (_name, text) => {
    expect(comma(text)).toBe(text)
  })

  it('go on after a quotation', () => {
    expect(comma('“1.500”: write 1500 or 1.5, not “1,500” or 2.5.')).toBe(
      '“1.500”: write 1500 or 1,5, not “1,500” or 2,5.',
    )
  })

  it('are the text itself for a reader who writes a point', () => {
    expect(tell(prose('12.5\u00a0V'))).toBe('12.5\u00a0V')
  })

  it('are another language’s words where its catalogue has them', () => {
    const reader = { decimal: ',', catalogue: { 'about 1.5 V': 'etwa 1.5 V' } } as const
    expect(tell(prose('about 1.5 V'), reader)).toBe('etwa 1,5 V')
  })
})

import { describe, expect, it } from 'vitest'
import { decimalSign, readersNumbers } from '../../server/web/readersNumbers.js'

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

describe('a page for a reader who writes a comma', () => {
  it.each([
    ['a quantity', '<p>12.5\u00a0V</p>', '<p>12,5\u00a0V</p>'],
    ['a range', '11.4\u00a0V to 12.6\u00a0V', '11,4\u00a0V to 12,6\u00a0V'],
    ['a size', '5.5 × 2.1\u00a0mm', '5,5 × 2,1\u00a0mm'],
    ['grouped figures', '12\u00a0345.6\u00a0Ω', '12\u00a0345,6\u00a0Ω'],
    ['a negative number', '−0.25\u00a0V', '−0,25\u00a0V'],
    ['the end of a sentence', 'It is 1.5.', 'It is 1,5.'],
    ['pairs', '2.0/2.1', '2,0/2,1'],
    ['a heard text', '<svg aria-label="at 2.5\u00a0A">', '<svg aria-label="at 2,5\u00a0A">'],
    [
      'a text for what is not seen',
      '<img alt="0.5\u00a0V" title="0.5\u00a0V">',
      '<img alt="0,5\u00a0V" title="0,5\u00a0V">',
    ],
    ['a placeholder', '<input placeholder="1.5">', '<input placeholder="1,5">'],
    ['the words of a drawing', '<title id="a">0.5\u00a0s</title>', '<title id="a">0,5\u00a0s</title>'],
    ['after what is kept', '<b translate="no">1.5</b> 1.5', '<b translate="no">1.5</b> 1,5'],
    ['after an empty element that is kept', '<img translate="no" alt="1.5"> 1.5', '<img translate="no" alt="1.5"> 1,5'],
  ])('gets it in %s', (_name, html, expected) => {
    expect(readersNumbers(html, ',')).toBe(expected)
  })

  it.each([
    ['a whole number', '<p>12\u00a0V and 1500\u00a0W.</p>'],
    ['a clause', 'clause 8.1.4, 1.2.3.4, AS/NZS 60320.1:2004'],
    ['a marking', 'T1.6AL250V F1.6A 12.5V 5.5x2.1mm'],
    ['an address', 'http://192.168.0.7:3000'],
    ['a drawing', '<path d="M1.5 2.5L3.5 4"></path><svg viewBox="0 0 10.5 2.5"></svg><text x="1.5" y="2.5">a</text>'],
    ['a value', '<input value="12.5" name="a1.5"><option value="1.5">a</option><a href="/?ina=0.5">a</a>'],
    ['what was typed', '<textarea id="x">\nOUT 12.5 V</textarea>'],
    ['a quotation', 'Plug “5.5 x 2.1” with “1.500” is not in the table'],
    ['the head of a page', '<head><title>Brick 12.5 V</title></head>'],
    ['a script', '<script>const a = 1.5 < 2.5</script>'],
    ['a comment', '<!-- 1.5 > 0.5 -->'],
    ['what is marked', '<ul translate="no"><li><cite title="1.5">table 5.4</cite>, 0.5 V</li></ul>'],
    ['what is marked, with more of its kind in it', '<div translate="no"><div>1.5</div> 2.5<div></div> 3.5</div>'],
    ['what is marked, with an element that ends itself', '<g translate="no"><g/>1.5</g>'],
  ])('keeps %s as it is', (_name, html) => {
    expect(readersNumbers(html, ',')).toBe(html)
  })

  it('goes on after a quotation', () => {
    expect(readersNumbers('“1.500”: write 1500 or 1.5, not “1,500” or 2.5.', ',')).toBe(
      '“1.500”: write 1500 or 1,5, not “1,500” or 2,5.',
    )
  })

  it('is the page itself where the sign is the point', () => {
    expect(readersNumbers('<p>12.5\u00a0V</p>', '.')).toBe('<p>12.5\u00a0V</p>')
  })

  it('takes a time in proportion to its length', () => {
    const time = (html: string): number => {
      const times = [1, 2, 3].map(() => {
        const start = performance.now()
        readersNumbers(html, ',')
        return performance.now() - start
      })
      return Math.min(...times)
    }
    // forty times the length: a square would take 1600 times as long
    for (const part of ['<p title="1.5">1.5</p>', '“1.5', '<div translate="no">', '1.1', '1', '&lt;'])
      expect(time(part.repeat(40_000)), part).toBeLessThan(20 + 200 * time(part.repeat(1000)))
  })
})

import { describe, expect, it } from 'vitest'
import { behindHeadline, headline } from '../../server/words/headline.js'
import { say } from '../../server/words/phrase.js'
import { volts } from '../../server/words/quantity.js'
import { tell } from '../../server/words/tell.js'

describe('the beginning of an instruction', () => {
  it.each([
    ['what fits stays whole', 'Plug in, and watch.', 20, 'Plug in, and watch.', ''],
    [
      'a sentence before a clause before a comma',
      'One two. Three; four, five six.',
      4,
      'One two. Three…',
      'four, five six.',
    ],
    ['a comma only where nothing else fits', 'One two, three four five.', 3, 'One two…', 'three four five.'],
    ['a bracket begins what is left', 'One two (three four) five.', 3, 'One two…', '(three four) five.'],
    ['no figure is cut in two', 'Read 12.5 V once again now.', 3, 'Read 12.5 V once again now.', ''],
    ['what has no clause that fits stays whole', 'One two three four.', 2, 'One two three four.', ''],
  ])('%s', (_rule, text, most, head, rest) => {
    expect(tell(headline(text, most))).toBe(head)
    expect(tell(behindHeadline(text, most))).toBe(rest)
  })

  it('is cut as the reader gets it, with the decimal sign of that reader', () => {
    const words = say`Read ${volts(12.5)}; then wait.`
    expect(tell(headline(words, 3), { decimal: ',' })).toBe('Read 12,5\u00a0V…')
  })
})

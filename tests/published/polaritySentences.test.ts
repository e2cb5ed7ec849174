import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

/** Sentence, what a person reads in it, and where it was seen; "usual" and "variant" are wordings from memory. */
const sentences: [string, string, string][] = JSON.parse(
  readFileSync(new URL('./polaritySentences.json', import.meta.url), 'utf8'),
)

describe('sentences that tell a polarity, collected from public texts', () => {
  it.each(sentences)('“%s” is %s (%s)', (sentence, polarity, note) => {
    const read = readPlate(sentence).polarity
    // a sentence that denies may be left to the meter
    if (note.startsWith('negation')) expect([polarity, null]).toContain(read)
    else expect(read).toBe(polarity)
  })
})

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { topics } from '../../server/chain/finding.js'
import { mainsTopics, pairTopics } from '../../server/chain/index.js'

const page = readFileSync(join(import.meta.dirname, '../../docs/method-chain.md'), 'utf8')

describe('the page on the method', () => {
  it.each(topics)('has a row for %s', (topic) => {
    expect(page).toMatch(new RegExp(`^\\| ${topic} \\|`, 'm'))
  })
})

describe('the list of topics', () => {
  it('is in chain order and whole', () => {
    expect([...mainsTopics, ...pairTopics].map(({ topic }) => topic)).toEqual([...topics])
  })
})

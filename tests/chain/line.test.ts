import { describe, expect, it } from 'vitest'
import { answerCheck } from '../../server/chain/answer.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { topics } from '../../server/chain/index.js'
import { facts } from '../../server/facts/boxes.js'
import { changed, matching } from './cases.js'

const linksOf = (request: CheckRequest) => answerCheck(request).links
const namesOf = (request: CheckRequest) => linksOf(request).map(({ link }) => link)
const outcomeAt = (request: CheckRequest, link: string) => linksOf(request).find((one) => one.link === link)?.outcome

describe('the line of things from the wall to the machine', () => {
  it('has the links of a separate supply in the order in which they are plugged together', () => {
    expect(namesOf(matching)).toEqual([
      'source',
      'socket',
      'cord',
      'inlet',
      'fuse',
      'supply',
      'lead',
      'plug',
      'jack',
      'machine',
    ])
  })

  it('has neither cord, inlet nor fuse where the pins are on the supply itself', () => {
    expect(namesOf(changed({ supply: { inlet: 'plug-in' }, cord: { connector: null } }))).toEqual([
      'source',
      'socket',
      'supply',
      'lead',
      'plug',
      'jack',
      'machine',
    ])
  })

  it('has no inlet where the flex is led into the supply', () => {
    expect(namesOf(changed({ supply: { inlet: 'captive' }, cord: { connector: 'captive' } }))).not.toContain('inlet')
  })

  it('has an adapter and a converter only where one is used, or a converter is needed', () => {
    expect(namesOf(changed({ cord: { adapter: { earthed: false } } }))).toContain('adapter')
    expect(namesOf(changed({ supply: { input: { voltages: [{ min: 120, max: 120 }] } } }))).toContain('converter')
  })

  it('carries a stop at every thing that it is about: a reversed polarity at plug and jack', () => {
    const reversed = changed({ supply: { plug: { polarity: 'centre-negative' } } })
    expect(outcomeAt(reversed, 'plug')).toBe('stop')
    expect(outcomeAt(reversed, 'jack')).toBe('stop')
    expect(outcomeAt(reversed, 'socket')).toBe('clear')
  })

  it('names the facts of each thing by their keys, each fact at one thing', () => {
    const named = linksOf(
      changed({ cord: { adapter: { earthed: false } }, supply: { input: { voltages: [{ min: 120, max: 120 }] } } }),
    ).flatMap((one) => one.facts)
    expect(named.toSorted()).toEqual(facts.map(({ key }) => key).toSorted())
  })
})

describe('every topic', () => {
  it.each(topics.map(({ name, asks }) => ({ name, asks })))('$name asks for facts that there are', ({ asks }) => {
    const keys = facts.map(({ key }) => key)
    expect(asks.filter((key) => !keys.includes(key))).toEqual([])
  })
})

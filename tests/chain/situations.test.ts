import { describe, expect, it } from 'vitest'
import { outcomes } from '../../server/chain/finding.js'
import type { TopicName } from '../../server/chain/index.js'
import { checkSchema } from '../../server/facts/check.js'
import { assess } from '../support/told.js'
import { earthAndCordSituations } from './situations/earthAndCord.js'
import { fuseSituations } from './situations/fuseLinks.js'
import { hazardSituations } from './situations/hazards.js'
import { mainsSituations } from './situations/mains.js'
import { outputSituations } from './situations/output.js'
import type { Situation } from './situations/situation.js'

const lists = { mainsSituations, earthAndCordSituations, outputSituations, fuseSituations, hazardSituations }

describe.each(Object.entries(lists))('situations of the bench, decided before the program was asked: %s', (_, list) => {
  it.each(list)('$name', ({ request, is, says, because }: Situation) => {
    expect(because.length).toBeGreaterThan(10)
    expect(checkSchema.safeParse(request).success).toBe(true)
    const { findings } = assess(request)
    for (const [topic, allowed] of Object.entries(is)) {
      const found = findings.filter((finding) => finding.topic === topic)
      const worst = outcomes.find((outcome) => found.some((finding) => finding.outcome === outcome)) ?? '-'
      expect(allowed, `${topic} is ${worst}: ${found.map(({ title }) => title).join('; ')}`).toContain(worst)
      const words = says?.[topic as TopicName]
      if (words) expect(JSON.stringify(found).replaceAll('\u00a0', ' ')).toMatch(words)
    }
  })
})

it('there are more than 170 of them, and no name twice', () => {
  const names = Object.values(lists)
    .flat()
    .map(({ name }) => name)
  expect(new Set(names).size).toBe(names.length)
  expect(names.length).toBeGreaterThan(170)
})

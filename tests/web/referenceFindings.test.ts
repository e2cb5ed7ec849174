import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { exampleCheck } from '../../server/chain/example.js'
import { outcomes } from '../../server/chain/finding.js'
import { topics } from '../../server/chain/index.js'
import { checkSchema } from '../../server/facts/check.js'
import { parse } from '../../server/web/parse.js'
import { assess } from '../support/told.js'
import { testApp } from './testApp.js'

const { app } = testApp()
const every = topics.flatMap(({ name: topic, when }) =>
  outcomes.map((outcome) => ({ topic, outcome, rule: when[outcome] })),
)
const occurring = every.flatMap(({ topic, outcome, rule }) =>
  'example' in rule ? [{ topic, outcome, check: exampleCheck(rule.example) }] : [],
)

describe('the findings catalogue', { timeout: 30_000 }, () => {
  it.each(occurring)(
    '$topic comes to $outcome in its example, which is a check as anyone may send it',
    ({ topic, outcome, check }) => {
      const { findings } = assess(parse(checkSchema, JSON.parse(JSON.stringify(check))))
      expect(findings.filter((finding) => finding.topic === topic).map((finding) => finding.outcome)).toContain(outcome)
    },
  )

  it('leaves out only what cannot be: two shapes fit or do not, a wrong speed harms nothing, and no word proves that nothing is wrong', () => {
    const left = every.filter(({ rule }) => 'never' in rule).map(({ topic, outcome }) => `${topic} ${outcome}`)
    expect(left).toEqual([
      'speed stop',
      'starting stop',
      'inlet caution',
      'charging clear',
      'hazard-words clear',
      'output-kind caution',
      'pins caution',
    ])
  })

  it('shows each with its rule, and leads to the example as a page that answers', async () => {
    const { text } = await request(app).get('/reference/findings')
    for (const { topic, outcome } of every) expect(text).toContain(`id="${topic}-${outcome}"`)
    const links = [...text.matchAll(/href="(\/\?[^"]+)"/g)].map(([, href = '']) => href.replaceAll('&amp;', '&'))
    expect(links).toHaveLength(occurring.length)
    const [first = ''] = links
    const answer = await request(app).get(first)
    expect(answer.status).toBe(200)
    expect(answer.text).toContain('Do not connect')
  })

  it('calls nothing safe', async () => {
    for (const page of ['/reference/findings', '/reference/words', '/reference'])
      expect((await request(app).get(page)).text).not.toMatch(/\bsafe(ly)?\b/i)
  })
})

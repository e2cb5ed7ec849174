import { readFileSync } from 'node:fs'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { boxes, facts, labelOf } from '../../server/facts/boxes.js'
import { columnAt } from '../../server/facts/cells.js'
import { checkSchema } from '../../server/facts/check.js'
import { says } from '../../server/facts/says.js'
import { factSection } from '../../server/web/parts/factFields.js'
import { factAnswer } from '../../server/web/schemas/answers.js'
import { tell } from '../../server/words/tell.js'
import { testApp } from '../web/testApp.js'

const fact = (key: string) => {
  const found = facts.find((one) => one.key === key)
  if (!found) throw new Error(`no fact ${key}`)
  return found
}

describe('the rows of facts', () => {
  it.each(facts)('$key asks a question, says how it is found out, and has a name in addresses', ({ fact: row }) => {
    expect(row.question).toMatch(/\?$/)
    expect(row.label).toMatch(/^[A-Z]/)
    expect(row.findOut.length).toBeGreaterThan(0)
    for (const { how } of row.findOut) expect(how).toMatch(/^[A-Z].*\.$/)
    expect(row.address).toMatch(/^[a-z]+#?[a-z]*\d?$/)
  })

  it.each(facts)('$key: what needs no power comes before what does', ({ fact: row }) => {
    const powers = row.findOut.map(({ power }) => (power === 'none' ? 0 : 1))
    expect(powers).toEqual([...powers].sort())
  })

  it('have no name, key or label twice', () => {
    for (const all of [boxes.map(({ name }) => name), boxes.map(({ label }) => label), facts.map(({ key }) => key)])
      expect(new Set(all).size).toBe(all.length)
  })

  it('have the number of their row in their name only where there are rows', () => {
    for (const { fact: row, list } of facts) expect(row.address.includes('#')).toBe(list !== null)
  })

  it('never tell anyone that something is safe', () => {
    expect(JSON.stringify(facts.map(({ fact: { question, findOut, hint } }) => [question, findOut, hint]))).not.toMatch(
      /\bsafe/i,
    )
  })

  it('are the parts of the JSON of a check, under the same names', () => {
    const schema = JSON.stringify(checkSchema.toJSONSchema({ io: 'input', unrepresentable: 'any' }))
    for (const { key } of facts) expect(schema).toContain(`"${key.split('.').at(-1)}"`)
  })
})

describe('what is derived from a row', () => {
  it.each([
    ['supply.plug.polarity', 'centre-negative', 'centre negative'],
    ['supply.protectionClass', 'II', 'class II'],
    ['supply.regulated', false, 'unregulated'],
    ['supply.input.currentA', 0.5, '500 mA'],
    ['supply.lead.awg', 22, 'AWG 22'],
    ['supply.outputs.kind', 'dc', 'DC'],
  ])('%s %s within a sentence: %s', (key, value, text) => {
    expect(
      tell(says(fact(key).fact, value))
        .join()
        .replace(/\u00a0/g, ' '),
    ).toBe(text)
  })

  it('several voltages are several words', () => {
    const windows = [
      { min: 115, max: 115 },
      { min: 220, max: 240 },
    ]
    expect(tell(says(fact('supply.input.voltages').fact, windows)).map((text) => text.replace(/\u00a0/g, ' '))).toEqual(
      ['115 V', '220 V to 240 V'],
    )
  })

  it('the label of a box in a row names its row', () => {
    expect(labelOf('out3a')).toBe('Current of output 3')
    expect(labelOf('nothing')).toBe('nothing')
  })

  it.each([
    ['supply.input.voltages.0.max', 'input V'],
    ['supply.outputs.2.currentA', 'rails'],
    ['device.inputs', 'rails'],
    ['device.jack.outerMm', 'plug outer mm'],
    ['supply', 'plate'],
    ['nothing', null],
  ])('a fault at %s stands in the column %s', (path, column) => {
    expect(columnAt(path)).toBe(column)
  })
})

describe('GET /api/facts', () => {
  it('lists every fact with its question and how it is found out', async () => {
    const { status, body } = await request(testApp().app).get('/api/facts')
    expect(status).toBe(200)
    expect(body.map(({ key }: { key: string }) => key)).toEqual(facts.map(({ key }) => key))
    for (const one of body) expect(factAnswer.safeParse(one).success).toBe(true)
    // a meter that shows the output is the only way to know what the output gives
    const power = (key: string) => body.find((one: { key: string }) => one.key === key).needsPower
    expect(power('supply.measured.offLoadV')).toBe(true)
    expect(power('supply.plug.polarity')).toBe(false)
  })
})

it('no view names a box of a check by hand', () => {
  const names = boxes.map(({ name }) => name)
  for (const view of ['check/form.pug', 'shelf-form.pug', 'first-power/form.pug']) {
    const text = readFileSync(new URL(`../../views/${view}`, import.meta.url), 'utf8')
    const named = [...text.matchAll(/Field\(form, '(\w+)'/g)].map(([, name = '']) => name)
    expect(named.filter((name) => names.includes(name))).toEqual([])
  }
})

it('every box of a thing stands in one place of its form', () => {
  // a row shows where it holds something
  const values = Object.fromEntries(boxes.map(({ name }) => [name, '1']))
  const form = { values, errors: {}, shown: {}, read: {} }
  for (const part of ['site', 'supply', 'device', 'cord', 'converter'] as const) {
    const { plate, ahead, folds } = factSection(part, form, true)
    const shown = [
      ...(plate ? [plate] : []),
      ...ahead,
      ...folds.flatMap(({ rows, fields }) => [...rows.flatMap((row) => row.fields), ...fields]),
    ].map(({ name }) => name)
    const own = boxes.filter(({ key }) => key.startsWith(`${part}.`)).map(({ name }) => name)
    expect(shown.toSorted()).toEqual(own.toSorted())
  }
})

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import { aroundOf } from '../../server/examine/around.js'
import { inOrder } from '../../server/examine/order.js'
import { countOf, suspectsOf } from '../../server/examine/suspects.js'
import { toldApart } from '../../server/physics/toldApart.js'

const text = readFileSync(join(import.meta.dirname, '../../docs/method-examine.md'), 'utf8')

/** The rows of the example: examination, what its causes count, the rest, D, trouble and place, worth. */
const rows = [
  ...text.matchAll(/^\| `([a-z-]+)` \| ([\d, ]+) \| (\d+) \| ([\d.]+) \| ([\d.]+) · ([\d.]+) \| ([\d.]+) \|$/gm),
].map(([, name = '', told = '', rest = '', apart = '', trouble = '', place = '', worth = '']) => ({
  name,
  told: told.split(',').map(Number),
  rest: Number(rest),
  apart: Number(apart),
  over: Number(trouble) * Number(place),
  worth: Number(worth),
}))

const around = aroundOf(
  prepareCase({
    arrangement: 'built-in',
    site: { country: 'DE' },
    supply: {},
    device: { mains: { technology: 'transformer', protectionClass: 'I', pictureTube: false }, battery: 'none' },
  }),
  null,
)
const proposals = inOrder(suspectsOf(['hum-in-sound'], [], around))

describe('the worked example of the order of examinations', () => {
  it('is found in the document', () => expect(rows.length).toBe(3))

  it('names the examinations in the order in which they are proposed', () =>
    expect(proposals.map(({ examination }) => examination.key)).toEqual(rows.map(({ name }) => name)))

  it.each(rows)('$name comes to what is printed', ({ name, told, rest, apart, over, worth }) => {
    const proposal = proposals.find(({ examination }) => examination.key === name)!
    expect(proposal.tells.map(countOf)).toEqual(told)
    expect(toldApart(told, rest)).toBeCloseTo(apart, 4)
    expect(apart / over).toBeCloseTo(worth, 4)
    expect(proposal.worth).toBeCloseTo(worth, 4)
  })
})

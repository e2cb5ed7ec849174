import { describe, expect, it } from 'vitest'
import { cellsOf, itemOf } from '../../server/bench/shelf/shelfCells.js'
import { checkValues } from '../../server/facts/address.js'
import { type CheckRequest, checkSchema } from '../../server/facts/check.js'
import { checkAddress } from '../../server/web/pages/check/checkAddress.js'
import { readCheckAddress } from '../../server/web/pages/check/form.js'
import { factSection } from '../../server/web/parts/factFields.js'
import { tell } from '../../server/words/tell.js'

/** A fact that is told in its row and in its topic alone; everything else that has to know it is derived. */
const outputs = [{ kind: 'dc' as const, voltageV: 5, currentA: 4, leastA: 0.5 }]
const check: CheckRequest = { site: {}, supply: { outputs }, device: {} }

describe('the least current of an output, told in one row', () => {
  it('is taken as JSON, within its bounds', () => {
    expect(checkSchema.parse(check)).toEqual(check)
    const none = { ...check, supply: { outputs: [{ ...outputs[0], leastA: 0 }] } }
    expect(checkSchema.safeParse(none).success).toBe(false)
  })

  it('stands in the address with the number of its row, and comes back', () => {
    expect(checkValues(check)).toMatchObject({ out1: '5', out1least: '0.5' })
    expect(readCheckAddress(checkAddress(check)).request).toEqual(check)
    expect(tell(readCheckAddress('out1=5&out1least=x').faults)[0]?.message).toMatch(
      /^Least current of output 1 must be/,
    )
  })

  it('stands in the cell of its row on the shelf, and comes back', () => {
    const cells = cellsOf('supply', null, { name: 'Brick', place: null, note: null, supply: check.supply })
    expect(cells.rails).toBe('DC 5 V 4 A least 0.5 A')
    expect(itemOf('supply', cells)).toMatchObject({ item: { supply: { outputs } }, faults: [] })
    expect(itemOf('supply', { ...cells, rails: 'DC 5 V least 500 A' }).item).toMatchObject({
      supply: { outputs: [{ voltageV: 5, leastA: 500 }] },
    })
  })

  it('has its box in every row of outputs: those that hold something, and one more', () => {
    const form = { values: { out1: '5', out2: '12' }, errors: {}, shown: {}, read: {} }
    const rows = factSection('supply', form, true).folds.flatMap((fold) => fold.rows)
    expect(
      rows.flatMap(({ fields }) => fields.filter(({ label }) => label === 'Least current').map(({ name }) => name)),
    ).toEqual([1, 2, 3].map((row) => `out${row}least`))
  })
})

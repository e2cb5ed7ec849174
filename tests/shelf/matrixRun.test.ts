import { expect, it } from 'vitest'
import type { Device, Supply } from '../../server/chain/request.js'
import { runMatrix } from '../../server/shelf/matrixRun.js'

const supplies: Supply[] = [5, 9, 12, 19].map((voltageV) => ({
  input: { voltages: [{ min: 100, max: 240 }] },
  outputs: [{ kind: 'dc', voltageV, currentA: 2 }],
}))
const devices: Device[] = [5, 12, -12].map((voltageV) => ({ inputs: [{ kind: 'dc', voltageV, currentA: 1 }] }))

it('judges a small shelf here as threads judge a large one', { timeout: 60_000 }, async () => {
  const site = { country: 'DE' }
  const small = runMatrix({ site, supplies, devices })
  await small.finished
  expect(small.done()).toBe(supplies.length)
  const many = Array.from({ length: 100 }, () => supplies).flat()
  const large = runMatrix({ site, supplies: many, devices })
  await large.finished
  expect(large.done()).toBe(many.length)
  expect(large.rows.slice(0, supplies.length)).toEqual(small.rows)
  // the cells differ, or nothing was compared
  expect(new Set(small.rows.flatMap((row) => [...(row ?? [])])).size).toBeGreaterThan(1)
})

import { expect, it } from 'vitest'
import { Ledger, lostOf } from './soak/kept.js'
import { percentile } from './soak/report.js'

it('takes the value below which the share lies', () => {
  const tens = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100]
  expect([0.5, 0.9, 0.99, 1].map((share) => percentile(tens, share))).toEqual([50, 90, 100, 100])
})

it('finds a record that is gone, one that was changed and one that is there twice', async () => {
  const ledger = new Ledger()
  ledger.records.set('a', { path: '/api/jobs', name: 'A', version: 1 })
  ledger.records.set('b', { path: '/api/jobs', name: 'B', version: 1 })
  ledger.records.set('c', { path: '/api/jobs', name: 'C', version: 1 })
  const jobs = [
    { id: 'b', name: 'B changed', version: 2 },
    { id: 'c', name: 'C', version: 1 },
    { id: 'd', name: 'C', version: 1 },
  ]
  const lost = await lostOf(ledger, async () => ({
    status: 200,
    text: JSON.stringify({ jobs, supplies: [], devices: [] }),
  }))
  expect(lost).toEqual([
    expect.stringContaining('b is "B changed"'),
    expect.stringContaining('d is there and was never acknowledged'),
    expect.stringContaining('a is gone'),
    expect.stringContaining('"C" is there 2 times'),
  ])
})

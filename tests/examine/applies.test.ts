import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import { applies } from '../../server/examine/applies.js'

const ac = { kind: 'ac' as const, voltageV: 9, currentA: 1 }
const dc = { kind: 'dc' as const, voltageV: 5, currentA: 1 }

describe('rows about supplies with an AC output', () => {
  it.each([
    ['one of AC beside one of DC', { outputs: [dc, ac] }, 'yes'],
    ['none but DC', { outputs: [dc] }, 'no'],
    ['outputs that are not known', {}, 'maybe'],
    ['a switch-mode supply, whatever is said of its outputs', { technology: 'switch-mode' as const }, 'no'],
  ])('are about %s', (_, supply, expected) => {
    expect(applies(['ac-output'], prepareCase({ site: {}, supply, device: {} }))).toBe(expected)
  })
})

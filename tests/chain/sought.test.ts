import { describe, expect, it } from 'vitest'
import { deviceReady } from '../../server/bench/shelf/prepared.js'
import { wantedFor } from '../../server/bench/shelf/wanted.js'
import { prepareSite } from '../../server/chain/case/prepareSite.js'
import { tell } from '../../server/words/tell.js'
import { assess } from '../support/told.js'

const titles = (request: Parameters<typeof assess>[0], topic: string): string[] =>
  assess(request).findings.flatMap((finding) => (finding.topic === topic ? [finding.title] : []))

describe('the supply to look for', () => {
  // a quarter more of what was measured (0.61 A × 1.25 = 0.7625 A), a plate's figure as it is; up to a tenth, from the head
  it.each([
    [0.61, 'measured', '0.8\u00a0A'],
    [0.61, 'plate', '0.7\u00a0A'],
    [1.2, 'measured', '1.5\u00a0A'],
    [2, 'plate', '2\u00a0A'],
  ] as const)('gives, for %d A (%s), %s or more, on the check as on the shelf', (currentA, currentIs, least) => {
    const device = { inputs: [{ kind: 'dc' as const, voltageV: 9, currentA, currentIs }] }
    expect(titles({ arrangement: 'machine-only', site: {}, supply: {}, device }, 'output-current')).toEqual([
      `Look for ${least} or more at 9\u00a0V`,
    ])
    const [wanted] = tell(wantedFor(deviceReady(device), prepareSite({})))
    expect(wanted?.lines).toContain(`Current: ${least} or more`)
  })
})

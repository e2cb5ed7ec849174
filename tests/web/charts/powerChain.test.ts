import { describe, expect, it } from 'vitest'
import { answerCheck } from '../../../server/chain/answer.js'
import type { CheckRequest } from '../../../server/chain/case/request.js'
import { powerChain } from '../../../server/web/charts/powerChain.js'
import { tell } from '../../../server/words/tell.js'

const chainOf = (request: CheckRequest) => tell(powerChain(request, answerCheck(request)))
const empty: CheckRequest = { site: {}, supply: {}, device: {} }

describe('the power chain', () => {
  it('runs from the wall to the machine', () => {
    expect(
      chainOf({ ...empty, converter: { kind: null, outputV: 120, ratedVA: null } }).map(({ name }) => name),
    ).toEqual([
      'Site mains',
      'Socket',
      'Converter',
      'Cord',
      'Inlet',
      'Fuse',
      'Supply',
      'Lead',
      'Plug',
      'Jack',
      'Machine',
    ])
  })

  it('shows the worst finding of a link, and what stands there', () => {
    // 120 V on 230 V is 1.92 times over
    const [source] = chainOf({ ...empty, site: { country: 'DE' }, supply: { label: 'INPUT 120V~ 60Hz' } })
    expect(source).toMatchObject({ key: 'source', what: 'Germany', outcome: 'stop' })
    expect(source?.title).toContain('1.92 times')
  })

  it('says nothing of a link that no topic judged', () => {
    const chain = chainOf(empty)
    expect(chain.find(({ key }) => key === 'fuse')?.outcome).toBeNull()
    expect(chain.find(({ key }) => key === 'lead')?.outcome).toBeNull()
  })
})

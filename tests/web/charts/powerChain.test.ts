import { describe, expect, it } from 'vitest'
import type { ToldCheck, ToldFinding } from '../../../server/chain/finding.js'
import { topics } from '../../../server/chain/index.js'
import { powerChain } from '../../../server/web/charts/powerChain.js'

const finding = (topic: ToldFinding['topic'], outcome: ToldFinding['outcome'], title: string): ToldFinding => ({
  topic,
  outcome,
  title,
  why: '',
  working: [],
  action: null,
  actions: [],
  sources: [],
})

const response = (findings: ToldFinding[]): ToldCheck => ({
  verdict: 'do-not-connect',
  findings,
  readings: { supply: null, device: null },
})

const empty = { site: {}, supply: {}, device: {} }

describe('the power chain', () => {
  it('runs from the wall to the machine', () => {
    expect(
      powerChain({ ...empty, converter: { kind: null, outputV: 120, ratedVA: null } }, response([])).map(
        ({ name }) => name,
      ),
    ).toEqual([
      'Site mains',
      'Socket',
      'Cord',
      'Converter',
      'Inlet',
      'Fuse',
      'Supply',
      'Lead',
      'Plug',
      'Jack',
      'Machine',
    ])
  })

  it('has no converter where none is used or needed', () => {
    expect(powerChain(empty, response([])).map(({ key }) => key)).not.toContain('converter')
    expect(powerChain(empty, response([finding('converter', 'stop', 'needed')])).map(({ key }) => key)).toContain(
      'converter',
    )
  })

  it('shows the worst finding of a link', () => {
    const chain = powerChain(
      empty,
      response([finding('mains-frequency', 'caution', 'b'), finding('mains-voltage', 'stop', 'a')]),
    )
    expect(chain[0]).toMatchObject({ key: 'mains', outcome: 'stop', title: 'a' })
  })

  it('says nothing of a link that no topic judged', () => {
    expect(powerChain(empty, response([])).every(({ outcome }) => outcome === null)).toBe(true)
  })

  it('has a place for every topic', () => {
    for (const { name } of topics)
      expect(powerChain(empty, response([finding(name, 'stop', 'wrong')])).map(({ outcome }) => outcome)).toContain(
        'stop',
      )
  })
})

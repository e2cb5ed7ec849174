import { describe, expect, it } from 'vitest'
import type { Polarity } from '../../server/chain/case/request.js'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

const P = 'centre-positive'
const N = 'centre-negative'
type Maybe = Polarity | null
const of = (printed: Maybe, measured: Maybe, jack: Maybe) =>
  onlyFinding(
    'polarity',
    changed({
      supply: { plug: { polarity: printed }, measured: { polarity: measured } },
      device: { jack: { polarity: jack } },
    }),
  )

describe('polarity', () => {
  it.each<{ printed: Maybe; measured: Maybe; jack: Maybe; is: Outcome }>([
    { printed: P, measured: null, jack: P, is: 'clear' },
    { printed: N, measured: null, jack: N, is: 'clear' },
    { printed: P, measured: null, jack: N, is: 'stop' },
    { printed: N, measured: null, jack: P, is: 'stop' },
    { printed: null, measured: P, jack: P, is: 'clear' },
    { printed: null, measured: N, jack: P, is: 'stop' },
    { printed: P, measured: N, jack: P, is: 'stop' },
    { printed: P, measured: N, jack: N, is: 'stop' },
    { printed: P, measured: P, jack: P, is: 'clear' },
    { printed: P, measured: N, jack: null, is: 'stop' },
    { printed: null, measured: null, jack: P, is: 'unknown' },
    { printed: P, measured: null, jack: null, is: 'unknown' },
    { printed: null, measured: null, jack: null, is: 'unknown' },
  ])('printed $printed, measured $measured, jack $jack: $is', ({ printed, measured, jack, is }) => {
    expect(of(printed, measured, jack).outcome).toBe(is)
  })

  it('says how to measure it: black on the sleeve, red on the centre, minus means centre negative', () => {
    expect(of(null, null, P).action).toMatch(
      /black lead on the sleeve, red lead on the centre.*minus sign means centre negative/,
    )
  })

  it('comes from the plates where the fields leave it open, and are not known where the fields say otherwise', () => {
    const labels = {
      supply: { label: 'OUTPUT 12V DC 2A centre negative', plug: { polarity: null } },
      device: { label: 'DC 12V 1A centre positive', jack: { polarity: null } },
    }
    expect(onlyFinding('polarity', changed(labels)).outcome).toBe('stop')
    expect(
      onlyFinding('polarity', changed({ ...labels, supply: { ...labels.supply, plug: { polarity: P } } })).outcome,
    ).toBe('unknown')
  })

  const minus12 = { kind: 'dc' as const, voltageV: -12, currentA: 2 }
  const plus12 = { ...minus12, voltageV: 12 }
  it.each<{ name: string; outputs: (typeof plus12)[]; measured: { offLoadV?: number; loadedV?: number }; is: Outcome }>(
    [
      { name: 'an only output of +12 V, off load', outputs: [plus12], measured: { offLoadV: -12.3 }, is: 'unknown' },
      { name: 'an only output of +12 V, loaded', outputs: [plus12], measured: { loadedV: -11.9 }, is: 'unknown' },
      { name: 'an output that is negative itself', outputs: [minus12], measured: { offLoadV: -12.3 }, is: 'clear' },
      { name: 'one of two outputs', outputs: [plus12, minus12], measured: { offLoadV: -12.3 }, is: 'clear' },
    ],
  )('a minus sign on the meter at $name: $is', ({ outputs, measured, is }) => {
    const inputs = outputs.map((output) => ({ ...output, currentA: 1 }))
    expect(onlyFinding('polarity', changed({ supply: { outputs, measured }, device: { inputs } })).outcome).toBe(is)
  })

  it('is not spoken of for ac, whose plugs have sizes all the same', () => {
    const ac = changed({
      supply: { outputs: [{ kind: 'ac', voltageV: 9, currentA: 1 }] },
      device: { inputs: [{ kind: 'ac', voltageV: 9, currentA: 1 }] },
    })
    expect(findingsOn('polarity', ac)).toEqual([])
    expect(findingsOn('dc-plug', ac).map(({ outcome }) => outcome)).toEqual(['clear'])
  })
})

import { describe, expect, it } from 'vitest'
import { acrossSystems } from '../../server/chain/acrossSystems.js'
import type { Mains } from '../../server/chain/case/situation.js'
import { caution, clear, type Judgement, stop } from '../../server/chain/judgement.js'
import { tell } from '../../server/words/tell.js'

const system = (voltageV: number): Mains => ({ voltageV, frequencyHz: 60, minV: null, maxV: null, sources: [] })
const systems = [system(127), system(220)]
const said = (title: string) => () => ({ title, why: 'Why.', working: [], action: null, sources: [] })
const outcomes = (each: Judgement[][]): string[] => acrossSystems(systems, each).map(({ outcome }) => outcome)

describe('one topic on the mains systems that may be met', () => {
  it.each<[name: string, each: Judgement[][], are: string[]]>([
    ['all clear', [[clear(said('a'))], [clear(said('b'))]], ['clear']],
    ['all stop', [[stop(said('a'))], [stop(said('b'))]], ['stop']],
    ['a stop on one of them', [[clear(said('a'))], [stop(said('b'))]], ['unknown']],
    ['a caution on one of them', [[caution(said('a'))], [clear(said('b'))]], ['unknown']],
    ['a clear on one and nothing to judge on the other', [[clear(said('a'))], []], ['unknown']],
    ['a stop on one and nothing to judge on the other', [[], [stop(said('b'))]], ['unknown']],
    [
      'a second judgement on one only',
      [[clear(said('a')), caution(said('c'))], [clear(said('b'))]],
      ['clear', 'unknown'],
    ],
    ['nothing to judge on any', [[], []], []],
  ])('%s', (_name, each, are) => {
    expect(outcomes(each)).toEqual(are)
  })

  it('names the system on which there is nothing to judge', () => {
    const [judged] = acrossSystems(systems, [[clear(said('Fits'))], []])
    expect(tell(judged?.say().working)).toEqual([
      expect.stringMatching(/^127.V 60.Hz: clear: Fits$/),
      expect.stringMatching(/^220.V 60.Hz: nothing to judge$/),
    ])
  })
})

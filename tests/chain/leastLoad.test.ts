import { describe, expect, it } from 'vitest'
import { changed, findingsOn, outcomesOn } from './cases.js'

type Row = [voltageV: number, currentA: number | null, leastA?: number]

const on = (outputs: Row[], inputs: Row[]) =>
  changed({
    supply: {
      outputs: outputs.map(([voltageV, currentA, leastA]) => ({ kind: 'dc' as const, voltageV, currentA, leastA })),
    },
    device: { inputs: inputs.map(([voltageV, currentA]) => ({ kind: 'dc' as const, voltageV, currentA })) },
  })

describe('the least load of an output', () => {
  it.each<{ name: string; outputs: Row[]; inputs: Row[]; is: string[] }>([
    { name: 'less is drawn than it needs', outputs: [[5, 4, 0.5]], inputs: [[5, 0.3]], is: ['caution', 'clear'] },
    { name: 'just what it needs is drawn', outputs: [[5, 4, 0.5]], inputs: [[5, 0.5]], is: ['clear'] },
    { name: 'it is not known to have one', outputs: [[5, 4]], inputs: [[5, 0.3]], is: ['clear'] },
    { name: 'what is drawn is not known', outputs: [[5, 4, 0.5]], inputs: [[5, null]], is: ['unknown'] },
    {
      name: 'another output has one, and nothing is drawn of it',
      outputs: [
        [5, 4, 0.5],
        [12, 2],
      ],
      inputs: [[12, 1]],
      is: ['caution', 'clear'],
    },
    {
      name: 'two inputs of the machine share the output and draw enough together',
      outputs: [[5, 4, 0.5]],
      inputs: [
        [5, 0.3],
        [5, 0.3],
      ],
      is: ['clear', 'clear'],
    },
  ])('$name: $is', ({ outputs, inputs, is }) => {
    expect(outcomesOn('output-current', on(outputs, inputs))).toEqual(is)
  })

  it('says what resistor draws the rest, with the numbers', () => {
    const [finding] = findingsOn('output-current', on([[12, 4, 0.5]], [[12, 0.2]]))
    const text = JSON.stringify(finding).replace(/\u00a0/g, ' ')
    // 0.5 A − 0.2 A = 0.3 A; 12 V / 0.3 A = 40 Ω; 12 V × 0.3 A = 3.6 W
    expect(text).toContain('500 mA − 200 mA = 300 mA')
    expect(text).toContain('40 Ω or less')
    expect(text).toContain('3.6 W')
  })

  it('never makes a stop better', () => {
    expect(outcomesOn('output-current', on([[12, 0.2, 0.1]], [[12, 1]]))).toEqual(['stop'])
  })
})

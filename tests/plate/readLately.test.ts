import { describe, expect, it } from 'vitest'
import { readLately } from '../../server/plate/readLately.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { plates } from '../bench/speed/situations.js'

describe('plates that came lately', () => {
  it('read as they do for the first time', () => {
    expect(plates.length).toBeGreaterThan(50)
    for (const round of [1, 2])
      for (const text of plates)
        for (const of of ['supply', 'device'] as const)
          expect(readLately(text, of), `${text}, ${of}, round ${round}`).toEqual(readPlate(text, of))
  })

  it('are told apart by whose plate it is', () => {
    const text = '12V DC 1A'
    expect(readLately(text, 'supply').takes).toEqual([])
    expect(readLately(text, 'device').takes).toHaveLength(1)
    expect(readLately(text, 'supply').outputs).toHaveLength(1)
  })

  it('are one reading that nobody can change, until many others came', () => {
    const text = 'INPUT 230V~ 50Hz OUTPUT 9V DC 1A'
    const first = readLately(text, 'supply')
    expect(readLately(text, 'supply')).toBe(first)
    expect(() => first.outputs.push(...first.outputs)).toThrow(TypeError)
    expect(() => Object.assign(first.outputs[0] ?? {}, { currentA: 1 })).toThrow(TypeError)
    for (let other = 0; other < 250; other += 1) readLately(`${text} ${other}`, 'supply')
    expect(readLately(text, 'supply')).not.toBe(first)
    expect(readLately(text, 'supply')).toEqual(first)
  })

  it('are kept while they are asked for, and not at all where they are long', () => {
    const text = 'OUTPUT 5V DC 1A'
    const first = readLately(text, 'supply')
    for (let other = 0; other < 400; other += 1) {
      readLately(`${text} other ${other}`, 'supply')
      expect(readLately(text, 'supply')).toBe(first)
    }
    const long = `OUTPUT 5V DC 1A ${'x '.repeat(1500)}`
    expect(readLately(long, 'supply')).not.toBe(readLately(long, 'supply'))
  })
})

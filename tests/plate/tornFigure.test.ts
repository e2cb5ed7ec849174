import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

// texts made up for this rule: a mark that joins no figures, or a hole, stands where print was not recognised
describe('figures that are the rest of others', () => {
  it.each([
    'INPUT 115|230V~',
    'INPUT 115·230V~',
    'INPUT 115; 230V~',
    'INPUT 115:230V~',
    'INPUT 115\n230V~ 50Hz',
    '115+230V~',
    'INPUT [..]230V~',
    '1[..]230V~',
    'INPUT …230V~',
  ])('%s: no input voltage is read', (text) => {
    expect(readPlate(text).input?.voltages ?? []).toEqual([])
  })

  it.each(['12V⎓ 0·3A', '12V⎓ 0:3A', '12V⎓ 0|3A', '12V⎓ [..]3A', '12V⎓ (?)3A', '12V⎓ #.5A'])(
    '%s: no current is read',
    (text) => {
      expect(readPlate(text).outputs.map(({ voltageV, currentA }) => [voltageV, currentA])).toEqual([[12, null]])
    },
  )

  it.each(['7·5V 1A', '19|12V 2A', '[..]12V 1A', '(illegible)12V', '...12V'])('%s: no output is read', (text) => {
    expect(readPlate(text).outputs).toEqual([])
  })

  it.each([
    ['OUTPUT......12V 1A', [[12, 1]]],
    [
      'OUTPUT 1: 5V 2A OUTPUT 2: 12V 1A',
      [
        [5, 2],
        [12, 1],
      ],
    ],
    [
      '5V:3A 12V:1A',
      [
        [5, 3],
        [12, 1],
      ],
    ],
    [
      'OUTPUT 12+12V 1A',
      [
        [12, 1],
        [12, 1],
      ],
    ],
    ['[OUTPUT]12V 1A', [[12, 1]]],
    ['12 V, 1.5 A', [[12, 1.5]]],
  ])('%s: whole figures are read', (text, outputs) => {
    expect(readPlate(text).outputs.map(({ voltageV, currentA }) => [voltageV, currentA])).toEqual(outputs)
  })
})

describe('a sign on either side of one place', () => {
  it.each(['+ CENTER -', '- CENTER +', '+ TIP -'])('%s tells no polarity', (text) => {
    expect(readPlate(`OUTPUT 12V DC 1A ${text}`).polarity).toBeNull()
  })

  it.each(['CENTER +', 'TIP + SLEEVE -', 'SLEEVE - TIP +'])('%s is centre positive', (text) => {
    expect(readPlate(`OUTPUT 12V DC 1A ${text}`).polarity).toBe('centre-positive')
  })
})

describe('a protection class that is denied', () => {
  it.each(['NOT DOUBLE INSULATED', 'NO CLASS II', 'NICHT SCHUTZISOLIERT'])('%s is none', (text) => {
    expect(readPlate(text).protectionClass).toBeNull()
  })
})

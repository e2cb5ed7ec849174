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

// from the head
describe('a number that is a name', () => {
  it.each([
    ['OUTPUT 1: 5V 2A; OUTPUT 2: 12V 1A', [5, 12]],
    ['V1 +5V 8A V2 +24V 3A AC IN 90-264V', [5, 24]],
    ['U1: 230V~ U2: OUTPUT 12V= 1A', [12]],
  ])('leaves the figures behind it certain: %s', (text, volts) => {
    const { outputs, unsure } = readPlate(text, 'supply')
    expect(outputs.map(({ voltageV }) => voltageV)).toEqual(volts)
    expect(unsure).toEqual([])
  })

  it.each(['OUTPUT 7 1 2V 1A', 'OUTPUT 12V 1A 1 5V 1A', 'OUTPUT 1| 2V DC 1A'])('no name: %s', (text) => {
    const { outputs, unsure } = readPlate(text, 'supply')
    expect(
      outputs.filter((_, at) => !unsure.includes(`outputs.${at}.voltageV`)).map(({ voltageV }) => voltageV),
    ).toEqual([])
  })

  it('a tolerance leaves the figure behind it certain', () => {
    const { takes, unsure } = readPlate('DC IN 13.8V ± 10% 2.5A', 'device')
    expect([takes[0]?.currentA, unsure]).toEqual([2.5, []])
  })
})

describe('a unit that stands before its figures', () => {
  it.each([
    ['VOLT 220 50-60 HZ', [220], [50, 60]],
    ['VOLT 110-220 ~ 50 HZ', [110, 220], [50]],
    ['VOLT 125-160-220 ~ 50-60 HZ WATT 55', [125, 160, 220], [50, 60]],
    ['VOLTS 115 CYCLES 60 AMPS 1.5', [115], [60]],
    ['VOLTS 115/230 HZ 50/60 AMPS 2/1', [115, 230], [50, 60]],
    ['V 220 ~ Hz 50 W 60', [220], [50]],
    ['Hz 50 V 127/220 W 40', [127, 220], [50]],
    ['HZ: 50-60 V: 115 A: 2', [115], [50, 60]],
    ['PHASE 1 VOLTS 115 CYCLES 60 WATTS 350', [115], [60]],
  ])('ends with their list: %s', (text, volts, cycles) => {
    const { input, takes } = readPlate(text, 'device')
    expect(input?.voltages.map(({ min }) => min)).toEqual(volts)
    expect(input?.frequenciesHz).toEqual(cycles)
    expect(takes).toEqual([])
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

describe('a list of which one member has a letter in it', () => {
  it.each([
    ['INPUT 11S/230V~ 50Hz', ['input.voltages']],
    ['INPUT 100-240V~ 5S/60Hz', ['input.frequenciesHz']],
    ['MODEL AB11S-230 INPUT 230V~ 50Hz', []],
    ['MOD. 57-12-800A\nINPUT AC 120V 60HZ', []],
    ['Nr. 4711\nINPUT AC 120V 60HZ', []],
  ])('leaves the others unsure: %s', (text, doubted) => {
    expect(readPlate(text).unsure).toEqual(doubted)
  })
})

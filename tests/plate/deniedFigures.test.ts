import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

// from the head: plates whose figures cannot all be true
describe('figures that other figures of a plate deny', () => {
  it.each([
    ['INPUT 230V~ 50Hz 14VA OUTPUT 12V⎓ 3A', ['input.powerVA', 'outputs.0.currentA']],
    ['INPUT 230V~ 50Hz 14VA OUTPUT 12V⎓ 3A 36W', ['input.powerVA', 'outputs.0.currentA', 'outputs.0.powerW']],
    ['INPUT 230V~ 50Hz 60mA OUTPUT 12V⎓ 3A', ['input.currentA', 'outputs.0.currentA']],
  ])('are unsure on a supply: %s', (text, fields) => {
    expect(readPlate(text).unsure.toSorted()).toEqual(fields.toSorted())
  })

  it.each([
    // a wide range's current belongs to its lowest voltage
    ['INPUT 100-240V~ 50/60Hz 0.5A OUTPUT 12V⎓ 3A 36W'],
    ['INPUT 230V~ 50Hz 14VA OUTPUT 12V⎓ 1A'],
  ])('are none on %s', (text) => {
    expect(readPlate(text).unsure).toEqual([])
  })

  it.each([
    ['DC 12V 2A 48W'],
    ['DC 12V 1A x 3'],
    ['DC 12V 3 x 1A'],
    ['DC 12V 500 mA STANDBY'],
    ['DC 12V 300mA (RUHESTROM)'],
  ])('are unsure as the demand of a machine: %s', (text) => {
    expect(readPlate(text, 'device').unsure).toContain('takes.0.currentA')
  })

  it.each([['DC 12V 500mA STANDBY 2A OPERATING'], ['DC 12V 2A 24W'], ['DC 12V 2A 18W']])(
    'are none where the largest is read: %s',
    (text) => {
      expect(readPlate(text, 'device').unsure).toEqual([])
    },
  )
})

describe('figures beside torn ones', () => {
  it.each([
    // one member of a list was read, the other not
    ['INPUT 127x220V~ 50Hz', 'input.voltages'],
    ['INPUT 1 00- 240 VAC 50Hz', 'input.voltages'],
  ])('are unsure: %s', (text, field) => {
    const { unsure, input } = readPlate(text)
    expect(input === null || input.voltages.length === 0 || unsure.includes(field)).toBe(true)
  })
})

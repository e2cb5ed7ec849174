import { beforeAll, describe, expect, it } from 'vitest'
import { readMeter } from '../../server/web/meter.js'
import { judgeScript } from '../../server/web/pages/bench/judgeScript.js'
import { tell } from '../../server/words/tell.js'

describe('what a meter showed', () => {
  let onPhone: typeof readMeter
  beforeAll(async () => {
    onPhone = new Function(`${await judgeScript()}; return judge.readMeter`)()
  }, 60_000)

  it.each([
    ['12.5', 'V', null, 12.5],
    ['12,5', 'V', null, 12.5],
    ['-0.3', 'V', null, -0.3],
    ['900', 'V', 'mV', 0.9],
    ['86', 'A', 'mA', 0.086],
    ['86 mA', 'A', null, 0.086],
    ['86 mA', 'A', 'mA', 0.086],
    ['350m', 'A', null, 0.35],
    ['0', 'A', null, 0],
    ['4.7k', 'Ω', null, 4700],
    ['4,7k', 'Ω', null, 4700],
    ['4k7', 'Ω', null, 4700],
    ['4K7', 'Ω', null, 4700],
    ['2k200', 'Ω', null, 2200],
    ['4k7 ohm', 'Ω', null, 4700],
    ['2R2', 'Ω', null, 2.2],
    ['0R22', 'Ω', null, 0.22],
    ['R47', 'Ω', null, 0.47],
    ['100R', 'Ω', null, 100],
    ['4n7', 'F', null, 4.7e-9],
    ['100n', 'F', null, 1e-7],
    ['−12', 'V', null, -12],
    ['-12,05', 'V', 'V', -12.05],
    ['+5', 'V', null, 5],
    ['.5', 'V', null, 0.5],
    ['1 500', 'V', 'mV', 1.5],
    ['500 µA', 'A', null, 0.0005],
    ['500uA', 'A', null, 0.0005],
    ['1M', 'Ω', null, 1e6],
    ['1M5', 'Ω', null, 1.5e6],
    ['2', 'Ω', 'MΩ', 2e6],
    ['4V7', 'V', null, 4.7],
    ['5.5', 'mm', null, 5.5],
    ['OL', 'Ω', null, null],
    ['O.L', 'Ω', 'MΩ', null],
    ['0L', 'Ω', null, null],
    ['.OL', 'Ω', null, null],
    ['OL MΩ', 'Ω', null, null],
    ['∞', 'Ω', null, null],
    ['over', 'V', null, null],
    ['-OL', 'V', 'V', null],
    ['12v', 'V', 'V', 12],
    ['12 volts', 'V', 'V', 12],
    ['4k7', 'Ω', 'Ω', 4700],
    ['4k7', 'Ω', 'kΩ', 4700],
    ['10M', 'Ω', 'MΩ', 1e7],
    ['1,2', 'A', 'mA', 0.0012],
    ['-350', 'V', 'mV', -0.35],
  ])('“%s” at a step in %s, %s chosen: %s', (typed, unit, chosen, value) => {
    const read = readMeter(typed, unit, chosen)
    expect(onPhone(typed, unit, chosen)).toEqual(read)
    if (value === null) expect(read).toEqual({ value: null })
    else expect('value' in read ? read.value : tell(read.message)).toBeCloseTo(value, 9)
  })

  it.each([
    ['86', 'A', null, /of which unit\?.*86 mA, 86 A/],
    ['10', 'Ω', null, /of which unit\?.*10 kΩ/],
    ['86 mA', 'A', 'A', /write one of them/],
    ['10M', 'Ω', 'kΩ', /write one of them/],
    ['4k7', 'Ω', 'MΩ', /write one of them/],
    ['0.3k', 'Ω', 'Ω', /write one of them/],
    ['350 MA', 'A', null, /as in 350 mA/],
    ['350M', 'V', null, /as in 350 mV/],
    ['4R7', 'V', null, /one number in V/],
    ['100n', 'Ω', null, /less than any meter shows of ohms/],
    ['4u7', 'Ω', null, /less than any meter shows of ohms/],
    ['0.35 A', 'A', 'mA', /write one of them/],
    ['1.500', 'V', null, /can be read two ways/],
    ['1e3', 'V', null, /one number in V/],
    ['12-15', 'V', null, /one number in V/],
    ['<0.1', 'Ω', 'Ω', /must be/],
    ['R', 'Ω', null, /must be/],
    ['1,500', 'V', null, /can be read two ways/],
    ['12 A', 'V', null, /one number in V/],
    ['', 'V', 'V', /Enter the value read/],
    ['twelve', 'V', null, /must be/],
  ])('“%s” at a step in %s, %s chosen, is asked about', (typed, unit, chosen, message) => {
    const read = readMeter(typed, unit, chosen)
    expect('message' in onPhone(typed, unit, chosen)).toBe('message' in read)
    expect('message' in read ? tell(read.message).replaceAll('\u00a0', ' ') : read.value).toMatch(message)
  })
})

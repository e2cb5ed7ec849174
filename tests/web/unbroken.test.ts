import { describe, expect, it } from 'vitest'
import { unbroken } from '../../server/web/parts/unbroken.js'

describe('a number and its unit in hand-written text', () => {
  it.each([
    ['carries 120 V in one place', 'carries 120\u00a0V in one place'],
    ['pins of 4.8 mm, 0.75 mm² and 50 Hz', 'pins of 4.8\u00a0mm, 0.75\u00a0mm² and 50\u00a0Hz'],
    ['10 kΩ, 4 µA, 30 min, 25 °C, 5 %', '10\u00a0kΩ, 4\u00a0µA, 30\u00a0min, 25\u00a0°C, 5\u00a0%'],
  ])('%s stays on one line', (text, kept) => {
    expect(unbroken(text)).toBe(kept)
  })

  it('leaves other words after a number alone', () => {
    expect(unbroken('2 Volts, 3 minutes, IEC 60320 C14, 16 May, 2 more')).toBe(
      '2 Volts, 3 minutes, IEC 60320 C14, 16 May, 2 more',
    )
  })
})

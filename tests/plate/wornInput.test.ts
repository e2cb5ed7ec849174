import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

describe('an input voltage with a worn digit', () => {
  it.each([
    { text: 'INPUT 1?0-120V / 200-240V~ 50Hz 1A OUTPUT 5V DC 1A', unread: '200-240V' },
    { text: 'AC IN 115V~ 1A or 2?0V~ 0.5A OUT 9V DC 1A', unread: '115V' },
    { text: '1?0V~ 60Hz 230V~ 50Hz 0.5A OUT 12V DC 1A', unread: '230V' },
  ])('leaves every input voltage unread, lest a selector look like one voltage: $text', ({ text, unread }) => {
    const reading = readPlate(text)
    expect(reading.input?.voltages).toEqual([])
    expect(reading.unread.join(' ')).toContain(unread)
    expect(reading.outputs).toHaveLength(1)
  })

  it('does not draw the rail below it into the input', () => {
    const reading = readPlate('INPUT 1?0V~ 60Hz\n+5V 2A')
    expect(reading.input?.voltages).toEqual([])
    expect(reading.input?.currentA).toBeNull()
    expect(reading.outputs).toMatchObject([{ voltageV: 5, currentA: 2 }])
  })
})

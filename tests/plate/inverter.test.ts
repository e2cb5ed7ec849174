import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

describe('the plate of an inverter', () => {
  // from the head: its low direct voltage goes in, its mains voltage comes out
  it('takes its low voltage and gives the mains, where no word says which is which', () => {
    const { input, outputs } = readPlate('INVERTER 12V DC 230V AC 300W', 'supply')
    expect(input?.voltages).toEqual([{ min: 12, max: 12 }])
    expect(outputs.map(({ voltageV }) => voltageV)).toEqual([230])
  })
})

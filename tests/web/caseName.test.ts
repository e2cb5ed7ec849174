import { describe, expect, it } from 'vitest'
import { caseName } from '../../server/web/parts/caseName.js'

const named = (device: string | null, supply: string | null = null) =>
  caseName({ device: { label: device }, supply: { label: supply } })

describe('what a check is called', () => {
  it('is the thing the machine’s plate names, without its ratings and without shouting', () => {
    expect(named('PORTABLE TAPE RECORDER\nPOWER IN 12V DC 1.2A')).toBe('Portable tape recorder')
    expect(named('TAPE RECORDER 12V DC 1.2A')).toBe('Tape recorder')
    expect(named('Label printer, 9 V')).toBe('Label printer')
    expect(named('INPUT 12V DC\nDATA TERMINAL')).toBe('Data terminal')
  })

  it('keeps a line with a type name as it stands', () => {
    expect(named('DATA TERMINAL DT-20')).toBe('DATA TERMINAL DT-20')
  })

  it('is that of the supply where the machine’s plate names nothing', () => {
    expect(named('POWER IN: 12V DC', 'AC ADAPTOR\nINPUT 120V')).toBe('AC adaptor')
    expect(named(null, 'INPUT 100-240V~ 50/60Hz 0.8A')).toBeNull()
    // what was read as a rating names nothing
    expect(named(null, 'INPUT 100-240V~ 50/60Hz 0.8A\nOUTPUT 12V DC 2A\nCLASS II')).toBeNull()
  })
})

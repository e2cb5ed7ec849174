import { describe, expect, it } from 'vitest'
import { changed, onlyFinding } from './cases.js'

const by = (label: string, selectorV: number | null = null) =>
  onlyFinding(
    'mains-voltage',
    changed({
      site: { country: 'DE' },
      supply: { label, input: selectorV === null ? null : { selectorV } },
    }),
  ).outcome

// on 230 V; plates written for this list
describe('a selector that only the words of a plate speak of', () => {
  it.each([
    'INPUT 230V~ 50Hz OUTPUT 12V⎓2A VOLTAGE SELECTOR 115/230',
    'INPUT 220-240V~ 50Hz OUTPUT 12V⎓2A Umschalter 110V/220V',
    'INPUT 220-240V~ 50Hz OUTPUT 12V⎓2A SWITCH 110/220',
    'INPUT 230V~ 50Hz OUTPUT 12V⎓2A SET SELECTOR BEFORE USE',
    'INPUT 100-240V~ OUTPUT 12V⎓2A selector set to 115',
    'INPUT 220-240V~ 50Hz OUTPUT 12V⎓2A or 110-120V~',
  ])('%s: unknown until it is entered where it stands', (label) => {
    expect(by(label)).toBe('unknown')
  })

  it('decides where its place is entered', () => {
    const label = 'INPUT 230V~ 50Hz OUTPUT 12V⎓2A VOLTAGE SELECTOR 115/230'
    expect(by(label, 230)).toBe('clear')
    expect(by(label, 115)).toBe('stop')
  })

  it.each([
    'INPUT 230V~ 50Hz OUTPUT 12V⎓2A',
    'INPUT 100-240V~ OUTPUT 12V⎓2A NO VOLTAGE SELECTOR',
    'INPUT 230V~ 50Hz OUTPUT 3/4.5/6/9/12V⎓1A VOLTAGE SELECTOR',
  ])('%s: clear', (label) => {
    expect(by(label)).toBe('clear')
  })
})

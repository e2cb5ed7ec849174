import { describe, expect, it } from 'vitest'
import { printedSelector } from '../../server/plate/printedSelector.js'

// wordings and positions written for this list
describe('a voltage selector that a plate speaks of', () => {
  it.each([
    ['INPUT 230V~ VOLTAGE SELECTOR 115/230', [115, 230]],
    ['INPUT 230V~ Umschalter 110V/220V', [110, 220]],
    ['Вход 220В переключатель 127/220', [127, 220]],
    ['输入 220V 电压转换 110V/220V', [110, 220]],
    ['SWITCH: 110V or 220V', [110, 220]],
    ['INPUT 115/230V SWITCH', [115, 230]],
    ['selector set to 115', [115]],
    ['Spannungswähler auf 220V', [220]],
    ['LINE SELECTOR 115-230', [115, 230]],
    ['SET SELECTOR BEFORE USE', []],
    ['sélecteur de tension', []],
    ['電圧切替', []],
  ] as const)('%s', (label, volts) => {
    expect(printedSelector(label)).toEqual(volts.map((volt) => ({ min: volt, max: volt })))
  })

  it('reads a range at a position as one', () => {
    expect(printedSelector('VOLTAGE SELECTOR 110-120V / 220-240V')).toEqual([
      { min: 110, max: 120 },
      { min: 220, max: 240 },
    ])
  })

  it.each([
    'INPUT 100-240V~ OUTPUT 12V 2A',
    'NO VOLTAGE SELECTOR',
    'ohne Spannungswähler',
    'AUTO VOLTAGE SELECTION 115/230V',
    'SWITCHING POWER SUPPLY INPUT 100-240V',
    'NETWORK SWITCH INPUT 100-240V',
    'VOLTAGE SELECTOR 3/4.5/6/9/12V',
    'OUTPUT VOLTAGE SELECTOR',
    'SCHALTER 250V 4A',
    'ON/OFF SWITCH 230V',
  ])('none: %s', (label) => {
    expect(printedSelector(label)).toBeNull()
  })
})

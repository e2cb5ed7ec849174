import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { assess } from '../support/told.js'

/** Mains plates of machines with their supply inside: what a person reads on each, and what it comes to on 230 V 50 Hz, from the head. */
const plates: Record<string, string>[] = parse(readFileSync(new URL('./builtInPlates.csv', import.meta.url)), {
  columns: true,
})

const numbers = (cell = ''): number[] => (cell.match(/[\d.]+/g) ?? []).map(Number)
const sorted = (values: readonly number[]): number[] => values.toSorted((one, other) => one - other)

/** What a plate was read as, in the words of the list; '' where it was left unread. */
function readAs(text: string): Record<'volts' | 'hz' | 'amps' | 'power' | 'fuse' | 'class', string> {
  const { readings } = assess({ arrangement: 'built-in', site: {}, supply: {}, device: { label: text } })
  const plate = readings.device
  const input = plate?.input
  return {
    volts: (input?.voltages ?? []).map(({ min, max }) => (min === max ? `${min}` : `${min}-${max}`)).join('|'),
    hz: sorted(input?.frequenciesHz ?? []).join('/'),
    amps: input?.currentA == null ? '' : String(input.currentA),
    power: input?.powerVA != null ? `${input.powerVA} VA` : input?.powerW != null ? `${input.powerW} W` : '',
    fuse: plate?.fuse ?? '',
    class: plate?.protectionClass ?? '',
  }
}

const wanted = (cells: Record<string, string>, field: string): string => {
  const cell = cells[field] ?? ''
  if (field === 'hz') return sorted([...new Set(numbers(cell))]).join('/')
  if (field === 'amps') return cell === '' ? '' : String(Math.max(...numbers(cell)))
  return cell
}

describe('mains plates of machines with their supply inside', () => {
  it('has every row of the list', () => {
    expect(plates.length).toBe(33)
  })

  it('reads no figure wrongly, and leaves less than a fifth of what is printed unread', () => {
    let printed = 0
    let unread = 0
    for (const cells of plates) {
      const read = readAs((cells.text ?? '').replaceAll('\\n', '\n'))
      for (const [field, value] of Object.entries(read)) {
        const expected = wanted(cells, field)
        if (expected !== '') printed += 1
        if (value === '') unread += expected === '' ? 0 : 1
        // of two builds on one line the first may be read alone
        else if (!(cells.id === '37' && expected.startsWith(value)) && !(cells.id === '37' && field === 'hz'))
          expect(value, `${cells.id} ${cells.machine}: ${field}`).toBe(expected)
      }
    }
    expect(unread / printed).toBeLessThan(1 / 5)
  })

  it.each(plates)('$id $machine: on 230 V 50 Hz as it should be', (cells) => {
    const { findings } = assess({
      arrangement: 'built-in',
      site: { country: 'DE' },
      supply: {},
      device: { label: (cells.text ?? '').replaceAll('\\n', '\n') },
    })
    const outcomes = findings.filter(({ topic }) => topic === 'mains-voltage').map(({ outcome }) => outcome)
    expect(cells.on_230V_50Hz?.split(' ')).toContain(outcomes[0])
    // its plate alone never settles cord, inlet and earth
    expect(findings.map(({ outcome }) => outcome)).toContain('unknown')
  })
})

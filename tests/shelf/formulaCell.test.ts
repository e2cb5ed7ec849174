import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { neutralised, restored } from '../../server/bench/shelf/formulaCell.js'

describe('a cell that a spreadsheet would run', () => {
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '\n=1', '＝1', "'=1", "''=1"])(
    '%j gets an apostrophe',
    (text) => {
      expect(neutralised(text)).toBe(`'${text}`)
    },
  )

  it.each(['12 V', "'tis grey", 'a=b', ' =1', ''])('%j stays as it is', (text) => {
    expect(neutralised(text)).toBe(text)
    expect(restored(text)).toBe(text)
  })

  it('comes back unchanged, whatever it is', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom("'", '=', '+', '-', '@', '\t', '\r', '\n', 'a', '＝') }),
    )
    fc.assert(fc.property(text, (value) => restored(neutralised(value)) === value))
  })

  it('never begins with what is run, whatever the text', () => {
    const text = fc.string({ unit: fc.constantFrom("'", '=', '+', '-', '@', '\t', '\r', '\n', 'a') })
    fc.assert(fc.property(text, (value) => !/^[=+\-@\t\r\n]/.test(neutralised(value))))
  })
})

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const folder = join(import.meta.dirname, '../../server/physics')

/** Numbers as text, and the checks of ranges themselves: no calculations. */
const others = ['quantity.ts', 'range.ts']

interface Calculation {
  name: string
  doc: string
  body: string
}

/** Every exported function of a file with the doc comment that stands right before it. */
function calculationsOf(file: string): Calculation[] {
  const text = readFileSync(join(folder, file), 'utf8')
  const starts = [...text.matchAll(/(\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export (?:function|const) (\w+)/g)]
  return starts.map((start, at) => ({
    name: `${file}: ${start[2]}`,
    doc: start[1] ?? '',
    body: text.slice(start.index + start[0].length, starts[at + 1]?.index),
  }))
}

const calculations = readdirSync(folder)
  .filter((file) => !others.includes(file))
  .flatMap(calculationsOf)

describe('the doc comments of server/physics', () => {
  it('are found', () => {
    expect(calculations.length).toBeGreaterThan(50)
  })

  it.each(calculations)('$name names its source', ({ doc }) => {
    expect(doc).toContain('@source')
  })

  it.each(calculations.filter(({ body }) => /\b(?:mustBe|mustNotBe)\w+\(|new RangeError/.test(body)))(
    '$name says what it refuses',
    ({ doc }) => {
      expect(doc).toContain('@throws')
    },
  )
})

import { join } from 'node:path'
import pug from 'pug'
import { describe, expect, it } from 'vitest'
import { outcomes } from '../../server/chain/finding.js'
import { outcomeWords } from '../../server/web/parts/verdictWords.js'

const views = join(import.meta.dirname, '../../views')

const render = (call: string, locals: Record<string, unknown> = {}): string =>
  pug.render(`include mixins\n${call}`, {
    filename: join(views, 'under-test.pug'),
    doctype: 'html',
    outcomeWords,
    ...locals,
  })

const form = {
  values: { amps: '1,500', mode: 'b', odd: 'x"y' },
  errors: { amps: 'Write 1500 or 1.5.' },
  shown: { amps: '1.5\u00a0A' },
  read: { amps: '2\u00a0A' },
}

describe('the parts every page is made of', { timeout: 30_000 }, () => {
  it('tie hint, error and plate reading to their field, and keep what was typed', () => {
    const html = render(`+numberField(form, 'amps', 'Current', { unit: 'A', hint: 'At full load.', reads: true })`, {
      form,
    })
    expect(html).toContain('<label for="amps">Current (A)</label>')
    expect(html).toMatch(
      /<input[^>]*value="1,500"[^>]*inputmode="decimal"[^>]*aria-invalid="true" aria-describedby="amps-hint amps-error amps-read"/,
    )
    for (const id of ['amps-hint', 'amps-error', 'amps-read']) expect(html).toContain(`id="${id}"`)
    expect(html).toContain('Plate: 2\u00a0A')
    expect(html).not.toMatch(/type="number"|placeholder|maxlength|required/)
  })

  it('offer “I do not know” in every list and keep a value that is not on it', () => {
    const choices = [{ value: 'a', label: 'A' }]
    const html = render(`+selectField(form, 'odd', 'Odd', choices)`, { form, choices })
    expect(html).toContain('<option value="">I do not know</option>')
    expect(html).toContain('<option value="x&quot;y" selected>')
  })

  it('tick no choice beforehand but the one that was made', () => {
    const choices = [
      { value: 'a', label: 'A' },
      { value: 'b', label: 'B' },
    ]
    const html = render(`+radioField(form, 'mode', 'Mode', choices)`, { form, choices })
    expect(html.match(/ checked/g)).toHaveLength(1)
    expect(html).toMatch(/value="b" checked/)
    expect(html).toContain('I do not know')
  })

  it('name every outcome by word and by a shape of its own', () => {
    const marks = outcomes.map((outcome) => render(`+outcomeMark('${outcome}')`))
    const words = marks.map((html) => /class="word">([^<]+)/.exec(html)?.[1])
    const shapes = marks.map((html) => /<svg.*?<(?:path|circle)([^>]*)>/s.exec(html)?.[1])
    expect(words).toEqual(['Stop', 'Find out', 'Take care', 'No conflict'])
    expect(new Set(shapes).size).toBe(outcomes.length)
  })

  const warning = {
    signal: 'WARNING',
    hazard: 'Hazard.',
    consequence: 'What happens.',
    avoid: 'How to avoid it.',
    electric: true,
  }

  it('warn in the order hazard, what happens, how to avoid it; the electricity sign only for shock', () => {
    const html = render('+warningBlock(warning)', { warning })
    const at = ['WARNING', 'Hazard.', 'What happens.', 'How to avoid it.'].map((text) => html.indexOf(text))
    expect(at).toEqual([...at].sort((a, b) => a - b))
    expect(at[0]).toBeGreaterThan(0)
    expect(html).toContain('class="w012"')
    expect(render('+warningBlock(warning)', { warning: { ...warning, electric: false } })).not.toContain('w012')
  })

  it('set a warning before its step', () => {
    const html = render('+stepList(steps)', {
      steps: [{ text: 'Do it.', warning, expect: '12 V', stopIf: 'it smells' }],
    })
    expect(html.indexOf('Hazard.')).toBeLessThan(html.indexOf('Do it.'))
    expect(html).toContain('Stop if it smells.')
  })

  it('head rows and columns of a table', () => {
    const table = { caption: 'Lamps', head: ['Lamp', 'Cold'], rows: [['60 W', '70 Ω']], numeric: [1] }
    const html = render('+dataTable(table)', { table })
    expect(html).toContain('<th class="number" scope="col">Cold</th>')
    expect(html).toContain('<th scope="row">60 W</th>')
    expect(html).toContain('<caption>Lamps</caption>')
  })
})

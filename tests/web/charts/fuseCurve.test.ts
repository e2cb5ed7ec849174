import { describe, expect, it } from 'vitest'
import { type CurveInput, type CurveMark, fuseCurve } from '../../../server/web/charts/fuseCurve.js'
import type { Words } from '../../../server/words/phrase.js'
import { tell } from '../../../server/words/tell.js'

const link = {
  letter: '1',
  name: 'T 2 A L 250 V',
  ratedA: 2,
  points: [
    { multiple: 1.5, minS: 3600, maxS: null },
    { multiple: 2.1, minS: null, maxS: 120 },
    { multiple: 4, minS: 0.15, maxS: 3 },
    { multiple: 10, minS: 0.02, maxS: 0.3 },
  ],
}

const input: CurveInput = { links: [link], marks: [], inrush: null }

const drawn = (change: Partial<CurveInput> = {}) => {
  const drawing = fuseCurve({ ...input, ...change })
  if (!drawing) throw new Error('nothing was drawn')
  return drawing
}

const told = (label: Words | null): string | null => tell(label)

const numbers = (path: string): number[] => [...path.matchAll(/-?\d+(?:\.\d+)?/g)].map(([value]) => Number(value))

describe('the time-current drawing', () => {
  it('puts equal ratios at equal distances on both axes', () => {
    const { x, y } = drawn()
    const at = (ticks: typeof x, label: string) => ticks.find((tick) => told(tick.label) === label)?.at ?? Number.NaN
    expect(at(x, '10') - at(x, '5')).toBeCloseTo(at(x, '20') - at(x, '10'), 0)
    expect(at(y, '10') - at(y, '1')).toBeCloseTo(at(y, '1') - at(y, '0.1'), 0)
    expect(at(y, '10')).toBeLessThan(at(y, '1'))
  })

  it('puts 5 times at 10 A for a 2 A link', () => {
    const { x, multiples } = drawn()
    expect(multiples.find((tick) => told(tick.label) === '5')?.at).toBe(x.find((tick) => told(tick.label) === '10')?.at)
  })

  it('grows to hold whatever is marked: nothing is cut off', () => {
    const far = drawn({
      marks: [
        { kind: 'fault', name: 'fault current', currentA: 20_000 },
        { kind: 'operating', name: 'operating current', currentA: 0.001 },
      ],
      inrush: { peakA: 300, timeS: 1e-6 },
    })
    const { left, right, top, bottom } = far.plot
    for (const { x } of far.marks) {
      expect(x).toBeGreaterThan(left)
      expect(x).toBeLessThan(right)
    }
    expect(far.inrush?.x).toBeGreaterThan(left)
    expect(far.inrush?.y).toBeLessThan(bottom)
    expect(far.inrush?.y).toBeGreaterThan(top)
  })

  it('keeps every label apart from its neighbours along an axis', () => {
    const { x, multiples } = drawn({ marks: [{ kind: 'fault', name: 'fault current', currentA: 1500 }] })
    for (const ticks of [x, multiples]) {
      const labelled = ticks.filter((tick) => tick.label !== null).map((tick) => tick.at)
      expect(labelled.every((at, index) => index === 0 || at - (labelled[index - 1] ?? 0) >= 18)).toBe(true)
    }
  })

  it('tells links apart without colour: by dashes and by letters that do not overlap', () => {
    const { links } = drawn({ links: [link, { ...link, letter: 'A' }, { ...link, letter: 'B', ratedA: 2.01 }] })
    expect(new Set(links.map((one) => one.dash)).size).toBe(3)
    const places = links.map((one) => one.label)
    for (const [index, one] of places.entries())
      for (const other of places.slice(index + 1))
        expect(Math.hypot((one?.x ?? 0) - (other?.x ?? 0), (one?.y ?? 0) - (other?.y ?? 0))).toBeGreaterThanOrEqual(12)
  })

  it('draws finite numbers only', () => {
    const { links } = drawn({ inrush: { peakA: 1e5, timeS: 1000 } })
    for (const one of links) {
      expect(`${one.min}${one.max}${one.gates}${one.band}`).not.toMatch(/NaN|Infinity/)
      expect(numbers(one.band).length).toBeGreaterThan(4)
    }
  })

  it('is not drawn without a gate', () => {
    expect(fuseCurve({ ...input, links: [] })).toBeNull()
    expect(fuseCurve({ ...input, links: [{ ...link, points: [] }] })).toBeNull()
  })

  it('tells in words what it shows', () => {
    const marks: CurveMark[] = [{ kind: 'lamp', name: 'short circuit behind the lamp', currentA: 0.43 }]
    expect(tell(drawn({ marks }).text)).toMatch(
      /T 2 A L 250 V: 4 gates from 1\.5 to 10 times its rating; short circuit behind the lamp at 430.mA/,
    )
  })
})

import { describe, expect, it } from 'vitest'
import { plugDrawing, unitsPerMm } from '../../../server/web/charts/plugDrawing.js'
import { tell } from '../../../server/words/tell.js'

const plug = { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' as const }
const jack = { outerMm: 5.5, innerMm: 2.5 }

describe('the drawing of plug and jack', () => {
  it('draws sleeve, bore and pin at one scale', () => {
    const [upper, lower, pin] = tell(plugDrawing({ plug, jack }))?.metal ?? []
    if (!upper || !lower || !pin) throw new Error('parts missing')
    expect(lower.y + lower.height - upper.y).toBeCloseTo(5.5 * unitsPerMm, 9)
    expect(lower.y - (upper.y + upper.height)).toBeCloseTo(2.1 * unitsPerMm, 9)
    expect(pin.height).toBeCloseTo(2.5 * unitsPerMm, 9)
  })

  it('says sizes and polarity in words', () => {
    const text = tell(plugDrawing({ plug, jack }))?.text.replaceAll('\u00a0', ' ')
    expect(text).toBe(
      'Plug: sleeve 5.5 mm outside, bore 2.1 mm, centre negative. Jack: made for 5.5 mm outside and a bore of 2.5 mm, polarity not known.',
    )
  })

  it('puts the sign of a centre-negative plug at the bore', () => {
    const texts = tell(plugDrawing({ plug, jack: null }))?.marks.map(({ text }) => text)
    expect(texts).toContain('bore −')
    expect(texts).toContain('sleeve +')
  })

  it('marks no sign where the polarity is not known', () => {
    const texts = tell(plugDrawing({ plug: null, jack }))?.marks.map(({ text }) => text) ?? []
    expect(texts.some((text) => /[+−]/.test(text))).toBe(false)
  })

  it.each([
    { plug: null, jack: null },
    { plug: { outerMm: 5.5 }, jack: { innerMm: 2.1 } },
  ])('draws nothing from $plug and $jack', (sides) => {
    expect(plugDrawing(sides)).toBeNull()
  })
})

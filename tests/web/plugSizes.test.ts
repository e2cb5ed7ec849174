import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { testApp } from './testApp.js'

const page = async (address: string): Promise<{ status: number; text: string }> => request(testApp().app).get(address)

describe('the page of plugs as large as they are', () => {
  it('draws a plug of 5.5 mm over 2.1 mm and a ruler of a bank card’s 53.98 mm in millimetres', async () => {
    const { status, text } = await page('/plug-sizes')
    expect(status).toBe(200)
    expect(text).toContain('width="53.98mm"')
    // 0.5 mm of margin around the sleeve
    expect(text).toMatch(
      /<svg width="6.5mm" height="6.5mm"[^>]*><circle class="metal" r="2.75"><\/circle><circle class="bore" r="1.05">/,
    )
  })

  it('draws everything larger where the ruler turns out too short: 50 mm for 53.98 mm is 1.08 times', async () => {
    const { text } = await page('/plug-sizes?ruler=50')
    // 53.98 × 53.98 / 50 and 6.5 × 53.98 / 50
    expect(text).toContain('width="58.28mm"')
    expect(text).toMatch(/width="7.02mm"/)
  })

  it('keeps the check that it was asked from, and brings the size into it', async () => {
    const { text } = await page('/plug-sizes?country=DE&supply=OUTPUT+9V+DC+1A')
    expect(text).toContain('href="/?country=DE&amp;supply=OUTPUT+9V+DC+1A&amp;plugouter=5.5&amp;pluginner=2.1"')
    expect(text).toContain('href="/?country=DE&amp;supply=OUTPUT+9V+DC+1A&amp;jackouter=5.5&amp;jackinner=2.1"')
    expect(text).toContain('<input type="hidden" name="country" value="DE"')
  })

  it('keeps what is told several times in a check', async () => {
    const { status, text } = await page('/plug-sizes?confirmed=supply.input&confirmed=supply.outputs&dismissed=XY')
    expect(status).toBe(200)
    expect(text.match(/name="confirmed"/g)).toHaveLength(2)
  })

  it('says what is wrong with a length that cannot be, and keeps it', async () => {
    const { status, text } = await page('/plug-sizes?ruler=2000')
    expect(status).toBe(422)
    expect(text).toContain('value="2000"')
    expect(text).toMatch(/class="error"[\s\S]*Length of the ruler[^<]*400/)
  })
})

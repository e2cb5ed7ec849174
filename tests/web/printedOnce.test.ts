import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { glossary } from '../../server/web/glossary.js'
import { type PrintedOnce, printedOnce } from '../../server/web/printedOnce.js'
import { outcomeWords } from '../../server/web/viewModels/verdictWords.js'
import { emptyStates } from '../browser/states.js'
import { testApp } from './testApp.js'

/** What changes from one answer to the next: the once-key of a form, and the name of a request. */
const settled = (html: string): string =>
  html.replace(/(name="once" value=")[\w-]+/g, '$1KEY').replace(/\b[\da-f]{12}\b/g, 'NAME')

/** Addresses that ask for a page; those that send something go the same way through the views. */
const addresses = emptyStates.filter(([, , , sent]) => sent === undefined).map(([, , address]) => address)

describe('parts of a page that are printed once', { timeout: 120_000 }, () => {
  it('look as they do when they are printed anew, whatever was asked for before', async () => {
    const { app } = testApp()
    const long = testApp().app
    long.locals.printedOnce = undefined
    expect(addresses.length).toBeGreaterThan(20)
    for (const round of [1, 2])
      for (const address of addresses) {
        const [once, anew] = await Promise.all([app, long].map((one) => request(one).get(address)))
        expect(settled(once?.text ?? ''), `${address}, round ${round}`).toBe(settled(anew?.text ?? 'none'))
      }
  })

  it('are one text for the same arguments and another for any other', () => {
    const print: PrintedOnce = printedOnce({ glossary, outcomeWords })
    const choices = [
      { value: 'a', label: 'First' },
      { value: 'b', label: 'Second' },
    ]
    const options = { unit: 'V', hint: 'As 230.' }
    const text = print('textField', 'mains', { label: 'Mains', options })
    expect(text).toContain('name="mains"')
    expect(text).toContain('As 230.')
    expect(print('textField', 'mains', { label: 'Mains', options: { ...options } })).toBe(text)
    expect(print('textField', 'mains', { label: 'Mains', options: { unit: 'V' } })).not.toContain('As 230.')
    expect(print('textField', 'mains', { label: 'Mains', options: { ...options, hint: 'Else.' } })).toContain('Else.')
    expect(print('textField', 'mains', { label: 'Other', options })).toContain('>Other (V)<')
    const list = print('selectField', 'kind', { label: 'Kind', list: choices, chosen: 'b' })
    expect(list).toMatch(/value="b" selected/)
    expect(print('selectField', 'kind', { label: 'Kind', list: choices, chosen: '' })).not.toMatch(/value="b" selected/)
    const others = [{ value: 'b', label: 'Third' }]
    expect(print('selectField', 'kind', { label: 'Kind', list: others, chosen: 'b' })).toContain('Third')
  })

  it('never hide what was typed, a fault, or the words of a plate', async () => {
    const { app } = testApp()
    const of = async (query: string): Promise<string> => (await request(app).get(`/?${query}`)).text
    // first all boxes empty, so that they are known
    await of('')
    expect(await of('ina=0.75')).toMatch(/id="ina"[^>]*value="0\.75"/)
    expect(await of('ina=x')).toMatch(/id="ina-error"/)
    expect(await of('supply=OUTPUT+12V+DC+2A')).toMatch(/id="out1a-read"[^>]*>Plate: 2/)
    expect(await of('class=II')).toMatch(/value="II" selected/)
    expect(await of('class=IX')).toMatch(/value="IX" selected[^>]*translate="no"/)
    expect(await of('out3=5&out3kind=dc')).toMatch(/id="out3"[^>]*value="5"/)
  })
})

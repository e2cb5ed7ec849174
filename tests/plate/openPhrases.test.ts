import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import { openPhrases, speaksOf } from '../../server/plate/openPhrases.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { benches } from './collected/benches.js'
import { eastern } from './collected/eastern.js'
import { european } from './collected/european.js'
import { fresh } from './collected/fresh.js'
import { last } from './collected/last.js'
import { modern } from './collected/modern.js'
import { oldSupplies } from './collected/oldSupplies.js'

const open = (text: string, dismissed: string[] = []): string[] => openPhrases(readPlate(text), dismissed)

const textsOf = (file: string): string[] =>
  (parse(readFileSync(new URL(file, import.meta.url), 'utf8'), { columns: true, bom: true }) as { text: string }[]).map(
    ({ text }) => text.replaceAll('\\n', '\n'),
  )

/** Most plates without a deciding word that may have a phrase that matters unread. */
const most = 0.1

describe('phrases that matter unread', () => {
  it.each([
    ['the published corpus', textsOf('../published/labelCorpus.csv')],
    ['the further plates', textsOf('furtherPlates.csv')],
    [
      'the collected plates',
      [oldSupplies, european, eastern, modern, fresh, last, benches].flat().map(({ text }) => text),
    ],
  ])('stand on at most one in ten plates without a deciding word: %s', (name, plates) => {
    const plain = plates.filter((text) => readPlate(text).hazards.every(({ decides }) => decides === 'step'))
    const gating = plain.filter((text) => open(text).length > 0)
    console.log(`${name}: ${gating.length} of ${plain.length} plates without a deciding word have an open phrase`)
    expect(plain.length).toBeGreaterThan(90)
    expect(gating.length / plain.length).toBeLessThanOrEqual(most)
  })

  // invented: words that no table has, as a warning in a language that is not known would be
  it.each([
    ['OUTPUT 12V⎓ 1A\nZAKAZ BRUDNYCH PODLEWEK', 'ZAKAZ BRUDNYCH PODLEWEK'],
    ['OUTPUT 12V⎓ 1A\nNEVER LEAVE UNATTENDED', 'NEVER LEAVE UNATTENDED'],
    ['OUTPUT 12V⎓ 1A\nЗАПРЕЩЕНО НАКРЫВАТЬ', 'ЗАПРЕЩЕНО НАКРЫВАТЬ'],
    ['OUTPUT 12V⎓ 1A\n必须保持通风良好', '必须保持通风良好'],
  ])('are seen in %s', (text, phrase) => {
    expect(open(text)).toEqual([phrase])
  })

  // from the head: one word, one figure or one sign that may turn the rest into its opposite
  it.each([
    ['OUTPUT 12V⎓ 1A\nTIP NOT POSITIVE', 'TIP NOT POSITIVE'],
    ['OUTPUT 12V⎓ 1A\nCENTER GROUND', 'CENTER GROUND'],
    ['OUTPUT 12V⎓ 1A\n⊖-C-⊕', '⊖-C-⊕'],
    ['OUTPUT 12V⎓ 1A\nVIA STEP-DOWN', 'VIA STEP-DOWN'],
    ['OUTPUT 12V⎓ 1A\nMODIFIED', 'MODIFIED'],
    ['OUTPUT 12V⎓ 1A\nUMGEBAUT', 'UMGEBAUT'],
    ['OUTPUT 12V⎓ 1A\nНЕ ДЛЯ РАДИО', 'НЕ ДЛЯ РАДИО'],
    ['OUTPUT 12V⎓ 1A\n禁止改造', '禁止改造'],
    ['OUTPUT 12V⎓ 2A\n18W', '18W'],
    ['OUTPUT 24V⎓ 2A (20-28V)', '20-28V'],
    ['OUTPUT 12V⎓ 1A\n(5 SEC)', '5 SEC'],
    ['OUTPUT 12V⎓ 1A\nCOMMON', 'COMMON'],
    ['OUTPUT 12V⎓ 1A\nHOT', 'HOT'],
    ['OUTPUT 12V⎓ 1A\nNEGATIVE', 'NEGATIVE'],
    ['OUTPUT 12V⎓ 1A\nS2 30', 'S2 30'],
    ['OUTPUT 12V⎓ 1A\nKB30', 'KB30'],
    ['OUTPUT 12V⎓ 1A\n25% ED', '25% ED'],
    ['OUTPUT 12V⎓ 1A\nMINIMUM LOAD 20%', 'MINIMUM LOAD 20%'],
    ['OUTPUT 12V⎓ 1A\nTRICKLE', 'TRICKLE'],
    ['INPUT 100-240V~ OUTPUT 12V⎓ 1A\nNOW 110V', 'NOW 110V'],
    ['OUTPUT 12V⎓ 1A CLASS II\n⏚', '⏚'],
  ])('are seen in one word or figure: %s', (text, phrase) => {
    expect(open(text)).toEqual([phrase])
  })

  it.each([
    // what was read explains it
    ['INPUT 230V~ 50Hz OUTPUT 12V⎓ 2A\nPOWER ADAPTER 12V 24W'],
    ['OUTPUT 12V⎓ 3A (11.4-12.6V)'],
    ['OUTPUT 12V⎓ 1A\nSERIAL NO 4007'],
    ['OUTPUT 12V⎓ 1A\nMODEL NO. AX 7'],
    ['OUTPUT 12V⎓ 1A\nDO NOT DISPOSE'],
    ['OUTPUT 12V⎓ 1A\nMAINS ADAPTER'],
    ['OUTPUT 12V⎓ 1A\nEFFICIENCY 87%'],
    ['OUTPUT 12V⎓ 1A\nHOT SURFACE'],
  ])('are none where the word or the figure is explained: %s', (text) => {
    expect(open(text)).toEqual([])
  })

  it.each<[string, 'isolation' | 'polarity' | null]>([
    ['TIP NOT POSITIVE', 'polarity'],
    ['CENTRE EARTH', 'polarity'],
    ['+/- SELECTABLE', 'polarity'],
    ['UMGEKEHRT', 'polarity'],
    ['INSULATION UNKNOWN', 'isolation'],
    ['ИЗОЛЯЦИЯ 1', 'isolation'],
    ['MAINS ON CASE', 'isolation'],
    ['TIED TO LINE', 'isolation'],
    ['SEC. HOT', 'isolation'],
    ['COMMON WITH LINE NEUTRAL', 'isolation'],
    ['NULLLEITER AN GEHÄUSE', 'isolation'],
    ['корпус соединён с сетью', 'isolation'],
    ['NEGATIVE', 'polarity'],
    ['NOT FOR RADIOS', null],
    ['LINE VOLTAGE', null],
  ])('speak of %s: %s', (piece, of) => {
    expect([speaksOf(piece, 'isolation'), speaksOf(piece, 'polarity')]).toEqual([of === 'isolation', of === 'polarity'])
  })

  it.each([['POS. GND'], ['(+) GROUND'], ['POSITIVE COMMON'], ['PLUS CHASSIS']])(
    'speak of the polarity and of the isolation where a pole is joined to a case or to earth: %s',
    (piece) => {
      expect([speaksOf(piece, 'isolation'), speaksOf(piece, 'polarity')]).toEqual([true, true])
    },
  )

  it.each([
    ['AC ADAPTER\nOUTPUT 12V⎓ 1A'],
    ['БЛОК ПИТАНИЯ\nВЫХОД 12В⎓ 1А'],
    ['OUTPUT 12V⎓ 1A\nMADE IN JAPAN'],
    ['OUTPUT 12V⎓ 1A\nMODEL QX-12 SERIAL NO. 40071'],
    ['TESTWORK ELECTRONICS CO., LTD.\nOUTPUT 12V⎓ 1A'],
    ['OUTPUT 12V⎓ 1A\nFOR INDOOR USE ONLY'],
    ['OUTPUT 12V⎓ 1A\nWeight 1.4 kg, operating temperature 0-40 °C'],
    ['OUTPUT 12V⎓ 1A\nQUAXELON'],
  ])('are none in %s', (text) => {
    expect(open(text)).toEqual([])
  })

  it('are gone once dismissed, whatever their case and spaces', () => {
    const text = 'OUTPUT 12V⎓ 1A\nNEVER LEAVE UNATTENDED'
    expect(open(text, ['never  leave unattended'])).toEqual([])
    expect(open(text, ['never leave'])).toHaveLength(1)
  })
})

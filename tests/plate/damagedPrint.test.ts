import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

/** What a careful person takes the damaged print for, from the head; every figure of it is only proposed. */
describe('a figure with a space beside its decimal mark', () => {
  it.each([
    { text: 'OUTPUT 9V 0, 5A', currentA: 0.5, was: '0, 5A', reads: '0,5A' },
    { text: '12V 1. 5A', currentA: 1.5, was: '1. 5A', reads: '1.5A' },
    { text: 'OUTPUT 12V 1 .5A', currentA: 1.5, was: '1 .5A', reads: '1.5A' },
    { text: 'OUTPUT 9V 0 .5A', currentA: 0.5, was: '0 .5A', reads: '0.5A' },
    { text: 'OUTPUT 9V 0 , 5A', currentA: 0.5, was: '0 , 5A', reads: '0,5A' },
    { text: 'OUTPUT 9V ,5A', currentA: 0.5, was: ',5A', reads: '0,5A' },
    { text: 'OUTPUT 9V . 5A', currentA: 0.5, was: '. 5A', reads: '0.5A' },
    { text: 'OUTPUT 9V 8 50mA', currentA: 0.85, was: '8 50mA', reads: '850mA' },
  ])('is proposed: $text', ({ text, currentA, was, reads }) => {
    const reading = readPlate(text)
    expect(reading.outputs).toMatchObject([{ currentA }])
    expect(reading.unsure).toEqual(['outputs.0.currentA'])
    expect(reading.proposals).toEqual([{ was, reads }])
  })

  it('is proposed for volts and amperes alike', () => {
    const reading = readPlate('DC 4. 5V 0. 7A')
    expect(reading.outputs).toMatchObject([{ voltageV: 4.5, currentA: 0.7 }])
    expect(reading.unsure).toEqual(['outputs.0.voltageV', 'outputs.0.currentA'])
  })

  it('takes a mark before mains volts for the end of the word before', () => {
    const reading = readPlate('Prim .230V')
    expect(reading.input?.voltages).toEqual([{ min: 230, max: 230 }])
    expect(reading.unsure).toEqual(['input.voltages'])
    expect(reading.proposals).toEqual([{ was: '.230V', reads: '230V' }])
  })

  it.each(['OUTPUT 12V .5V', 'OUTPUT 5, 12V 1A', 'OUTPUT 12V 1 5A', 'OUTPUT 1 2V 1A', 'OUTPUT 20V A'])(
    'is not read where it may be two things: %s',
    (text) => {
      for (const { currentA, voltageV } of readPlate(text).outputs) {
        expect([12]).toContain(voltageV)
        expect([null, 1]).toContain(currentA)
      }
    },
  )

  it('leaves lists, counts and rows as they are', () => {
    expect(readPlate('INPUT 230V 50, 60Hz')).toMatchObject({ input: { frequenciesHz: [50, 60] }, unsure: [] })
    expect(readPlate('INPUT 110, 220V')).toMatchObject({ unsure: [] })
    expect(readPlate('OUTPUT 1 5V 2A OUTPUT 2 12V 1A')).toMatchObject({
      outputs: [{ voltageV: 5 }, { voltageV: 12 }],
      unsure: [],
    })
    expect(readPlate('INPUT 120VAC .2A')).toMatchObject({ input: { currentA: 0.2 }, unsure: [] })
  })
})

describe('a list with a hole', () => {
  it.each([
    'INPUT 230V ??/60Hz',
    'INPUT 230V 50/??Hz',
    'INPUT 230V 50/6?Hz',
    'INPUT 230V ?? / 60Hz',
    'INPUT 230V 5?/60Hz',
  ])('gives no frequency: %s', (text) => {
    const reading = readPlate(text)
    expect(reading.input).toMatchObject({ voltages: [{ min: 230, max: 230 }], frequenciesHz: [] })
    expect(reading.unread.join(' ')).toMatch(/\?.*Hz/)
  })

  it.each([
    '???/230V 50Hz',
    'INPUT ???/230V 50Hz',
    'INPUT 1?0/230V 50Hz',
    'INPUT 115/???V 50Hz',
    'INPUT ???-240V 50Hz',
  ])('gives no voltage: %s', (text) => {
    const reading = readPlate(text)
    expect(reading.input?.voltages ?? []).toEqual([])
    expect(reading.unread.join(' ')).toMatch(/\?.*V/)
  })
})

describe('mains figures that no mains has', () => {
  it.each(['INPUT 58/60Hz 230V', 'INPUT 230V 58Hz', 'INPUT 230V 30Hz'])('doubts the frequency: %s', (text) => {
    expect(readPlate(text).unsure).toEqual(['input.frequenciesHz'])
  })

  it.each(['INPUT 155V 60Hz', 'INPUT 80-128V 60Hz', 'INPUT 155-190V 60Hz', 'INPUT 115/280V 60Hz', 'INPUT 330V 50Hz'])(
    'doubts the voltage: %s',
    (text) => {
      expect(readPlate(text).unsure).toEqual(['input.voltages'])
    },
  )

  it.each([
    'INPUT 100-240V 47-63Hz',
    'INPUT 85-264V 48-440Hz',
    'INPUT 115V 400Hz',
    'INPUT 100-240V 47/63Hz',
    'INPUT 117V 60Hz',
    'INPUT 208V 60Hz',
    'INPUT 90-132V/180-264V 47-440Hz',
    'INPUT 12-24V DC',
  ])('doubts nothing that surrounds or is a real one: %s', (text) => {
    expect(readPlate(text).unsure).toEqual([])
  })
})

describe('characters that look alike', () => {
  it.each([
    {
      text: 'AClOOV 5O/6OHz',
      input: { voltages: [{ min: 100, max: 100 }], frequenciesHz: [50, 60] },
      unsure: ['input.voltages', 'input.frequenciesHz'],
    },
    { text: 'INPUT 23ОV', input: { voltages: [{ min: 230, max: 230 }] }, unsure: ['input.voltages'] },
    { text: 'INPUT 230VАС', input: { kind: 'ac', voltages: [{ min: 230, max: 230 }] }, unsure: ['input.voltages'] },
    { text: 'lNPUT 230V', input: { voltages: [{ min: 230, max: 230 }] }, unsure: ['input.voltages'] },
    { text: '入カ 100V', input: { voltages: [{ min: 100, max: 100 }] }, unsure: ['input.voltages'] },
  ])('are proposed: $text', ({ text, input, unsure }) => {
    expect(readPlate(text)).toMatchObject({ input, unsure })
  })

  it.each([
    { text: '出カ DC9V 0.5A', proposals: [{ was: '出カ', reads: '出力' }], unsure: 2 },
    { text: 'ОUТРUТ DC9V 0.5A', proposals: [{ was: 'ОUТРUТ', reads: 'OUTPUT' }], unsure: 2 },
    { text: 'OUTPUT DC9V O.5A', proposals: [{ was: 'O.5A', reads: '0.5A' }], unsure: 1 },
  ])('are shown beside what they are taken for: $text', ({ text, proposals, unsure }) => {
    const reading = readPlate(text)
    expect(reading.outputs).toMatchObject([{ kind: 'dc', voltageV: 9, currentA: 0.5 }])
    expect(reading.proposals).toEqual(proposals)
    expect(reading.unsure).toHaveLength(unsure)
  })

  it('parts a name from the voltage that is joined to it', () => {
    expect(readPlate('Singleport-54VDC')).toMatchObject({
      outputs: [{ kind: 'dc', voltageV: 54 }],
      unsure: ['outputs.0.voltageV'],
      proposals: [{ was: 'Singleport-54VDC', reads: 'Singleport 54VDC' }],
    })
  })

  it('takes full width for what it is, and a word of the plate joined to its figures', () => {
    expect(readPlate('ＩＮＰＵＴ１００－２４０Ｖ　５０／６０Ｈｚ')).toMatchObject({
      input: { voltages: [{ min: 100, max: 240 }], frequenciesHz: [50, 60] },
      unsure: [],
    })
    expect(readPlate('INPUT100-240V~50/60Hz')).toMatchObject({ input: { kind: 'ac' }, unsure: [] })
  })
})

describe('a plug whose size is printed', () => {
  it.each([
    { text: 'OUTPUT 12V⎓ 2A 5.5x2.1mm', outerMm: 5.5, innerMm: 2.1 },
    { text: '12V 2A ⌀5,5/2,1', outerMm: 5.5, innerMm: 2.1 },
    { text: '12V 2A 5.5 x 2.1 x 9.5', outerMm: 5.5, innerMm: 2.1 },
    { text: '12V, 2A, Hohlstecker 5,5/2,5 mm', outerMm: 5.5, innerMm: 2.5 },
    { text: 'DC5521 5V', outerMm: 5.5, innerMm: 2.1 },
    { text: '出力 DC9V プラグ:外径5.5mm 内径1.7mm', outerMm: 5.5, innerMm: 1.7 },
    { text: '5V DC connector: 2.1mm ID, 5.5mm OD, 11mm long', outerMm: 5.5, innerMm: 2.1 },
    { text: '9V DC 2.1 mm plug', outerMm: null, innerMm: 2.1 },
    { text: '9V DC EIAJ-04', outerMm: null, innerMm: null, name: 'EIAJ-04' },
  ])('gives it: $text', ({ text, outerMm, innerMm, name = null }) => {
    expect(readPlate(text).plug).toMatchObject({ outerMm, innerMm, name })
  })

  it.each([
    '9V DC 2.5 mm plug',
    '9V DC 3.5mm jack',
    'SEC 2 x 12V',
    '5/2A 12/24V',
    'CASE 6 x 5 x 3 cm',
    '5.5x2.1mm or 5.5x2.5mm',
  ])('gives none where it may be another size or thing: %s', (text) => {
    expect(readPlate(text).plug).toBeNull()
  })
})

describe('the words that gave a field', () => {
  it('stand with it', () => {
    const { from } = readPlate('INPUT: 100-240V~ 50/60Hz 0.6A\nOUTPUT: DC 12V 2A centre positive 5.5x2.1mm ⧈')
    expect(Object.fromEntries(from.map(({ field, words }) => [field, words]))).toEqual({
      'input.voltages': '100-240V~',
      'input.kind': '100-240V~',
      'input.frequenciesHz': '50/60Hz',
      'input.currentA': '0.6A',
      'outputs.0.voltageV': '12V',
      'outputs.0.kind': 'DC',
      'outputs.0.currentA': '2A',
      polarity: 'centre positive',
      'plug.polarity': 'centre positive',
      'plug.outerMm': '5.5x2.1mm',
      'plug.innerMm': '5.5x2.1mm',
      protectionClass: '⧈',
    })
  })
})

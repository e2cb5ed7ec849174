import { describe, expect, it } from 'vitest'
import { deviceReady } from '../../server/bench/shelf/prepared.js'
import { wantedFor } from '../../server/bench/shelf/wanted.js'
import { prepareSite } from '../../server/chain/case/prepareSite.js'
import type { Device } from '../../server/chain/case/request.js'
import { tell } from '../../server/words/tell.js'

const of = (device: Device, country?: string) => tell(wantedFor(deviceReady(device), prepareSite({ country })))

const recorder: Device = {
  inputs: [{ kind: 'dc', voltageV: 12, currentA: 1.2 }],
  regulatedNeeded: true,
  jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' },
}

describe('the shopping specification', () => {
  it('names kind, volts, least current, polarity, plug, class and inlets, and the mains of the site', () => {
    expect(of(recorder, 'DE')).toMatchObject([
      {
        kind: 'dc',
        voltageV: 12,
        leastA: 1.2,
        polarity: 'centre-negative',
        plug: { outerMm: 5.5, innerMm: 2.1 },
        input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [50] },
        protectionClass: 'II',
        inlets: ['C8', 'C18'],
      },
    ])
  })

  // a measured demand needs a quarter more (ageing, start-up); 1.2 A × 1.25 = 1.5 A, 0.97 A up to the next tenth is 1 A, 1.21 A is 1.3 A
  it.each([
    [1.21, 'plate', 1.3],
    [1.2, 'measured', 1.5],
    [0.97, 'plate', 1],
    [0.61, 'measured', 0.8],
    [2, 'plate', 2],
  ] as const)('asks for at least what %d A (%s) needs: %d A', (currentA, currentIs, leastA) => {
    expect(of({ inputs: [{ kind: 'dc', voltageV: 9, currentA, currentIs }] })[0]?.leastA).toBe(leastA)
  })

  it('leaves unknown what is not known and says so in its lines', () => {
    const [wanted] = of({ label: '9V' })
    expect(wanted).toMatchObject({ kind: null, leastA: null, polarity: null, plug: null, input: null })
    expect(wanted?.lines.filter((line) => line.includes('find out before buying'))).toHaveLength(4)
  })

  it("gives words in the seller's language and in English, with the numbers", () => {
    const [wanted] = of(recorder, 'DE')
    expect(wanted?.words).toContain('STECKERNETZTEIL 12 V DC 1.2 A')
    expect(wanted?.words.some((word) => word.startsWith('AC ADAPTOR'))).toBe(true)
    expect(wanted?.words).toContain('5.5x2.1mm')
    expect(of(recorder, 'JP')[0]?.words.some((word) => /[\u3040-\u30ff\u4e00-\u9fff]/.test(word))).toBe(true)
  })

  it('is one for each rail, and asks no polarity of an ac rail', () => {
    const wanted = of({
      inputs: [
        { kind: 'dc', voltageV: 5, currentA: 2 },
        { kind: 'ac', voltageV: 18, currentA: 1 },
      ],
      jack: { polarity: 'centre-positive' },
    })
    expect(wanted.map(({ kind, voltageV, polarity }) => [kind, voltageV, polarity])).toEqual([
      ['dc', 5, 'centre-positive'],
      ['ac', 18, null],
    ])
  })
})

import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../../server/chain/case/request.js'
import { onward } from '../../../server/web/pages/check/onward.js'
import { assess } from '../../support/told.js'

const ways = (check: CheckRequest) => onward(check, assess(check), 'in=230')
const parameters = (address: string) => Object.fromEntries(new URL(address, 'http://localhost').searchParams)

describe('the way on from a check', () => {
  it('fills in the fuse review with what is fitted, the mains and the current', () => {
    const check = { site: { country: 'DE' }, supply: { label: 'INPUT 120V 60Hz 0.25A', fuse: 'T250mA' }, device: {} }
    expect(parameters(ways(check).fuse)).toEqual({
      marking: 'T250mA',
      position: 'mains',
      volts: '230',
      former: '120',
      // 120 V × 0.25 A = 30 VA; 30 VA / 230 V
      amps: expect.stringMatching(/^0\.1304/),
    })
  })

  it('fills in the fuse of a machine with its supply inside, printed or entered', () => {
    const check = (device: CheckRequest['device']): CheckRequest => ({
      arrangement: 'built-in',
      site: { country: 'DE' },
      supply: {},
      device,
    })
    // 60 VA / 230 V = 0.2609 A
    expect(parameters(ways(check({ label: '230V 50Hz 60VA FUSE T500mAH250V' })).fuse)).toEqual({
      prescribed: 'T500mAH250V',
      position: 'mains',
      volts: '230',
      amps: expect.stringMatching(/^0\.26/),
    })
    expect(parameters(ways(check({ label: '120V 60Hz', mains: { fuse: 'T2A' } })).fuse)).toMatchObject({
      marking: 'T2A',
      former: '120',
    })
  })

  it('takes the converter’s output for what reaches the supply', () => {
    const converter = { kind: 'isolating' as const, outputV: 120, ratedVA: 100 }
    const check = {
      site: { country: 'DE' },
      supply: { input: { voltages: [{ min: 120, max: 120 }] } },
      device: {},
      converter,
    }
    expect(parameters(ways(check).fuse)).toEqual({ position: 'mains', volts: '120' })
  })

  it('leaves the review empty where the voltage is not known', () => {
    expect(ways({ site: {}, supply: { fuse: 'T2A' }, device: {} }).fuse).toBe('/fuse')
  })

  it('fills in the first power-up with the whole check', () => {
    expect(ways({ site: {}, supply: {}, device: {} }).firstPower).toBe('/first-power?in=230')
    expect(ways({ site: {}, supply: {}, device: {} }).checklist).toBe('/checklist?in=230')
  })

  it('hands on the check itself for a job', () => {
    expect(ways({ site: {}, supply: {}, device: {} }).check).toBe('in=230')
  })
})

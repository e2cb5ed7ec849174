import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { assess } from '../support/told.js'

/** A case without any conflict but for what its plates leave in doubt. */
const complete = (label: string, machine = 'DC 9V 0.4A', confirmed?: string[]): CheckRequest => ({
  site: { country: 'DE', socket: 'F' },
  supply: {
    label,
    technology: 'switch-mode',
    regulated: true,
    protectionClass: 'II',
    inlet: 'plug-in',
    plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  device: {
    label: machine,
    regulatedNeeded: true,
    jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' },
  },
  cord: { plug: 'CEE 7/16', connector: 'captive', ratedV: 250, ratedA: 2.5 },
  ...(confirmed && { readings: { confirmed } }),
})

const on = (request: CheckRequest, topic: string) => assess(request).findings.find((finding) => finding.topic === topic)

const whole = 'INPUT 100-240V~ 50/60Hz 0.3A OUTPUT 9V DC 0,5A'
const torn = 'INPUT 100-240V~ 50/60Hz 0.3A OUTPUT 9V DC 0, 5A'

describe('a figure that the reader is not sure of', () => {
  it('is what the case hangs on', () => {
    expect(on(complete(whole), 'output-current')?.outcome).toBe('clear')
  })

  it('decides nothing, and the finding says what the plate may read', () => {
    const finding = on(complete(torn), 'output-current')
    expect(finding?.outcome).toBe('unknown')
    expect(finding?.action).toContain('“0,5A” where “0, 5A” stands')
    expect(finding?.action).toContain('confirm')
    expect(assess(complete(torn)).verdict).toBe('find-out-first')
  })

  it('decides once it is confirmed', () => {
    expect(on(complete(torn, undefined, ['supply.outputs.0.currentA']), 'output-current')?.outcome).toBe('clear')
  })

  it('does not decide where another was confirmed', () => {
    expect(on(complete(torn, undefined, ['device.takes.0.currentA']), 'output-current')?.outcome).toBe('unknown')
  })

  it('gives way to one that was entered', () => {
    const request = complete(torn)
    request.supply.outputs = [{ kind: 'dc', voltageV: 9, currentA: 0.3 }]
    expect(on(request, 'output-current')?.outcome).toBe('stop')
  })

  it.each([
    { text: 'INPUT 155V~ 60Hz 0.3A OUTPUT 9V DC 0.5A', topic: 'mains-voltage', key: 'supply.input.voltages' },
    { text: 'INPUT .230V~ 50Hz 0.3A OUTPUT 9V DC 0.5A', topic: 'mains-voltage', key: 'supply.input.voltages' },
  ])('keeps $topic open: $text', ({ text, topic, key }) => {
    expect(on(complete(text), topic)?.outcome).toBe('unknown')
    expect(on(complete(text, undefined, [key]), topic)?.outcome).not.toBe('unknown')
  })

  it('leaves no rail standing for all of them', () => {
    const finding = on(complete('INPUT 100-240V~ OUTPUT 12V 1A 9. 0V 1A'), 'output-voltage')
    expect(finding?.outcome).toBe('unknown')
  })

  it('on a machine is no demand', () => {
    const machine = 'DC 9V 0 .4A'
    expect(on(complete(whole, machine), 'output-current')?.outcome).toBe('unknown')
    expect(on(complete(whole, machine, ['device.takes.0.currentA']), 'output-current')?.outcome).toBe('clear')
  })

  // 230 V on 50 Hz over 230 V on 58 Hz: 1.16 times the flux, more than 1.10
  it.each([
    {
      technology: 'transformer' as const,
      confirmed: undefined,
      is: 'unknown',
      why: 'a transformer’s flux hangs on it',
    },
    {
      technology: 'transformer' as const,
      confirmed: ['supply.input.frequenciesHz'],
      is: 'stop',
      why: 'it was confirmed',
    },
    { technology: 'switch-mode' as const, confirmed: undefined, is: 'clear', why: 'nothing hangs on it' },
  ])('is not passed over for what is usual, 58 Hz of a $technology: $why', ({ technology, confirmed, is }) => {
    const request = complete('INPUT 230V~ 58Hz 0.3A OUTPUT 9V DC 0.5A', undefined, confirmed)
    const found = on({ ...request, supply: { ...request.supply, technology } }, 'mains-frequency')
    expect(found?.outcome).toBe(is)
    if (is === 'unknown') expect(found?.action).toMatch(/58 ?Hz/)
  })
})

describe('a confirmation that names what was read', () => {
  const confirmed = ['supply.outputs.0.currentA=0.5']

  it('holds for that value', () => {
    expect(on(complete(torn, undefined, confirmed), 'output-current')?.outcome).toBe('clear')
  })

  it('is none once the words of the plate read otherwise', () => {
    const changed = torn.replace('0, 5A', '0, 7A')
    expect(on(complete(changed, undefined, confirmed), 'output-current')?.outcome).toBe('unknown')
  })
})

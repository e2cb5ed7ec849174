import { describe, expect, it } from 'vitest'
import type { CheckRequest, Site } from '../../server/chain/case/request.js'
import { outcomes, type TopicName } from '../../server/chain/finding.js'
import { assess } from '../support/told.js'
import { changed } from './cases.js'

/** On a source whose plate gives 230 V 50 Hz. */
const on = (source: Site['source'], change: Parameters<typeof changed>[0] = {}): CheckRequest =>
  changed({ ...change, site: { country: 'DE', voltageV: 230, frequencyHz: 50, socket: 'F', ...change.site, source } })
const worst = (request: CheckRequest, topic: TopicName) => {
  const found = assess(request).findings.filter((finding) => finding.topic === topic)
  return outcomes.find((outcome) => found.some((one) => one.outcome === outcome)) ?? '-'
}

describe('what stands behind the socket', () => {
  it.each([
    ['wall', 'clear'],
    ['isolating-transformer', 'caution'],
    ['generator', 'caution'],
    ['inverter-sine', 'caution'],
    ['shaver-outlet', 'stop'],
  ] as const)('%s: %s', (source, outcome) => {
    expect(worst(on(source), 'mains-voltage')).toBe(outcome)
  })

  it('an inverter with steps: a stop for a transformer, care for a switch-mode supply, unknown where nobody knows which', () => {
    const with_ = (technology: 'transformer' | 'switch-mode' | null) =>
      worst(on('inverter-stepped', { supply: { technology } }), 'mains-voltage')
    expect(with_('transformer')).toBe('stop')
    expect(with_('switch-mode')).toBe('caution')
    expect(with_(null)).toBe('unknown')
  })

  it.each([
    ['synchronous', 'stop'],
    ['induction', 'stop'],
    ['dc', 'caution'],
    ['none', 'caution'],
    [null, 'unknown'],
  ] as const)('an inverter with steps and a machine that is switch-mode inside, its motor %s: %s', (motor, outcome) => {
    const request: CheckRequest = {
      arrangement: 'built-in',
      site: { country: 'DE', voltageV: 230, frequencyHz: 50, socket: 'F', source: 'inverter-stepped' },
      supply: {},
      device: { label: '230V~ 50Hz 40W', mains: { technology: 'switch-mode', motor } },
    }
    const { findings } = assess(request)
    expect(worst(request, 'mains-voltage')).toBe(outcome)
    expect(findings.find(({ title }) => /steps/.test(title))?.action).toMatch(
      outcome === 'unknown' ? /what kind of motor/ : /An inverter with a sine/,
    )
  })

  it('an inverter with steps before a converter: a stop where it is a transformer, unknown where it is not told', () => {
    const behind = (kind: 'autotransformer' | 'isolating' | 'electronic' | null) =>
      worst(
        on('inverter-stepped', {
          supply: { technology: 'switch-mode' },
          converter: { kind, outputV: 230, ratedVA: 500 },
        }),
        'mains-voltage',
      )
    expect(behind('autotransformer')).toBe('stop')
    expect(behind('isolating')).toBe('stop')
    expect(behind(null)).toBe('unknown')
  })

  const american = (plug: string, label = '230V 60Hz 0.5A'): CheckRequest => ({
    arrangement: 'built-in',
    site: { country: 'US', source: 'two-live' },
    supply: {},
    device: {
      label: `${label} FUSE T1AL250V`,
      mains: { protectionClass: 'I', inlet: 'C14', technology: 'switch-mode', fuse: 'T1AL250V' },
    },
    cord: { plug, connector: 'C13', ratedV: 250, ratedA: 10, earthed: true, plugFitted: 'moulded' },
  })

  it('two live conductors of a 120 V country are 240 V, with plugs of their own, and a single link leaves one live', () => {
    const { findings, verdict } = assess(american('NEMA 6-15'))
    expect(findings.filter(({ outcome }) => outcome === 'unknown').map(({ title }) => title)).toEqual([])
    expect(verdict).toBe('take-care')
    expect(JSON.stringify(findings.filter(({ topic }) => topic === 'mains-voltage')).replaceAll('\u00a0', ' ')).toMatch(
      /240 V mains/,
    )
    expect(JSON.stringify(findings)).toMatch(/two live conductors: when it has opened, the other conductor stays live/)
    expect(worst(american('NEMA 6-15'), 'earthing')).toBe('clear')
    expect(worst(american('NEMA 6-15'), 'socket')).toBe('clear')
    expect(worst(american('CEE 7/7'), 'socket')).toBe('stop')
  })

  it('two live conductors of 100 V are 200 V; the same machine for 120 V is a stop on both', () => {
    const japan = { ...american('NEMA 6-15'), site: { country: 'JP', source: 'two-live' as const } }
    expect(JSON.stringify(assess(japan).findings)).toMatch(/200\u00a0V/)
    expect(worst(american('NEMA 6-15', '120V 60Hz 0.5A'), 'mains-voltage')).toBe('stop')
  })

  it('a stated 240 V is what two live conductors have, and no doubt about the country', () => {
    const stated = { ...american('NEMA 6-15'), site: { country: 'US', source: 'two-live' as const, voltageV: 240 } }
    expect(assess(stated).findings.filter(({ title }) => /tables list/.test(title))).toEqual([])
  })

  const british = (voltageV: number | null): CheckRequest => ({
    ...american('BS 1363', '120V 60Hz 0.5A'),
    site: { country: 'GB', source: 'site-transformer', voltageV },
    device: { label: '120V 60Hz 0.5A', mains: { protectionClass: 'I', inlet: 'C14', technology: 'transformer' } },
  })
  const titles = (request: CheckRequest, topic: TopicName) =>
    assess(request)
      .findings.filter((finding) => finding.topic === topic)
      .map(({ title }) => title.replaceAll('\u00a0', ' '))
      .join('\n')

  it('a site transformer of 110 V keeps the frequency of the place: 110 / 50 over 120 / 60 is 1.10 times the flux', () => {
    expect(titles(british(110), 'mains-frequency')).toMatch(/110 V 50 Hz puts 1\.1 times/)
  })

  it('a site transformer whose plate was not entered gives a voltage that nobody knows, usual as 110 V is', () => {
    expect(worst(british(null), 'mains-voltage')).toBe('unknown')
    expect(titles(british(null), 'mains-voltage')).toContain('What voltage the source gives is not known')
  })

  it.each(['isolating-transformer', 'inverter-sine', 'inverter-stepped', 'generator'] as const)(
    '%s: the mains of the country says nothing of its voltage; it is asked for, and a plate of another one stops',
    (source) => {
      const of = (voltageV: number | null) =>
        on(source, { site: { voltageV, frequencyHz: null }, supply: { technology: 'switch-mode' } })
      const { findings } = assess(of(null))
      const open = findings.find(({ topic, outcome }) => topic === 'mains-voltage' && outcome === 'unknown')
      expect(open?.action).toMatch(/Read what it gives on its own plate/)
      // 400 V on a plate of 100 V to 240 V: 1.67 times
      expect(worst(of(400), 'mains-voltage')).toBe('stop')
      expect(worst(of(230), 'mains-voltage')).toBe('caution')
    },
  )

  it('a transformer keeps the frequency of the wall, an inverter or a generator has its own', () => {
    const of = (source: Site['source'], frequencyHz: number | null) =>
      worst(on(source, { site: { frequencyHz }, supply: { technology: 'transformer' } }), 'mains-frequency')
    expect(of('isolating-transformer', null)).toBe('clear')
    expect(of('generator', null)).toBe('unknown')
    expect(of('inverter-sine', null)).toBe('unknown')
    expect(of('generator', 50)).toBe('clear')
  })

  it('what the plate of a source says against the country is no doubt about the country', () => {
    const { findings } = assess(on('generator', { site: { voltageV: 120, frequencyHz: 60 } }))
    expect(findings.filter(({ title }) => /tables list/.test(title))).toEqual([])
  })
})

import { describe, expect, it } from 'vitest'
import type { Outcome } from '../../server/chain/finding.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

interface Case {
  name: string
  site: { voltageV: number; frequencyHz: number }
  plateV: [number, number]
  plateHz: number[] | null
  technology?: 'transformer' | 'switch-mode' | null
  is: Outcome
}

const at = ({ site, plateV: [min, max], plateHz, technology = 'transformer' }: Omit<Case, 'name' | 'is'>) =>
  onlyFinding(
    'mains-frequency',
    changed({
      site: { country: null, ...site },
      supply: { technology, input: { voltages: [{ min, max }], frequenciesHz: plateHz } },
    }),
  )

describe('mains-frequency', () => {
  // flux ratio r = (V / f) / (V plate / f plate), worked by hand
  it.each<Case>([
    { name: 'listed', site: { voltageV: 230, frequencyHz: 50 }, plateV: [230, 230], plateHz: [50, 60], is: 'clear' },
    {
      name: 'listed as the second',
      site: { voltageV: 120, frequencyHz: 60 },
      plateV: [120, 120],
      plateHz: [50, 60],
      is: 'clear',
    },
    {
      name: '60 Hz type at 100 V 50 Hz, r = 1',
      site: { voltageV: 100, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      is: 'clear',
    },
    {
      name: '60 Hz type just above r = 1',
      site: { voltageV: 100.1, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      is: 'caution',
    },
    {
      name: '60 Hz type at r = 1.10',
      site: { voltageV: 110, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      is: 'caution',
    },
    {
      name: '60 Hz type just above r = 1.10',
      site: { voltageV: 110.1, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      is: 'stop',
    },
    {
      name: '60 Hz type at 120 V 50 Hz, r = 1.2',
      site: { voltageV: 120, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      is: 'stop',
    },
    {
      name: '50 Hz type at 60 Hz, r = 0.833',
      site: { voltageV: 230, frequencyHz: 60 },
      plateV: [230, 230],
      plateHz: [50],
      is: 'clear',
    },
    {
      name: 'the top of a range counts',
      site: { voltageV: 100, frequencyHz: 50 },
      plateV: [100, 120],
      plateHz: [60],
      is: 'clear',
    },
    {
      name: 'unknown inside, r = 0.833',
      site: { voltageV: 230, frequencyHz: 60 },
      plateV: [230, 230],
      plateHz: [50],
      technology: null,
      is: 'clear',
    },
    {
      name: 'unknown inside, r = 1.05',
      site: { voltageV: 105, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      technology: null,
      is: 'unknown',
    },
    {
      name: 'unknown inside, r = 1.2',
      site: { voltageV: 120, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      technology: null,
      is: 'unknown',
    },
    {
      name: 'switch-mode on another frequency',
      site: { voltageV: 120, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      technology: 'switch-mode',
      is: 'clear',
    },
    {
      name: 'none printed, 230 V taken as 50 Hz',
      site: { voltageV: 230, frequencyHz: 50 },
      plateV: [230, 230],
      plateHz: null,
      is: 'clear',
    },
    {
      name: 'none printed, 120 V taken as 60 Hz: r = 1.2',
      site: { voltageV: 120, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: null,
      is: 'stop',
    },
    {
      name: 'none printed, 100 V taken as 50 and 60 Hz',
      site: { voltageV: 100, frequencyHz: 50 },
      plateV: [100, 100],
      plateHz: null,
      is: 'clear',
    },
  ])('$name: $is', ({ is, ...rest }) => {
    expect(at(rest).outcome).toBe(is)
  })

  it('gives the voltage at which the flux is right', () => {
    const finding = at({ site: { voltageV: 120, frequencyHz: 50 }, plateV: [120, 120], plateHz: [60] })
    expect(finding.working.join('\n')).toMatch(/= 1\.2\n.*= 100.V/s)
    expect(finding.action).toMatch(/100.V/)
  })

  it('says that no frequency is printed where it takes the home region’s', () => {
    const finding = at({ site: { voltageV: 230, frequencyHz: 50 }, plateV: [230, 230], plateHz: null })
    expect(finding.title).toMatch(/no frequency/)
  })

  it('says how to tell what is inside where that decides', () => {
    const finding = at({
      site: { voltageV: 120, frequencyHz: 50 },
      plateV: [120, 120],
      plateHz: [60],
      technology: null,
    })
    expect(finding.action).toMatch(/heavy.*hums.*switching/s)
  })

  it('does not know without the site’s frequency', () => {
    expect(
      onlyFinding(
        'mains-frequency',
        changed({ site: { country: null, voltageV: 230 }, supply: { technology: 'transformer' } }),
      ).outcome,
    ).toBe('unknown')
  })

  it('does not know without a plate, and asks what is inside', () => {
    const finding = onlyFinding('mains-frequency', changed({ supply: { technology: null, input: null } }))
    expect(finding.outcome).toBe('unknown')
    expect(finding.action).toMatch(/50\/60/)
  })

  it('does not know without the plate’s voltage, on a frequency not listed', () => {
    expect(
      onlyFinding(
        'mains-frequency',
        changed({ supply: { technology: 'transformer', input: { voltages: null, frequenciesHz: [60] } } }),
      ).outcome,
    ).toBe('unknown')
  })

  it('is judged on the converter’s output voltage and the site’s frequency', () => {
    const behind = (outputV: number) =>
      onlyFinding(
        'mains-frequency',
        changed({
          supply: { technology: 'transformer', input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] } },
          converter: { kind: 'autotransformer', outputV, ratedVA: 200 },
        }),
      )
    expect(behind(120).outcome).toBe('stop')
    expect(behind(100).outcome).toBe('clear')
    expect(behind(110).outcome).toBe('caution')
  })

  it('does not know in a country with both frequencies where they disagree', () => {
    // 100 V 60 Hz transformer: r = 1.2 on 50 Hz, listed on 60 Hz
    expect(
      onlyFinding(
        'mains-frequency',
        changed({
          site: { country: 'JP' },
          supply: { technology: 'transformer', input: { voltages: [{ min: 100, max: 100 }], frequenciesHz: [60] } },
        }),
      ).outcome,
    ).toBe('unknown')
  })

  it('does not know where the selector decides', () => {
    // 60 Hz only: at 120 V r = 1.2, at 144 V r = 1.0
    const request = changed({
      site: { country: null, voltageV: 120, frequencyHz: 50 },
      supply: {
        technology: 'transformer',
        input: {
          voltages: [
            { min: 120, max: 120 },
            { min: 144, max: 144 },
          ],
          frequenciesHz: [60],
        },
      },
    })
    expect(onlyFinding('mains-frequency', request).outcome).toBe('unknown')
  })

  it('notes the speed of a machine that turns with the mains', () => {
    const findings = findingsOn(
      'mains-frequency',
      changed({
        supply: { technology: 'transformer', input: { voltages: [{ min: 230, max: 230 }], frequenciesHz: [60] } },
        device: { label: 'synchronous motor 12V~ 1A' },
      }),
    )
    expect(findings[0]?.working.join('\n')).toMatch(/83\.3.%/)
  })
})

describe('a mains frequency no supply is known to have been tried at', () => {
  // 47–63 Hz is the range supplies for 50/60 Hz state on plates and data sheets
  it.each([
    { frequencyHz: 16.7, technology: 'switch-mode' as const, is: 'unknown' },
    { frequencyHz: 400, technology: 'switch-mode' as const, is: 'unknown' },
    { frequencyHz: 400, technology: 'transformer' as const, is: 'unknown' },
    { frequencyHz: 400, technology: null, is: 'unknown' },
    // 230 V 16.7 Hz: three times the flux
    { frequencyHz: 16.7, technology: 'transformer' as const, is: 'stop' },
    { frequencyHz: 46, technology: 'switch-mode' as const, is: 'unknown' },
    { frequencyHz: 47, technology: 'switch-mode' as const, is: 'clear' },
    { frequencyHz: 63, technology: 'switch-mode' as const, is: 'clear' },
    { frequencyHz: 64, technology: 'switch-mode' as const, is: 'unknown' },
  ])('$frequencyHz Hz, $technology: $is', ({ frequencyHz, technology, is }) => {
    const request = changed({ site: { country: null, voltageV: 230, frequencyHz }, supply: { technology } })
    expect(onlyFinding('mains-frequency', request).outcome).toBe(is)
  })
  // a network keeps its frequency within 1 %: 400 Hz × 0.99 = 396 Hz
  it.each([
    { frequencyHz: 396, is: 'clear' },
    { frequencyHz: 395.9, is: 'unknown' },
  ])('$frequencyHz Hz under a switch-mode plate of 400 Hz: $is', ({ frequencyHz, is }) => {
    const site = { country: null, voltageV: 230, frequencyHz }
    expect(onlyFinding('mains-frequency', changed({ site, supply: { input: { frequenciesHz: [400] } } })).outcome).toBe(
      is,
    )
  })
  it('is clear where the plate names it', () => {
    const site = { country: null, voltageV: 230, frequencyHz: 400 }
    for (const frequenciesHz of [[400], [47, 440]])
      expect(onlyFinding('mains-frequency', changed({ site, supply: { input: { frequenciesHz } } })).outcome).toBe(
        'clear',
      )
  })
})

describe('a plate without a frequency', () => {
  it('says in its title which one was taken', () => {
    const plateless = {
      technology: 'transformer' as const,
      input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: null },
    }
    const site = { country: null, voltageV: 120 }
    expect(
      onlyFinding('mains-frequency', changed({ site: { ...site, frequencyHz: 50 }, supply: plateless })),
    ).toMatchObject({
      outcome: 'stop',
      title: expect.stringMatching(/no frequency on the plate: 60.Hz taken/),
    })
    expect(
      onlyFinding('mains-frequency', changed({ site: { ...site, frequencyHz: 60 }, supply: plateless })).title,
    ).toMatch(/names no frequency/)
  })
})

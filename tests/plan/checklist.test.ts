import { describe, expect, it } from 'vitest'
import { prepareCase } from '../../server/chain/case/case.js'
import type { CheckRequest } from '../../server/chain/case/request.js'
import type { Checklist } from '../../server/plan/checklist.js'
import type { Told } from '../../server/words/tell.js'
import { assess, composeChecklist, planFirstPower } from '../support/told.js'

const matching: CheckRequest = {
  site: { country: 'DE', socket: 'F' },
  supply: {
    label: 'INPUT 100-240V~ 50/60Hz 0.5A\nOUTPUT 12V DC 2A\nCLASS II centre positive FUSE T1AL250V',
    technology: 'switch-mode',
    regulated: true,
    inlet: 'C8',
    plug: { outerMm: 5.5, innerMm: 2.1 },
    fuse: 'T1AL250V',
  },
  device: { label: '12V DC 1.2A centre positive', regulatedNeeded: true, jack: { outerMm: 5.5, innerMm: 2.1 } },
  cord: { plug: 'CEE 7/16', connector: 'C7', ratedV: 250, ratedA: 2.5, earthed: false },
}

const lampsOnHand = [
  { ratedV: 230, ratedW: 60, count: 1 },
  { ratedV: 230, ratedW: 25, count: 1 },
]

function listOf(check: CheckRequest, lamps = lampsOnHand): Told<Checklist> {
  const assessment = assess(check)
  return composeChecklist({
    assessment,
    plan: planFirstPower(prepareCase(check), assessment, { lampsOnHand: lamps }),
    ...prepareCase(check),
  })
}

const linesOf = ({ stages }: Told<Checklist>) => stages.flatMap(({ lines }) => lines)
const keysOf = (list: Told<Checklist>): string[] => linesOf(list).map(({ key }) => key)

describe('the bench checklist', () => {
  const list = listOf(matching)

  it('pauses before the plug is touched, before reduced current and before full mains, in that order', () => {
    const pauses = list.stages.flatMap(({ pause }) => (pause === null ? [] : [pause]))
    const kinds = pauses.map(
      (pause) => /before (the plug is touched|reduced-current power|full mains)/.exec(pause)?.[1],
    )
    expect(kinds[0]).toBe('the plug is touched')
    expect(kinds.indexOf('reduced-current power')).toBeLessThan(kinds.indexOf('full mains'))
    expect(kinds.at(-1)).toBe('full mains')
  })

  it('never takes the lamp out but in a stage that begins with the pause before full mains', () => {
    for (const { pause, lines } of list.stages)
      if (lines.some(({ text }) => /lamp out of the circuit/.test(text))) expect(pause).toMatch(/before full mains/)
    expect(linesOf(list).some(({ text }) => /lamp out of the circuit/.test(text))).toBe(true)
  })

  it('takes batteries out and looks at them before any power', () => {
    const keys = keysOf(list)
    expect(keys.indexOf('look.batteries')).toBeGreaterThan(0)
    expect(keys.indexOf('look.batteries')).toBeLessThan(keys.findIndex((key) => key.endsWith('.switch-on')))
  })

  it('repeats polarity, fuse-link and lamp where they may have changed', () => {
    const together = list.stages.find(({ lines }) => lines.some(({ key }) => key === 'together.switch-on'))
    const keys = together?.lines.map(({ key }) => key) ?? []
    expect(keys.slice(0, 3)).toEqual(['together.lamp-in', 'together.fuse-again', 'together.polarity-again'])
    const full = list.stages.find(({ lines }) => lines.some(({ key }) => key === 'full.on'))
    expect(full?.lines.map(({ key }) => key)).toEqual(expect.arrayContaining(['full.polarity', 'full.fuse']))
  })

  it('gives a reading its unit, its words and its limits, and those in volts under the names of the calls', () => {
    const offLoad = linesOf(list).find(({ key }) => key === 'supply-alone.off-load-1')
    // 12 V ± 5 %
    expect(offLoad).toMatchObject({ unit: 'V', lowV: 11.4, highV: 12.6, writes: true })
    expect(offLoad?.expect).toBe('11.4\u00a0V to 12.6\u00a0V')
    const mains = linesOf(list).find(({ key }) => key === 'before.mains-volts')
    // EN 50160: 230 V ± 10 %
    expect(mains).toMatchObject({ lowV: 207, highV: 253, who: 'qualified' })
  })

  it('names each line by a key of its own', () => {
    const keys = keysOf(list)
    expect(new Set(keys).size).toBe(keys.length)
  })

  it('says a danger in every stage it belongs to, and anything less once', () => {
    const said = list.stages.flatMap(({ lines }) => lines.flatMap(({ caution }) => (caution ? [caution] : [])))
    const lesser = said.filter(({ signal }) => signal !== 'DANGER').map(({ hazard }) => hazard)
    expect(lesser.length).toBeGreaterThan(2)
    expect(new Set(lesser).size).toBe(lesser.length)
    const dangers = said.filter(({ signal }) => signal === 'DANGER').map(({ hazard }) => hazard)
    expect(new Set(dangers).size).toBeLessThan(dangers.length)
  })

  it('leaves room for what is seen at first power: lamps, movement, sounds, smell, current', () => {
    for (const name of ['lamps', 'moves', 'sounds', 'smells', 'drawn'])
      expect(linesOf(list).find(({ key }) => key === `together.${name}`)).toMatchObject({ writes: true })
  })

  it('watches before it switches off', () => {
    const keys = keysOf(list)
    expect(keys.indexOf('together.lamps')).toBeLessThan(keys.indexOf('together.off'))
  })
})

describe('a case with a stop', () => {
  const wrong: CheckRequest = {
    ...matching,
    supply: {
      ...matching.supply,
      label: 'INPUT 120V~ 60Hz 18W OUTPUT 12V DC 2A centre positive',
      technology: 'transformer',
    },
  }
  const list = listOf(wrong)

  it('begins with what must change and never plugs the supply in', () => {
    expect(list.verdict).toBe('do-not-connect')
    expect(list.stages[0]?.lines[1]?.text).toMatch(/^Must change first \(mains voltage\)/)
    expect(keysOf(list).some((key) => key.endsWith('.switch-on') || key.startsWith('full.'))).toBe(false)
    expect(list.stages.every(({ pause }) => !/full mains|reduced-current/.test(pause ?? ''))).toBe(true)
  })

  it('still lets the machine be tried alone on a bench supply', () => {
    expect(keysOf(list)).toContain('bench-supply.step-1')
  })
})

describe('only lines that apply', () => {
  it('has no fuse line where no fuse-link is known, no polarity for ac, no selector for one window', () => {
    const ac: CheckRequest = {
      site: { country: 'GB' },
      supply: { label: 'INPUT 230V~ 50Hz OUTPUT 9V~ 1A', inlet: 'captive', technology: 'transformer' },
      device: { label: 'POWER IN 9V~ 0.8A' },
    }
    const keys = keysOf(listOf(ac))
    expect(keys.some((key) => /fuse|selector/.test(key))).toBe(false)
    expect(keys.some((key) => key.startsWith('before.polarity') || key === 'full.polarity')).toBe(false)
  })

  it('asks for the selector’s position where there is one, and names the right one', () => {
    const list = listOf({
      ...matching,
      supply: {
        ...matching.supply,
        label: 'INPUT 115/230V~ 50/60Hz 1A/0.5A OUTPUT 12V DC 2A',
        input: { selectorV: 230 },
      },
    })
    expect(linesOf(list).find(({ key }) => key === 'before.selector')).toMatchObject({ low: 230, high: 230 })
  })

  it('has the earth proved for class I, by a qualified person, and not for class II', () => {
    const classOne = listOf({
      ...matching,
      supply: { ...matching.supply, label: matching.supply.label?.replace('CLASS II', 'CLASS I'), inlet: 'C14' },
    })
    expect(linesOf(classOne).find(({ key }) => key === 'before.earth')?.who).toBe('qualified')
    expect(keysOf(listOf(matching))).not.toContain('before.earth')
  })
})

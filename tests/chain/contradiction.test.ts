import { describe, expect, it } from 'vitest'
import type { Outcome, TopicName } from '../../server/chain/finding.js'
import { assess, reviewFuse } from '../support/told.js'
import { changed, findingsOn, onlyFinding } from './cases.js'

type Changes = Parameters<typeof changed>[0]
const plate = (label: string): Changes => ({ supply: { label } })
const machine = (label: string): Changes => ({ device: { label } })

interface Row {
  name: string
  topic: TopicName
  by: Changes
  is: Outcome
  says: RegExp
}

describe('an entry against the words of a plate decides, and what it overrules is told where that would be worse', () => {
  it.each<Row>([
    {
      name: 'class I, entered II',
      topic: 'earthing',
      by: plate('INPUT 230V~ 50Hz CLASS I'),
      is: 'unknown',
      says: /the plate’s text says class I, class II was entered/,
    },
    {
      name: '120 V, entered 230 V',
      topic: 'mains-voltage',
      by: plate('INPUT 120V~ 60Hz'),
      is: 'unknown',
      says: /says 120.V, 230.V was entered/,
    },
    {
      name: 'a selector of 115 V and 230 V, entered 230 V',
      topic: 'mains-voltage',
      by: plate('INPUT 115/230V~ 50/60Hz'),
      is: 'unknown',
      says: /says 115.V or 230.V, 230.V was entered/,
    },
    {
      name: '12 V DC in, entered 230 V',
      topic: 'mains-voltage',
      by: plate('INPUT 12V DC'),
      is: 'unknown',
      says: /says 12.V DC, 230.V was entered/,
    },
    {
      name: '60 Hz, entered 50 Hz, of a transformer',
      topic: 'mains-frequency',
      by: { supply: { label: 'INPUT 230V~ 60Hz', technology: 'transformer' } },
      is: 'unknown',
      says: /says 60.Hz, 50.Hz was entered/,
    },
    {
      name: 'unregulated, entered regulated',
      topic: 'output-voltage',
      by: plate('UNREGULATED'),
      is: 'unknown',
      says: /says unregulated, regulated was entered/,
    },
    {
      name: 'transformer, entered switch-mode, for the wrong frequency',
      topic: 'mains-frequency',
      by: { supply: { label: 'PLUG-IN TRANSFORMER', input: { frequenciesHz: [60] } } },
      is: 'unknown',
      says: /says transformer, switch-mode was entered/,
    },
    {
      name: 'AC out, entered DC',
      topic: 'output-kind',
      by: plate('INPUT 230V~ 50Hz OUTPUT 12V~ 2A'),
      is: 'unknown',
      says: /says AC, DC was entered/,
    },
    {
      name: '19 V out, entered 12 V',
      topic: 'output-voltage',
      by: plate('INPUT 230V~ 50Hz OUTPUT 19V DC 2A'),
      is: 'unknown',
      says: /says 19.V, 12.V was entered/,
    },
    {
      name: 'centre negative, entered centre positive',
      topic: 'polarity',
      by: plate('OUTPUT 12V DC 2A centre negative'),
      is: 'unknown',
      says: /says centre negative, centre positive was entered/,
    },
    {
      name: 'a jack of centre negative, entered centre positive',
      topic: 'polarity',
      by: machine('DC 12V 1A centre negative'),
      is: 'unknown',
      says: /says centre negative, centre positive was entered/,
    },
    {
      name: 'a machine for 9 V, entered 12 V',
      topic: 'output-voltage',
      by: machine('DC 9V 1A'),
      is: 'unknown',
      says: /says 9.V, 12.V was entered/,
    },
    {
      name: '12 V out, entered −12 V for a machine of −12 V',
      topic: 'output-voltage',
      by: {
        supply: { label: 'INPUT 230V~ 50Hz OUTPUT 12V DC 2A', outputs: [{ kind: 'dc', voltageV: -12, currentA: 2 }] },
        device: { inputs: [{ kind: 'dc', voltageV: -12, currentA: 1 }] },
      },
      is: 'unknown',
      says: /says 12.V, −12.V was entered/,
    },
    {
      name: 'a machine for −12 V, entered 12 V',
      topic: 'output-voltage',
      by: machine('DC -12V 1A'),
      is: 'unknown',
      says: /says −12.V, 12.V was entered/,
    },
    {
      name: 'a machine for ±12 V, entered 12 V alone',
      topic: 'output-voltage',
      by: machine('+12V 1A, -12V 0.1A DC'),
      is: 'unknown',
      says: /says 12.V and −12.V, 12.V was entered/,
    },
    {
      name: '±12 V out of a plug of two contacts, entered 12 V alone',
      topic: 'output-voltage',
      by: plate('INPUT 230V~ 50Hz OUTPUT +12V 2A -12V 2A'),
      is: 'unknown',
      says: /says 12.V and −12.V, 12.V was entered/,
    },
    // amperes and watts likewise: too few of them overload a supply, a cord or a lead
    {
      name: '500 mA out, entered 2 A',
      topic: 'output-current',
      by: plate('INPUT 230V~ 50Hz OUTPUT 12V DC 500mA'),
      is: 'unknown',
      says: /says 500.mA at 12.V, 2.A at 12.V was entered/,
    },
    {
      name: 'a machine of 3 A, entered 1 A',
      topic: 'output-current',
      by: machine('DC 12V 3A'),
      is: 'unknown',
      says: /says 3.A at 12.V, 1.A at 12.V was entered/,
    },
    {
      name: '4 A in, entered 0.2 A, on a cord of 2.5 A',
      topic: 'cord',
      by: plate('INPUT 230V~ 50Hz 4A'),
      is: 'unknown',
      says: /says 4.A, 200.mA was entered/,
    },
  ])('$name: $topic is $is', ({ topic, by, is, says }) => {
    const finding = onlyFinding(topic, changed(by))
    expect(finding.outcome).toBe(is)
    expect(finding.title).toMatch(says)
    expect(finding.action).toMatch(/Look at the plate again/)
    expect(finding.working.join('\n')).toMatch(/without the entry: /)
  })

  it.each([
    { name: 'says the same', by: plate('INPUT 230V~ 50Hz 0.2A OUTPUT 12V DC 2A centre positive ⧈') },
    { name: 'says what would be no worse', by: plate('INPUT 100-240V~ 50/60Hz 0.2A OUTPUT 12V DC 3A') },
    { name: 'says less', by: plate('OUTPUT 12V DC') },
    { name: 'gives a range in which the entry lies', by: plate('OUTPUT 9-15V DC 2A') },
    { name: 'lists positions of which one is entered', by: plate('OUTPUT 9/12V DC 2A') },
    { name: 'lists fixed voltages of USB of which one is entered', by: plate('OUTPUT 5V/9V/12V 2A') },
    {
      name: 'gives more than was measured of the machine',
      by: {
        device: { label: 'DC 12V 3A', inputs: [{ kind: 'dc', voltageV: 12, currentA: 1, currentIs: 'measured' }] },
      },
    },
    {
      name: 'lists a further output, with the one on the plug measured',
      by: { supply: { label: 'OUTPUT +12V 2A, +5V 1A', measured: { offLoadV: 12.1 } } },
    },
  ])('a plate that $name changes nothing', ({ by }) => {
    const answer = assess(changed(by))
    expect(answer.verdict).toBe('no-conflict-found')
    expect(answer.findings.map(({ title }) => title).join('\n')).not.toMatch(/was entered/)
  })

  it('an entry that comes to worse than the plate is not softened', () => {
    const label = 'INPUT 230V~ 50Hz'
    const entered = { label, input: { voltages: [{ min: 120, max: 120 }] } }
    expect(onlyFinding('mains-voltage', changed({ supply: entered }))).toMatchObject({
      outcome: 'stop',
      title: expect.not.stringMatching(/was entered/),
    })
  })

  it('tells of the rail it is about alone', () => {
    const request = changed({
      supply: {
        label: 'OUTPUT +5V 2A, +12V 2A DC',
        outputs: [
          { kind: 'dc', voltageV: 5, currentA: 4 },
          { kind: 'dc', voltageV: 12, currentA: 2 },
        ],
      },
      device: {
        inputs: [
          { kind: 'dc', voltageV: 5, currentA: 3 },
          { kind: 'dc', voltageV: 12, currentA: 1 },
        ],
      },
    })
    const told = findingsOn('output-current', request).filter(({ title }) => /was entered/.test(title))
    expect(told.map(({ title }) => title)).toEqual([expect.stringMatching(/^5.V/)])
  })
})

describe('an entry against the country’s list', () => {
  const own120 = { input: { voltages: [{ min: 120, max: 120 }], frequenciesHz: [60] } }
  it('decides, with a caution where the listed mains would be worse', () => {
    const finding = onlyFinding('mains-voltage', changed({ site: { voltageV: 120 }, supply: own120 }))
    expect(finding.outcome).toBe('caution')
    expect(finding.title).toMatch(/the tables list 230.V 50.Hz for DE, 120.V 50.Hz was entered/)
  })
  it('of a frequency likewise', () => {
    const iron = { technology: 'transformer' as const, input: { frequenciesHz: [60] } }
    expect(onlyFinding('mains-frequency', changed({ site: { frequencyHz: 60 }, supply: iron }))).toMatchObject({
      outcome: 'caution',
      title: expect.stringMatching(/the tables list .* was entered/),
    })
  })
  it('within the listed band contradicts nothing', () => {
    for (const voltageV of [220, 230, 240, 250])
      expect(onlyFinding('mains-voltage', changed({ site: { voltageV } })).title).not.toMatch(/was entered/)
  })
  it('changes nothing where the supply suits both', () => {
    const wide = { input: { voltages: [{ min: 100, max: 240 }], frequenciesHz: [50, 60] } }
    expect(assess(changed({ site: { voltageV: 120, frequencyHz: 60 }, supply: wide })).verdict).toBe(
      'no-conflict-found',
    )
  })
})

describe('what is entered of a fuse-link against its marking', () => {
  const review = (fuse: NonNullable<Parameters<typeof reviewFuse>[0]['fuse']>) =>
    reviewFuse({
      marking: 'T2AL250V',
      prescribed: 'T500mAL250V',
      fuse,
      position: 'mains',
      circuit: { voltageV: 230, currentA: 0.2 },
    })
  it.each([
    { fuse: { ratedA: 0.5 }, says: /reads T 2.A L 250.V, T 500.mA L 250.V was entered/ },
    { fuse: { ratedA: 0.5, characteristic: 'F' as const }, says: /F 500.mA L 250.V was entered/ },
    { fuse: { breaking: 'H' as const }, says: /T 2.A H 250.V was entered/ },
  ])('$fuse leaves it unknown, and names both', ({ fuse, says }) => {
    const found = review(fuse).findings.filter(({ title }) => says.test(title))
    expect(found.map(({ outcome }) => outcome)).toEqual(['unknown'])
  })
  it('is not decided: the entry is reviewed, and nobody is told to keep it', () => {
    expect(review({ ratedA: 0.5 })).toMatchObject({ outcome: 'find-out-first', fitted: { ratedA: 0.5 } })
    expect(review({}).outcome).toBe('replace')
  })
  it('is not spoken of where both agree, or only one speaks', () => {
    const titles = (found: ReturnType<typeof review>) => found.findings.map(({ title }) => title).join()
    expect(titles(review({ ratedA: 2, ratedV: 250 }))).not.toMatch(/was entered/)
    expect(titles(review({ scheme: 'IEC' }))).not.toMatch(/was entered/)
  })
})

import { describe, expect, it } from 'vitest'
import { readPlate } from '../../server/plate/readPlate.js'

/** What a person reads, from the head: inputs, outputs and fuses as "230 2A", "-12 dc 0.3A". */
const figures = (text: string) => {
  const { input, outputs, fuse } = readPlate(text)
  const rail = ({ voltageV, voltageMaxV, kind, currentA }: (typeof outputs)[number]): string =>
    [voltageMaxV === null ? voltageV : `${voltageV}..${voltageMaxV}`, kind, currentA === null ? null : `${currentA}A`]
      .filter((part) => part !== null)
      .join(' ')
  return {
    in: input?.voltages.map(({ min }) => min).join('/') ?? null,
    inA: input?.currentA ?? null,
    out: outputs.map(rail).join(', '),
    fuse,
  }
}

describe('how far a word or a sign reaches', () => {
  it.each([
    ['a fuse three words before its amperes', 'INPUT 230V~ 1A\nSICHERUNG AUF DER PLATINE 2A', { inA: 1, fuse: '2A' }],
    [
      'figures far behind a fuse are the plate’s',
      'FUSE HOLDER AT THE REAR OF THE CASE. 230V~ 2A',
      { in: '230', inA: 2 },
    ],
    ['and no fuse is made of them', 'FUSE HOLDER AT THE REAR OF THE CASE. 230V~ 2A', { fuse: null }],
    [
      'a minus set off from its figures, the plus of the others well before it',
      '+ 12V 1A 12W MAX. 2A PEAK 24W (CONTINUOUS)\n- 12V 0.3A',
      { out: '12 1A, -12 dc 0.3A' },
    ],
    [
      'the same with the plus well after it',
      '- 12V 0.3A 4W MAX. 0.5A PEAK (CONTINUOUS)\n+ 12V 1A',
      { out: '-12 dc 0.3A, 12 1A' },
    ],
    ['a hyphen alone is no minus', '- 12V 0.3A', { out: '12 0.3A' }],
    // the figure behind the word counts the outputs, where the tilde belongs to the volts
    ['a tilde joined to the volts behind the number of an output', 'OUTPUT 1 ~9V 1A', { out: '9 ac 1A' }],
    [
      'the same with a second output behind it',
      'INPUT 230V~ 50Hz OUTPUT 1 ~9V 1A OUTPUT 2 12V DC 2A',
      { out: '9 ac 1A, 12 dc 2A' },
    ],
    ['the same in another language', 'AUSGANG 1 ~9V 1A', { out: '9 ac 1A' }],
    ['a tilde joined to both sides is a range', 'OUTPUT 3~9V 1A', { out: '3..9 1A' }],
    ['so is one behind more than there are outputs', 'OUTPUT 6 ~12V 1A', { out: '6..12 1A' }],
    ['an equals sign behind the number of an output says nothing of its kind', 'OUTPUT 1=9V~ 1A', { out: '9 ac 1A' }],
  ])('%s', (_name, text, expected) => {
    expect(figures(text)).toMatchObject(expected)
  })
})

describe('figures that repeat or bound others', () => {
  it.each([
    ['watts of two outputs together name no third and fourth', '5V 3A\n12V 2A\n5/12V 30W', '5 3A, 12 2A'],
    ['bounds in brackets', '24V (22-28V) 2A', '24 2A'],
    ['bounds in brackets behind its amperes', 'OUTPUT 24V 2A (22-28V)', '24 2A'],
    ['bounds behind amperes, with the unit twice', 'OUTPUT 13.8V 3A (13.2V-14.2V)', '13.8 3A'],
    ['bounds behind amperes, with a word', 'OUTPUT 24V 2A (ADJ 22-28V)', '24 2A'],
    ['bounds behind watts', 'OUTPUT 24V 48W (22-28V)', '24'],
    ['bounds of the second of two outputs', 'OUTPUT 12V 2A 24V 1A (22-28V)', '12 2A, 24 1A'],
    ['another voltage behind amperes is another output', 'OUTPUT 12V 2A (5V 1A)', '12 2A, 5 1A'],
    ['bounds with the middle between them', '24V (22-24-28V) 2A', '24 2A'],
    ['bounds round two rated voltages', '24V/48V (22-56V)', '24, 48'],
    ['a plus beside either kind says neither', '+12V AC/DC 1A', '12 1A'],
    ['a range in brackets that leaves the voltage out bounds nothing', '24V (9-15V)', '24, 9..15'],
  ])('%s', (_name, text, out) => {
    expect(figures(text).out).toBe(out)
  })
})

describe('what a mains side says beside its voltage', () => {
  it.each([
    ['of two currents the larger', 'INPUT 100-240V~ 50/60Hz 1.5A 0.8A', { in: '100', inA: 1.5 }],
    ['of the currents of two settings the larger', 'INPUT 115V~ 2A 230V~ 1A 50Hz', { in: '115/230', inA: 2 }],
    ['volts of direct current are no further setting', 'INPUT 230V AC 50Hz, 300V DC', { in: '230' }],
    [
      'the rated voltage of an inlet or a fuse is no further setting',
      'INPUT 120V 60Hz 1A\n250V',
      { in: '120', inA: 1 },
    ],
    ['nor behind the word for a fuse', 'INPUT 120V~ 60Hz FUSE 250V', { in: '120' }],
  ])('%s', (_name, text, expected) => {
    expect(figures(text)).toMatchObject(expected)
  })

  it('gives no output the currents of a line that does not stand below as many voltages in one line', () => {
    expect(figures('OUTPUT 5V\n12V\n2A 1A').out).toBe('5, 12')
    expect(figures('OUTPUT 5V 12V\n2A 1A').out).toBe('5 2A, 12 1A')
  })
})

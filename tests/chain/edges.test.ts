import { describe, expect, it } from 'vitest'
import type { Pin } from '../../server/chain/case/request.js'
import type { Outcome, TopicName } from '../../server/chain/finding.js'
import { outcomes } from '../../server/chain/finding.js'
import { changed, findingsOn } from './cases.js'

type Changes = Parameters<typeof changed>[0]

const worst = (topic: TopicName, changes: Changes): Outcome | undefined => {
  const found = findingsOn(topic, changed(changes))
  return outcomes.find((outcome) => found.some((one) => one.outcome === outcome))
}

const plate = (min: number, max = min): Changes => ({ supply: { input: { voltages: [{ min, max }] } } })
const us = (min: number, max = min): Changes => ({ ...plate(min, max), site: { country: 'US', socket: null } })
const bare = (voltageV: number, frequencyHz = 50) => ({ country: null, voltageV, frequencyHz })
const drawn = (currentA: number): Changes => ({ supply: { input: { currentA } } })
const rail = (voltageV: number, measuredV: number | null = null): Pin => ({
  id: '1',
  role: 'rail',
  kind: 'dc',
  voltageV,
  measuredV,
})
const joined = (given: Pin, wanted: Pin): Changes => ({
  supply: { outputs: null, pins: [given, { id: '2', role: 'return' }] },
  device: { inputs: null, pins: [wanted, { id: '2', role: 'return' }] },
})
const coded = (name: string, voltageV: number): Changes => {
  const plug = { outerMm: null, innerMm: null, name }
  return {
    supply: { plug, outputs: [{ kind: 'dc', voltageV, currentA: 2 }] },
    device: { jack: plug, inputs: [{ kind: 'dc', voltageV, currentA: 1 }] },
  }
}
const usb = (voltageV: number): Changes => ({
  supply: { outputs: [{ kind: 'dc', voltageV, currentA: 2 }], plug: { name: 'USB-C' } },
  device: { inputs: [{ kind: 'dc', voltageV, currentA: 1 }] },
})
const set = (selectorV: number): Changes => ({
  supply: {
    input: {
      voltages: [
        { min: selectorV / 2, max: selectorV / 2 },
        { min: selectorV, max: selectorV },
      ],
      selectorV,
    },
  },
})
const wire = { plug: 'CEE 7/7', connector: null, ratedA: 16, plugFitted: null }
const british = (currentA: number, areaMm2: number | null = null): Changes => ({
  ...drawn(currentA),
  site: { country: 'GB', socket: 'G' },
  cord: { plug: 'BS 1363', connector: null, ratedA: 13, areaMm2, plugFitted: null },
})

/** Each row: what is just on one side of a limit, and just on the other. Worked by hand from the limit that is named. */
interface Edge {
  topic: TopicName
  limit: string
  within: Changes
  is: Outcome
  beyond: Changes
  becomes: Outcome
}

describe('both sides of each limit', () => {
  it.each<Edge>([
    // 150 V / 153 V = 0.980: the plate is this mains within 2 %; 150 V / 153.1 V is not, and the band of ±10 % begins at 135 V < 0.90 × 153.1 V
    {
      topic: 'mains-voltage',
      limit: 'a plate 2 % above the mains',
      within: { ...plate(153), site: bare(150) },
      is: 'clear',
      beyond: { ...plate(153.1), site: bare(150) },
      becomes: 'caution',
    },
    // ANSI C84.1 range A of 120 V is 114 V to 126 V: 114 V / 0.90 = 126.67 V
    {
      topic: 'mains-voltage',
      limit: 'bottom of the band at 0.90 of the plate',
      within: us(126.6),
      is: 'clear',
      beyond: us(126.7),
      becomes: 'caution',
    },
    // a single voltage was tested to +6 %: the band of 230 V in GB is 216.2 V to 253 V, and 253 V / 1.06 = 238.68 V
    {
      topic: 'mains-voltage',
      limit: 'top of the band at 1.06 of the plate',
      within: { ...plate(238.7), site: { country: 'GB', socket: null } },
      is: 'clear',
      beyond: { ...plate(238.6), site: { country: 'GB', socket: null } },
      becomes: 'caution',
    },
    // a window that spans 1.5 times was tested to +10 %: 97.5 V / 1.5 = 65 V, and the 107 V of Japan lie between 1.06 and 1.10 × 97.5 V
    {
      topic: 'mains-voltage',
      limit: 'a window of 1.5 times',
      within: { ...plate(65, 97.5), site: { country: 'JP', socket: null } },
      is: 'clear',
      beyond: { ...plate(65.1, 97.5), site: { country: 'JP', socket: null } },
      becomes: 'caution',
    },
    // supplies state 47 Hz to 63 Hz, nominal frequencies agree within 1 %: 46.53 Hz and 63.63 Hz
    {
      topic: 'mains-frequency',
      limit: 'the lowest frequency that supplies state',
      within: { site: bare(230, 46.53) },
      is: 'clear',
      beyond: { site: bare(230, 46.5) },
      becomes: 'unknown',
    },
    {
      topic: 'mains-frequency',
      limit: 'the highest frequency that supplies state',
      within: { site: bare(230, 63.63) },
      is: 'clear',
      beyond: { site: bare(230, 63.7) },
      becomes: 'unknown',
    },
    // sets of the 125 V class serve mains up to 130 V
    {
      topic: 'cord',
      limit: 'the class of 125 V',
      within: { ...plate(100, 240), site: bare(130, 60), cord: { plug: 'NEMA 1-15', ratedV: 125 } },
      is: 'clear',
      beyond: { ...plate(100, 240), site: bare(131, 60), cord: { plug: 'NEMA 1-15', ratedV: 125 } },
      becomes: 'stop',
    },
    // IEC 60335-1 table 11: 0.5 mm² up to 3 A at 2 m, 0.75 mm² up to 6 A, 1.0 mm² up to 10 A (0.75 mm² at 2 m), 1.5 mm² up to 16 A (1.0 mm² at 2 m)
    {
      topic: 'cord',
      limit: '3 A of 0.5 mm²',
      within: { ...drawn(3), cord: { ...wire, areaMm2: 0.5 } },
      is: 'caution',
      beyond: { ...drawn(3.1), cord: { ...wire, areaMm2: 0.5 } },
      becomes: 'stop',
    },
    {
      topic: 'cord',
      limit: '6 A of 0.75 mm²',
      within: { ...drawn(6), cord: { ...wire, areaMm2: 0.75 } },
      is: 'clear',
      beyond: { ...drawn(6.1), cord: { ...wire, areaMm2: 0.75 } },
      becomes: 'caution',
    },
    {
      topic: 'cord',
      limit: '10 A of 0.75 mm²',
      within: { ...drawn(10), cord: { ...wire, areaMm2: 0.75 } },
      is: 'caution',
      beyond: { ...drawn(10.1), cord: { ...wire, areaMm2: 0.75 } },
      becomes: 'stop',
    },
    {
      topic: 'cord',
      limit: '10 A of 1.0 mm²',
      within: { ...drawn(10), cord: { ...wire, areaMm2: 1 } },
      is: 'clear',
      beyond: { ...drawn(10.1), cord: { ...wire, areaMm2: 1 } },
      becomes: 'caution',
    },
    // BS 1363-1 table 2: 3 A for 0.5 mm²; the next BS 1362 value is 5 A
    {
      topic: 'cord',
      limit: 'the plug fuse-link that 0.5 mm² allows',
      within: british(2.9, 0.5),
      is: 'caution',
      beyond: british(3.1, 0.5),
      becomes: 'stop',
    },
    // an output more than 10 % above its plate with nothing connected is taken as unregulated: 12 V, 13.2 V
    {
      topic: 'output-voltage',
      limit: 'off load 10 % above the plate, where nobody says whether it is regulated',
      within: { supply: { regulated: null, technology: null, measured: { offLoadV: 13.2 } } },
      is: 'caution',
      beyond: { supply: { regulated: null, technology: null, measured: { offLoadV: 13.21 } } },
      becomes: 'stop',
    },
    // JEITA RC-5320A type 4: 10.5 V to 13.5 V
    {
      topic: 'dc-plug',
      limit: 'top of the class of type 4',
      within: coded('EIAJ-04', 13.5),
      is: 'clear',
      beyond: coded('EIAJ-04', 13.6),
      becomes: 'caution',
    },
    {
      topic: 'dc-plug',
      limit: 'bottom of the class of type 4',
      within: coded('EIAJ-04', 10.5),
      is: 'clear',
      beyond: coded('EIAJ-04', 10.4),
      becomes: 'caution',
    },
    // a contact is that of its map within 10 %: 12 V, 10.8 V to 13.2 V
    {
      topic: 'pins',
      limit: 'a reading 10 % above the map',
      within: joined(rail(12, 13.2), rail(12)),
      is: 'clear',
      beyond: joined(rail(12, 13.21), rail(12)),
      becomes: 'stop',
    },
    {
      topic: 'pins',
      limit: 'a reading 10 % below the map',
      within: joined(rail(12, 10.8), rail(12)),
      is: 'clear',
      beyond: joined(rail(12, 10.79), rail(12)),
      becomes: 'stop',
    },
    {
      topic: 'pins',
      limit: 'a contact 10 % above what the machine wants there',
      within: joined(rail(13.2, 13.2), rail(12)),
      is: 'clear',
      beyond: joined(rail(13.21, 13.21), rail(12)),
      becomes: 'stop',
    },
    // a USB source gives 5 V by itself, within 10 %: 5.5 V
    {
      topic: 'output-voltage',
      limit: 'what a USB source gives unasked',
      within: usb(5.5),
      is: 'clear',
      beyond: usb(5.51),
      becomes: 'unknown',
    },
    // 1.10 times the position that a selector is set to: 150 V, 165 V
    {
      topic: 'mains-voltage',
      limit: 'the mains 10 % above the position of the selector',
      within: { ...set(150), site: bare(165) },
      is: 'caution',
      beyond: { ...set(150), site: bare(165.01) },
      becomes: 'stop',
    },
  ])('$topic, $limit: $is, and beyond it $becomes', ({ topic, within, is, beyond, becomes }) => {
    expect(worst(topic, within)).toBe(is)
    expect(worst(topic, beyond)).toBe(becomes)
  })
})

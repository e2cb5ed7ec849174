import { heedful, open, passes, plated, type Situation } from './situation.js'

const DE = { country: 'DE', socket: 'F' }
const GB = { country: 'GB', socket: 'G' }
const US = { country: 'US', socket: 'B' }
const out = 'OUTPUT 12V DC 2A'
const label = `INPUT 100-240V~ 50/60Hz 0.5A ${out}`
const threeCore = { plug: 'CEE 7/7', connector: 'C13', ratedV: 250, ratedA: 10, earthed: true }
const C14 = { inlet: 'C14' }

const chassis = 'class I is only as good as the weakest link of its earth (IEC 61140)'
const classZero =
  'class 0 has basic insulation and no earth, class 0I an earth wire beside a two-core flex: neither is class II (IEC 61140; Japanese ordinances, from memory)'
const museum = 'plugs and sockets of the countries (Museum of Plugs and Sockets; IEC list)'

/** Class of protection, cord, plug, socket, inlet. */
export const earthAndCordSituations: Situation[] = [
  {
    name: 'a plate of class 0 on a unit with a figure-of-eight inlet',
    because: classZero,
    request: plated(DE, `${label} CLASS 0`),
    is: { earthing: open },
  },
  {
    name: 'a plate of class 0I on a captive flex',
    because: classZero,
    request: plated(
      { country: 'JP', socket: 'A', voltageV: 100, frequencyHz: 50 },
      `AC100V 50/60Hz 20W クラス0I ${out}`,
      {
        inlet: 'captive',
      },
    ),
    is: { earthing: open },
  },
  {
    name: 'a plate of class 01, the Japanese way, on a figure-of-eight inlet',
    because: classZero,
    request: plated(
      { country: 'JP', socket: 'A', voltageV: 100, frequencyHz: 50 },
      `AC100V 50/60Hz 20W CLASS 0I ${out}`,
    ),
    is: { earthing: open },
  },
  {
    name: 'a plate that asks for an earth, on an inlet without one',
    because: 'the maker says in words what class I means; the inlet is another unit’s or was changed',
    request: plated(DE, `${label} THIS APPLIANCE MUST BE EARTHED`),
    is: { earthing: open },
  },
  {
    name: 'the same in North American words',
    because: 'grounded is earthed',
    request: plated(US, `${label} THIS UNIT MUST BE GROUNDED`),
    is: { earthing: open },
  },
  {
    name: 'the same in German words',
    because: 'Schutzkontakt is the protective contact',
    request: plated(DE, `${label} NUR AN SCHUTZKONTAKTSTECKDOSE ANSCHLIESSEN`),
    is: { earthing: open },
  },
  {
    name: 'a North American class 2 unit with a three-pole inlet on a two-core cord',
    because: 'class 2 of the NEC limits power and says nothing of insulation',
    request: plated(US, `CLASS 2 POWER SUPPLY INPUT 120V 60Hz ${out}`, C14, {
      cord: { plug: 'NEMA 1-15', connector: 'C13', ratedV: 125, ratedA: 10, earthed: false },
    }),
    is: { earthing: ['stop'] },
  },
  {
    name: 'a class 2 unit on a captive flex',
    because: 'as above: the class of protection is not told',
    request: plated(
      US,
      `CLASS 2 POWER UNIT INPUT 120V 60Hz ${out}`,
      { inlet: 'captive' },
      {
        cord: { plug: 'NEMA 1-15', connector: 'captive', ratedV: 125, ratedA: 10, earthed: false },
      },
    ),
    is: { earthing: ['unknown'] },
  },
  {
    name: 'a three-pin plug through an adapter with two',
    because: chassis,
    request: plated(US, label, C14, {
      cord: { ...threeCore, plug: 'NEMA 5-15', ratedV: 125, adapter: { earthed: false } },
    }),
    is: { earthing: ['stop'], socket: ['caution'] },
  },
  {
    name: 'a CEE 7/7 plug in a Danish socket',
    because: `${chassis}; it goes in and meets no earth pin (${museum})`,
    request: plated({ country: 'DK', socket: 'K' }, label, C14, { cord: threeCore }),
    is: { earthing: open },
  },
  {
    name: 'a CEE 7/7 plug in Italy, the socket not looked at',
    because: `${chassis}; ${museum}`,
    request: plated({ country: 'IT' }, label, C14, { cord: threeCore }),
    is: { earthing: open, socket: open },
  },
  {
    name: 'a CEE 7/7 plug in Switzerland, the socket not looked at',
    because: museum,
    request: plated({ country: 'CH' }, label, C14, { cord: threeCore }),
    is: { socket: open },
  },
  {
    name: 'a CEE 7/16 plug in Switzerland on a class II unit',
    because: `it is made to go into all two-pole 10 A and 16 A sockets of Europe (EN 50075)`,
    request: plated({ country: 'CH', socket: 'J' }, label),
    is: { socket: passes, earthing: passes, cord: passes },
  },
  {
    name: 'a CEE 7/16 plug in a British socket, pushed in with a pen in the earth hole',
    because: 'the shutters are there to be left alone (BS 1363; common practice)',
    request: plated(GB, label),
    is: { socket: ['stop'] },
  },
  {
    name: 'a shaver plug in a British socket',
    because: 'a shaver unit is another outlet, of 20 VA (BS 4573, IEC 61558-2-5)',
    request: plated(GB, label, {}, { cord: { plug: 'BS 4573' } }),
    is: { socket: open },
  },
  {
    name: 'a supply of 24 VA out on a shaver plug',
    because: 'a shaver plug carries 0.2 A (BS 4573): 24 W / 0.75 / 0.6 is 53 VA, 0.23 A at 230 V',
    request: plated(GB, `INPUT 230V~ 50Hz ${out}`, {}, { cord: { plug: 'BS 4573', ratedA: 2.5 } }),
    is: { cord: ['stop'] },
  },
  {
    name: 'a 5 A plug of India’s small socket in the large one',
    because: 'BS 546: each rating has its own pins',
    request: plated({ country: 'IN', socket: 'M' }, label, C14, { cord: { ...threeCore, plug: 'BS 546 5 A' } }),
    is: { socket: ['stop'] },
  },
  {
    name: 'a polarised American plug in a Japanese two-slot outlet',
    because: 'the wide blade does not go into two narrow slots (JIS C 8303)',
    request: plated(
      { country: 'JP', socket: 'A', voltageV: 100, frequencyHz: 60 },
      label,
      {},
      { cord: { plug: 'NEMA 1-15P', ratedV: 125, ratedA: 7 } },
    ),
    is: { socket: heedful },
  },
  {
    name: 'an Australian plug in Argentina',
    because:
      'same shape, line and neutral the other way round (IRAM 2073): a single-pole fuse and switch then sit in the neutral',
    request: plated({ country: 'AR', socket: 'I' }, label, C14, { cord: { ...threeCore, plug: 'AS/NZS 3112 10 A' } }),
    is: { socket: ['clear', 'caution', 'unknown', 'stop'] },
    says: { socket: /neutral|reversed|other way|pole/i },
  },
  {
    name: 'a two-pole connector on an inlet with an earth pin',
    because: 'C17 is the connector of C18; C14’s earth pin keeps it out (IEC 60320-1)',
    request: plated(DE, label, C14, {
      cord: { plug: 'CEE 7/17', connector: 'C17', ratedV: 250, ratedA: 10, earthed: false },
    }),
    is: { inlet: ['stop'], earthing: ['stop'] },
  },
  {
    name: 'a three-pole connector on an inlet without an earth pin',
    because: 'a C13 goes onto a C18: class II loses nothing (IEC 60320-1, from memory)',
    request: plated(DE, label, { inlet: 'C18' }, { cord: threeCore }),
    is: { inlet: ['clear', 'stop'], earthing: passes },
  },
  {
    name: 'a polarised figure-of-eight connector on a plain inlet',
    because: 'its square shoulder does not go into two round ones; a plain one on a square inlet does',
    request: plated(US, label, {}, { cord: { plug: 'NEMA 1-15P', connector: 'C7 polarised', ratedV: 125, ratedA: 7 } }),
    is: { inlet: ['stop'] },
  },
  {
    name: 'a clover-leaf cord on a figure-of-eight inlet',
    because: 'another standard sheet (IEC 60320-3)',
    request: plated(DE, label, {}, { cord: { ...threeCore, connector: 'C5', ratedA: 2.5 } }),
    is: { inlet: ['stop'] },
  },
  {
    name: 'a figure-of-eight cord on a clover-leaf inlet',
    because: `it can be pushed on and leaves the earth out; ${chassis}`,
    request: plated(DE, label, { inlet: 'C6' }),
    is: { inlet: ['stop'], earthing: ['stop'] },
  },
  {
    name: 'a kettle cord of hot condition on a computer’s inlet',
    because: 'a C15 goes onto a C14 (published by a cord maker)',
    request: plated(DE, label, C14, { cord: { ...threeCore, connector: 'C15' } }),
    is: { inlet: passes, earthing: passes },
  },
  {
    name: 'a 1960s inlet of its maker’s own',
    because: 'not of IEC 60320: neither current nor earth can be told',
    request: plated(DE, label, { inlet: 'two round pins, old' }, { cord: { connector: 'two round holes, old' } }),
    is: { inlet: ['unknown'], earthing: ['unknown'] },
  },
  {
    name: 'a Philippine outlet of 220 V and the cord that came from North America',
    because: 'sockets of one shape, two voltages; a cord marked 125 V is not for 220 V',
    request: plated(
      { country: 'PH', socket: 'A', voltageV: 220, frequencyHz: 60 },
      label,
      {},
      { cord: { plug: 'NEMA 1-15', ratedV: 125, ratedA: 7 } },
    ),
    is: { cord: ['stop'] },
  },
  {
    name: 'a 12 A unit for 100–240 V on a 10 A cord at 100 V',
    because: 'the amperes belong to the lowest voltage: 12 A at 100 V',
    request: plated(
      { country: 'JP', socket: 'B', voltageV: 100, frequencyHz: 60 },
      'INPUT 100-240V~ 50/60Hz 12A OUTPUT 48V DC 20A',
      C14,
      {
        cord: { ...threeCore, plug: 'JIS C 8303 three-pin', ratedV: 125 },
      },
    ),
    is: { cord: ['stop'] },
  },
  {
    name: 'the same on 230 V',
    because: '1200 VA / 230 V = 5.2 A',
    request: plated(DE, 'INPUT 100-240V~ 50/60Hz 12A OUTPUT 48V DC 20A', C14, { cord: threeCore }),
    is: { cord: passes },
  },
  {
    name: 'a thin lamp flex of 0.5 mm² behind a 13 A plug, 7 A drawn',
    because: 'IEC 60335-1 table 11 asks for 1 mm² above 6 A',
    request: plated(GB, 'INPUT 230V~ 50Hz 7A OUTPUT 48V DC 20A', C14, {
      cord: { ...threeCore, plug: 'BS 1363', areaMm2: 0.5 },
    }),
    is: { cord: ['stop'] },
  },
  {
    name: 'a 14 A load on a 13 A plug',
    because: 'BS 1363 ends at 13 A',
    request: plated(
      GB,
      'INPUT 230V~ 50Hz 14A OUTPUT 48V DC 40A',
      { inlet: 'C20' },
      { cord: { ...threeCore, connector: 'C19', plug: 'BS 1363', ratedA: 16 } },
    ),
    is: { cord: ['stop'] },
  },
  {
    name: 'a small supply on a British cord: which link',
    because: '0.5 A: the smallest to recommend is 3 A, not the 13 A that cords come with (BS 1362 preferred values)',
    request: plated(GB, label, C14, { cord: { ...threeCore, plug: 'BS 1363' } }),
    is: { cord: passes },
    says: { cord: /3 A to BS 1362/ },
  },
  {
    name: 'a Europlug cut off and replaced by hand',
    because: 'non-rewirable by its standard (EN 50075)',
    request: plated(DE, label, {}, { cord: { plugFitted: 'rewired' } }),
    is: { cord: ['stop'] },
  },
  {
    name: 'a two-core captive flex on a unit whose plate says class I',
    because: chassis,
    request: plated(
      DE,
      `${label} CLASS I`,
      { inlet: 'captive' },
      { cord: { ...threeCore, connector: 'captive', earthed: false } },
    ),
    is: { earthing: ['stop'] },
  },
  {
    name: 'a class II unit with a three-core cord and an earthed plug',
    because: 'more earth than needed is no conflict',
    request: plated(DE, `${label} ⧈`, C14, { cord: threeCore }),
    is: { earthing: passes },
  },
  {
    name: 'a class I unit behind an autotransformer',
    because: 'whether its outlet’s earth goes through is to be measured; it isolates nothing (common practice)',
    request: plated(DE, `INPUT 120V 60Hz 0.5A CLASS I ${out}`, C14, {
      cord: { ...threeCore, plug: 'NEMA 5-15', ratedV: 125 },
      converter: { kind: 'autotransformer', outputV: 120, ratedVA: 200 },
    }),
    is: { earthing: ['unknown'], converter: ['clear', 'caution'] },
    says: { converter: /does not isolate/ },
  },
  {
    name: 'a class III rhombus on a plate for 230 V',
    because: 'class III takes extra-low voltage only (IEC 61140)',
    request: plated(DE, `INPUT 230V~ 50Hz CLASS III ${out}`),
    is: { earthing: ['stop'] },
  },
  {
    name: 'an Israeli three-pin plug on a class I unit in a socket of its letter',
    because: 'plug and socket of one standard (SI 32)',
    request: plated({ country: 'IL', socket: 'H' }, label, C14, { cord: { ...threeCore, plug: 'SI 32' } }),
    is: { socket: passes, earthing: passes },
  },
  {
    name: 'a Brazilian 20 A plug in a 10 A socket',
    because: 'its pins are thicker (NBR 14136)',
    request: plated({ country: 'BR', socket: 'N', voltageV: 127 }, label, C14, {
      cord: { ...threeCore, plug: 'NBR 14136 20 A' },
    }),
    is: { socket: heedful },
  },
  {
    name: 'a plug that nobody can name',
    because: 'what cannot be named cannot be judged',
    request: plated(DE, label, {}, { cord: { plug: 'grey, two flat pins at an angle' } }),
    is: { socket: ['unknown'] },
  },
]

import { open, passes, plated, type Situation } from './situation.js'

const DE = { country: 'DE', socket: 'F' }
const input = 'INPUT 100-240V~ 50/60Hz 1.5A '
const iron = { technology: 'transformer' as const }
/** A supply by its output line, before a machine by its plate. */
const of = (output: string, machine: string, supply: Parameters<typeof plated>[2] = {}, device: object = {}) =>
  plated(DE, input + output, supply, {
    device: { label: machine, inputs: null, regulatedNeeded: null, jack: { polarity: null }, ...device },
  })

const five = 'ATX design guide 0.9, table 3: main rails are held to 5 %, none to more than 10 %'
const worn = 'a figure that cannot be read is not known (common practice)'
const destroys = 'too much, reversed or alternating voltage destroys at once (common practice)'
const overload = 'a rating below the demand overloads the supply (plate against plate)'
const idle =
  'an unregulated supply stands up to half as high again with little load (published measurements of cheap adaptors)'

/** Supply against machine: kind, volts, amperes, polarity, plug, lead. */
export const outputSituations: Situation[] = [
  {
    name: 'an AC adaptor of 9 V for a DC machine of 9 V',
    because: destroys,
    request: of('OUTPUT 9V~ 1A', 'DC 9V 500mA'),
    is: { 'output-kind': ['stop'] },
  },
  {
    name: 'a DC adaptor for a modem that wants 9 V AC',
    because: 'its voltage doubler gives nothing, or half',
    request: of('OUTPUT 9V⎓ 1A', '9V~ 1A'),
    is: { 'output-kind': ['stop'] },
  },
  {
    name: 'the words AC ADAPTER beside the volts',
    because: 'it names the unit, not its output',
    request: of('AC ADAPTER OUTPUT 9V 1A', 'DC 9V 500mA'),
    is: { 'output-kind': ['unknown'] },
  },
  {
    name: 'a machine that says USE AC ADAPTOR 9V',
    because: 'it names the unit, not what it gives',
    request: of('OUTPUT 9V~ 1A', 'USE AC ADAPTOR 9V 500mA'),
    is: { 'output-kind': ['unknown'] },
  },
  {
    name: 'a pedal with centre negative, a supply with centre positive',
    because: destroys,
    request: of('OUTPUT 9V DC 1A CENTRE POSITIVE', 'DC 9V 100mA CENTRE NEGATIVE'),
    is: { polarity: ['stop'] },
  },
  {
    name: 'a pedal, drawn, and a supply, drawn the other way',
    because: destroys,
    request: of('OUTPUT 9V DC 1A ⊖-●-⊕', 'DC 9V 100mA ⊕-●-⊖'),
    is: { polarity: open },
  },
  {
    name: 'tip negative and centre positive',
    because: 'the tip of such a plug is its centre',
    request: of('OUTPUT 9V DC 1A TIP NEGATIVE', 'DC 9V 100mA CENTRE POSITIVE'),
    is: { polarity: open },
  },
  {
    name: 'sleeve positive and centre negative',
    because: 'they say the same',
    request: of('OUTPUT 9V DC 1A SLEEVE POSITIVE', 'DC 9V 100mA CENTRE NEGATIVE'),
    is: { polarity: ['clear', 'unknown'] },
  },
  {
    name: 'a supply measured centre negative that prints nothing, for a jack of centre positive',
    because: 'measured counts',
    request: of('OUTPUT 9V DC 1A', 'DC 9V 100mA CENTRE POSITIVE', { measured: { polarity: 'centre-negative' } }),
    is: { polarity: ['stop'] },
  },
  {
    name: '±15 V for a machine of ±12 V',
    because: five,
    request: of('OUTPUT +15V 0.5A -15V 0.5A', '+12V 0.3A -12V 0.3A'),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a logic supply without the −5 V a memory wants',
    because: 'memories of three voltages are destroyed without the negative one',
    request: of('OUTPUT +5V 5A +12V 1A', '+5V 2A +12V 0.5A -5V 50mA'),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a −12 V rail too weak',
    because: overload,
    request: of('OUTPUT +5V 5A +12V 2A -12V 0.1A', '+5V 2A +12V 1A -12V 0.3A'),
    is: { 'output-current': ['stop'] },
  },
  {
    name: 'two outputs with one common for two rails of one voltage',
    because: '1 A + 1 A carry 0.9 A + 0.8 A only one on each',
    request: of(
      'OUTPUT1 12V 1A OUTPUT2 12V 1A',
      '',
      {},
      {
        inputs: [
          { kind: 'dc', voltageV: 12, currentA: 0.9 },
          { kind: 'dc', voltageV: 12, currentA: 0.8 },
        ],
      },
    ),
    is: { 'output-current': ['clear', 'unknown'] },
  },
  {
    name: 'two outputs of 1 A for one rail of 1.8 A',
    because: 'outputs are not joined: one alone gives 1 A',
    request: of('OUTPUT1 12V 1A OUTPUT2 12V 1A', 'DC 12V 1.8A'),
    is: { 'output-current': ['stop'] },
  },
  {
    name: '13.8 V of a radio supply for a 12 V machine',
    because: `15 % above (${five})`,
    request: of('OUTPUT 13.8V DC 5A', 'DC 12V 1A'),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: '12 V for a mobile radio of 13.8 V',
    because: `13 % below (${five})`,
    request: of('OUTPUT 12V DC 5A', 'DC 13.8V 3A'),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: '13.8 V for a radio that bears 15 %',
    because: 'its maker states so: 13.8 V ± 15 %',
    request: of(
      'OUTPUT 12V DC 5A',
      '',
      {},
      { inputs: [{ kind: 'dc', voltageV: 13.8, currentA: 3, tolerancePercent: 15 }] },
    ),
    is: { 'output-voltage': passes },
  },
  {
    name: '6 V for a machine of 5 V logic',
    because: `20 % above (${five})`,
    request: of('OUTPUT 6V DC 1A', '5V DC 1A'),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: '19 V for a portable of 18.5 V',
    because: `2.7 % above, within 5 % (${five})`,
    request: of('OUTPUT 19V DC 4A', 'DC 18.5V 3.5A'),
    is: { 'output-voltage': passes },
  },
  {
    name: '19.5 V for a portable of 18 V',
    because: `8.3 % above (${five})`,
    request: of('OUTPUT 19.5V DC 4A', 'DC 18V 3.5A'),
    is: { 'output-voltage': ['caution'] },
  },
  {
    name: '7.5 V for a machine that says 6–9 V',
    because: 'it lies in its range',
    request: of('OUTPUT 7.5V DC 1A', 'DC 6-9V 500mA'),
    is: { 'output-voltage': passes },
  },
  {
    name: 'a switch of 3 to 12 V, place not known, for 6 V',
    because: 'set too high it destroys at once',
    request: of('OUTPUT 3/4.5/6/7.5/9/12V DC 1A', 'DC 6V 300mA'),
    is: { 'output-voltage': open },
  },
  {
    name: 'an adjustable output of 1.5 to 15 V for 5 V',
    because: 'where it stands is not known',
    request: of('OUTPUT 1.5-15V DC 2A', 'DC 5V 1A'),
    is: { 'output-voltage': open },
  },
  {
    name: 'the first figure of the output worn',
    because: worn,
    request: of('OUTPUT ?2V DC 2A', 'DC 12V 1A'),
    is: { 'output-voltage': ['unknown'] },
  },
  {
    name: 'a gap within the output figure',
    because: `“1 2V” is 12 V or 2 V behind something worn; ${worn}`,
    request: of('OUTPUT 1 2V DC 2A', 'DC 12V 1A'),
    is: { 'output-voltage': open },
  },
  {
    name: 'the amperes worn',
    because: worn,
    request: of('OUTPUT 12V DC ?A', 'DC 12V 1A'),
    is: { 'output-current': ['unknown'] },
  },
  {
    name: 'a decimal point worn between figures',
    because: `“1 5A” may be 15 A or 1.5 A; ${worn}`,
    request: of('OUTPUT 12V DC 1 5A', 'DC 12V 2A'),
    is: { 'output-current': open },
  },
  {
    name: 'a peak of 3 A and 1.5 A for good',
    because: `the peak is none to run on; ${overload}`,
    request: of('OUTPUT 12V DC 1.5A (PEAK 3A)', 'DC 12V 2A'),
    is: { 'output-current': ['stop'] },
  },
  {
    name: 'the same, the peak first',
    because: overload,
    request: of('OUTPUT 12V DC PEAK 3A, 1.5A CONTINUOUS', 'DC 12V 2A'),
    is: { 'output-current': open },
  },
  {
    name: 'watts on one side and amperes on the other',
    because: '12 W / 12 V = 1 A, more than 0.8 A',
    request: of('OUTPUT 12V DC 0.8A', 'DC 12V 12W'),
    is: { 'output-current': ['stop'] },
  },
  {
    name: 'volt-amperes on the output',
    because: '15 VA / 12 V = 1.25 A',
    request: of('OUTPUT 12V~ 15VA', '12V~ 1.3A', iron),
    is: { 'output-current': ['stop'] },
  },
  {
    name: 'milliamperes against amperes',
    because: '1500 mA is 1.5 A',
    request: of('OUTPUT 12V DC 1500mA', 'DC 12V 1.5A'),
    is: { 'output-current': passes },
  },
  {
    name: 'a demand measured at 0.9 A, a supply of 1 A',
    because: 'a measured current misses start-up: 1.25 times is wanted',
    request: of(
      'OUTPUT 12V DC 1A',
      '',
      {},
      { inputs: [{ kind: 'dc', voltageV: 12, currentA: 0.9, currentIs: 'measured' }] },
    ),
    is: { 'output-current': ['caution'] },
  },
  {
    name: 'all outputs at once beyond the total',
    because: '5 × 4 + 12 × 3 = 56 W of 45 W',
    request: of('OUTPUT +5V 5A +12V 3A MAX TOTAL 45W', '+5V 4A +12V 3A'),
    is: { 'output-current': ['stop'] },
  },
  {
    name: 'a charger for lithium cells',
    because: 'it follows its cells, not its plate (common practice)',
    request: of('OUTPUT 8.4V DC 0.6A LI-ION BATTERY CHARGER', 'DC 8.4V 0.5A'),
    is: { 'output-voltage': open },
  },
  {
    name: 'a charging transformer for a razor',
    because: idle,
    request: plated(
      DE,
      'BATTERY CHARGER INPUT 230V 50Hz OUTPUT 3V DC 100mA',
      {},
      { device: { label: 'DC 3V 50mA', inputs: null, regulatedNeeded: null } },
    ),
    is: { 'output-voltage': open },
  },
  {
    name: 'a heavy 9 V plug-top supply on a calculator of 10 mA',
    because: idle,
    request: of('OUTPUT 9V DC 300mA', 'DC 9V 10mA', iron),
    is: { 'output-voltage': open },
  },
  {
    name: 'the same for a machine made for unregulated supplies, a thirtieth of the load',
    because:
      '13.5 V to 17.3 V: more than half as high again destroys capacitors of 16 V (project rule, from measured units)',
    request: of('OUTPUT 9V DC 300mA', 'DC 9V 10mA', iron, { regulatedNeeded: false }),
    is: { 'output-voltage': ['caution', 'stop'] },
  },
  {
    name: 'the same for a machine that regulates inside, a thirtieth of the load',
    because: 'what its regulator and its first capacitor bear is not known above half as high again (project rule)',
    request: of('OUTPUT 9V DC 300mA', 'DC 9V 10mA', iron, { regulatesInside: true }),
    is: { 'output-voltage': ['unknown'] },
  },
  {
    name: 'the same for a machine of 200 mA that regulates inside',
    because: 'at two thirds of the load it stands a fifth to a third high, and reading high is normal',
    request: of('OUTPUT 9V DC 300mA', 'DC 9V 200mA', iron, { regulatesInside: true }),
    is: { 'output-voltage': passes },
  },
  {
    name: 'a 12 V 1 A transformer supply on a machine of 150 mA that is only said to need no regulated supply',
    because: 'it stands at 16 V to 18 V there: a maker’s own unit was measured at half as high again',
    request: of('OUTPUT 12V DC 1A', 'DC 12V 150mA', iron, { regulatedNeeded: false }),
    is: { 'output-voltage': ['caution', 'unknown', 'stop'] },
  },
  {
    name: 'the same on a machine of 900 mA',
    because: 'near full load an unregulated supply comes down to its plate',
    request: of('OUTPUT 12V DC 1A', 'DC 12V 900mA', iron, { regulatedNeeded: false }),
    is: { 'output-voltage': passes },
  },
  {
    name: 'a light single-voltage supply of which nothing else is known',
    because: idle,
    request: plated(
      DE,
      'INPUT 230V~ 50Hz 10VA OUTPUT 9V DC 500mA',
      {},
      { device: { label: 'DC 9V 300mA', inputs: null, regulatedNeeded: null } },
    ),
    is: { 'output-voltage': ['unknown'] },
  },
  {
    name: 'a regulated 12 V supply that reads 17.8 V',
    because: `48 % above (${five}): its regulator is gone`,
    request: of('REGULATED OUTPUT 12V DC 1A', 'DC 12V 0.8A', { measured: { offLoadV: 17.8 } }),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a supply that reads right off load and 9 V loaded',
    because: `25 % below (${five})`,
    request: of('REGULATED OUTPUT 12V DC 1A', 'DC 12V 0.8A', { measured: { offLoadV: 12.1, loadedV: 9 } }),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a supply that reads 12.7 V off load',
    because: `5.8 % above (${five})`,
    request: of('REGULATED OUTPUT 12V DC 1A', 'DC 12V 0.8A', { measured: { offLoadV: 12.7 } }),
    is: { 'output-voltage': ['caution'] },
  },
  {
    name: 'a plug with a bore of 2.5 on a pin of 2.1',
    because: 'loose: it arcs (usual sizes)',
    request: of('OUTPUT 12V DC 1A', 'DC 12V 0.8A', { plug: { outerMm: 5.5, innerMm: 2.5 } }),
    is: { 'dc-plug': ['caution'] },
  },
  {
    name: 'a plug with a bore of 2.1 on a pin of 2.5',
    because: 'it does not go over the pin',
    request: of('OUTPUT 12V DC 1A', 'DC 12V 0.8A', {}, { jack: { outerMm: 5.5, innerMm: 2.5 } }),
    is: { 'dc-plug': ['stop'] },
  },
  {
    name: 'a coded plug for 3.15–6.3 V with 12 V on it',
    because: 'JEITA RC-5320A codes the voltage by size',
    request: of(
      'OUTPUT 12V DC 1A',
      'DC 12V 0.8A',
      { plug: { outerMm: null, innerMm: null, name: 'EIAJ-02' } },
      { jack: { outerMm: null, innerMm: null, name: 'EIAJ-02' } },
    ),
    is: { 'dc-plug': ['caution'] },
  },
  {
    name: 'a 5.5 mm plug with 8 A',
    because: 'such contacts are rated 5 A at most (makers’ sheets)',
    request: of('OUTPUT 12V DC 10A', 'DC 12V 8A'),
    is: { 'dc-plug': ['caution'] },
  },
  {
    name: 'a plug of five pins',
    because: 'which pin is which is not told by its name',
    request: of(
      'OUTPUT +5V 2A +12V 1A',
      '+5V 1A +12V 0.5A',
      { plug: { outerMm: null, innerMm: null, name: 'DIN 5-pin' } },
      { jack: { outerMm: null, innerMm: null, name: 'DIN 5-pin' } },
    ),
    is: { 'dc-plug': open, polarity: open },
  },
  {
    name: '5 V 3 A through 1.8 m of AWG 24',
    because: 'R = 0.017241 × 3.6 / 0.2047 = 0.303 Ω, 0.91 V, 18 %',
    request: of('OUTPUT 5V DC 3A', 'DC 5V 3A', { lead: { lengthM: 1.8, awg: 24 } }),
    is: { 'lead-drop': ['stop'] },
    says: { 'lead-drop': /18/ },
  },
  {
    name: '12 V 5 A through 3 m of 0.5 mm²',
    because: 'R = 0.207 Ω, 1.03 V, 8.6 %: more than 5 % (ATX) and less than 10 %',
    request: of('OUTPUT 12V DC 6A', 'DC 12V 5A', { lead: { lengthM: 3, areaMm2: 0.5 } }),
    is: { 'lead-drop': ['caution'] },
  },
  {
    name: 'a lead of which nothing but its length is known',
    because: 'its size decides',
    request: of('OUTPUT 12V DC 6A', 'DC 12V 5A', { lead: { lengthM: 3 } }),
    is: { 'lead-drop': ['unknown'] },
  },
  {
    name: 'a USB-C source for a 12 V machine',
    because: 'it gives 5 V until asked, and 12 V is optional',
    request: of('OUTPUT 5V⎓3A 9V⎓3A 15V⎓3A 20V⎓3A', 'DC 12V 1A'),
    is: { 'output-voltage': open },
  },
  {
    name: 'a machine’s plate of its batteries alone',
    because: 'what its socket wants may be more than its cells give',
    request: of('OUTPUT 9V DC 1A', 'BATTERY 6 × 1.5V (9V)'),
    is: { 'output-voltage': open },
  },
  {
    name: 'a machine of two low voltages, one for the car',
    because: 'which socket wants which',
    request: of('OUTPUT 12V DC 2A', 'DC IN 6V 1A; CAR BATTERY 12V'),
    is: { 'output-voltage': open },
  },
  {
    name: 'a machine of positive earth, −9 V',
    because: 'no output of that sign: a floating supply with its leads swapped is a change nobody decides by plate',
    request: of('OUTPUT +9V DC 1A', '-9V DC 0.1A'),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a mains machine on a low-voltage supply',
    because: 'another world',
    request: of('OUTPUT 12V DC 2A', '220V~ 50Hz 40W'),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a low-voltage machine on an isolating unit of 230 V',
    because: '230 / 12 = 19',
    request: plated(
      DE,
      'INPUT 230V~ 50Hz OUTPUT 230V~ 1A',
      {},
      { device: { label: '12V~ 1A', inputs: null, regulatedNeeded: null } },
    ),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a supply whose no-load voltage is printed',
    because: '16 V off load on the plate itself: it is unregulated',
    request: plated(
      DE,
      'INPUT 230V~ 50Hz 10VA OUTPUT 12V DC 500mA (NO LOAD 16V)',
      {},
      { device: { label: 'DC 12V 300mA', inputs: null, regulatedNeeded: true } },
    ),
    is: { 'output-voltage': open },
  },
  {
    name: 'a printed polarity that was measured otherwise',
    because: 'plug or print was changed',
    request: of('OUTPUT 9V DC 1A CENTRE POSITIVE', 'DC 9V 0.5A CENTRE NEGATIVE', {
      measured: { polarity: 'centre-negative' },
    }),
    is: { polarity: ['stop'] },
  },
  {
    name: 'a machine that bears 24 V AC or DC',
    because: 'either serves it: a machine that says AC/DC has a rectifier behind its socket',
    request: of('OUTPUT 24V DC 2A', '24V AC/DC 0.5A'),
    is: { 'output-kind': passes },
  },
  {
    name: 'a transformer supply of 120 V on a converter of 100 V',
    because: 'an unregulated output follows the mains: 12 V × 100 / 120 = 10 V under load, 16.7 % low',
    request: plated(DE, 'INPUT 120V 60Hz 20W OUTPUT 12V DC 1A', iron, {
      converter: { kind: 'isolating', outputV: 100, ratedVA: 100 },
      device: { regulatedNeeded: false },
    }),
    is: { 'output-voltage': ['stop'] },
    says: { 'output-voltage': /10 V at full load.*16\.7/ },
  },
  {
    name: 'the same with an AC output',
    because: 'so does a winding',
    request: plated(DE, 'INPUT 120V 60Hz 20W OUTPUT 12V~ 1A', iron, {
      converter: { kind: 'isolating', outputV: 100, ratedVA: 100 },
      device: { inputs: [{ kind: 'ac', voltageV: 12, currentA: 0.9 }], regulatedNeeded: false },
    }),
    is: { 'output-voltage': ['stop'] },
  },
  {
    name: 'a 220 V transformer supply on 240 V for a machine that bears 5 %',
    because: '240 / 220 = 1.09: 13.1 V under load',
    request: plated({ country: 'AU', voltageV: 240 }, 'INPUT 220V 50Hz 20W OUTPUT 12V~ 1A', iron, {
      device: { inputs: [{ kind: 'ac', voltageV: 12, currentA: 0.9, tolerancePercent: 5 }], regulatedNeeded: false },
    }),
    is: { 'output-voltage': ['caution'] },
  },
  {
    name: 'a gap behind the number of an only output',
    because: `“OUTPUT 1 5V” is 5 V of output 1, or 15 V; ${worn}`,
    request: of('OUTPUT 1 5V DC 2A', 'DC 5V 1A'),
    is: { 'output-voltage': ['unknown'] },
  },
  {
    name: 'outputs that are counted',
    because: 'the figures before the volts count them',
    request: of('OUTPUT 1 5V DC 2A OUTPUT 2 12V DC 1A', '', {}, { inputs: [{ kind: 'dc', voltageV: 5, currentA: 1 }] }),
    is: { 'output-voltage': ['clear', 'unknown'], 'output-current': passes },
  },
  {
    name: 'a bell transformer of 8–12 V',
    because: 'two taps or a range: which is joined is not known',
    request: plated(DE, 'PRI 230V 50Hz SEC 8-12V~ 1A', iron, {
      device: { label: '8V~ 0.5A', inputs: null, regulatedNeeded: false },
    }),
    is: { 'output-voltage': open },
  },
  {
    name: 'a turntable for 60 Hz behind a step-down transformer on 50 Hz',
    because: 'a transformer changes the voltage alone: 83.3 % of its speed, and 1.2 times the flux in its motor',
    request: plated(DE, 'PRI 230V 50Hz SEC 120V~ 100VA', iron, {
      device: { label: 'TURNTABLE 120V~ 60Hz 12W', inputs: null, regulatedNeeded: false },
    }),
    is: { 'mains-frequency': ['stop'] },
    says: { 'mains-frequency': /83\.3/ },
  },
  {
    name: 'a tape machine for 120 V 60 Hz, no word of what is inside, behind the same',
    because: 'if it holds a transformer it gets 1.2 times its flux',
    request: plated(DE, 'PRI 230V 50Hz SEC 120V~ 100VA', iron, {
      device: { label: '120V~ 60Hz 40W', inputs: null, regulatedNeeded: false },
    }),
    is: { 'mains-frequency': ['unknown'] },
  },
  {
    name: 'a clock for 50 Hz on 60 Hz',
    because: 'no overflux, but it gains 12 minutes an hour',
    request: plated({ country: 'US', socket: 'B' }, 'PRI 120V 60Hz SEC 230V~ 50VA', iron, {
      device: { label: 'CLOCK 230V~ 50Hz 3W', inputs: null, regulatedNeeded: false },
    }),
    is: { 'mains-frequency': ['caution'] },
    says: { 'mains-frequency': /120 %/ },
  },
  {
    name: 'a machine for 50 and 60 Hz behind a step-down transformer',
    because: 'its plate names the frequency it gets',
    request: plated(DE, 'PRI 230V 50Hz SEC 120V~ 100VA', iron, {
      device: { label: 'TURNTABLE 120V~ 50/60Hz 12W', inputs: null, regulatedNeeded: false },
    }),
    is: { 'mains-frequency': passes },
  },
  {
    name: 'an electronic halogen transformer for an AC machine',
    because: 'bursts of tens of kilohertz for lamps, not the AC of a winding (common practice)',
    request: plated(
      DE,
      'ELECTRONIC TRANSFORMER PRI 230V 50Hz SEC 12V~ 20-60VA',
      {},
      { device: { label: '12V~ 20VA', inputs: null, regulatedNeeded: false } },
    ),
    is: { 'output-kind': ['stop'] },
  },
  {
    name: 'the same in German words, for a DC machine',
    because: 'a chopper for lamps is no source of direct current either',
    request: plated(
      DE,
      'ELEKTRONISCHER TRANSFORMATOR PRI 230V 50Hz SEK 12V 60VA',
      {},
      { device: { label: 'DC 12V 1A', inputs: null } },
    ),
    is: { 'output-kind': ['stop'] },
  },
  {
    name: 'a transformer for halogen lamps of iron',
    because: 'its AC is that of a winding',
    request: plated(
      DE,
      'HALOGEN TRANSFORMATOR PRI 230V 50Hz SEK 12V~ 60VA',
      {},
      { device: { label: '12V~ 20VA', inputs: null, regulatedNeeded: false } },
    ),
    is: { 'output-kind': passes },
  },
]

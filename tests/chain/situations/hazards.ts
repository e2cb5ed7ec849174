import { changed } from '../cases.js'
import { heedful, open, passes, plated, type Situation } from './situation.js'

const DE = { country: 'DE', socket: 'F' }
const US = { country: 'US', socket: 'B' }
const switching = { technology: 'switch-mode', regulated: true, protectionClass: 'II' } as const
const iron = { technology: 'transformer', protectionClass: 'II' } as const
const machine = (label: string, more: NonNullable<Parameters<typeof changed>[0]['device']> = {}) => ({
  device: { label, inputs: null, ...more },
})
const sized = { plug: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' } } as const

/** Words on plates that the figures beside them depend on. */
export const hazardSituations: Situation[] = [
  {
    name: 'a charger for nickel-cadmium cells as a supply',
    because: 'half waves into a battery: without one nothing limits the voltage (IEC 60335-2-29 is not IEC 61558-2-6)',
    request: plated(
      DE,
      'BATTERY CHARGER INPUT 230V~ 50Hz 10W OUTPUT 12V DC 500mA',
      { ...iron, ...sized },
      machine('DC 12V 0.3A', { regulatedNeeded: false }),
    ),
    is: { charging: ['unknown'], 'output-voltage': open },
  },
  {
    name: 'the same in German, named by its cells',
    because: 'the language of a plate changes nothing of what it is',
    request: plated(
      DE,
      'NC-AKKU LADEGERÄT EINGANG 230V~ 50Hz AUSGANG 12V⎓ 150mA',
      { ...iron, ...sized },
      machine('DC 12V 0.1A', { regulatedNeeded: false }),
    ),
    is: { charging: ['unknown'], 'output-voltage': open },
  },
  {
    name: 'a driver of constant current entered as regulated',
    because: 'its current is regulated, not its voltage',
    request: plated(
      DE,
      'LED DRIVER CONSTANT CURRENT INPUT 220-240V~ 50Hz 0.2A OUTPUT 24V⎓ 700mA',
      { ...switching, ...sized },
      machine('DC 24V 0.5A'),
    ),
    is: { charging: ['stop'], 'output-voltage': open },
  },
  {
    name: 'an output that is not isolated',
    because: 'jack, chassis and every cable are live',
    request: plated(
      DE,
      'INPUT 230V~ 50Hz OUTPUT 12V⎓ 60mA NOT ISOLATED FROM MAINS',
      { ...switching, ...sized },
      machine('DC 12V 40mA'),
    ),
    is: { isolation: ['stop'] },
    says: { isolation: /isolat/i },
  },
  {
    name: 'a positive chassis on a grounded minus',
    because: 'through the earth of the cord and the next cable the supply is shorted',
    request: plated(
      DE,
      'INPUT 100-240V~ 50/60Hz 2A OUTPUT +24V⎓ 5A, -VE GROUNDED',
      { ...switching, ...sized },
      machine('DC 24V 3A +VE CHASSIS'),
    ),
    is: { isolation: ['unknown'] },
  },
  {
    name: 'a clock for 60 Hz behind a transformer on 50 Hz',
    because: 'a transformer changes the voltage alone: 50 / 60 = 0.833, and 1.2 times the flux',
    request: plated(
      DE,
      'INPUT 230V~ 50Hz 20VA OUTPUT 9V~ 1A',
      { ...iron, inlet: 'plug-in' },
      machine('DIGITAL CLOCK 9V AC 60Hz 3VA', { regulatedNeeded: false }),
    ),
    is: { speed: ['caution'], 'mains-frequency': heedful },
    says: { speed: /0\.833/ },
  },
  {
    name: 'a switch for five voltages, its place not given',
    because: 'the plate says selectable',
    request: plated(
      DE,
      'INPUT 100-240V~ 50/60Hz OUTPUT 3V, 5V, 6V, 9V, 12V DC SELECTABLE 1.5A',
      { ...switching, ...sized },
      machine('DC 9V 0.3A'),
    ),
    is: { 'output-voltage': open },
  },
  {
    name: 'two outputs on one barrel',
    because: 'two voltages do not come out of two contacts',
    request: plated(
      DE,
      'INPUT 100-240V~ 50/60Hz 1A OUTPUT 5V⎓ 2A, 12V⎓ 2A',
      { ...switching, ...sized },
      machine('DC 5V 1A'),
    ),
    is: { 'output-voltage': open },
  },
  {
    name: 'a USB source for 20 V that nothing asks',
    because: 'until it is asked it gives 5 V or nothing',
    request: plated(
      DE,
      'USB-C CHARGER 65W INPUT 100-240V~ 50/60Hz 1.7A OUTPUT 20V⎓ 3.25A',
      { ...switching, plug: { outerMm: null, innerMm: null, polarity: null, name: 'USB-C' } },
      machine('DC 20V 3A'),
    ),
    is: { 'output-voltage': open, charging: ['-'] },
    says: { 'output-voltage': /asked/ },
  },
  {
    name: 'a plate that says it selects by itself',
    because: 'there is no position to find',
    request: plated(US, 'INPUT 100-120V/200-240V~ AUTO-SELECT 50/60Hz 4/2A OUTPUT 12V⎓ 5A', { ...switching, ...sized }),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'a plate of an autoranging unit',
    because: 'there is no position to find',
    request: plated(DE, 'INPUT 85-132VAC/170-264VAC AUTORANGING 47-63Hz 2A/1A OUTPUT 12V⎓ 3A', {
      ...switching,
      ...sized,
    }),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'an autoranging unit on a mains in none of its ranges',
    because: '300 V is 1.14 times the top of its highest range',
    request: plated({ voltageV: 300 }, 'INPUT 85-132VAC/170-264VAC AUTORANGING OUTPUT 12V⎓ 3A', {
      ...switching,
      ...sized,
    }),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'class II by hand on an inlet of class I, cord without earth',
    because: 'the C14 inlet has an earth pin (IEC 60320); silence would be a false clear',
    request: changed({ supply: { inlet: 'C14' }, cord: { connector: 'C13', plug: 'CEE 7/17', ratedA: 10 } }),
    is: { earthing: ['unknown'] },
  },
  {
    name: 'the same with the double square on its plate',
    because: 'the symbol stands (IEC 60417-5172)',
    request: changed({
      supply: { label: '⧈', inlet: 'C14' },
      cord: { connector: 'C13', plug: 'CEE 7/17', ratedA: 10 },
    }),
    is: { earthing: passes },
  },
  {
    name: 'a printed peak above the rating of the supply',
    because: '4.5 A of print heads and solenoids pull down what is rated for 2.5 A',
    request: plated(
      DE,
      'INPUT 100-240V 50/60Hz 2A OUTPUT 24V⎓ 2.5A',
      { ...switching, ...sized },
      machine('DC 24V 2A (PEAK 4.5A)'),
    ),
    is: { 'output-current': ['caution'] },
  },
  {
    name: 'a printed peak within it',
    because: '2.4 A is less than 2.5 A',
    request: plated(
      DE,
      'INPUT 100-240V 50/60Hz 2A OUTPUT 24V⎓ 2.5A',
      { ...switching, ...sized },
      machine('DC 24V 2A (PEAK 2.4A)'),
    ),
    is: { 'output-current': passes },
  },
  {
    name: 'an AC brick whose plug does not go on the pin',
    because: 'a bore of 2.1 mm does not go over 2.5 mm, whatever the current',
    request: plated(
      DE,
      'INPUT 230V~ 50Hz 12VA OUTPUT 9V~ 1A',
      { ...iron, ...sized },
      machine('AC 9V 0.8A', { regulatedNeeded: false, jack: { outerMm: 5.5, innerMm: 2.5 } }),
    ),
    is: { 'dc-plug': ['stop'] },
  },
  {
    name: 'a tip that goes on either way round',
    because: 'what is printed of its polarity proves nothing',
    request: plated(
      DE,
      'UNIVERSAL ADAPTOR INPUT 100-240V 50/60Hz 1A OUTPUT 12V⎓ 2A REVERSIBLE POLARITY PLUG',
      { ...switching, ...sized },
      machine('DC 12V 1A'),
    ),
    is: { polarity: ['unknown'] },
  },
  {
    name: 'a machine with a lead battery inside',
    because: 'the state of the battery decides what it draws',
    request: plated(
      DE,
      'INPUT 100-240V 50/60Hz 2A OUTPUT 13.8V⎓ 8A',
      { ...switching, ...sized },
      machine('DC 13.8V 3A INTERNAL SEALED LEAD BATTERY 12V 7Ah'),
    ),
    is: { charging: ['caution'] },
  },
  {
    name: 'a machine with a picture tube',
    because: 'heater and deflection take two to three times their current at the start',
    request: plated(
      DE,
      'INPUT 100-240V~ 50/60Hz 2A OUTPUT 12V⎓ 5A',
      { ...switching, ...sized },
      machine('MONITOR CRT DC 12V 1.9A'),
    ),
    is: { 'hazard-words': ['caution'] },
  },
]

import { heedful, open, passes, plated, type Situation } from './situation.js'

const DE = { country: 'DE', socket: 'F' }
const GB = { country: 'GB', socket: 'G' }
const US = { country: 'US', socket: 'B' }
const japan50 = { country: 'JP', socket: 'A', voltageV: 100, frequencyHz: 50 }
const japan60 = { country: 'JP', socket: 'A', voltageV: 100, frequencyHz: 60 }
const BR127 = { country: 'BR', voltageV: 127 }
const iron = { technology: 'transformer' as const }
const switching = { technology: 'switch-mode' as const }
const out = ' OUTPUT 12V DC 2A'

const nameplate = 'ANSI C84.1: 115 V is the nameplate voltage of equipment for the 120 V system'
const harmony = 'IEC 60038 put 230 V in the place of 240 V: what was supplied and used stayed as it was'
const flux = 'peak flux follows V/f; published as proportional (handbooks on volts per hertz)'
const tested = 'IEC 60950: type tests reach from −10 % to +6 %, +10 % at 230 V'
const worn = 'a figure that cannot be read is not known; nobody plugs in on a guess (common practice)'

/** What reaches the supply: voltage, frequency, selector, converter. */
export const mainsSituations: Situation[] = [
  {
    name: 'an aircraft’s 400 Hz switch-mode supply on 60 Hz',
    because: 'its reservoirs are sized for 400 Hz: at 60 Hz they run empty 6.7 times as long (ripple goes with 1/f)',
    request: plated(US, `INPUT 115V 400Hz 0.5A${out}`, switching),
    // its 115 V is a nameplate voltage like another: 4 % below, and the frequency is what decides
    is: { 'mains-frequency': open, 'mains-voltage': ['clear', 'caution'] },
  },
  {
    name: 'the same with nothing known of what is inside',
    because: flux,
    request: plated(US, `INPUT 115V 400Hz 0.5A${out}`),
    is: { 'mains-frequency': open },
  },
  {
    name: 'a 400 Hz transformer on 50 Hz behind a converter',
    because: `${flux}: 115 V 400 Hz at 115 V 50 Hz is 8 times the flux`,
    request: plated(DE, `INPUT 115V 400Hz 0.5A${out}`, iron, {
      converter: { kind: 'isolating', outputV: 115, ratedVA: 200 },
    }),
    is: { 'mains-frequency': ['stop'] },
    says: { 'mains-frequency': /8/ },
  },
  {
    name: 'a unit listed for 50, 60 and 400 Hz',
    because: 'the plate names the frequency',
    request: plated(DE, `INPUT 100-240V~ 50/60/400Hz 0.5A${out}`),
    is: { 'mains-frequency': passes, 'mains-voltage': passes },
  },
  {
    name: 'a railway carriage’s supply for 72–110 V DC at the wall',
    because: 'a dc input has nothing that withstands ac mains; 110 V DC is a railway battery (EN 50155, from memory)',
    request: plated(DE, `INPUT 72-110V DC 1A${out}`),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'a ship’s supply for 110 V DC on 110 V AC',
    because: 'the voltage agrees, the kind does not',
    request: plated({ country: 'TW', socket: 'A' }, `INPUT 110V DC 0.4A${out}`),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /direct current/ },
  },
  {
    name: 'a caravan unit for 12 V DC or 230 V AC',
    because: 'which terminals belong to which is not told by a plate that names both',
    request: plated(DE, `INPUT 12V DC / 230V AC 50Hz 0.3A${out}`),
    is: { 'mains-voltage': heedful },
  },
  {
    name: 'a valve set for AC or DC mains of 110 or 220 V',
    because: 'two voltages: a link or a dropper is set for one of them',
    request: plated(DE, '110/220V AC/DC 60W'),
    is: { 'mains-voltage': open },
  },
  {
    name: 'a set for direct current mains only, old German sign',
    because: '“220 V =” is direct current (IEC 60417-5031)',
    request: plated(DE, `220V = 40W${out}`),
    is: { 'mains-voltage': open },
  },
  {
    name: 'a European 220 V supply on 100 V',
    because: '100 / 220 = 0.45: it does not run',
    request: plated(japan50, `INPUT 220V~ 50Hz 0.2A${out}`),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /0\.455/ },
  },
  {
    name: 'a Japanese workshop’s 200 V unit on 230 V',
    because: '230 / 200 = 1.15, more than any type test (IEC 60950)',
    request: plated(DE, `AC200V 50/60Hz 1A${out}`),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /1\.15/ },
  },
  {
    name: 'a Japanese 100 V unit on 110 V',
    because: `110 / 100 is the outermost that any test reaches, and the band lies above it (${tested})`,
    request: plated({ country: 'TW', socket: 'A' }, `INPUT AC100V 50/60Hz 0.4A${out}`),
    is: { 'mains-voltage': heedful },
  },
  {
    name: 'an American 117 V unit on today’s 120 V',
    because: '117 V is an older name of the same mains (common practice)',
    request: plated(US, `INPUT 117V 60Hz 0.3A${out}`),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'an American 117 V unit without a frequency on 230 V 50 Hz',
    because: '230 / 117 = 1.97',
    request: plated(DE, `INPUT 117V 30W${out}`, iron),
    is: { 'mains-voltage': ['stop'], 'mains-frequency': ['stop'], converter: ['unknown'] },
    says: { 'mains-voltage': /1\.97/ },
  },
  {
    name: 'the same behind a step-down transformer of 120 V',
    because: `${flux}: (120/50)/(117/60) = 1.23`,
    request: plated(DE, `INPUT 117V 30W${out}`, iron, { converter: { kind: 'isolating', outputV: 120, ratedVA: 100 } }),
    is: { 'mains-frequency': ['stop'] },
    says: { 'mains-frequency': /1\.23/ },
  },
  {
    name: 'an American transformer unit in eastern Japan',
    because: `${flux}: (100/50)/(117/60) = 1.026, a little over; and 100 V is 15 % low`,
    request: plated(japan50, `INPUT 117V 60Hz 20W${out}`, iron),
    is: { 'mains-frequency': ['caution'], 'mains-voltage': ['caution'] },
  },
  {
    name: 'a 60 Hz Japanese transformer unit taken to eastern Japan',
    because: `${flux}: 60/50 = 1.2`,
    request: plated(japan50, `AC100V 60Hz 12W${out}`, iron),
    is: { 'mains-frequency': ['stop'], 'mains-voltage': passes },
  },
  {
    name: 'a 50 Hz Japanese transformer unit taken to western Japan',
    because: `${flux}: 50/60 = 0.83`,
    request: plated(japan60, `AC100V 50Hz 12W${out}`, iron),
    is: { 'mains-frequency': passes },
  },
  {
    name: 'a 60 Hz Japanese transformer unit somewhere in Japan',
    because: 'the country has both frequencies and one of them saturates it',
    request: plated({ country: 'JP', socket: 'A' }, `AC100V 60Hz 12W${out}`, iron),
    is: { 'mains-frequency': open },
  },
  {
    name: 'a Korean 220 V 60 Hz transformer unit on 230 V 50 Hz',
    because: `${flux}: (230/50)/(220/60) = 1.2545`,
    request: plated(DE, `정격입력 AC 220V 60Hz 20W${out}`, iron),
    is: { 'mains-frequency': ['stop'], 'mains-voltage': heedful },
    says: { 'mains-frequency': /1\.25|1\.26/ },
  },
  {
    name: 'an Australian 240 V unit on 230 V',
    because: 'no shock, no harm: at most it sags (0.90 of 240 V is 216 V)',
    request: plated(DE, `INPUT 240V~ 50Hz 30mA OUTPUT 9V DC 300mA`),
    is: { 'mains-voltage': ['clear', 'caution'] },
  },
  {
    name: 'a Brazilian unit of two voltages without word of its switch',
    because: 'set for 127 V on 220 V it gets 1.73 times its voltage',
    request: plated({ country: 'BR', voltageV: 220 }, `ENTRADA 127/220V~ 60Hz 25W SAÍDA 12V 1A`),
    is: { 'mains-voltage': ['unknown'] },
  },
  {
    name: 'the same, found set to 127 V, on 220 V',
    because: '220 / 127 = 1.73',
    request: plated({ country: 'BR', voltageV: 220 }, `ENTRADA 127/220V~ 60Hz 25W SAÍDA 12V 1A`, {
      input: { selectorV: 127 },
    }),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /1\.73/ },
  },
  {
    name: 'the same, found set to 220 V, on 127 V',
    because: '127 / 220 = 0.58: it does not run, and is no hazard of its own',
    request: plated(BR127, `ENTRADA 127/220V~ 60Hz 25W SAÍDA 12V 1A`, { input: { selectorV: 220 } }),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'a 110 V unit somewhere in Saudi Arabia',
    because: 'both 127 V and 220/230 V are met there (IEC list of the world)',
    request: plated({ country: 'SA' }, `INPUT 110V 60Hz 20W${out}`),
    is: { 'mains-voltage': open },
  },
  {
    name: 'a universal unit on its 120 V position at 230 V',
    because: 'a doubler: 2 × √2 × 230 V = 651 V on 400 V of capacitors',
    request: plated(GB, `INPUT 100-120V/200-240V~ 50/60Hz 4A/2A OUTPUT +5V 20A`, {
      ...switching,
      input: { selectorV: 115 },
    }),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /65[01]/ },
  },
  {
    name: 'the same on its 230 V position',
    because: 'that is what the switch is for',
    request: plated(GB, `INPUT 100-120V/200-240V~ 50/60Hz 4A/2A OUTPUT +5V 20A`, {
      ...switching,
      input: { selectorV: 230 },
    }),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'five taps, the fuse-holder turned to 220, on 230 V',
    because: `253 V, the top of the band, is above 220 V + 6 % (${tested}); it is no stop`,
    request: plated(GB, `110/125/160/220/240V~ 50Hz 40VA OUTPUT 24V DC 1A`, { ...iron, input: { selectorV: 220 } }),
    is: { 'mains-voltage': ['caution'], 'mains-frequency': ['clear', 'caution'] },
  },
  {
    name: 'five taps, the fuse-holder turned to 160, on 230 V',
    because: '230 / 160 = 1.44',
    request: plated(GB, `110/125/160/220/240V~ 50Hz 40VA OUTPUT 24V DC 1A`, { ...iron, input: { selectorV: 160 } }),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'a star or delta motor set for 220/380 V, no sign for three phases',
    because: 'the pair with ratio √3 is that of three-phase mains (common practice); one socket gives neither',
    request: plated(DE, '220/380V 50Hz 0.37kW'),
    is: { 'mains-voltage': open },
  },
  {
    name: 'delta and star drawn',
    because: 'a three-phase winding',
    request: plated(DE, 'Δ/Y 220/380V 50Hz 1.6/0.9A'),
    is: { 'mains-voltage': open },
  },
  {
    name: 'an American four-wire unit, 208Y/120 V',
    because: 'three-phase system of North America (ANSI C84.1)',
    request: plated(US, 'INPUT 208Y/120V 3PH 4W 60Hz 5A OUTPUT 48V DC 20A'),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /three-phase/ },
  },
  {
    name: 'an American unit on both legs, 120/240 V three-wire',
    because: 'one socket gives 120 V; the other windings or loads want 240 V',
    request: plated(US, 'INPUT 120/240V 1PH 3W 60Hz 15A'),
    is: { 'mains-voltage': open },
  },
  {
    name: 'an American 208–240 V unit at a 120 V outlet',
    because: '120 / 208 = 0.58',
    request: plated(US, `INPUT 208-240V 60Hz 2A${out}`),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'a unit for 25 to 60 cycles',
    because: 'the plate names a range that holds 60',
    request: plated(US, `115 VOLTS 25-60 CYCLES 40 WATTS${out}`, iron),
    is: { 'mains-frequency': passes },
  },
  {
    name: 'a unit for 50 to 60 c.p.s.',
    because: 'cycles per second are hertz',
    request: plated(DE, `230V 50-60 C.P.S. 40 WATTS${out}`, iron),
    is: { 'mains-frequency': passes, 'mains-voltage': passes },
  },
  {
    name: 'an original plate and an importer’s plate that differ',
    because: 'two plates, two voltages: which one holds is not known',
    request: plated(DE, `INPUT 120V~ 60Hz 20W${out}\nINPUT 230V~ 50Hz 20W${out}`),
    is: { 'mains-voltage': open },
  },
  {
    name: 'a plate with a dealer’s note of conversion',
    because: 'a repair by an unknown hand is not a plate; either may hold',
    request: plated(DE, `INPUT 120V~ 60Hz 20W CONVERTED TO 240V 50Hz${out}`),
    is: { 'mains-voltage': open },
  },
  {
    name: 'the first figure of the input worn away',
    because: worn,
    request: plated(DE, `INPUT ?20V~ 50Hz 0.2A${out}`),
    is: { 'mains-voltage': open },
  },
  {
    name: 'the middle figure worn away',
    because: worn,
    request: plated(DE, `INPUT 2_0V~ 50Hz 0.2A${out}`),
    is: { 'mains-voltage': open },
  },
  {
    name: 'a stroke worn out of a range',
    because: '“100 240 V” are two voltages: a range or two settings',
    request: plated(DE, `INPUT 100 240V~ 50/60Hz 0.2A${out}`),
    is: { 'mains-voltage': ['clear', 'unknown'] },
  },
  {
    name: 'an automatic two-range unit',
    because: 'two windows; whether they set themselves is a word on the plate or not known',
    request: plated(DE, `INPUT 100-120V/200-240V~ AUTO SELECT 50/60Hz 2A${out}`),
    is: { 'mains-voltage': ['clear', 'unknown'] },
  },
  {
    name: 'a converter of which only its great wattage is known',
    because: '1600 W in the hand is a thyristor; whether it is one is to be found out (common practice)',
    request: plated(DE, `INPUT 120V 60Hz 20W${out}`, switching, {
      converter: { kind: null, outputV: 120, ratedVA: 1600 },
    }),
    is: { converter: ['unknown'] },
    says: { converter: /light/ },
  },
  {
    name: 'an electronic converter before a wide-range switch-mode supply',
    because: 'phase-cut mains charges the reservoirs to the crest of 230 V; no supply belongs behind it',
    request: plated(DE, `INPUT 100-240V~ 50/60Hz 0.5A${out}`, switching, {
      converter: { kind: 'electronic', outputV: 120, ratedVA: 1600 },
    }),
    is: { converter: ['stop'] },
  },
  {
    name: 'a 120 V converter before a 100 V unit',
    because: '120 / 100 = 1.2: North American converters are for 120 V, Japanese units for 100 V',
    request: plated(DE, `AC100V 50/60Hz 20W${out}`, iron, {
      converter: { kind: 'autotransformer', outputV: 120, ratedVA: 100 },
    }),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /converter.*1\.2 times/ },
  },
  {
    name: 'a 110 V converter before a 100 V unit',
    because: '121 V at the top of the band is 1.21 times the plate',
    request: plated(DE, `AC100V 50/60Hz 20W${out}`, iron, {
      converter: { kind: 'autotransformer', outputV: 110, ratedVA: 100 },
    }),
    is: { 'mains-voltage': heedful },
  },
  {
    name: 'a 100 V converter before a 120 V 60 Hz transformer unit on 50 Hz',
    because: `${flux}: (100/50)/(120/60) = 1: the known way out; its outputs are a sixth low`,
    request: plated(DE, `INPUT 120V 60Hz 20W${out}`, iron, {
      converter: { kind: 'isolating', outputV: 100, ratedVA: 100 },
    }),
    is: { 'mains-frequency': passes, 'mains-voltage': ['caution'] },
  },
  {
    name: 'a converter whose rating is what the outputs give',
    because: '90 W out are 200 VA in: 90 / 0.75 / 0.6',
    request: plated(DE, `INPUT 120V 60Hz OUTPUT 19V DC 4.74A`, switching, {
      converter: { kind: 'isolating', outputV: 120, ratedVA: 100 },
    }),
    is: { converter: ['stop'] },
    says: { converter: /20[01]/ },
  },
  {
    name: 'a step-up converter in a 60 Hz country before a 230 V 50 Hz transformer unit',
    because: `${flux}: (230/60)/(230/50) = 0.83`,
    request: plated(US, `INPUT 230V 50Hz 20VA${out}`, iron, {
      converter: { kind: 'isolating', outputV: 230, ratedVA: 50 },
    }),
    is: { 'mains-frequency': passes, 'mains-voltage': passes, converter: passes },
  },
  {
    name: 'a converter left in between before a 230 V unit',
    because: '120 / 230 = 0.52: it does not run',
    request: plated(DE, `INPUT 230V 50Hz 20VA${out}`, iron, {
      converter: { kind: 'isolating', outputV: 120, ratedVA: 50 },
    }),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'a converter before a car adaptor',
    because: 'a 12 V dc input takes no ac',
    request: plated(
      DE,
      `INPUT 12V DC 3A OUTPUT 9V DC 1A`,
      {},
      {
        converter: { kind: 'isolating', outputV: 12, ratedVA: 100 },
      },
    ),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'a unit for 24 V AC from a building’s transformer, at the wall',
    because: '230 / 24 = 9.6: extra-low voltage of a doorbell or a control system',
    request: plated(DE, `INPUT 24V~ 50Hz 1A${out}`),
    is: { 'mains-voltage': ['stop'], converter: ['-'] },
  },
  {
    name: 'a 115 V unit on a site transformer of 110 V, centre tapped',
    because: 'within 0.90 of its plate; British site supplies are 110 V 50 Hz (common practice)',
    request: plated({ country: 'GB', voltageV: 110, frequencyHz: 50 }, `INPUT 115V 60Hz 20W${out}`, iron),
    is: { 'mains-voltage': heedful, 'mains-frequency': ['stop'] },
    says: { 'mains-frequency': /1\.1[45]/ },
  },
  {
    name: 'an aircraft generator’s 115 V 400 Hz for a 115 V 60 Hz transformer unit',
    because: 'no overflux, but 400 Hz is beyond what capacitors and filters of it are known to bear',
    request: plated({ voltageV: 115, frequencyHz: 400 }, `INPUT 115V 60Hz 20W${out}`, iron),
    is: { 'mains-frequency': open },
  },
  {
    name: 'a plate that names a tolerance of its own, 230 V +6 −10 %',
    because: 'that is the mains of the place',
    request: plated(DE, `INPUT 230V +6% -10% 50Hz 0.2A${out}`),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'an Indian 230 V place and an American 125 V maximum',
    because: '230 / 125 = 1.84',
    request: plated({ country: 'IN' }, `125V AC MAX 60Hz 5A${out}`),
    is: { 'mains-voltage': open },
  },
  {
    name: 'a 220 V 50 Hz transformer unit in Korea, 220 V 60 Hz',
    because: 'less flux, same voltage',
    request: plated({ country: 'KR', socket: 'F' }, `EINGANG 220V~ 50Hz 20VA AUSGANG 12V= 1A`, iron),
    is: { 'mains-voltage': passes, 'mains-frequency': passes },
  },
  {
    name: 'a 115 V plate on 120 V 60 Hz',
    because: nameplate,
    request: plated(US, `INPUT 115V~ 60Hz 0.8A${out}`, switching),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'a 117 V plate in cycles on 120 V 60 Hz',
    because: 'an older name of the same mains (common practice)',
    request: plated(US, `INPUT 117V AC 60CPS 30W${out}`, iron),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'a 110 V plate on 120 V 60 Hz',
    because: 'the band goes to 126 V, 110 V was tested to 116.6 V',
    request: plated(US, `INPUT 110V~ 60Hz 0.8A${out}`, switching),
    is: { 'mains-voltage': ['caution'] },
  },
  {
    name: 'a 115 V plate on 127 V 60 Hz',
    because: `127 / 115 = 1.104, which is another mains; ${tested}`,
    request: plated({ country: null, voltageV: 127, frequencyHz: 60 }, `INPUT 115V~ 60Hz 0.8A${out}`, switching),
    is: { 'mains-voltage': ['stop'] },
  },
  {
    name: 'a 115 V plate behind a converter of 120 V at 50 Hz',
    because: 'that is no 120 V 60 Hz system: 126 V at the top, and it was tested to 121.9 V',
    request: plated(DE, `INPUT 115V~ 50/60Hz 0.2A${out}`, switching, {
      converter: { kind: 'autotransformer', outputV: 120, ratedVA: 200 },
    }),
    is: { 'mains-voltage': ['caution'] },
  },
  {
    name: 'a 240 V plate on 230 V',
    because: harmony,
    request: plated(DE, `INPUT 240V~ 50Hz 0.3A${out}`, switching),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'a 230 V plate on 240 V',
    because: harmony,
    request: plated({ country: null, voltageV: 240, frequencyHz: 50 }, `INPUT 230V~ 50Hz 0.3A${out}`, switching),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'a 220 V plate on 230 V',
    because: 'the band goes to 253 V, 220 V was tested to 233.2 V',
    request: plated(DE, `INPUT 220V~ 50Hz 0.3A${out}`, switching),
    is: { 'mains-voltage': ['caution'] },
  },
  {
    name: 'a 220 V plate on 240 V',
    because: '240 / 220 = 1.09, and its band goes far beyond the type test',
    request: plated({ country: null, voltageV: 240, frequencyHz: 50 }, `INPUT 220V~ 50Hz 0.3A${out}`, switching),
    is: { 'mains-voltage': ['caution'] },
  },
  {
    name: 'a selector at 220 V, with 240 V beside it, on 230 V',
    because: 'the tap not below the mains is the one to set: 230 V at its top is 253 V',
    request: plated(DE, `INPUT 100/120/220/240V~ 50/60Hz 60VA${out}`, { ...iron, input: { selectorV: 220 } }),
    is: { 'mains-voltage': ['caution'] },
    says: { 'mains-voltage': /set the selector to 240 V/ },
  },
  {
    name: 'the same at 240 V',
    because: harmony,
    request: plated(DE, `INPUT 100/120/220/240V~ 50/60Hz 60VA${out}`, { ...iron, input: { selectorV: 240 } }),
    is: { 'mains-voltage': passes },
  },
  {
    name: 'the same with its place not known',
    because: 'one of the positions destroys it',
    request: plated(DE, `INPUT 100/120/220/240V~ 50/60Hz 60VA${out}`, iron),
    is: { 'mains-voltage': ['unknown'] },
    says: { 'mains-voltage': /It has to stand at 240 V\./ },
  },
  {
    name: 'a selector of 115 V and 230 V on 120 V, its place not known',
    because: nameplate,
    request: plated(US, `INPUT 115/230V~ 50/60Hz 4/2A${out}`, switching),
    is: { 'mains-voltage': ['unknown'] },
    says: { 'mains-voltage': /It has to stand at 115 V\./ },
  },
  {
    name: 'a 100 V 50/60 Hz iron unit on 120 V 60 Hz',
    because:
      '(120 / 60) / (100 / 50) = 1: its core carries what it is made for, and its outputs stand a fifth too high',
    request: plated(US, `INPUT AC100V 50/60Hz 20W${out}`, iron),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /core itself does not saturate/ },
  },
  {
    name: 'a 100 V 60 Hz iron unit on 120 V 60 Hz',
    because: flux,
    request: plated(US, `INPUT AC100V 60Hz 20W${out}`, iron),
    is: { 'mains-voltage': ['stop'] },
    says: { 'mains-voltage': /the core saturates/ },
  },
]

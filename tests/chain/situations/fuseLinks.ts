import { heedful, open, passes, plated, type Situation } from './situation.js'

const DE = { country: 'DE', socket: 'F' }
const US = { country: 'US', socket: 'B' }
const out = ' OUTPUT 12V DC 2A'
const of = (prescribed: string, fitted: string, site = DE, input = 'INPUT 230V~ 50Hz 0.2A') =>
  plated(site, `${input}${out}${prescribed ? ` FUSE ${prescribed}` : ''}`, { fuse: fitted })

const bursts =
  'a link for a lower voltage, or of a lower breaking capacity, can burst and arc on (IEC 60127-1; makers’ guides)'
const heats = 'a link above its prescription lets the fault heat on (makers: replace by like)'

/** What is in the fuse-holder against what stands beside it. */
export const fuseSituations: Situation[] = [
  { name: 'a car’s 32 V link on mains', because: bursts, request: of('T1A 250V', 'T1A 32V'), is: { fuse: ['stop'] } },
  {
    name: 'a glass link where H is prescribed',
    because: bursts,
    request: of('T1AH250V', 'T1AL250V'),
    is: { fuse: ['stop'] },
  },
  {
    name: 'a link without a letter where H is prescribed',
    because: bursts,
    request: of('T1AH250V', 'T1A250V'),
    is: { fuse: open },
  },
  {
    name: 'enhanced breaking capacity where L is prescribed',
    because: 'more than asked for',
    request: of('T1AL250V', 'T1AE250V'),
    is: { fuse: ['clear', 'caution'] },
  },
  {
    name: 'enhanced breaking capacity where H is prescribed',
    because: 'E breaks 150 A, H 1500 A (IEC 60127-2)',
    request: of('T1AH250V', 'T1AE250V'),
    is: { fuse: ['stop'] },
  },
  {
    name: '3.15 A where 315 mA belongs',
    because: `ten times; ${heats}`,
    request: of('T315mAL250V', 'T3.15AL250V'),
    is: { fuse: ['stop'] },
    says: { fuse: /10 times/ },
  },
  {
    name: '0,63 A where 630 mA is prescribed',
    because: 'one rating, written two ways',
    request: of('T630mAL250V', 'T0,63AL250V'),
    is: { fuse: passes },
  },
  {
    name: 'time lag where quick acting is prescribed',
    because: 'a fault then lasts many times longer (gates of IEC 60127-2)',
    request: of('F1AL250V', 'T1AL250V'),
    is: { fuse: ['stop'] },
  },
  {
    name: 'quick acting where time lag is prescribed',
    because: 'it protects as well and may open at switch-on',
    request: of('T1AL250V', 'F1AL250V'),
    is: { fuse: ['caution'] },
  },
  {
    name: 'super quick where time lag is prescribed',
    because: 'it protects as well and will open at switch-on',
    request: of('T1AL250V', 'FF1AL250V'),
    is: { fuse: ['caution'] },
  },
  {
    name: 'long time lag where time lag is prescribed',
    because: 'slower than prescribed',
    request: of('T1AL250V', 'TT1AL250V'),
    is: { fuse: ['stop'] },
  },
  {
    name: 'no speed on the cap',
    because: 'the letter decides',
    request: of('T1AL250V', '1A 250V'),
    is: { fuse: open },
  },
  {
    name: 'a 125 V link of an imported unit now on 230 V',
    because: bursts,
    request: of('', 'T1A 125V'),
    is: { fuse: ['stop'] },
  },
  {
    name: 'the link of a 120 V unit at 120 V behind a converter',
    because: 'the circuit stays at 120 V',
    request: plated(
      DE,
      `INPUT 120V 60Hz 0.5A${out} FUSE T1A 125V`,
      { fuse: 'T1A 125V' },
      { converter: { kind: 'isolating', outputV: 120, ratedVA: 200 } },
    ),
    is: { fuse: ['clear', 'caution', 'unknown'] },
  },
  {
    name: 'the link of the low setting on the high mains',
    because: `two ratings, one for each setting: 1 A where 0.5 A belongs; ${heats}`,
    request: plated(DE, `INPUT 115/230V~ 50/60Hz 60VA${out} FUSE 115V T1A, 230V T500mA`, {
      fuse: 'T1AL250V',
      input: { selectorV: 230 },
    }),
    is: { fuse: open },
  },
  {
    name: 'the link of the high setting on the low mains',
    because: 'it opens in use; no harm',
    request: plated(US, `INPUT 115/230V~ 50/60Hz 60VA${out} FUSE 115V T1A, 230V T500mA`, {
      fuse: 'T500mAL250V',
      input: { selectorV: 115 },
    }),
    is: { fuse: heedful },
  },
  {
    name: 'a quarter ampere as a fraction where 250 mA is prescribed',
    because: 'the same rating',
    request: of('F250mAL250V', 'F 1/4A 250V'),
    is: { fuse: ['clear', 'caution', 'unknown'] },
  },
  {
    name: 'a slow link without a letter where time lag is prescribed',
    because:
      'slow blow is time lag in words; by which standard its 1 A is meant it does not say (UL and IEC links of one number differ)',
    request: of('T1AL250V', '1A 250V SLOW BLOW'),
    is: { fuse: open },
  },
  {
    name: 'a strip of foil',
    because: 'it breaks nothing',
    request: of('T1AL250V', 'aluminium foil'),
    is: { fuse: ['stop'] },
  },
  {
    name: 'an empty marking and a prescription',
    because: 'what is fitted is not known',
    request: of('T1AL250V', '?'),
    is: { fuse: open },
  },
  {
    name: 'a smaller link than prescribed',
    because: 'it protects as well',
    request: of('T1AL250V', 'T500mAL250V'),
    is: { fuse: ['caution'] },
  },
  {
    name: 'a thermal cut-off named on the plate, and no link',
    because: 'a temperature is no rating of a fuse-link',
    request: plated(DE, `INPUT 230V~ 50Hz 0.2A${out} THERMAL FUSE 130°C`),
    is: { fuse: ['-', 'unknown'] },
  },
]

import type { CheckRequest } from '../../server/chain/case/request.js'
import type { Outcome, TopicName } from '../../server/chain/finding.js'

/** A question that was asked in public, with what an expert answered, as a check. */
export interface AskedQuestion {
  question: string
  /** where it was asked */
  source: string
  expert: string
  check: CheckRequest
  /** what must be found; a topic is judged by its worst finding */
  is: Partial<Record<TopicName, Outcome>>
  /** the finding that answers the question, where that is not clear */
  decides?: TopicName
  /** why that finding stands further down, with a cord described too */
  listed?: string
}

const forum = (where: string): string => `question and answer, ${where}`

export const askedQuestions: readonly AskedQuestion[] = [
  {
    question: 'an adapter of 19 V 1.58 A replaced by one of 19 V 2.15 A',
    source: forum('askleo.com, on same voltage and different amperage'),
    expert: 'yes: volts equal, amperes equal or more, polarity equal',
    check: {
      site: { country: 'US' },
      supply: { label: 'INPUT 100-240V~ 50/60Hz 1.2A OUTPUT 19V DC 2.15A', plug: { polarity: 'centre-positive' } },
      device: { label: 'DC 19V 1.58A', jack: { polarity: 'centre-positive' } },
    },
    is: { 'mains-voltage': 'clear', 'output-voltage': 'clear', 'output-current': 'clear', polarity: 'clear' },
  },
  {
    question: '19.5 V for a computer of 18.5 V',
    source: forum('superuser.com, question 14378237'),
    expert: 'acceptable at the edge of 5 %; look at plug and polarity',
    check: {
      site: { country: 'DE' },
      supply: { label: 'INPUT 100-240V~ 50/60Hz 1.5A OUTPUT 19.5V DC 4.62A' },
      device: { label: 'DC 18.5V 3.5A' },
    },
    is: { 'output-voltage': 'caution', 'output-current': 'clear', polarity: 'unknown', 'dc-plug': 'unknown' },
    decides: 'output-voltage',
  },
  {
    question: '9 V DC in place of the 9 V AC of a brick with 5 V DC and 9 V AC',
    source: 'article on the supplies of a home computer, egghead.page',
    expert: 'no: the machine makes other voltages from the AC, and needs both',
    check: {
      site: { country: 'US' },
      supply: { label: 'INPUT 120V 60Hz OUTPUT 9V DC 1A' },
      device: { label: '5V DC 1.5A, 9V AC 1A' },
    },
    is: { 'output-kind': 'stop', 'output-voltage': 'stop' },
    decides: 'output-kind',
  },
  {
    question: 'such a brick replaced by one of 5 V DC and 9 V AC',
    source: 'article on mending such a brick, larsee.com, December 2023',
    expert: 'yes, the right replacement; the 5 V part fails high with age',
    check: {
      site: { voltageV: 117, frequencyHz: 60 },
      supply: { label: 'INPUT 117V 60Hz 40W OUTPUT 1 5V DC 1.5A OUTPUT 2 9V AC 1.0A', technology: 'transformer' },
      device: { label: '5V DC 1.5A 9V AC 1A' },
    },
    is: { 'output-kind': 'clear', 'output-current': 'clear', 'output-voltage': 'caution' },
    decides: 'output-voltage',
  },
  {
    question: 'a 60 Hz transformer on 50 Hz at 83 % of its voltage',
    source: forum('physicsforums.com, thread 954052'),
    expert: 'it works: the flux is that of its plate',
    check: {
      site: { country: 'GB' },
      supply: { label: 'INPUT 120V 60Hz 100W', technology: 'transformer' },
      device: {},
      converter: { kind: 'isolating', outputV: 100, ratedVA: 200 },
    },
    is: { 'mains-voltage': 'caution', 'mains-frequency': 'clear' },
  },
  {
    question: 'a 50 Hz transformer on 60 Hz at its voltage',
    source: forum('physicsforums.com, thread 954052'),
    expert: 'without harm',
    check: {
      site: { voltageV: 230, frequencyHz: 60 },
      supply: { label: 'INPUT 230V 50Hz 100W', technology: 'transformer' },
      device: {},
    },
    is: { 'mains-frequency': 'clear' },
  },
  {
    question: 'a small 60 Hz transformer on 50 Hz at its voltage',
    source: forum('experts123.com'),
    expert: 'more iron loss and heat',
    check: {
      site: { voltageV: 120, frequencyHz: 50 },
      supply: { label: '120V 60Hz 20W', technology: 'transformer' },
      device: {},
    },
    is: { 'mains-frequency': 'stop' },
    decides: 'mains-frequency',
  },
  {
    question: 'a plug-in 9 V 1 A adapter for a keyboard of 9 V 7.7 W',
    source: forum('electronicspoint.com, thread 285428'),
    expert: 'enough: 7.7 W is 0.86 A; make sure of the polarity',
    check: {
      site: { country: 'US' },
      supply: { label: 'Switching Adapter Input: 100-120V~ 50/60Hz 0.3A Output: +9V 1A' },
      device: { label: 'DC 9V 7.7W' },
    },
    is: { 'output-voltage': 'clear', 'output-current': 'clear', polarity: 'unknown' },
    decides: 'polarity',
  },
  {
    question: 'a 9 V 750 mA machine on a 300 mA adapter',
    source: forum('a blog of April 2021'),
    expert: 'too few amperes',
    check: {
      site: { country: 'US' },
      supply: { label: '120V 60Hz OUTPUT 9V DC 300mA' },
      device: { label: '9V DC 750mA' },
    },
    is: { 'output-current': 'stop' },
    decides: 'output-current',
  },
  {
    question: 'a 12 V lamp of 500 mA on a transformer adapter of 1 A',
    source: forum('incbtech.com, 4616'),
    expert: 'it does not burn; but such an adapter gives more than its voltage at less than its current',
    check: {
      site: { country: 'BR', voltageV: 127, frequencyHz: 60 },
      supply: { label: 'INPUT 127V~ 60Hz OUTPUT 12V DC 1A', technology: 'transformer', regulated: false },
      device: { label: 'DC 12V 500mA', regulatedNeeded: false },
    },
    is: { 'output-voltage': 'clear', 'output-current': 'clear' },
  },
  {
    question: 'an adapter of 9 V that reads 13.33 V with nothing connected, for a machine that regulates inside',
    source: forum('a blog of May 2015'),
    expert: 'normal for such adapters; the polarity is what matters',
    check: {
      site: { country: 'JP' },
      supply: { label: 'AC ADAPTOR INPUT AC100V 50/60Hz OUTPUT DC 9V 1.2A', measured: { offLoadV: 13.33 } },
      device: { label: 'DC 9V 1.2A', regulatedNeeded: false },
    },
    is: { 'output-voltage': 'clear', polarity: 'unknown' },
    decides: 'polarity',
  },
  {
    question: '18 V read on a 12 V adapter, alone',
    source: forum('instructables.com'),
    expert: 'unregulated, charged to the crest: measure it with a load',
    check: {
      site: { country: 'US' },
      supply: { label: 'INPUT 120V 60Hz OUTPUT 12VDC 1A', technology: 'transformer', measured: { offLoadV: 18 } },
      device: {},
    },
    is: { 'output-voltage': 'unknown' },
  },
  {
    question: 'the 9 V AC adapter of one unit for a 9 V DC one',
    source: forum('premierguitar.com'),
    expert: 'no: AC kills it',
    check: {
      site: { country: 'US' },
      supply: { label: 'INPUT 120V 60Hz OUTPUT 9V AC 1A' },
      device: { label: '9V DC 300mA' },
    },
    is: { 'output-kind': 'stop' },
    decides: 'output-kind',
  },
  {
    question: 'an adapter that goes in with force, of the other polarity and 0.5 mm thinner',
    source: 'article of a magazine, ure.pia.co.jp',
    expert: 'no: it would not recover',
    check: {
      site: { country: 'JP' },
      supply: {
        label: 'AC100V 50/60Hz',
        outputs: [{ kind: 'dc', voltageV: 10, currentA: 0.85 }],
        plug: { polarity: 'centre-positive', outerMm: 5, innerMm: 2.1 },
      },
      device: { label: 'DC 10V 850mA', jack: { polarity: 'centre-negative', outerMm: 5.5, innerMm: 2.1 } },
    },
    is: { polarity: 'stop', 'dc-plug': 'stop' },
    decides: 'polarity',
  },
  {
    question: 'a brick for 120 V 60 Hz of 23 W on a converter of 50 VA, 50 Hz',
    source: forum('a blog, 005253'),
    expert: '50 W is ample; what 50 Hz does could not be told',
    check: {
      site: { country: 'GB' },
      supply: { label: 'INPUT 120V 60Hz 23W OUTPUT 12VDC 1000mA', technology: 'transformer' },
      device: { label: '12VDC 1A' },
      converter: { kind: 'isolating', outputV: 120, ratedVA: 50 },
    },
    is: { 'mains-frequency': 'stop', converter: 'clear' },
    decides: 'mains-frequency',
  },
  {
    question: 'a transformer for 220 V on 240 V: its heaters read 6.85 V instead of 6.3 V',
    source: 'article on a bucking transformer, dms-audio.com',
    expert: 'everything inside is 10 % high',
    check: {
      site: { voltageV: 240, frequencyHz: 50 },
      supply: { label: '220V 50Hz 200W', technology: 'transformer' },
      device: {},
    },
    is: { 'mains-voltage': 'caution' },
    decides: 'mains-voltage',
    listed: 'the outputs and the machine are not known, and what is not known stands before care',
  },
  {
    question: 'a 240 V 50 Hz supply of 18 W on 120 V 60 Hz',
    source: forum('accordionists.info, 7891'),
    expert: 'a small step-up converter is enough; frequency does not matter here',
    check: {
      site: { country: 'US' },
      supply: { label: 'Input 240v 50Hz. Output 12vDC 600mA. Power 18w' },
      device: { label: 'DC 12V 600mA' },
    },
    is: { 'mains-voltage': 'stop', converter: 'unknown', 'mains-frequency': 'clear' },
    decides: 'mains-voltage',
  },
  {
    question: 'a selector at 115 V on 230 V',
    source: forum('superuser.com, copied at itectec.com'),
    expert: 'everything gets twice its voltage',
    check: {
      site: { country: 'NL' },
      supply: { label: 'INPUT 115/230V~ 50/60Hz 6/3A OUTPUT +5V 20A +12V 8A', input: { selectorV: 115 } },
      device: {},
    },
    is: { 'mains-voltage': 'stop' },
    decides: 'mains-voltage',
  },
  {
    question: 'a selector at 230 V on 115 V',
    source: 'article on power supplies, upgradenrepair.com',
    expert: 'it does not come on; set it with the cord out',
    check: {
      site: { country: 'US' },
      supply: { label: 'INPUT 115/230V~ 50/60Hz 6/3A OUTPUT +5V 20A +12V 8A', input: { selectorV: 230 } },
      device: {},
    },
    is: { 'mains-voltage': 'stop' },
    decides: 'mains-voltage',
  },
  {
    question: 'a three-pin plug in a house with two-hole outlets, by an adapter',
    source: 'readers’ letters of a magazine, atarimagazines.com, issue 56',
    expert: 'it defeats the earth; an electrician',
    check: {
      site: { country: 'US', socket: 'A' },
      supply: { label: '115V 60Hz 1A', inlet: 'C14' },
      device: {},
      cord: {
        plug: 'NEMA 5-15P',
        connector: 'C13',
        ratedV: 125,
        ratedA: 10,
        earthed: true,
        adapter: { earthed: false },
      },
    },
    is: { earthing: 'stop', 'mains-voltage': 'clear' },
    decides: 'earthing',
  },
  {
    question: 'a flat two-pin plug fitted by hand to a flex whose class is not known',
    source: 'article, electrotopic.com',
    expert: 'with two cores of class II yes, by a moulded plug; with three never',
    check: {
      site: { country: 'DE', socket: 'F' },
      supply: { label: '230V 50Hz 20W', inlet: 'captive', technology: 'transformer' },
      device: {},
      cord: { plug: 'CEE 7/16', earthed: false, plugFitted: 'rewired' },
    },
    is: { cord: 'stop', earthing: 'unknown' },
    decides: 'cord',
  },
]

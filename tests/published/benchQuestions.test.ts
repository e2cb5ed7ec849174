import { describe, expect, it } from 'vitest'
import type { CheckRequest } from '../../server/chain/case/request.js'
import { type Outcome, outcomes, type TopicName } from '../../server/chain/finding.js'
import { checkSchema } from '../../server/facts/check.js'
import { assess } from '../support/told.js'

/** A question that someone asked in public, in the arrangement that it is about, with what an expert answered. */
interface Asked {
  /** where it was asked and answered */
  source: string
  question: string
  expert: string
  request: CheckRequest
  is: Partial<Record<TopicName, Outcome>>
  says?: RegExp
}

const block = (
  site: CheckRequest['site'],
  supply: CheckRequest['supply'],
  device: CheckRequest['device'],
): CheckRequest => ({
  arrangement: 'plug-in',
  site,
  supply,
  device,
})
const inside = (
  site: CheckRequest['site'],
  label: string,
  mains: NonNullable<CheckRequest['device']['mains']> = {},
  more: Pick<CheckRequest, 'cord' | 'converter'> = {},
): CheckRequest => ({ arrangement: 'built-in', site, supply: {}, device: { label, mains }, ...more })

const asked: Record<string, Asked> = {
  'a 9 V 1 A block for a keyboard of 9 V 7.7 W': {
    source: 'electronicspoint.com, thread 285428',
    question: 'Is it enough?',
    expert: 'Yes, 7.7 W is 0.86 A; make sure of the polarity.',
    request: block(
      { country: 'US' },
      { label: 'Switching Adapter Input: 100-120V~ 50/60Hz 0.3A Output: +9V 1A' },
      { label: 'DC 9V 7.7W' },
    ),
    is: { 'output-voltage': 'clear', 'output-current': 'clear', polarity: 'unknown' },
  },
  'an old keyboard marked 9 V on a new 9 V 1 A block': {
    source: 'edaboard.com, thread 385756',
    question: 'It does not start.',
    expert: 'Go no further before polarity and current are known.',
    request: block(
      { country: 'SE' },
      { label: 'INPUT 100-240V~ 50/60Hz OUTPUT 9V DC 1A', plug: { polarity: 'centre-positive' } },
      { label: 'DC 9V' },
    ),
    is: { 'output-current': 'unknown', polarity: 'unknown' },
  },
  'a console of 750 mA on a block of 300 mA': {
    source: 'monsonb.blogspot.com 2021/04',
    question: 'It got hot.',
    expert: 'Too few amperes.',
    request: block({ country: 'US' }, { label: '120V 60Hz OUTPUT 9V DC 300mA' }, { label: '9V DC 750mA' }),
    is: { 'output-current': 'stop' },
  },
  'a 12 V lamp of 500 mA on a transformer block of 1 A': {
    source: 'incbtech.com, question 4616',
    question: 'Will it burn?',
    expert: 'No; but such blocks give more than their voltage at less than their current.',
    request: block(
      { country: 'BR', voltageV: 127, frequencyHz: 60 },
      { label: 'INPUT 127V~ 60Hz OUTPUT 12V DC 1A', technology: 'transformer', regulated: false },
      { label: 'DC 12V 500mA', regulatedNeeded: false },
    ),
    is: { 'output-voltage': 'clear', 'output-current': 'clear' },
    says: /with nothing connected/,
  },
  'how polarity is tested before a tip is changed': {
    source: 'thefretboard.co.uk, comment 3103154',
    question: 'Red where?',
    expert: 'Red in the centre, black on the sleeve: a minus sign means centre negative.',
    request: block(
      { country: 'IT' },
      { label: 'INPUT 230V 50Hz OUTPUT 12V DC 1A' },
      { label: '12V DC 500mA', jack: { polarity: 'centre-negative' } },
    ),
    is: { polarity: 'unknown' },
  },
  'a 9 V block that reads 13.33 V with nothing connected': {
    source: 'kei-sakaki.jp 2015/05/05',
    question: 'Is that dangerous?',
    expert: 'Normal for such blocks; the machine regulates inside.',
    request: block(
      { country: 'JP' },
      { label: 'AC ADAPTOR INPUT AC100V 50/60Hz OUTPUT DC 9V 1.2A', measured: { offLoadV: 13.33 } },
      { label: 'DC 9V 1.2A', regulatedNeeded: false },
    ),
    is: { 'output-voltage': 'clear' },
  },
  'a 12 V transformer block alone that reads 18 V': {
    source: 'instructables.com, “Why does my multimeter read 18vdc on a 12vdc”',
    question: 'Why?',
    expert: 'It is unregulated and charged to the crest; measure it with a load.',
    request: {
      arrangement: 'supply-only',
      site: { country: 'US' },
      supply: { label: 'INPUT 120V 60Hz OUTPUT 12VDC 1A', technology: 'transformer', measured: { offLoadV: 18 } },
      device: {},
    },
    is: { 'output-voltage': 'caution' },
    says: /crest.*with a load of the machine’s current|unregulated/s,
  },
  'an old 5 V brick alone, right when cold': {
    source: 'tech.guitarsite.de, on a home computer’s supply',
    question: 'How is it tested before it meets the computer?',
    expert: 'Loaded and warm: such bricks fail high after some time.',
    request: {
      arrangement: 'supply-only',
      site: { country: 'GB' },
      supply: {
        label: 'INPUT 240V 50Hz OUTPUT 5V DC 1.5A',
        regulated: true,
        inlet: 'captive',
        measured: { offLoadV: 5.1 },
      },
      device: {},
    },
    is: { 'output-voltage': 'clear' },
    says: /fail warm and loaded/,
  },
  'a 9 V AC block for a 9 V DC unit': {
    source: 'premierguitar.com, on power adapters',
    question: 'May it?',
    expert: 'No: AC kills it.',
    request: block({ country: 'US' }, { label: 'INPUT 120V 60Hz OUTPUT 9V AC 1A' }, { label: '9V DC 300mA' }),
    is: { 'output-kind': 'stop' },
  },
  'the block of one console forced into another': {
    source: 'ure.pia.co.jp, article 21523',
    question: 'Same maker, goes in with force.',
    expert: 'No: the polarity is opposite, and the plugs differ by 0.5 mm.',
    request: block(
      { country: 'JP' },
      {
        label: 'AC100V 50/60Hz',
        outputs: [{ kind: 'dc', voltageV: 10, currentA: 0.85 }],
        plug: { polarity: 'centre-positive', outerMm: 5, innerMm: 2.1 },
      },
      { label: 'DC 10V 850mA', jack: { polarity: 'centre-negative', outerMm: 5.5, innerMm: 2.1 } },
    ),
    is: { polarity: 'stop', 'dc-plug': 'stop' },
  },
  'a 2.5 mm bore on a 2.1 mm pin': {
    source: 'forum.digikey.com, topic 401',
    question: 'Which one is it?',
    expert: 'A pin of 2.1 mm is loose in a bore of 2.5 mm.',
    request: block(
      { country: 'US' },
      { label: '12V DC 1A', plug: { outerMm: 5.5, innerMm: 2.5 } },
      { label: '12V DC 1A', jack: { outerMm: 5.5, innerMm: 2.1 } },
    ),
    is: { 'dc-plug': 'caution' },
  },
  'a 120 V 60 Hz transformer block behind a 50 W converter on 50 Hz': {
    source: 'janegalt.net, entry 5253',
    question: 'Can it really not be used?',
    expert: '50 W is ample for 23 W; the frequency stays 50 Hz.',
    request: {
      ...block(
        { country: 'GB' },
        { label: 'INPUT 120V 60Hz 23W OUTPUT 12VDC 1000mA', technology: 'transformer' },
        { label: '12VDC 1A' },
      ),
      converter: { kind: 'isolating', outputV: 120, ratedVA: 50 },
    },
    is: { 'mains-frequency': 'stop', converter: 'clear' },
  },
  'a turntable of 117 V 60 Hz behind a step-down transformer on 50 Hz, with a receiver beside it': {
    source: 'Audio magazine, May 1970, audio clinic',
    question: 'One transformer for both?',
    expert: 'Its size is for all units together; the turntable turns slow and needs another pulley or motor.',
    request: inside(
      { voltageV: 220, frequencyHz: 50 },
      '117V 60Hz 20W',
      { motor: 'synchronous', technology: 'unknown' },
      {
        converter: { kind: 'autotransformer', outputV: 117, ratedVA: 100, otherLoadsVA: 150 },
      },
    ),
    // 20 / 0.6 = 33.3 VA, with 150 VA more than 100 VA; 50 / 60 = 0.833
    is: { converter: 'stop', speed: 'caution' },
    says: /0\.833/,
  },
  'a 220 V amplifier on 240 V': {
    source: 'dms-audio.com, bucking transformer',
    question: 'Heaters read 6.85 V instead of 6.3 V.',
    expert: 'All inside is high; take 15 V to 25 V off with a small transformer, made by qualified hands.',
    request: inside({ voltageV: 240, frequencyHz: 50 }, '220V 50Hz 200W', { technology: 'transformer' }),
    is: { 'mains-voltage': 'caution' },
    says: /brought down by a transformer/,
  },
  'a 240 V 50 Hz block on 120 V 60 Hz': {
    source: 'accordionists.info, thread 7891',
    question: 'A converter?',
    expert: 'A small step-up converter; the frequency does not matter here.',
    request: block(
      { country: 'US' },
      { label: 'Input 240v 50Hz. Output 12vDC 600mA. Power 18w' },
      { label: 'DC 12V 600mA' },
    ),
    is: { 'mains-voltage': 'stop', converter: 'unknown', 'mains-frequency': 'clear' },
  },
  'a machine of 220-240 V 50/60 Hz at a 240 V outlet of a split phase': {
    source: 'es.scribd.com, document 93880403',
    question: 'Can it be plugged in?',
    expert: 'Only if the plate says so: there is no neutral at earth.',
    request: inside(
      { country: 'US', source: 'two-live' },
      '220-240V 50/60Hz 1A',
      { technology: 'switch-mode', inlet: 'C14' },
      {
        cord: { plug: 'NEMA 6-15P', connector: 'C13', ratedV: 250, ratedA: 10, earthed: true },
      },
    ),
    is: { 'mains-voltage': 'caution', socket: 'clear', earthing: 'clear' },
    says: /two live conductors/,
  },
  'two-pin equipment of 120 V behind an autotransformer on 240 V': {
    source: 'electrondepot.com, thread 33011',
    question: 'An autotransformer for it?',
    expert: 'No: its insulation is for 120 V, and its output stands up to 240 V above earth; an isolating one only.',
    request: inside(
      { country: 'AU' },
      '120V 50/60Hz 60W',
      { technology: 'transformer', inlet: 'captive' },
      {
        cord: { plug: 'NEMA 1-15P unpolarised' },
        converter: { kind: 'autotransformer', outputV: 120, ratedVA: 150 },
      },
    ),
    is: { earthing: 'unknown', converter: 'clear' },
    says: /above earth/,
  },
  'a selector at 115 on 230 V': {
    source: 'itectec.com, “why did the power supply fry itself”',
    question: 'Sparks, when it asks for less?',
    expert: 'Everything gets twice its voltage.',
    request: inside({ country: 'NL' }, '115/230V~ 50/60Hz 6/3A', { input: { selectorV: 115 } }),
    is: { 'mains-voltage': 'stop' },
    says: /twice the voltage/,
  },
  'a selector at 230 on 115 V': {
    source: 'upgradenrepair.com, on power supplies',
    question: 'What happens?',
    expert: 'It does not come on; set it with the cord out.',
    request: inside({ country: 'US' }, '115/230V~ 50/60Hz 6/3A', { input: { selectorV: 230 } }),
    is: { 'mains-voltage': 'stop' },
    says: /cord unplugged/,
  },
  'a teleprinter with a 50 Hz motor on 60 Hz': {
    source: 'mailman.qth.net, greenkeys, July 2018, 43575',
    question: 'How fast?',
    expert: 'A fifth fast; start-stop machines bear 10 % to 20 %, else another pulley.',
    request: inside({ country: 'US' }, 'TELEPRINTER MOTOR 115V AC 50Hz 1A', { motor: 'synchronous' }),
    is: { speed: 'caution' },
    says: /1\.2 times its speed/,
  },
  'a computer with a three-pin plug in a two-hole outlet by an adapter': {
    source: 'COMPUTE! issue 56, readers’ feedback',
    question: 'Is it all right?',
    expert: 'It defeats the earth; an electrician.',
    request: inside(
      { country: 'US', socket: 'A' },
      '115V 60Hz 1A',
      { inlet: 'C14' },
      {
        cord: {
          plug: 'NEMA 5-15P',
          connector: 'C13',
          ratedV: 125,
          ratedA: 10,
          earthed: true,
          adapter: { earthed: false },
        },
      },
    ),
    is: { earthing: 'stop' },
  },
  'a two-pin plug fitted by hand to a radio’s flex': {
    source: 'electrotopic.com, on slim continental plugs',
    question: 'With two cores?',
    expert: 'With two cores a moulded set, with three never.',
    request: inside(
      { country: 'DE', socket: 'F' },
      '230V 50Hz 20W',
      { inlet: 'captive', technology: 'transformer' },
      {
        cord: { plug: 'CEE 7/16', earthed: false, plugFitted: 'rewired' },
      },
    ),
    is: { cord: 'stop', earthing: 'unknown' },
  },
}

describe('questions that were asked in public, each in its arrangement', () => {
  it.each(Object.entries(asked))('%s', (_, { request, is, says, source, expert }) => {
    expect([source.length, expert.length].every((length) => length > 5)).toBe(true)
    expect(checkSchema.safeParse(request).success).toBe(true)
    const { findings } = assess(request)
    const worst = (topic: string) =>
      outcomes.find((outcome) => findings.some((one) => one.topic === topic && one.outcome === outcome)) ?? '-'
    expect(Object.fromEntries(Object.keys(is).map((topic) => [topic, worst(topic)]))).toEqual(is)
    if (says) expect(JSON.stringify(findings).replaceAll('\u00a0', ' ')).toMatch(says)
  })
})

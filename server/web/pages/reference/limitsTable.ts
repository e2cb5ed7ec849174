import type { TopicName } from '../../../chain/finding.js'
import { topicTag } from '../../../chain/topicTag.js'
import { plateLimits } from '../../../tables/plateLimits.js'
import type { Source } from '../../../tables/source.js'
import * as thresholds from '../../../tables/thresholds.js'
import { joined, type Phrase } from '../../../words/phrase.js'
import { decimal, percent, plain } from '../../../words/quantity.js'
import { slug, type Table } from './pageTable.js'

interface Limit {
  readonly value: number | readonly number[]
  readonly unit: string
  readonly source: Source
}

/** Which topic decides by a limit, and what it says of it. One without an entry is shown under its name in the code. */
const topicLimits: Readonly<Partial<Record<string, readonly [topic: TopicName, words: string]>>> = {
  nominalMatch: ['mains-voltage', 'a plate this near the nominal mains voltage was made for it'],
  wideWindowRatio: ['mains-voltage', 'top over bottom from which a window counts as wide'],
  voltageStopAbove: ['mains-voltage', 'mains over the top of the plate, above which is a stop'],
  voltageStopBelow: ['mains-voltage', 'mains over the bottom of the plate, below which is a stop'],
  voltageCautionBelow: ['mains-voltage', 'mains over the bottom of the plate, below which is a caution'],
  frequencyMatch: ['mains-frequency', 'a plate this near the mains frequency names it'],
  usualFrequencyLeastHz: ['mains-frequency', 'below this no supply is known to have been tried'],
  usualFrequencyMostHz: ['mains-frequency', 'above this no supply is known to have been tried'],
  extraLowVoltageMostV: ['earthing', 'the most a class III unit takes'],
  fluxClear: ['mains-frequency', 'flux ratio up to which a transformer is in no conflict'],
  fluxStopAbove: ['mains-frequency', 'flux ratio above which is a stop'],
  switchModePowerFactor: ['converter', 'power factor of a switch-mode supply whose plate gives watts only'],
  transformerPowerFactor: ['converter', 'power factor of a transformer supply whose plate gives watts only'],
  supplyEfficiency: ['converter', 'output over input power where the plate gives outputs only'],
  converterReserve: ['converter', 'rating over need from which there is no conflict'],
  converterLeast: ['converter', 'rating over need below which is a stop'],
  converterSizesVA: ['converter', 'sizes recommended'],
  converterOutputsV: ['converter', 'output voltages recommended'],
  europlugMostA: ['cord', 'the most a flat two-pin plug of the type CEE 7/16 carries'],
  lowVoltageCordMostV: ['cord', 'the most a cord set of the lower voltage class is for'],
  lowClassMostV: ['cord', 'up to this nominal voltage a mains is of the lower voltage class'],
  highVoltageCordV: ['cord', 'rating of a cord set for the upper voltage class'],
  smallestPlugFuseA: ['cord', 'the smallest plug fuse-link that is recommended'],
  outputToleranceRegulated: ['output-voltage', 'tolerance where a regulated supply is needed, or nothing is said'],
  outputToleranceWidest: ['output-voltage', 'beyond this no rail may lie: a stop'],
  unregulatedNotKnown: [
    'output-voltage',
    'unregulated, nothing known of the machine: a caution up to here, then unknown',
  ],
  unregulatedMadeFor: ['output-voltage', 'unregulated, for a machine made for it: no conflict up to here'],
  unregulatedMost: [
    'output-voltage',
    'unregulated: a stop above this; unknown where the machine regulates inside, no conflict up to here',
  ],
  measuredDemandHeadroom: ['output-current', 'rating over a measured current from which there is no conflict'],
  totalPowerAbove: [
    'output-current',
    'power of one output over its volts times amperes, above which it is that of all',
  ],
  plateDemandHeadroom: ['output-current', 'rating over a current from the machine’s plate, below which is a stop'],
  plugOuterMost: ['dc-plug', 'difference of the outer diameters above which is a stop'],
  plugBoreTight: ['dc-plug', 'bore smaller than the pin by more than this: a stop'],
  plugBoreLoose: ['dc-plug', 'bore larger than the pin from this on: a caution'],
  leadDropStopAbove: ['lead-drop', 'share of the voltage lost in the lead above which is a stop'],
  copperResistivity: ['lead-drop', 'resistivity of copper at 20 °C'],
}

/** What each bound of the plate reader is for. */
const plateWordsOf: Readonly<Partial<Record<string, readonly [unit: string, words: string]>>> = {
  leastMainsV: ['V', 'a voltage from here up is a mains voltage where no word says otherwise'],
  mostLowV: ['V', 'a voltage up to here is an output where no word says otherwise'],
  mostV: ['V', 'the highest voltage read'],
  mostA: ['A', 'the highest current read'],
  mostW: ['W', 'the highest power read'],
  leastHz: ['Hz', 'the lowest frequency read'],
  mostHz: ['Hz', 'the highest frequency read'],
  mostRails: ['', 'the most rails read from one plate'],
  mostCharacters: ['', 'the most characters read from one text'],
  mostTokens: ['', 'the most words, figures and signs read from one text'],
  leastSettingsRatio: ['', 'higher over lower of two voltages joined by a dash, from which they are two settings'],
  mostSettingsRatio: ['', 'the same, up to which they are two settings'],
  widestPartRange: ['', 'highest over lowest voltage of one range among several'],
  powerAgreement: ['', 'how far printed watts may lie from volts times amperes'],
}

const shown = (value: Limit['value'], unit: string): Phrase =>
  joined(
    [value]
      .flat()
      .map((one) =>
        unit === '1' || unit === ''
          ? unit === '1' && one <= 0.1
            ? percent(one)
            : decimal(one, unit === '' ? 5 : 4)
          : plain(one, unit, 5),
      ),
    ', ',
  )

const isLimit = (value: unknown): value is Limit =>
  typeof value === 'object' && value !== null && 'value' in value && 'unit' in value && 'source' in value

/** "leastMainsV" is "least mains", in volts. */
function named(name: string): readonly [unit: string, words: string] {
  const [, stem = name, unit = ''] = /^(.*[a-z])(V|A|W|Hz)$/.exec(name) ?? []
  return [unit, stem.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)]
}

export const limitsTable: Table = {
  name: 'limits',
  title: 'Limits the findings decide by',
  intro: 'Every threshold of every topic, with the reason for it, and the bounds within which a rating plate is read.',
  columns: [{ title: 'Limit' }, { title: 'Topic' }, { title: 'Value' }],
  rows: () => [
    ...Object.entries<unknown>({ ...thresholds }).flatMap(([name, limit]) => {
      if (!isLimit(limit)) return []
      const [topic, words] = topicLimits[name] ?? ['several topics', named(name)[1]]
      return {
        id: slug(topic, words),
        cells: [words, topic === 'several topics' ? topic : topicTag(topic), shown(limit.value, limit.unit)],
        sources: [limit.source],
      }
    }),
    ...Object.entries(plateLimits).map(([name, { value, source }]) => {
      const [unit, words] = plateWordsOf[name] ?? named(name)
      return { id: slug('plate', words), cells: [words, 'reading a plate', shown(value, unit)], sources: [source] }
    }),
  ],
}

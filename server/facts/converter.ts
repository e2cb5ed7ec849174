import { look } from './fact.js'
import { choice, maybe, number, stated, thing, yesNo } from './kinds.js'
import { leastTaken } from './leastTaken.js'

/** A voltage converter between the wall and the supply. What is not known of one that is used is null. */
export const converter = maybe(
  thing('Converter', {
    kind: stated(
      choice({
        choices: [
          { value: 'autotransformer', label: 'Autotransformer' },
          { value: 'isolating', label: 'Isolating transformer' },
          { value: 'electronic', label: 'Electronic (light, for heaters)' },
          { value: null, word: 'unknown', label: 'One is used, kind not known' },
        ],
        none: 'None',
        link: 'converter',
        address: 'converter',
        label: 'Voltage converter',
        question: 'Which kind of converter stands between the wall and the supply?',
        term: 'autotransformer',
        ahead: true,
        findOut: [look('From its plate; one that is light for its watts is electronic.')],
      }),
    ),
    outputV: stated(
      number({
        unit: 'V',
        min: leastTaken.voltageV,
        max: 1000,
        typed: { min: 50 },
        link: 'converter',
        address: 'converterv',
        label: 'Converter output',
        question: 'What voltage does the converter give?',
        ahead: true,
        findOut: [look('From its plate.')],
      }),
    ),
    ratedVA: stated(
      number({
        unit: 'VA',
        min: leastTaken.power,
        max: 100_000,
        link: 'converter',
        address: 'converterva',
        label: 'Converter rating',
        question: 'For how many volt-amperes is the converter rated?',
        ahead: true,
        findOut: [look('From its plate; watts may stand there instead of volt-amperes.')],
      }),
    ),
    otherLoadsVA: number({
      unit: 'VA',
      min: leastTaken.power,
      max: 100_000,
      link: 'converter',
      address: 'converterothers',
      label: 'Other loads on the converter',
      question: 'How many volt-amperes do the other things take that it feeds?',
      findOut: [look('From the plates of all else that is plugged into it, added up.')],
    }),
    earthed: yesNo({
      link: 'converter',
      address: 'converterearth',
      label: 'Converter passes the earth on',
      question: 'Does the converter pass the earth on to its outlet?',
      findOut: [
        look('Unplugged, ohms from the earth contact of its plug to that of its outlet: under 1 Ω where it does.'),
      ],
    }),
  }),
)

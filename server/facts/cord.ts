import { inletPairs } from '../tables/inletPairs.js'
import { plugTypes } from '../tables/plugTypes.js'
import { drawingKey } from './drawingKey.js'
import { look } from './fact.js'
import { choice, group, maybe, number, stated, text, thing, yesNo } from './kinds.js'
import { leastTaken } from './leastTaken.js'
import { captive, namesOnce } from './usualNames.js'

const onCord = look('From the print or the moulding on the cord.')

/** The mains cord, and what stands between its plug and the wall. */
export const cord = maybe(
  thing('Cord', {
    plug: text({
      choices: plugTypes.map(({ name, letters }) => ({
        value: name,
        label: letters.length > 0 ? `${name} (type ${letters.join(', ')})` : name,
        drawing: drawingKey('plug', name),
        sockets: letters,
      })),
      link: 'cord',
      address: 'cordplug',
      label: 'Wall plug',
      question: 'Which plug is on the wall end of the cord?',
      ahead: true,
      findOut: [look('From its pins: their number, shape and whether one is an earth.')],
    }),
    connector: text({
      choices: [
        captive,
        ...namesOnce(
          'connector',
          inletPairs.map(({ connector, nicknames }) => ({ name: connector, nicknames })),
        ),
      ],
      link: 'cord',
      address: 'cordend',
      label: 'Cord connector',
      question: 'Which connector is on the supply’s end of the cord?',
      term: 'connector',
      ahead: true,
      findOut: [look('From its outline, which is that of the inlet it goes into.')],
    }),
    ratedV: number({
      unit: 'V',
      min: leastTaken.voltageV,
      max: 1000,
      link: 'cord',
      address: 'cordv',
      label: 'Cord rated voltage',
      question: 'For which voltage is the cord rated?',
      findOut: [onCord],
    }),
    ratedA: number({
      unit: 'A',
      min: leastTaken.currentA,
      max: 1000,
      link: 'cord',
      address: 'corda',
      label: 'Cord rated current',
      question: 'For which current is the cord rated?',
      findOut: [onCord],
    }),
    earthed: yesNo({
      link: 'cord',
      address: 'cordearth',
      label: 'Cord carries an earth',
      question: 'Does the cord carry an earth from end to end?',
      term: 'earth',
      ahead: true,
      findOut: [
        look(
          'Unplugged at both ends, by the earth contacts of plug and connector, and a continuity test between them.',
        ),
      ],
    }),
    areaMm2: number({
      unit: 'mm²',
      min: leastTaken.areaMm2,
      max: 100,
      link: 'cord',
      address: 'cordmm2',
      label: 'Cord conductor area',
      question: 'How thick are the conductors of the cord?',
      findOut: [onCord],
    }),
    awg: number({
      unit: 'AWG',
      min: -3,
      max: 40,
      typed: { min: 0, whole: true },
      link: 'cord',
      address: 'cordawg',
      label: 'Cord conductor gauge',
      question: 'Which gauge are the conductors of the cord?',
      findOut: [onCord],
    }),
    plugFitted: choice({
      choices: [
        { value: 'moulded', label: 'Moulded on' },
        { value: 'rewired', label: 'Fitted by hand' },
      ],
      link: 'cord',
      address: 'cordplugfitted',
      label: 'How the plug is fitted',
      question: 'Is the plug moulded on, or was it fitted by hand?',
      findOut: [look('A plug with a screw or a lid was fitted by hand; do not open it.')],
    }),
    adapter: group({
      earthed: stated(
        yesNo({
          choices: [
            { value: true, word: 'earthed', label: 'Yes, and it passes the earth on' },
            { value: false, word: 'unearthed', label: 'Yes, without an earth' },
            { value: null, word: 'unknown', label: 'Yes, earth not known' },
          ],
          none: 'None, or I do not know',
          link: 'adapter',
          address: 'adapter',
          label: 'Travel adapter',
          question: 'Is a travel adapter used, and does it pass the earth on?',
          ahead: true,
          findOut: [look('Unplugged: it needs an earth contact on both of its sides.')],
        }),
      ),
    }),
  }),
)

import { polarityText } from '../facts/plug.js'
import { commonPractice, fromMemory } from '../tables/source.js'
import { listed, say } from '../words/phrase.js'
import { underPower } from './action.js'
import { hasMap } from './case/hasMap.js'
import type { Pin, Polarity } from './case/request.js'
import type { PairSituation } from './case/situation.js'
import { dcInvolved } from './dcInvolved.js'
import { hazardsOf, judgeHazard } from './hazardFinding.js'
import { clear, type Judgement, stop, type Text, together, unknown } from './judgement.js'
import { notReadOn } from './notRead.js'
import { pairTopic } from './topic.js'
import { measuredThere, ratingPlate } from './words.js'

const symbols = fromMemory(
  'IEC 60417-5926',
  'polarity of a dc power connector, drawn as sleeve and centre with their signs',
)
const reversed = commonPractice(
  'Reversed supply',
  'chips, capacitors and displays conduct the wrong way and fail within seconds',
)

/** Whether centre and sleeve of plug and jack carry the same sign. */
export const polarity = pairTopic({
  name: 'polarity',
  words: say`the polarity`,
  links: ['plug', 'jack'],
  asks: ['supply.plug.polarity', 'device.jack.polarity', 'supply.measured.polarity'],
  when: {
    stop: {
      rule: say`Plug and jack carry opposite signs, or the plug measures otherwise than it is printed.`,
      example: { device: { jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-negative' } } },
    },
    unknown: {
      rule: say`The polarity of plug or jack is not known, a plate speaks of it in words that were not read, or signs told beside maps of the contacts contradict each other or the maps.`,
      example: { device: { jack: { outerMm: 5.5, innerMm: 2.1 } } },
    },
    caution: {
      rule: say`The plate names tips that turn round, and what they give now was measured.`,
      example: { supply: { label: 'REVERSIBLE TIPS', measured: { polarity: 'centre-positive' } } },
    },
    clear: {
      rule: say`Centre and sleeve carry the same sign on both sides; measured counts before printed.`,
      example: {},
    },
  },
  judge(situation) {
    if (!dcInvolved(situation)) return []
    // a connector of several contacts is judged contact by contact
    if (hasMap(situation)) return againstMap(situation)
    const { measured, given, wrong } = plugSign(situation)
    const wanted = situation.device.jack.polarity
    if (wrong?.outcome === 'stop') return [wrong]
    if (!given || !wanted) return [unknown(() => missing(given, wanted))]
    if (wrong) return [wrong]
    const [tips] = hazardsOf(situation, ['interchangeable or reversible tips'])
    if (tips && given === wanted) return judgeHazard(tips, measured ? 'caution' : 'unknown')
    if (given === wanted) {
      const open = notReadOn(situation, 'polarity', measured ? ['machine'] : ['supply', 'machine'])
      if (open.length > 0) return together(open)
    }
    const from = measured ? 'measured' : 'as printed'
    const sources = [measured ? measuredThere : ratingPlate, symbols]
    if (given === wanted)
      return [
        clear(() => ({
          title: say`Plug and jack are both ${polarityText(given)} (plug ${from})`,
          why: say`Centre and sleeve carry the same sign.`,
          working: [],
          action: measured
            ? null
            : underPower(
                say`Confirm it with a meter before the machine is connected: a plug may have been changed.`,
                'mains',
              ),
          sources,
        })),
      ]
    return [
      stop(() => ({
        title: say`The plug is ${polarityText(given)} (${from}); the jack wants ${polarityText(wanted)}`,
        why: say`Reversed, the machine’s chips and capacitors fail within seconds.`,
        working: [],
        action: [
          say`Do not connect the two. Use a supply or a made-up adaptor lead that is ${polarityText(wanted)}.`,
          underPower(say`Measure it before the machine is connected.`, 'mains'),
        ],
        sources: [...sources, reversed],
      })),
    ]
  },
})

/** What contacts of a barrel or phone plug are called where they have no figure. */
const centreNames = /^(tip|cent(er|re)|centre?-?pin|pin|inner)$/i
const sleeveNames = /^(sleeve|outer|barrel|ring|shell|outside)$/i

/** The sign on the centre as a map of contacts has it; null where it names none of them centre or sleeve, or no voltage there. */
function mappedSign(map: readonly Pin[]): Polarity | null {
  const centre = map.find(({ id }) => centreNames.test(id.trim()))
  const sleeve = map.find(({ id }) => sleeveNames.test(id.trim()))
  const voltageOf = (pin: Pin | undefined): number | null =>
    pin?.role === 'rail' && pin.kind !== 'ac' ? (pin.measuredV ?? pin.voltageV ?? null) : null
  const atCentreV = voltageOf(centre) ?? (voltageOf(sleeve) === null ? null : -(voltageOf(sleeve) ?? 0))
  return atCentreV === null || atCentreV === 0 ? null : atCentreV > 0 ? 'centre-positive' : 'centre-negative'
}

/** Signs of centre and sleeve that were told beside maps of the contacts: only what speaks against them is a judgement. */
function againstMap(situation: PairSituation): Judgement[] {
  const { given, wrong } = plugSign(situation)
  if (wrong?.outcome === 'stop') return [wrong]
  const wanted = situation.device.jack.polarity
  const plugMap = mappedSign(situation.supply.facts.pins ?? [])
  const jackMap = mappedSign(situation.device.facts.pins ?? [])
  const said = [
    ...(given === null ? [] : [{ sign: given, says: say`the plug is ${polarityText(given)}` }]),
    ...(wanted === null ? [] : [{ sign: wanted, says: say`the jack wants ${polarityText(wanted)}` }]),
    ...(plugMap === null ? [] : [{ sign: plugMap, says: say`the supply’s contacts are ${polarityText(plugMap)}` }]),
    ...(jackMap === null ? [] : [{ sign: jackMap, says: say`the machine’s contacts are ${polarityText(jackMap)}` }]),
  ]
  if (said.every(({ sign }) => sign === said[0]?.sign)) return []
  return [
    unknown(() => ({
      title: say`The signs of centre and sleeve contradict each other: ${listed(said.map(({ says }) => says))}`,
      why: say`One of them is wrong; reversed, the machine’s chips and capacitors fail within seconds.`,
      working: [],
      action: [
        say`Compare plug and jack with both drawings of the contacts again, each as one looks into it, and put right what is wrong.`,
        underPower(howToMeasure, 'mains'),
      ],
      sources: [symbols, reversed],
    })),
  ]
}

/** The sign on the centre of a supply's plug, as measured, else as printed; `wrong` where what was measured speaks against the print. */
export function plugSign(situation: PairSituation): {
  measured: Polarity | null
  given: Polarity | null
  wrong: Judgement | null
} {
  const { supply } = situation
  const printed = supply.plug.polarity
  const measured = supply.measured.polarity ?? null
  const given = measured ?? printed
  const wrong =
    measured && printed && measured !== printed
      ? stop(() => disagreement(measured, printed))
      : !measured && given === 'centre-positive' && readsNegative(situation)
        ? unknown(minusSign)
        : null
  return { measured, given, wrong }
}

/** A minus sign on the meter, of an only output that is not itself negative, while nobody says which lead was where. */
const readsNegative = ({ supply }: PairSituation): boolean => {
  const [rail, second] = supply.rails
  const { offLoadV, loadedV } = supply.measured
  return (
    rail !== undefined &&
    !second &&
    rail.kind !== 'ac' &&
    rail.voltageV > 0 &&
    ((offLoadV ?? 0) < 0 || (loadedV ?? 0) < 0)
  )
}

export const howToMeasure =
  'Measure it with nothing connected: black lead on the sleeve, red lead on the centre, DC range. A plain reading means centre positive, a minus sign means centre negative.'

const minusSign = (): Text => ({
  title: say`Centre positive is printed, but a voltage with a minus sign was measured`,
  why: say`Either the meter leads were swapped, or the plug is reversed: then the machine’s chips and capacitors fail within seconds.`,
  working: [],
  action: underPower(say`${howToMeasure} Enter what that gives as the measured polarity.`, 'mains'),
  sources: [measuredThere, ratingPlate, symbols],
})

const disagreement = (measured: Polarity, printed: Polarity): Text => ({
  title: say`The plug measures ${polarityText(measured)}, but ${polarityText(printed)} is printed`,
  why: say`Either the plug was changed, or the meter leads were swapped: whichever it is, the next person who trusts the print destroys a machine.`,
  working: [],
  action: [
    say`Measure a known battery first to be sure of the leads.`,
    underPower(
      say`${howToMeasure} If it holds, mark the supply and do not use it until plug or print is put right.`,
      'mains',
    ),
  ],
  sources: [measuredThere, ratingPlate, symbols],
})

const missing = (given: Polarity | null, wanted: Polarity | null): Text => ({
  title:
    given || wanted
      ? given
        ? say`The plug is ${polarityText(given)}; which polarity the jack wants is not known`
        : say`The jack wants ${polarityText(wanted ?? 'centre-positive')}; the polarity of the plug is not known`
      : say`Neither the polarity of the plug nor that of the jack is known`,
  why: say`Reversed, the machine’s chips and capacitors fail within seconds.`,
  working: [],
  action: [
    ...(given ? [] : [say`Plug: look for the drawing of two circles with + and −.`, underPower(howToMeasure, 'mains')]),
    ...(wanted
      ? []
      : [
          say`Jack: look for the drawing beside it or in the manual; or follow it inside with the power off: the sleeve contact usually joins the chassis or the minus of the largest capacitor. On a connector with several pins find out pin by pin.`,
        ]),
  ],
  sources: [symbols, reversed],
})

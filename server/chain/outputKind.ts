import { commonPractice } from '../tables/source.js'
import { say } from '../words/phrase.js'
import { underPower } from './action.js'
import type { RailPair } from './case/situation.js'
import { wanting } from './example.js'
import { clear, type Judgement, stop, type Text, unknown } from './judgement.js'
import { kindText, railText } from './matching/railText.js'
import { pairTopic } from './topic.js'
import { ratingPlate } from './words.js'

const kinds = commonPractice(
  'Direct and alternating current',
  'a machine with a rectifier inside wants AC and a machine without wants DC; few take both, and those say so',
)

/** Direct against alternating current, rail by rail. */
export const outputKind = pairTopic({
  name: 'output-kind',
  words: say`AC or DC`,
  links: ['supply', 'machine'],
  asks: ['supply.outputs.kind', 'device.inputs.kind', 'supply.outputs.voltageV', 'device.inputs.voltageV'],
  when: {
    stop: {
      rule: say`One side is alternating, the other direct current; or the supply is an electronic transformer for lamps.`,
      example: { device: wanting({ kind: 'ac' }) },
    },
    unknown: { rule: say`Either side does not say which it is.`, example: { device: wanting({ kind: null }) } },
    caution: { never: say`Alternating current is not nearly direct current.` },
    clear: { rule: say`Both sides are of one kind.`, example: {} },
  },
  judge({ supply, device, pairs }) {
    if (pairs.length === 0 || supply.rails.length === 0)
      return [unknown(() => sideMissing(supply.rails.length === 0, device.rails.length === 0))]
    return pairs.map((pair) =>
      supply.chopped && pair.supply?.kind !== 'dc'
        ? stop(() => choppedWords(pair))
        : judgePair(pair, device.takesEither),
    )
  },
})

function judgePair(pair: RailPair, takesEither: boolean): Judgement {
  const { device, supply } = pair
  if (takesEither && device.kind === null && supply?.kind) return clear(() => eitherTaken(pair))
  if (device.kind === null || supply?.kind == null) return unknown(() => kindMissing(pair))
  const wanted = device.kind
  if (wanted === supply.kind)
    return clear(() => ({
      title: say`Both are ${kindText(wanted)}: the supply gives ${railText(supply)}, the machine wants ${railText(device)}`,
      why: say`The kind of current agrees.`,
      working: [],
      action: null,
      sources: [ratingPlate],
    }))
  return stop(() => ({
    title: say`The supply gives ${railText(supply)}; the machine wants ${railText(device)}`,
    why:
      supply.kind === 'ac'
        ? say`Alternating current reverses on the machine’s circuits a hundred times a second and destroys them.`
        : say`A transformer or an AC motor in the machine is a near short circuit for direct current; a machine that makes a negative voltage from AC loses it.`,
    working: [],
    action: say`Use a supply with ${device.kind === 'ac' ? say`an alternating (~)` : say`a direct (⎓)`} output. Do not add a rectifier, or leave one out, by guess.`,
    sources: [kinds, ratingPlate],
  }))
}

const eitherTaken = ({ device, supply }: RailPair): Text => ({
  title: say`The machine’s plate says AC or DC for ${railText(device)}; the supply gives ${supply ? railText(supply) : say`none`}`,
  why: say`A machine marked for either has a rectifier behind its socket.`,
  working: [],
  action: null,
  sources: [ratingPlate],
})

const lampChopper = commonPractice(
  'Electronic transformers',
  'made for halogen lamps: bursts of tens of kilohertz that pause at each zero of the mains, and nothing below a least load',
)

const choppedWords = ({ device }: RailPair): Text => ({
  title: say`The supply is an electronic transformer for lamps; the machine wants ${railText(device)}`,
  why: say`Its output is chopped at tens of kilohertz: rectifiers for the mains overheat on it, transformers and motors do not run, and with a small load it does not start or hiccups.`,
  working: [],
  action: say`Use a supply that is made for machines, with an output of ${railText(device)}.`,
  sources: [lampChopper, ratingPlate],
})

const howToFindOut = [
  say`Look for ⎓ or “DC”, or for ~ or “AC”, beside the voltage on the plate.`,
  underPower(
    say`Of a supply: measure the output on the DC range and on the AC range, with nothing connected; DC reads near its voltage on the dc range and near nothing on the ac range, ac the other way round.`,
    'mains',
  ),
]

function kindMissing({ device, supply }: RailPair): Text {
  return {
    title: !supply
      ? say`No output of the supply matches the machine’s ${railText(device)}`
      : device.kind === null && supply.kind === null
        ? say`Neither plate says whether ${railText(supply)} is AC or DC`
        : device.kind === null
          ? say`The supply gives ${railText(supply)}; whether the machine wants AC or DC is not known`
          : say`The machine wants ${railText(device)}; whether the supply gives AC or DC is not known`,
    why: say`Alternating current destroys a machine that wants direct current.`,
    working: [],
    action: howToFindOut,
    sources: [kinds],
  }
}

const sideMissing = (supply: boolean, device: boolean): Text => ({
  title:
    supply && device
      ? say`Neither what the supply gives nor what the machine wants is known`
      : supply
        ? say`What the supply gives is not known`
        : say`What the machine wants is not known`,
  why: say`Alternating current destroys a machine that wants direct current.`,
  working: [],
  action: [
    say`Enter ${supply ? say`the output line of the supply’s plate` : say``}${supply && device ? say` and ` : say``}${device ? say`what stands beside the machine’s power socket` : say``}.`,
    ...howToFindOut,
  ],
  sources: [kinds],
})

import { polarityText } from '../facts/plug.js'
import { commonPractice } from '../tables/source.js'
import { measuredDemandHeadroom, outputToleranceRegulated, touchAc, touchDc } from '../tables/thresholds.js'
import { listed, type Phrase, say } from '../words/phrase.js'
import { volts } from '../words/quantity.js'
import { underPower } from './action.js'
import type { DeviceRail, PairSituation, PreparedDevice } from './case/situation.js'
import { misnamed } from './dcPlug.js'
import { leaveIt } from './hazardFinding.js'
import { isDangerous } from './isolation.js'
import { clear, type Judgement, unknown } from './judgement.js'
import type { PairJudging } from './judging.js'
import { toleranceOf } from './matching/outputTolerance.js'
import { kindText, railText } from './matching/railText.js'
import { leastRatedA, plugSizeText, ratedText, soughtText, typedSize } from './matching/sought.js'
import { ratingPlate } from './words.js'

const aloneRule = commonPractice(
  'A machine alone',
  'what its plate and its jack say is what to look for; nothing is connected before a supply is found and judged',
)

const sources = [ratingPlate, aloneRule]

const plateOpen = (title: Phrase, action: Phrase): Judgement =>
  unknown(() => ({
    title,
    why: say`A supply that is bought or tried by guess may destroy the machine.`,
    working: [],
    action,
    sources,
  }))

const readPlate = say`Read what stands beside the machine’s power socket or in its manual and enter it; do not try voltages out.`

/** Direct or alternating. */
const kindWanted = ({ device: { rails, takesMains } }: PairSituation): Judgement[] =>
  takesMains
    ? []
    : rails.map((rail) =>
        rail.kind === null
          ? plateOpen(
              say`Whether the machine wants AC or DC for its ${railText(rail)} is not known`,
              say`Look for ⎓ or “DC”, or for ~ or “AC”, beside its power socket.`,
            )
          : clear(() => ({
              title: say`Look for ${kindText(rail.kind ?? 'dc')}: the machine wants ${railText(rail)}`,
              why: say`The other kind destroys it, or does nothing.`,
              working: [],
              action: null,
              sources,
            })),
      )

/** What supply to look for: there is none yet, so nothing is settled. */
function voltageWanted(situation: PairSituation): Judgement[] {
  const { device } = situation
  if (device.rails.length === 0) return [plateOpen(say`The voltage the machine wants is not known`, readPlate)]
  if (device.takesMains)
    return [
      unknown(() => ({
        title: say`The machine’s plate names the mains: it has its supply inside`,
        why: say`No separate supply is missing; the machine itself meets the mains.`,
        working: [],
        action: say`Enter it as a machine with its supply inside.`,
        sources,
      })),
    ]
  return [unknown(() => (device.rails.some(takesDangerous) ? forQualified(device) : lookFor(situation)))]
}

/** Whether what a rail of a machine takes is dangerous to touch. */
const takesDangerous = (rail: DeviceRail): boolean => isDangerous(rail, rail.voltageMaxV ?? rail.voltageV)

/** Whether a supply may be offered: what the machine takes is known, and is neither the mains nor dangerous to touch. */
export const mayBeFed = ({ rails, takesMains }: PreparedDevice): boolean =>
  rails.length > 0 && !takesMains && !rails.some(takesDangerous)

const forQualified = ({ rails }: PairSituation['device']): ReturnType<Judgement['say']> => ({
  title: say`The machine wants ${listed(rails.map(railText))}: more than ${volts(touchDc.value)} DC or ${volts(touchAc.value)} AC is dangerous to touch`,
  why: say`Plug, jack and every test lead on it can give a fatal shock, and its capacitors keep it.`,
  working: [],
  action: [say`Do not feed it from anything.`, leaveIt],
  sources: [...sources, touchDc.source, touchAc.source],
})

function lookFor({ device }: PairSituation): ReturnType<Judgement['say']> {
  const regulated = device.regulatedNeeded === false ? say`` : say` regulated`
  const size = typedSize(device.jack)
  return {
    title: say`No supply yet: the machine wants ${listed(device.rails.map(railText))}`,
    why: say`Nothing is connected before a supply is found, read and judged.`,
    working: device.rails.map((rail) => {
      const { share } = toleranceOf(rail, device)
      return say`${railText(rail)}: from ${volts(rail.voltageV * (1 - share), 3)} to ${volts((rail.voltageMaxV ?? rail.voltageV) * (1 + share), 3)}`
    }),
    action: [
      say`Look for a${regulated} supply of ${listed(device.rails.map(soughtText))}, of class II (a square in a square), whose plate names the mains here.`,
      say`Words to search for: ${listed(device.rails.map((rail) => say`“power supply ${soughtText(rail)}”`))}${size ? say`, “${size}”` : ''}.`,
    ],
    sources: [...sources, outputToleranceRegulated.source],
  }
}

/** How strong it has to be. */
const currentWanted = ({ device: { rails, takesMains } }: PairSituation): Judgement[] =>
  takesMains
    ? []
    : rails.map((rail) => {
        const leastA = leastRatedA(rail)
        if (leastA === null)
          return unknown(() => ({
            title: say`How much current the machine takes at ${railText(rail)} is not known`,
            why: say`A supply that is too weak sags, hiccups or overheats.`,
            working: [],
            action: [
              say`Read the amperes or watts beside its power socket or in its manual.`,
              ...(takesDangerous(rail)
                ? []
                : [underPower(say`Or measure them on a current-limited bench supply.`, 'low-voltage')]),
            ],
            sources,
          }))
        return clear(() => ({
          title: say`Look for ${ratedText(leastA)} or more at ${volts(rail.voltageV)}`,
          why: say`More on the supply’s plate is no conflict: a machine draws what it needs.`,
          working: [],
          action: null,
          sources: [...sources, measuredDemandHeadroom.source],
        }))
      })

/** Which sign its jack wants. */
function polarityWanted({ device: { rails, takesMains, jack, facts } }: PairSituation): Judgement[] {
  if (takesMains || facts.pins?.length || rails.every(({ kind }) => kind === 'ac')) return []
  const { polarity } = jack
  if (polarity === null)
    return [
      plateOpen(
        say`Which polarity the machine’s jack wants is not known`,
        say`Look for the drawing beside it or in the manual; or follow it inside with the power off: the sleeve contact usually joins the chassis or the minus of the largest capacitor.`,
      ),
    ]
  return [
    clear(() => ({
      title: say`Look for a plug that is ${polarityText(polarity)}`,
      why: say`Reversed, the machine’s chips and capacitors fail within seconds.`,
      working: [],
      action: null,
      sources,
    })),
  ]
}

/** Which plug its jack takes. */
function plugWanted({ device: { rails, takesMains, jack, facts } }: PairSituation): Judgement[] {
  if (takesMains || facts.pins?.length || rails.length === 0) return []
  if (jack.contradicted.length > 0) return misnamed(jack, say`jack`)
  const size = plugSizeText(jack)
  if (jack.outerMm === null || jack.innerMm === null || size === null)
    return [
      plateOpen(
        say`Which size of plug the machine’s jack takes is not known`,
        say`Measure the pin with a caliper and the opening beside it; or try which known plug goes in, joined to nothing.`,
      ),
    ]
  return [
    clear(() => ({
      title: say`Look for a plug of ${size}`,
      why: say`The size says nothing of voltage or polarity.`,
      working: [],
      action: null,
      sources,
    })),
  ]
}

/** The topics of the low-voltage side, for a machine that has no supply yet. */
export const machineAlone: readonly PairJudging[] = [
  { name: 'output-kind', judge: kindWanted },
  { name: 'output-voltage', judge: voltageWanted },
  { name: 'output-current', judge: currentWanted },
  { name: 'polarity', judge: polarityWanted },
  { name: 'dc-plug', judge: plugWanted },
]

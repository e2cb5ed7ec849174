import { awgAreaMm2, dropV, loopResistanceOhm } from '../physics/conductor.js'
import { atMost } from '../physics/tolerance.js'
import { copperResistivity, leadDropStopAbove } from '../tables/thresholds.js'
import { say } from '../words/phrase.js'
import { amperes, decimal, ohms, percent, plain, volts } from '../words/quantity.js'
import { underPower } from './action.js'
import type { Lead } from './case/request.js'
import type { PairSituation, RailPair } from './case/situation.js'
import type { Outcome } from './finding.js'
import { type Judgement, type Text, unknown } from './judgement.js'
import { drawnA, ends } from './matching/matchRails.js'
import { toleranceOf } from './matching/outputTolerance.js'
import { railText } from './matching/railText.js'
import { pairTopic } from './topic.js'
import { measuredThere, ratingPlate } from './words.js'

/** Whether the lead between supply and machine leaves enough of the voltage. */
export const leadDrop = pairTopic({
  name: 'lead-drop',
  words: say`the voltage lost along the lead`,
  links: ['lead'],
  asks: ['supply.lead.areaMm2', 'device.inputs.currentA'],
  when: {
    stop: {
      rule: say`The lead loses more than ${percent(leadDropStopAbove.value)} of the voltage.`,
      example: { supply: { lead: { lengthM: 20, areaMm2: 0.5 } } },
    },
    unknown: {
      rule: say`The lead’s size, the voltage or the current is not known.`,
      example: { supply: { lead: { lengthM: 2 } } },
    },
    caution: {
      rule: say`The machine gets less than its tolerance allows, though the lead loses no more than that share.`,
      example: { supply: { lead: { lengthM: 10, areaMm2: 0.5 } } },
    },
    clear: {
      rule: say`What is left at the machine’s end is within its tolerance.`,
      example: { supply: { lead: { lengthM: 1.5, areaMm2: 0.5 } } },
    },
  },
  judge(situation) {
    const { lead } = situation.supply
    if (!lead) return []
    const areaMm2 = leadArea(lead)
    if (areaMm2 === null || situation.pairs.length === 0) return [unknown(() => missing(lead, areaMm2, null))]
    return situation.pairs.map((pair) => judgePair(situation, lead, areaMm2, pair))
  },
})

/** Cross-section of a lead [mm²], as stated or by its gauge; null where neither is known. */
export const leadArea = ({ areaMm2, awg }: Pick<Lead, 'areaMm2' | 'awg'>): number | null =>
  areaMm2 ?? (awg == null ? null : awgAreaMm2(awg))

function judgePair(situation: PairSituation, lead: Lead, areaMm2: number, pair: RailPair): Judgement {
  const { device } = pair
  const currentA = drawnA(device)
  const wantedV = Math.min(...ends(device).map(Math.abs))
  const suppliedV = startV(situation, pair)
  if (currentA === null || !(wantedV > 0) || suppliedV === null) return unknown(() => missing(lead, areaMm2, pair))
  const resistanceOhm = loopResistanceOhm(lead.lengthM, areaMm2, copperResistivity.value)
  const lostV = dropV(currentA, resistanceOhm)
  const share = lostV / wantedV
  const tolerance = toleranceOf(device, situation.device)
  const leftV = suppliedV.value - lostV
  const leastV = wantedV * (1 - tolerance.share)
  const outcome: Outcome = !atMost(share, leadDropStopAbove.value)
    ? 'stop'
    : atMost(leastV, leftV)
      ? 'clear'
      : 'caution'
  return {
    outcome,
    say: (): Text => {
      const figures = say`${plain(lead.lengthM, 'm')} of ${plain(areaMm2, 'mm²', 3)} loses ${volts(lostV, 3, 'up')} (${percent(share, 3, 'up')}) at ${amperes(currentA, 3, 'up')}`
      const working = [
        ...(lead.areaMm2 == null && lead.awg != null ? [say`AWG ${decimal(lead.awg)} = ${plain(areaMm2, 'mm²')}`] : []),
        say`R = ${copperResistivity.value} ${copperResistivity.unit} × 2 × ${plain(lead.lengthM, 'm')} / ${plain(areaMm2, 'mm²')} = ${ohms(resistanceOhm)} at 20 °C`,
        say`drop = ${amperes(currentA)} × ${ohms(resistanceOhm)} = ${volts(lostV)}`,
        say`at the machine: ${volts(suppliedV.value)} − ${volts(lostV)} = ${volts(leftV, 4, 'down')}; it wants at least ${volts(wantedV)} × (1 − ${percent(tolerance.share)}) = ${volts(leastV)}`,
      ]
      const sources = [copperResistivity.source, suppliedV.measured ? measuredThere : ratingPlate, tolerance.source]
      if (outcome === 'stop')
        return {
          title: say`${figures}: more than ${percent(leadDropStopAbove.value)}`,
          why: say`The machine starves behind a supply that measures right.`,
          working,
          action: say`Use a shorter or a thicker lead.`,
          sources: [...sources, leadDropStopAbove.source],
        }
      if (outcome === 'caution')
        return {
          title: say`${figures}: the machine gets ${volts(leftV, 3, 'down')} of the ${volts(leastV)} it wants at least`,
          why: say`It may reset or misread when it draws most.`,
          working,
          action: [
            say`Prefer a shorter or a thicker lead.`,
            underPower(say`Measure the voltage at the machine’s end under load.`, 'mains'),
          ],
          sources,
        }
      return {
        title: say`${figures}: the machine gets ${volts(leftV, 4, 'down')} for ${railText(device)}`,
        why: say`It stays within the machine’s tolerance.`,
        working,
        action: null,
        sources,
      }
    },
  }
}

/** The voltage at the supply's end of the lead [V]: measured loaded where there is one output, else the plate's. */
function startV({ supply }: PairSituation, pair: RailPair): { value: number; measured: boolean } | null {
  if (!pair.supply) return null
  const { loadedV } = supply.measured
  if (loadedV != null && supply.rails.length === 1) return { value: Math.abs(loadedV), measured: true }
  return { value: Math.min(...ends(pair.supply).map(Math.abs)), measured: false }
}

function missing(lead: Lead, areaMm2: number | null, pair: RailPair | null): Text {
  const about = pair ? say` for ${railText(pair.device)}` : ''
  return {
    title:
      areaMm2 === null
        ? say`What ${plain(lead.lengthM, 'm')} of lead loses is not known: its size is missing`
        : say`What ${plain(lead.lengthM, 'm')} of ${plain(areaMm2, 'mm²', 3)} loses${about} is not known: voltage or current is missing`,
    why: say`A long thin lead can starve a machine behind a supply that measures right.`,
    working: [],
    action:
      areaMm2 === null
        ? [
            say`Read the print on the lead (AWG 18, 2 × ${0.75}\u00a0mm²) and enter it.`,
            underPower(say`Or measure the voltage at both ends under load.`, 'mains'),
          ]
        : say`Enter the voltage and the amperes the machine wants, and what the supply gives.`,
    sources: [copperResistivity.source],
  }
}

import { meterMarks } from '../../tables/firstPower.js'
import { usualBand } from '../../tables/mains.js'
import { type Phrase, say } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import type { StageName, Step } from '../firstPowerPlan.js'
import type { PlanFacts } from './facts.js'
import { step } from './step.js'

/** The least mark of meter and leads for a mains [V]. */
const markFor = (mainsV: number): number =>
  meterMarks.voltagesV.find((markV) => markV >= mainsV * (1 + usualBand)) ?? Math.max(...meterMarks.voltagesV)

/** What meter and leads are marked, where they meet a mains of so many volts [V]. */
export const markedFor = (mainsV: number): Phrase =>
  say`meter and leads marked ${meterMarks.category} ${volts(markFor(mainsV))} or higher`

/** Range, mark and leads before anything is switched on: the leads then stay where the mains will be. */
export const meterOnLamp = (stage: StageName, { reach }: PlanFacts): Step =>
  step(
    `${stage}.meter-lamp`,
    say`Plug out: meter on AC volts above ${reach ? volts(reach.voltageV) : say`the mains`}, leads into the insulated sockets across the lamp, where they stay.`,
    {
      link: 'source',
      expect: say`leads in COM and V; ${markedFor(reach?.voltageV ?? 0)}`,
      stopIf: say`the mark is missing, a lead is worn, cracked or shows metal, or one stands in a socket for amperes`,
    },
  )

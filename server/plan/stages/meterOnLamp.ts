import { meterMarks } from '../../tables/firstPower.js'
import { usualBand } from '../../tables/mains.js'
import { say } from '../../words/phrase.js'
import { volts } from '../../words/quantity.js'
import type { StageName, Step } from '../firstPowerPlan.js'
import type { PlanFacts } from './facts.js'
import { step } from './step.js'

/** The least mark of meter and leads for a mains [V]. */
const markFor = (mainsV: number): number =>
  meterMarks.voltagesV.find((markV) => markV >= mainsV * (1 + usualBand)) ?? Math.max(...meterMarks.voltagesV)

/** Range, mark and leads before anything is switched on: the leads then stay where the mains will be. */
export const meterOnLamp = (stage: StageName, { reach }: PlanFacts): Step =>
  step(
    `${stage}.meter-lamp`,
    say`Plug out: meter on AC volts above ${reach ? volts(reach.voltageV) : say`the mains`}, leads into the insulated sockets across the lamp, where they stay.`,
    {
      link: 'source',
      expect: say`meter and leads marked ${meterMarks.category} or higher, for ${volts(markFor(reach?.voltageV ?? 0))} at least`,
      stopIf: say`the mark is missing, or a lead is worn, cracked or shows metal`,
    },
  )

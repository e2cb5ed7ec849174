import type { Hands, Power } from '../chain/action.js'
import { qualifiedHands } from '../chain/words.js'
import { plugPinLimit } from '../tables/capacitors.js'
import type { Examination, PlaceDone } from '../tables/examinations.js'
import { type Phrase, say } from '../words/phrase.js'
import { volts } from '../words/quantity.js'
import type { Around } from './around.js'

const powerOf: Readonly<Record<PlaceDone, Power>> = {
  unplugged: 'none',
  'bench supply': 'low-voltage',
  'dummy load': 'mains',
  'behind the lamp': 'mains',
  mains: 'mains',
  'qualified, unplugged': 'none',
  'qualified, mains': 'mains',
}

/** What an examination puts under power. */
export const powerAt = ({ done }: Pick<Examination, 'done'>): Power => powerOf[done]

/** More trouble than a look from outside: the cover comes off, or a meter goes in [1]. */
const outside = 1

/** Whether what lies inside is nothing that a reader probes: joined to the mains, or beside a picture tube. */
function isLive({ of, live }: Around): boolean {
  return live || of.request.supply.isolated === false || of.device.facts.mains?.pictureTube === true
}

/** Whose hands an examination needs here: a live chassis is never probed by the reader, and a picture tube is discharged by trained hands. */
export function handsFor({ done, trouble }: Pick<Examination, 'done' | 'trouble'>, around: Around): Hands {
  if (done.startsWith('qualified')) return 'qualified'
  const probes = done === 'dummy load' || (done === 'unplugged' && trouble > outside)
  return probes && isLive(around) ? 'qualified' : 'you'
}

const where: Readonly<Record<PlaceDone, Phrase>> = {
  unplugged: say`Plug out`,
  'bench supply': say`On the bench supply, its limit set`,
  'dummy load': say`With the supply on the mains, only low-voltage points probed`,
  'behind the lamp': say`Behind the series lamp, hands off`,
  mains: say`Covers on, hands off`,
  'qualified, unplugged': say`By a qualified person, plug out`,
  'qualified, mains': say`By a qualified person`,
}

const discharged = say`what is stored measured under ${volts(plugPinLimit.limitV)}`

/** How an examination is gone about: by whom, with or without power, discharged where something is opened. */
export function placeOf(examination: Pick<Examination, 'done' | 'trouble'>, around: Around): Phrase {
  const { done, trouble } = examination
  const qualified = handsFor(examination, around) === 'qualified' && !done.startsWith('qualified')
  const by = qualified ? say`By a qualified person: ${where[done]}` : where[done]
  return done === 'unplugged' && trouble > outside ? say`${by}, and ${discharged}` : by
}

/** What is said behind an examination, or a repair, that is for a qualified person; nothing behind another. */
export const behind = (hands: Hands): Phrase => (hands === 'qualified' ? say` ${qualifiedHands}` : say``)

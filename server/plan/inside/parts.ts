import { type InsidePart, type LampShows, lampShows } from '../../tables/inside.js'
import type { PlanFacts } from '../stages/facts.js'

/** What is known to hang on the mains inside the machine. */
export function partsOf({ technology, device, tube }: PlanFacts): InsidePart[] {
  const turns = device.motor === null ? device.turns : device.motor !== 'none' && device.motor !== 'dc'
  return [
    ...(technology === null ? (['transformer', 'switch-mode'] as const) : [technology]),
    ...(turns ? (['motor'] as const) : []),
    ...(tube ? (['picture tube'] as const) : []),
  ]
}

/** What the lamp shows for each of them. */
export const shownBy = (facts: PlanFacts): LampShows[] => {
  const parts = partsOf(facts)
  return lampShows.filter(({ part }) => parts.includes(part))
}

import { facts } from '../facts/boxes.js'
import type { Link } from '../facts/fact.js'
import type { Case } from './case/case.js'
import { linkOrder } from './chainLinks.js'
import type { Finding, Outcome } from './finding.js'
import { topics } from './index.js'
import { worstOf } from './judgement.js'
import { isCaptive, isPlugIn } from './protectionClass.js'

/** A thing of the power chain as it stands in a case. */
export interface LineLink {
  link: Link
  /** the worst finding about it; null where none is */
  outcome: Outcome | null
  /** keys of the facts about it, as GET /api/facts has them */
  facts: readonly string[]
}

const factsOf = new Map(
  linkOrder.map((link) => [link, facts.flatMap(({ key, fact }) => (fact.link === link ? [key] : []))]),
)

/** The findings about a thing, in their order. */
export const findingsAt = <Found extends Pick<Finding, 'topic'>>(link: Link, findings: readonly Found[]): Found[] =>
  findings.filter((finding) =>
    topics.some(({ name, links }) => name === finding.topic && (links as readonly Link[]).includes(link)),
  )

/** The things of the chain that a case has, in the order in which they are plugged together. */
export function lineOf(of: Case, findings: readonly Finding[]): LineLink[] {
  return linkOrder.flatMap((link) => {
    const outcome = worstOf(findingsAt(link, findings)) ?? null
    return has(of, link, outcome) ? [{ link, outcome, facts: factsOf.get(link) ?? [] }] : []
  })
}

function has({ request, supply }: Case, link: Link, outcome: Outcome | null): boolean {
  switch (link) {
    case 'adapter':
      return request.cord?.adapter != null
    case 'converter':
      return request.converter != null || outcome !== null
    case 'cord':
      return !isPlugIn(supply.inlet)
    case 'inlet':
    case 'fuse':
      return !isPlugIn(supply.inlet) && !(link === 'inlet' && isCaptive(supply.inlet))
    default:
      return true
  }
}

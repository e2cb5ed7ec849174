import { facts } from '../facts/boxes.js'
import type { Link } from '../facts/fact.js'
import type { Arrangement } from './case/arrangement.js'
import type { Case } from './case/case.js'
import { linkOrder } from './chainLinks.js'
import type { Finding, Outcome } from './finding.js'
import { topics } from './index.js'
import { worstOf } from './judgement.js'
import { judging } from './judging.js'
import { isCaptive } from './protectionClass.js'

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
export function findingsAt<Found extends Pick<Finding, 'topic'>>(
  link: Link,
  findings: readonly Found[],
  arrangement: Arrangement = 'separate',
): Found[] {
  const { links: there } = judging[arrangement]
  // what is about things that this arrangement has not stands at the machine, or at the supply without one
  const isLast = link === (there.includes('machine') ? 'machine' : 'supply')
  const isHere = (links: readonly Link[]): boolean =>
    links.includes(link) || (isLast && !links.some((one) => there.includes(one)))
  return findings.filter((finding) => topics.some(({ name, links }) => name === finding.topic && isHere(links)))
}

/** The things of the chain that a case has, in the order in which they are plugged together. */
export function lineOf(of: Case, findings: readonly Finding[]): LineLink[] {
  return linkOrder.flatMap((link) => {
    const outcome = worstOf(findingsAt(link, findings, of.arrangement)) ?? null
    return has(of, link, outcome) ? [{ link, outcome, facts: factsOf.get(link) ?? [] }] : []
  })
}

function has({ arrangement, request, supply }: Case, link: Link, outcome: Outcome | null): boolean {
  if (!judging[arrangement].links.includes(link)) return false
  switch (link) {
    case 'adapter':
      return request.cord?.adapter != null
    case 'converter':
      return request.converter != null || outcome !== null
    case 'inlet':
      return !isCaptive(supply.inlet)
    default:
      return true
  }
}

import { say } from '../words/phrase.js'
import { type Action, actionText } from './action.js'
import type { Finding, Outcome } from './finding.js'
import { mainsTopics, type TopicName } from './index.js'

/** An output that may be joined to the mains is one with it: nobody probes it. */
const mainsSide: readonly TopicName[] = [...mainsTopics.map(({ name }) => name), 'isolation']
/** Where one of these is open, whether the supply may meet this mains at all is: no cord is of use before. */
const meeting: readonly TopicName[] = ['mains-voltage', 'mains-frequency', 'converter']

const open: readonly Outcome[] = ['stop', 'unknown']

/** Whether a stop or an open question on the mains side stands: nothing is put under power meanwhile. */
export const mainsSideOpen = (findings: readonly Finding[]): boolean => stands(findings, mainsSide)

const stands = (findings: readonly Finding[], topics: readonly TopicName[]): boolean =>
  findings.some(({ topic, outcome }) => topics.includes(topic) && open.includes(outcome))

/**
 * The same findings without what a stop or an open question on the mains side forbids: nothing is put under power, and no cord is
 * bought for a supply that may not meet this mains.
 */
export function silenced(findings: readonly Finding[]): Finding[] {
  if (!mainsSideOpen(findings)) return [...findings]
  const pointless = stands(findings, meeting)
  return findings.map((finding) => {
    const actions = finding.actions.filter(({ power, buys }) => power === 'none' && !(pointless && buys))
    if (actions.length === finding.actions.length) return finding
    const left = actions.length > 0 || finding.outcome === 'clear' ? actions : [waits]
    return { ...finding, actions: left, action: actionText(left) }
  })
}

/** Stands where all that a finding asks for has to wait. */
export const waits: Action = {
  do: say`This waits until nothing on the mains side is a stop or not known.`,
  who: 'you',
  power: 'none',
}

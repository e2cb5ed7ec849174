import { joined, listed, or, type Phrase, say } from '../words/phrase.js'
import { isSame, unique } from '../words/unique.js'
import { actionsOf } from './action.js'
import type { Mains } from './case/situation.js'
import { type Judgement, type Text, uniqueSources, unknown } from './judgement.js'
import { mainsText } from './words.js'

/**
 * One topic judged for each mains system that may be met, as one: the common outcome where all agree, else unknown.
 *
 * @param systems  two or more
 * @param each     the judgements of the topic, by system, in the same order
 */
export function acrossSystems(systems: readonly Mains[], each: readonly (readonly Judgement[])[]): Judgement[] {
  const most = Math.max(...each.map(({ length }) => length))
  return Array.from({ length: most }, (_, index) =>
    agreed(
      systems,
      each.map((judged) => judged[index]),
    ),
  ).flat()
}

function agreed(systems: readonly Mains[], judged: readonly (Judgement | undefined)[]): Judgement[] {
  const known = judged.filter((judgement) => judgement !== undefined)
  const [first] = known
  if (!first) return []
  const alike = known.length === judged.length && known.every(({ outcome }) => outcome === first.outcome)
  if (alike) return [{ ...first, say: () => alikeWords(systems, known) }]
  return [unknown(() => differentWords(systems, judged))]
}

function alikeWords(systems: readonly Mains[], judged: readonly Judgement[]): Text {
  const texts = judged.map(({ say }) => say())
  const [first] = texts
  if (first && texts.every(({ title }) => isSame(title, first.title))) return first
  return {
    title: say`${listed(systems.map(mainsText), or)}: ${joined(unique(texts.map(({ title }) => title)), say`; `)}`,
    why: joined(unique(texts.map(({ why }) => why))),
    working: texts.flatMap(({ working }, index) => working.map((line) => say`${nameOf(systems, index)}: ${line}`)),
    action: texts.flatMap(({ action }) => actionsOf(action)),
    sources: uniqueSources(texts.flatMap(({ sources }) => sources)),
  }
}

function differentWords(systems: readonly Mains[], judged: readonly (Judgement | undefined)[]): Text {
  const texts = judged.map((judgement) => judgement?.say() ?? null)
  const line = (index: number): Phrase => {
    const judgement = judged[index]
    const text = texts[index]
    return judgement && text
      ? say`${nameOf(systems, index)}: ${judgement.outcome}: ${text.title}`
      : say`${nameOf(systems, index)}: nothing to judge`
  }
  return {
    title: say`It depends on which mains the socket carries: ${listed(systems.map(mainsText), or)}`,
    why: joined(unique(texts.flatMap((text) => text?.why ?? []))),
    working: texts.flatMap((text, index) => [line(index), ...(text?.working ?? [])]),
    action: say`Find out which mains the socket carries before anything is plugged in: ask the electricity company or the house’s licensed electrician, and enter the voltage and frequency.`,
    sources: uniqueSources(texts.flatMap((text) => text?.sources ?? [])),
  }
}

const nameOf = (systems: readonly Mains[], index: number): Phrase => {
  const system = systems[index]
  return system ? mainsText(system) : say`mains`
}

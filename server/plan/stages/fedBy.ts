import { type MainsSourceRow, mainsSourceRows } from '../../tables/mainsSources.js'
import { joined, type Phrase, say } from '../../words/phrase.js'
import type { Caution, StageName, Step } from '../firstPowerPlan.js'
import { lampText } from './behindLamp.js'
import { lampWiring } from './cautions.js'
import type { LampUse, PlanFacts } from './facts.js'
import { step } from './step.js'

/** What stands behind the socket, as far as it changes what a switch, a lamp and a residual-current device do. */
export type FedBy = Pick<MainsSourceRow, 'says' | 'earth' | 'bothLive' | 'residual'>

const wall: FedBy = {
  says: 'the wall',
  earth: 'The neutral is joined to earth in the building.',
  bothLive: 'no',
  residual: 'acts',
}

/** The source of the place, and an isolating converter in front of the unit: of both the worse. */
export function fedBy({ source, check }: Pick<PlanFacts, 'source' | 'check'>): FedBy {
  const of = (name: PlanFacts['source']): FedBy => mainsSourceRows.find((row) => row.source === name) ?? wall
  return check.converter?.kind === 'isolating'
    ? { ...of('isolating-transformer'), says: 'a converter with separate windings' }
    : of(source)
}

const bothText = (bothLive: FedBy['bothLive']): Phrase =>
  bothLive === 'yes'
    ? say`Both conductors are live: a single-pole switch, fuse-link or lamp breaks one of them and leaves the other on the inside`
    : say`Both conductors may be live: a single-pole switch, fuse-link or lamp may break the one that is not`

const residualText = (residual: FedBy['residual']): Phrase =>
  residual === 'does not act'
    ? say`A residual-current device before it does not open for a fault to earth behind it: none is relied on`
    : say`A residual-current device may not open for a fault to earth behind it: none is relied on`

/** What the source does to switch, fuse-link, lamp and residual-current device, as sentences; none for the wall. */
function changes({ bothLive, residual }: FedBy): Phrase[] {
  return [
    ...(bothLive === 'no' ? [] : [say`${bothText(bothLive)}.`]),
    ...(residual === 'acts' ? [] : [say`${residualText(residual)}.`]),
  ]
}

const warning = (fed: FedBy): Caution => ({
  signal: 'DANGER',
  hazard: joined(changes(fed)),
  consequence: say`What looks switched off, or protected, kills.`,
  avoid: say`Only the pulled plug makes it dead: pull it at every “off”, before anything is touched.`,
  electric: true,
})

/** Before a stage that puts something on the mains: what its source changes. Nothing for a wall with one live conductor. */
export function sourceStep(stage: StageName, facts: PlanFacts): Step[] {
  const fed = fedBy(facts)
  if (changes(fed).length === 0) return []
  return [
    step(`${stage}.source`, say`Fed by ${fed.says}: at each “switch off” of this stage pull the plug as well.`, {
      link: 'source',
      expect: say`the plug within reach, and nothing else plugged into the same source`,
      stopIf: say`the plug cannot be reached at once`,
      caution: warning(fed),
    }),
  ]
}

/** Lamp and switch, built and checked by someone qualified, for the conductors that this source has. */
export function lampCircuit(stage: StageName, facts: PlanFacts, lamp: LampUse | null): Step {
  const fed = fedBy(facts)
  const single = fed.bothLive === 'no'
  return step(
    `${stage}.lamp-circuit`,
    single
      ? say`Have the lamp circuit ready, its switch and lamp in the line conductor: ${lampText(lamp)}.`
      : say`Have the lamp circuit ready, its lamp in one conductor, a switch and a fuse-link in both: ${lampText(lamp)}. A fault to earth from the other conductor does not pass the lamp.`,
    {
      expect: say`a circuit built and checked under local codes, with earth straight through`,
      stopIf: single
        ? say`it is not certain which conductor is the line`
        : say`switch or fuse-link breaks one conductor only`,
      link: 'source',
      who: 'qualified',
      caution: fed.residual === 'acts' && single ? lampWiring : { ...lampWiring, avoid: avoidFor(fed) },
    },
  )
}

const avoidFor = (fed: FedBy): Phrase =>
  joined([
    fed.bothLive === 'no'
      ? say`Lamp and switch in the line conductor, earth straight through.`
      : say`Switch and fuse-link in both conductors, earth straight through.`,
    fed.residual === 'acts' ? say`A residual-current device upstream.` : say`${residualText(fed.residual)}.`,
  ])

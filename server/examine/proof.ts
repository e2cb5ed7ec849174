import { type Phrase, say } from '../words/phrase.js'
import type { Around } from './around.js'
import type { ReadingSeen } from './examineRequest.js'
import { measuredOf, readingSeen } from './readingSeen.js'

/** The three readings of an output, kept apart. */
export const proofStates = ['open', 'loaded', 'warm'] as const
export type ProofState = (typeof proofStates)[number]

export interface Proof {
  /** for each of the three: within its limits at every output, outside at one, or not read at all of them */
  open: 'within' | 'outside' | null
  loaded: 'within' | 'outside' | null
  warm: 'within' | 'outside' | null
  /** true only where all three lie within at every output */
  proved: boolean
  words: Phrase
}

/**
 * Whether the outputs were read open, loaded and warm: before that nothing is called proved. The last reading of each counts.
 *
 * @param free  false: something stands before power, and nothing is proved
 */
export function proofOf(readings: readonly ReadingSeen[], around: Around, free: boolean): Proof {
  const at = (state: ProofState): Proof['open'] => {
    const last = around.rails.map((_rail, index) =>
      readings.findLast((reading) => {
        const measured = measuredOf(reading)
        return measured?.of === 'output' && measured.index === index && measured.how === state
      }),
    )
    const reads = last.flatMap((reading) => (reading && readingSeen(reading, around)) ?? [])
    const outside = reads.some(({ seen, holds }) => seen !== null || holds)
    if (outside) return 'outside'
    return last.length > 0 && last.every((reading) => reading !== undefined) ? 'within' : null
  }
  const [open, loaded, warm] = [at('open'), at('loaded'), at('warm')]
  const proved = free && open === 'within' && loaded === 'within' && warm === 'within'
  return { open, loaded, warm, proved, words: proved ? provedWords : notProvedWords }
}

const provedWords = say`Read open, loaded and warm within its limits: as far as these readings go.`
const notProvedWords = say`Not proved while anything stands before power, nor before it was read three times within its limits: open, loaded, and warm after 30 min.`

/** What stands behind the capacitor. */
export type BulkLoad =
  | { readonly kind: 'none' }
  | { readonly kind: 'resistance'; readonly resistanceOhm: number }
  | {
      readonly kind: 'constant-power'
      readonly powerW: number
      /** capacitor volts at which it starts [V], and below which it gives up */
      readonly startV: number
      readonly stopV: number
      /** pause after it gave up [s] */
      readonly restartS: number
    }

/** Whether a constant-power load runs, from when it may start again, and how often it gave up. */
export interface LoadState {
  readonly running: boolean
  readonly mayStartS: number
  readonly gaveUp: number
}

/** Before anything ran. @source definition of {@link LoadState} */
export const atRest: LoadState = Object.freeze({ running: false, mayStartS: 0, gaveUp: 0 })

/**
 * A load at a capacitor voltage: one of constant power starts at a voltage and gives up below another.
 *
 * @param bulkV  [V]
 * @param timeS  [s]
 * @source definition of {@link BulkLoad}
 */
export function loadState(load: BulkLoad, before: LoadState, bulkV: number, timeS: number): LoadState {
  if (load.kind !== 'constant-power') return before
  if (before.running && bulkV < load.stopV)
    return { running: false, mayStartS: timeS + load.restartS, gaveUp: before.gaveUp + 1 }
  if (!before.running && bulkV >= load.startV && timeS >= before.mayStartS) return { ...before, running: true }
  return before
}

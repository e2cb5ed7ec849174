import { atMost } from '../../physics/tolerance.js'
import { plateNominalFor } from '../../tables/plateNominals.js'
import { nominalMatch, voltageCautionBelow, voltageStopAbove, wideWindowRatio } from '../../tables/thresholds.js'
import type { VoltageWindow } from './request.js'
import type { PreparedInput } from './situation.js'

export interface WindowsInUse {
  /** the windows the supply may be working in now; empty: the plate says none */
  windows: readonly VoltageWindow[]
  /** 'one': it is the only one; 'position': the selector says so; 'open': several, position not given; 'contradiction': the position is none of them */
  decidedBy: 'one' | 'position' | 'open' | 'contradiction' | 'nothing'
}

/** Whether a window is one wide range, which no single winding of a transformer takes. */
export const isWide = ({ min, max }: VoltageWindow): boolean => max >= wideWindowRatio.value * min

/** Whether what is marked for a window, a selector's position or a fuse-link, is the one for this voltage [V]. */
export const isFor = ({ min, max }: VoltageWindow, voltageV: number): boolean =>
  atMost(voltageCautionBelow.value * min, voltageV) && atMost(voltageV, voltageStopAbove.value * max)

/**
 * The selector position for a mains, of those that may serve it: the lowest that is not below it, else the highest of them. Null where
 * none serves it.
 */
export function positionFor(
  windows: readonly VoltageWindow[],
  mains: { voltageV: number; frequencyHz: number | null },
): VoltageWindow | null {
  const rising = windows.filter((window) => isFor(window, mains.voltageV)).toSorted((one, other) => one.max - other.max)
  const notBelow = rising.find(
    (window) =>
      atMost(mains.voltageV * (1 - nominalMatch.value), window.max) || plateNominalFor(window, mains) !== undefined,
  )
  return notBelow ?? rising.at(-1) ?? null
}

/**
 * A voltage over a plate's window [1]: 1 within it, where the winding is made for what it gets.
 *
 * @param voltageV  what reaches the supply [V], more than 0
 */
export const overWindow = ({ min, max }: VoltageWindow, voltageV: number): number =>
  voltageV > max ? voltageV / max : Math.min(1, voltageV / min)

/** What a selector may be set to: a plate's windows, and the positions printed at its selector, several of which part a wide range. */
export function settingsOf({
  windows,
  positions,
}: Pick<PreparedInput, 'windows' | 'positions'>): readonly VoltageWindow[] {
  if (!positions || positions.length === 0) return windows
  const kept = positions.length > 1 ? windows.filter((window) => !isWide(window)) : windows
  const added = positions.filter(({ min, max }) => !kept.some((own) => max >= own.min && min <= own.max))
  return [...kept, ...added]
}

/**
 * Which of a plate's windows the supply works in now. Several windows are the positions of a selector; one is where the plate speaks of
 * a selector, too. A selector set within a wide range decides by its own voltage.
 */
export function windowsInUse(input: PreparedInput): WindowsInUse {
  const { selectorV, positions } = input
  const windows = settingsOf(input)
  if (selectorV === null) {
    if (windows.length === 0) return { windows, decidedBy: 'nothing' }
    return { windows, decidedBy: windows.length === 1 && positions === null ? 'one' : 'open' }
  }
  const set = { min: selectorV, max: selectorV }
  if (windows.length === 0) return { windows: [set], decidedBy: 'position' }
  const holding = windows
    .filter(
      ({ min, max }) => selectorV >= min * (1 - nominalMatch.value) && selectorV <= max * (1 + nominalMatch.value),
    )
    .toSorted((one, other) => one.max / one.min - other.max / other.min)[0]
  if (!holding) return { windows: [...windows, set], decidedBy: 'contradiction' }
  return { windows: [isWide(holding) ? set : holding], decidedBy: 'position' }
}

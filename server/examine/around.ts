import type { Case } from '../chain/case/case.js'
import { overWindow, windowsInUse } from '../chain/case/plateWindow.js'
import type { Rail } from '../chain/case/situation.js'
import { reachOf } from '../chain/reach.js'
import { fluxRatio } from '../physics/flux.js'
import { acceptanceBands, otherTolerance } from '../tables/dummyLoad.js'
import { nominalMatch } from '../tables/thresholds.js'

/** What reaches the unit, where it is one voltage. */
export interface Reached {
  voltageV: number
  frequencyHz: number | null
  minV: number | null
  maxV: number | null
}

/** What the figures of an examination are worked out from. */
export interface Around {
  of: Case
  /** null where it is not known, or may be one of several */
  mains: Reached | null
  /** outputs of the supply; those the machine asks for where the supply's are not known */
  rails: readonly Rail[]
  /** what is printed for the mains: the window in use, and its frequencies; null where that is not known */
  plate: { minV: number; maxV: number; frequenciesHz: readonly number[] } | null
  /** what the series lamp passes at volts across it [A]; null where the lamp is not known */
  lampCurrentA: LampCurrent | null
  /** true: the check says that it is not isolated from the mains */
  live: boolean
}

/** From volts across the lamp to its current [A]; null where that cannot be told. */
export type LampCurrent = (lampV: number, mainsV: number) => number | null

export function aroundOf(of: Case, lampCurrentA: LampCurrent | null, live = false): Around {
  const { site, supply, device, request } = of
  const [system, ...others] = site.systems
  const reach = system && others.length === 0 ? reachOf(system, request.converter ?? null) : null
  const { windows } = windowsInUse(supply.input)
  const [window] = windows
  return {
    of,
    mains: reach?.voltageV == null ? null : { ...reach, voltageV: reach.voltageV },
    rails: supply.rails.length > 0 ? supply.rails : device.rails,
    plate:
      window && windows.length === 1
        ? { minV: window.min, maxV: window.max, frequenciesHz: supply.input.frequenciesHz }
        : null,
    lampCurrentA,
    live,
  }
}

/** What reaches the unit over its plate [1]; 1 where the plate was made for it, null where either is not known. */
export function overPlate({ mains, plate }: Around): number | null {
  if (!mains || !plate) return null
  const window = { min: plate.minV, max: plate.maxV }
  const ratio = overWindow(window, mains.voltageV)
  return Math.abs(ratio - 1) <= nominalMatch.value ? 1 : ratio
}

/** Volts per hertz, held against the point of the plate that is nearest. */
export interface Flux {
  /** over those of the plate [1] */
  ratio: number
  printedV: number
  printedHz: number
}

/** Volts per hertz over those of the plate; null where one of them is not known. */
export function fluxOverPlate({ mains, plate }: Around): Flux | null {
  const hertz = mains?.frequencyHz ?? null
  if (!mains || !plate || hertz === null || plate.frequenciesHz.length === 0) return null
  const printedHz = plate.frequenciesHz.includes(hertz) ? hertz : Math.min(...plate.frequenciesHz)
  const printedV = Math.max(plate.minV, Math.min(plate.maxV, mains.voltageV))
  return { ratio: fluxRatio(mains.voltageV, hertz, printedV, printedHz), printedV, printedHz }
}

/** The band of a rail: either side of its voltage, signs kept [V]. */
export function bandOf({ voltageV }: Rail): { lowV: number; highV: number } {
  const { tolerance } = acceptanceBands.find((row) => row.voltageV === voltageV) ?? otherTolerance
  const edges = [voltageV * (1 - tolerance), voltageV * (1 + tolerance)]
  return { lowV: Math.min(...edges), highV: Math.max(...edges) }
}

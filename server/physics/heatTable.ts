import type { Filament } from './filament.js'

/** A filament over the heat stored in it, on an even grid: quick to look up at every step of a run. */
export interface HeatTable {
  /** heat between two entries [J] */
  readonly stepJ: number
  /** heat at the melting point [J] */
  readonly maxJ: number
  readonly temperatureK: Float64Array
  readonly resistanceOhm: Float64Array
  readonly lossW: Float64Array
}

const entries = 2000

/**
 * The curves of a filament over its heat [J] instead of its temperature [K].
 *
 * Heat is what a run adds up, so nothing is lost or made by interpolation.
 *
 * @source the filament's own curves
 */
export function heatTable(lamp: Filament): HeatTable {
  const maxJ = lamp.heatJ[lamp.heatJ.length - 1] as number
  const stepJ = maxJ / (entries - 1)
  const table = {
    stepJ,
    maxJ,
    temperatureK: new Float64Array(entries),
    resistanceOhm: new Float64Array(entries),
    lossW: new Float64Array(entries),
  }
  let left = 0
  for (let at = 0; at < entries; at++) {
    const heat = at === entries - 1 ? maxJ : at * stepJ
    while (left < lamp.heatJ.length - 2 && (lamp.heatJ[left + 1] as number) < heat) left += 1
    const from = lamp.heatJ[left] as number
    const part = (heat - from) / ((lamp.heatJ[left + 1] as number) - from)
    table.temperatureK[at] = between(lamp.temperatureK, left, part)
    table.resistanceOhm[at] = between(lamp.resistanceOhm, left, part)
    table.lossW[at] = between(lamp.lossW, left, part)
  }
  return table
}

function between(curve: Float64Array, left: number, part: number): number {
  const low = curve[left] as number
  return low + part * ((curve[left + 1] as number) - low)
}

/**
 * A curve of the table at a heat, on a straight line between two entries. The range is not checked, because it runs
 * millions of times: the caller keeps it.
 *
 * @param heatJ  [J], 0 to `maxJ`
 * @source arithmetic
 */
export function atHeat(table: HeatTable, curve: Float64Array, heatJ: number): number {
  const place = heatJ / table.stepJ
  const at = Math.min(entries - 2, place | 0)
  return between(curve, at, place - at)
}

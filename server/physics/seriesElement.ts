import type { EnergyBalance } from './energyBalance.js'
import { atHeat, type HeatTable, heatTable } from './heatTable.js'
import type { LampString } from './lampString.js'

/** The element between mains and bridge, as the run uses it. */
export interface SeriesElement {
  readonly coldOhm: number
  readonly ohm: number
  /** longest step that changes the filaments little [s] */
  longestStep(currentA: number): number
  /** resistance expected in the middle of a step that begins with this current [Ω] */
  middleOhm(currentA: number, stepS: number): number
  /** lets ∫ i² dt pass, and time go by */
  pass(squareA2s: number, stepS: number, energy: EnergyBalance): void
  hottestK(): number
  storedJ(): number
  melted(): boolean
}

const fixedElement = (ohm: number): SeriesElement => ({
  coldOhm: ohm,
  ohm,
  longestStep: () => Number.POSITIVE_INFINITY,
  middleOhm: () => ohm,
  pass: (square, _stepS, energy) => {
    energy.resistorJ += square * ohm
  },
  hottestK: () => 0,
  storedJ: () => 0,
  melted: () => false,
})

/**
 * Lamps, or a fixed resistance [Ω], cold and ready to be switched on.
 *
 * @source heat balance of the filament; Kirchhoff's laws
 */
export const seriesElement = (series: LampString | number): SeriesElement =>
  typeof series === 'number' ? fixedElement(series) : new Filaments(series)

/** Filaments in series or parallel, each with its heat. */
class Filaments implements SeriesElement {
  readonly coldOhm: number
  ohm: number
  private readonly tables: readonly HeatTable[]
  private readonly heat: Float64Array
  /** resistance of each, as it is or as it is expected in the middle of the step [Ω] */
  private readonly middle: Float64Array
  private readonly parallel: boolean
  private hasMelted = false

  constructor(string: LampString) {
    const made = new Map(string.lamps.map((lamp) => [lamp, heatTable(lamp)]))
    this.tables = string.lamps.map((lamp) => made.get(lamp) as HeatTable)
    this.heat = new Float64Array(string.lamps.length)
    this.middle = Float64Array.from(this.tables, (table) => table.resistanceOhm[0] as number)
    this.parallel = string.arrangement === 'parallel'
    this.coldOhm = string.coldOhm
    this.ohm = string.coldOhm
  }

  private together(ohms: Float64Array): number {
    let sum = 0
    for (let at = 0; at < ohms.length; at++) sum += this.parallel ? 1 / (ohms[at] as number) : (ohms[at] as number)
    return this.parallel ? 1 / sum : sum
  }

  /** Power in one lamp for a string current. */
  private share(ohm: number, square: number, whole: number): number {
    return this.parallel ? (square * whole * whole) / ohm : square * ohm
  }

  longestStep(currentA: number): number {
    const square = currentA * currentA
    let longest = Number.POSITIVE_INFINITY
    for (let at = 0; at < this.tables.length; at++) {
      const powerW = this.share(this.middle[at] as number, square, this.ohm)
      if (powerW > 0) longest = Math.min(longest, (this.tables[at] as HeatTable).maxJ / 400 / powerW)
    }
    return longest
  }

  middleOhm(currentA: number, stepS: number): number {
    for (let at = 0; at < this.tables.length; at++) {
      const table = this.tables[at] as HeatTable
      const heat = this.heat[at] as number
      const ohm = atHeat(table, table.resistanceOhm, heat)
      const gain = this.share(ohm, currentA * currentA, this.ohm) - atHeat(table, table.lossW, heat)
      const ahead = Math.min(table.maxJ, Math.max(0, heat + (gain * stepS) / 2))
      this.middle[at] = atHeat(table, table.resistanceOhm, ahead)
    }
    return this.together(this.middle)
  }

  pass(square: number, stepS: number, energy: EnergyBalance): void {
    const whole = square > 0 ? this.together(this.middle) : 0
    for (let at = 0; at < this.tables.length; at++) {
      const table = this.tables[at] as HeatTable
      const heat = this.heat[at] as number
      const joules = square > 0 ? this.share(this.middle[at] as number, square, whole) : 0
      const loss = atHeat(table, table.lossW, heat)
      const halfway = Math.min(table.maxJ, Math.max(0, heat + (joules - loss * stepS) / 2))
      const lost = atHeat(table, table.lossW, halfway) * stepS
      energy.radiatedJ += lost
      let next = heat + joules - lost
      if (next >= table.maxJ) {
        this.hasMelted = true
        next = table.maxJ
      }
      this.heat[at] = next
      this.middle[at] = atHeat(table, table.resistanceOhm, next)
    }
    this.ohm = this.together(this.middle)
  }

  hottestK(): number {
    let hottest = 0
    for (let at = 0; at < this.tables.length; at++) {
      const table = this.tables[at] as HeatTable
      hottest = Math.max(hottest, atHeat(table, table.temperatureK, this.heat[at] as number))
    }
    return hottest
  }

  storedJ(): number {
    return this.heat.reduce((sum, heat) => sum + heat, 0)
  }

  melted(): boolean {
    return this.hasMelted
  }
}

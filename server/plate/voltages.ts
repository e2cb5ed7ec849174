import { plateLimits } from '../tables/plateLimits.js'
import type { VoltageWindow } from './labelReading.js'
import type { Element, Quantity } from './quantity.js'

/** A voltage of an output, or a range of them [V]. */
export interface RailVoltage {
  voltageV: number
  voltageMaxV: number | null
  /** printed with a sign, which only direct voltages have */
  signed: boolean
}

const ascending = (values: readonly number[]): boolean =>
  values.every((value, index) => index === 0 || value > values[index - 1]!)

/** Cuts the list at its strokes: each part one value or a range. */
function parts({ elements, joints }: Quantity): Element[][] {
  const out: Element[][] = []
  elements.forEach((element, index) => {
    if (index > 0 && joints[index - 1] === 'range') out[out.length - 1]!.push(element)
    else out.push([element])
  })
  return out
}

/**
 * The windows of voltage that an input takes.
 *
 * A dash joins the ends of a range. A stroke separates settings, "115/230V", also where it may stand for a range
 * ("100/240V", "220/240V"): taken as settings, the position of a selector is asked for, which harms nobody; taken as a range,
 * a supply with a selector would pass on either mains. For the same reason "110-220V" and its like are settings, as supplies
 * with a selector are marked so, too. Three or more values joined by dashes are taps, a leading 0 their
 * common end.
 *
 * @returns null where the figures make no sense as an input
 */
export function inputWindows(quantity: Quantity): VoltageWindow[] | null {
  const { elements, worn, times } = quantity
  if (worn || isTwoKinds(quantity) || times > 1 || elements.some(({ sign }) => sign === '-' || sign === '±'))
    return null
  const single = (value: number): VoltageWindow => ({ min: value, max: value })
  const values = elements.map(({ value }) => value)
  const settings = (list: number[]): VoltageWindow[] | null =>
    list.every((value) => value > 0) && new Set(list).size === list.length ? list.map(single) : null
  const groups = parts(quantity)
  if (groups.length === 1) {
    if (values.length === 1) return settings(values)
    const taps = values[0] === 0 ? values.slice(1) : values
    if (!ascending(taps)) return values.length === 2 && values[0] === values[1] ? settings([values[0]!]) : null
    if (values.length === 2 && values[0] !== 0)
      return readsAsSettings(values[0]!, values[1]!) ? settings(values) : [{ min: values[0]!, max: values[1]! }]
    return settings(taps)
  }
  if (groups.every((group) => group.length === 1)) return settings(values[0] === 0 ? values.slice(1) : values)
  const windows: VoltageWindow[] = []
  for (const group of groups) {
    const [low, high] = [group[0]!.value, group[group.length - 1]!.value]
    const last = windows[windows.length - 1]
    const fits = group.length <= 2 && high >= low && high <= low * plateLimits.widestPartRange.value
    if (!fits || (last && low <= last.max)) {
      // "110/120-220/240V": strokes and a dash that make no ranges are settings one by one
      return ascending(values) && values[0]! >= plateLimits.leastMainsV.value ? settings(values) : null
    }
    windows.push({ min: low, max: high })
  }
  return windows
}

/** "110-220V", "127-220V": the two mains of one country or a voltage and its double, as a selector has them. */
const readsAsSettings = (low: number, high: number): boolean =>
  low >= plateLimits.leastMainsV.value &&
  high >= low * plateLimits.leastSettingsRatio.value &&
  high <= low * plateLimits.mostSettingsRatio.value &&
  high <= plateLimits.mostSettingV.value

/**
 * The rails that an output's figures stand for: "±15V" is two, "9-0-9V" two of the same, "3/4.5/6V" as many as there are
 * settings, "5-11V" one with a range.
 *
 * @param taps  whether a leading 0 is a winding's end rather than the lower end of an adjustable range
 * @returns null where the figures make no sense as an output
 */
export function railVoltages(quantity: Quantity, taps: boolean): RailVoltage[] | null {
  if (quantity.worn || isTwoKinds(quantity)) return null
  // "6 x 1.5V" is a set of cells, "2 x 12V" a pair of windings
  const { times, elements } = quantity
  if (times > 1 && elements.some(({ value }) => value < plateLimits.leastWindingV.value)) return null
  if (times > plateLimits.mostWindings.value) return null
  const rails: RailVoltage[] = []
  for (const group of parts(quantity)) {
    const rail = group.length === 1 ? one(group[0]!) : ranged(group, taps)
    if (!rail) return null
    rails.push(...rail)
  }
  return Array.from({ length: quantity.times }, () => rails).flat()
}

/** "12V DC to 220V AC": no range and no list of one side. */
const isTwoKinds = ({ kind, elements }: Quantity): boolean => kind === 'conflict' && elements.length > 1

const plain = (voltageV: number, signed = false): RailVoltage => ({ voltageV, voltageMaxV: null, signed })

function one({ value, sign }: Element): RailVoltage[] | null {
  if (value === 0) return null
  if (sign === '±') return [plain(value, true), plain(-value, true)]
  return [plain(sign === '-' ? -value : value, sign !== null)]
}

function ranged(group: readonly Element[], taps: boolean): RailVoltage[] | null {
  if (group.some(({ sign }) => sign === '-' || sign === '±')) return null
  const values = group.map(({ value }) => value)
  const [first, middle, last] = values
  if (values.length === 3 && middle === 0) return first === last ? [plain(first!), plain(first!)] : null
  if (!ascending(values)) return null
  if (values.length === 2) {
    if (readsAsSettings(first!, middle!)) return [plain(first!), plain(middle!)]
    if (first === 0 && taps) return [plain(middle!)]
    return [{ voltageV: first!, voltageMaxV: middle!, signed: group[0]!.sign === '+' }]
  }
  return (first === 0 ? values.slice(1) : values).map((value) => plain(value))
}

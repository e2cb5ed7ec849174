import { atMost } from '../../physics/tolerance.js'
import { outputToleranceWidest } from '../../tables/thresholds.js'
import type { DeviceRail, Rail, RailPair } from '../case/situation.js'

/**
 * Matches each rail a machine wants to one output of a supply. Sign counts: +12 V never serves −12 V.
 * Of several the nearest in voltage is taken, of the same kind first. Rails of a machine that want the same voltage share the
 * outputs of that voltage: the hungriest takes the strongest. The order rails are entered in makes no difference.
 *
 * @returns one pair for each device rail, highest voltage first
 */
export function matchRails(supplies: readonly Rail[], devices: readonly DeviceRail[]): RailPair[] {
  const groups = new Map<string, { rails: Rail[]; wanting: DeviceRail[] }>()
  const alone: RailPair[] = []
  for (const device of devices) {
    const best = nearest(supplies, device)
    // an output too far off serves nothing: it is shown as the nearest, and draws nothing from the rails it does serve
    if (!best || !atMost(distanceV(best, device), outputToleranceWidest.value * largestV(device))) {
      alone.push({ device, supply: best ?? null, sharedWith: [device] })
      continue
    }
    const key = `${best.kind} ${best.voltageV} ${best.voltageMaxV}`
    const group = groups.get(key)
    if (group) group.wanting.push(device)
    else
      groups.set(key, {
        rails: supplies.filter((rail) => `${rail.kind} ${rail.voltageV} ${rail.voltageMaxV}` === key),
        wanting: [device],
      })
  }
  const pairs = [...groups.values()].flatMap(({ rails, wanting }) => share(rails, wanting))
  return [...pairs, ...alone].toSorted((one, other) => compareDevices(one.device, other.device))
}

const serves = (supply: Rail, device: DeviceRail): boolean => signOf(supply) * signOf(device) >= 0

/** Sign of a dc rail; ac has none. */
const signOf = ({ kind, voltageV }: Rail): number => (kind === 'ac' ? 0 : Math.sign(voltageV))

/** How far a supply's rail lies from what a device rail wants [V]; 0 where their ranges meet. */
export function distanceV(supply: Rail, device: Rail): number {
  if (supply.voltageMaxV === null && device.voltageMaxV === null) return Math.abs(supply.voltageV - device.voltageV)
  const [sLow, sHigh] = ends(supply)
  const [dLow, dHigh] = ends(device)
  return Math.max(0, dLow - sHigh, sLow - dHigh)
}

const largestV = (rail: Rail): number => Math.max(...ends(rail).map(Math.abs))

export function ends({ voltageV, voltageMaxV }: Rail): [number, number] {
  const other = voltageMaxV ?? voltageV
  return voltageV <= other ? [voltageV, other] : [other, voltageV]
}

function nearest(supplies: readonly Rail[], device: DeviceRail): Rail | undefined {
  const otherKind = (rail: Rail): number =>
    rail.kind !== null && device.kind !== null && rail.kind !== device.kind ? 1 : 0
  return supplies
    .filter((rail) => serves(rail, device))
    .toSorted(
      (one, other) =>
        otherKind(one) - otherKind(other) ||
        distanceV(one, device) - distanceV(other, device) ||
        compareRails(one, other),
    )[0]
}

function share(rails: readonly Rail[], wanting: readonly DeviceRail[]): RailPair[] {
  const strongest = rails.toSorted(compareRails)
  const hungriest = wanting.toSorted(compareDevices)
  return hungriest.map((device, index) => {
    const place = index % strongest.length
    return {
      device,
      supply: strongest[place] ?? null,
      sharedWith: hungriest.filter((_, other) => other % strongest.length === place),
    }
  })
}

const descending = (one: number | null, other: number | null): number => (other ?? -1) - (one ?? -1)

const compareRails = (one: Rail, other: Rail): number =>
  other.voltageV - one.voltageV ||
  descending(one.voltageMaxV, other.voltageMaxV) ||
  descending(ratedA(one), ratedA(other)) ||
  (one.kind ?? '').localeCompare(other.kind ?? '')

const compareDevices = (one: DeviceRail, other: DeviceRail): number =>
  compareRails(one, other) || one.currentIs.localeCompare(other.currentIs) || descending(one.tolerance, other.tolerance)

/**
 * Current of a rail [A]: as printed, or from printed watts, the lower where both are; null where neither is known.
 *
 *   I = P / |V|, at the top of a printed range
 */
export function ratedA(rail: Rail): number | null {
  const { currentA, powerW } = rail
  if (powerW === null) return currentA
  const highestV = Math.max(Math.abs(rail.voltageV), Math.abs(rail.voltageMaxV ?? rail.voltageV))
  const fromPower = highestV > 0 ? powerW / highestV : null
  if (currentA === null || fromPower === null) return currentA ?? fromPower
  return Math.min(currentA, fromPower)
}

/**
 * Current a device rail draws at most [A]: as printed, or from printed watts, the higher where both are; null where neither is known.
 *
 *   I = P / |V|, at the bottom of a printed range
 */
export function drawnA(rail: Rail): number | null {
  const { currentA, powerW } = rail
  if (powerW === null) return currentA
  const lowestV = Math.min(Math.abs(rail.voltageV), Math.abs(rail.voltageMaxV ?? rail.voltageV))
  const fromPower = lowestV > 0 ? powerW / lowestV : null
  if (currentA === null || fromPower === null) return currentA ?? fromPower
  return Math.max(currentA, fromPower)
}

import { fromOutput, isPrintedAsEither, says } from '../../plate/sayings.js'
import { usbFixedVoltages } from '../../tables/usbPower.js'
import { isWide } from './plateWindow.js'
import type { VoltageWindow } from './request.js'
import type { Rail } from './situation.js'

/** What a supply's plate says in words about what is inside it; null where it says nothing, or two things. */
export interface PlateSays {
  technology: 'switch-mode' | 'transformer' | null
  regulated: boolean | null
}

/**
 * How a supply works by the words of its plate. A unit that takes a wide range without a selector is no plain transformer,
 * whatever it is called; where a current is given, nothing holds the voltage while the machine draws little.
 */
export function plateSays(label: string | null | undefined, windows: readonly VoltageWindow[]): PlateSays {
  const unregulated = says(label, 'unregulated') || says(label, 'gives a current')
  const regulated = says(label, 'regulated')
  const switchMode = says(label, 'switch-mode')
  const transformer = says(label, 'transformer') && !says(label, 'electronic transformer') && !windows.some(isWide)
  return {
    technology: switchMode === transformer ? null : switchMode ? 'switch-mode' : 'transformer',
    regulated: unregulated === regulated ? null : regulated,
  }
}

/**
 * Whether outputs that were read from a plate may be given one at a time rather than side by side: the positions of a switch,
 * "9/12 V", "9 V or 12 V", "5 V 3 A/9 V 2 A", with no sign before the second; or the fixed voltages of a USB source, which gives 5 V
 * until it is asked for another. Nobody can tell "5 V/12 V" of a switch from that of two outputs.
 */
export function mayBePositions(label: string | null | undefined, rails: readonly Rail[]): boolean {
  if (areUsbVoltages(rails) || areSettings(rails)) return true
  // a switch of the input stands beside mains voltages
  const switched = rails.length > 1 && says(fromOutput(label), 'switched output')
  if (switched && rails.every(({ voltageV }) => voltageV > 0)) return true
  return rails.some(({ voltageV }, index) => {
    const nextV = rails[index + 1]?.voltageV ?? 0
    return voltageV > 0 && nextV > 0 && isPrintedAsEither(label, voltageV, nextV)
  })
}

/** Three voltages or more of a slide switch: rising multiples of 1.5 V from 6 V or less, all with the same current. */
const areSettings = (rails: readonly Rail[]): boolean =>
  rails.length > 2 &&
  (rails[0]?.voltageV ?? 0) <= 6 &&
  rails.every(
    ({ voltageV, currentA }, index) =>
      voltageV > (rails[index - 1]?.voltageV ?? 0) && voltageV % 1.5 === 0 && currentA === rails[0]?.currentA,
  )

/** The first fixed voltage of USB, 5 V, with others of them, one at least that every such source has (12 V is optional), and no other, and nothing alternating. */
function areUsbVoltages(rails: readonly Rail[]): boolean {
  const offered = rails.map(({ kind, voltageV, voltageMaxV }) =>
    usbFixedVoltages.find((fixed) => kind !== 'ac' && voltageMaxV === null && fixed.voltageV === voltageV),
  )
  const [first] = usbFixedVoltages
  return (
    first !== undefined &&
    offered.every((fixed) => fixed !== undefined) &&
    offered.includes(first) &&
    offered.some((fixed) => fixed !== first && fixed?.always)
  )
}

import { say } from '../../words/phrase.js'
import type { Caution } from '../firstPowerPlan.js'

/** Before anything goes behind the lamp. */
export const noIsolation: Caution = {
  signal: 'DANGER',
  hazard: say`The lamp does not isolate: everything behind it is at mains potential, dark or lit.`,
  consequence: say`Touching it kills.`,
  avoid: say`Not alone: someone near who can switch off. Keep the supply closed, one hand away, and unplug before you touch anything.`,
  electric: true,
}

/** Before the lamp circuit is used. */
export const lampWiring: Caution = {
  signal: 'DANGER',
  hazard: say`A lamp in the wrong conductor leaves the unit live; an earth led through the lamp protects nobody.`,
  consequence: say`A fault then makes the case live and no fuse-link opens.`,
  avoid: say`Lamp and switch in the line conductor, earth straight through, a residual-current device upstream.`,
  electric: true,
}

/** Before a supply is powered from an isolating transformer. */
export const behindIsolating: Caution = {
  signal: 'DANGER',
  hazard: say`Behind an isolating transformer a residual-current device upstream sees nothing, and a first fault to earth opens nothing.`,
  consequence: say`Two points of what hangs on it, touched at once, kill as the mains does.`,
  avoid: say`One unit alone on it; no earth made by hand; touch nothing until the plug is out.`,
  electric: true,
}

/** Before a machine of decades ago is opened. */
export const oldMaterials: Caution = {
  signal: 'WARNING',
  hazard: say`Old parts may hold poison: PCB in the oil of capacitors and transformers, asbestos in heat shields and cords, selenium in finned rectifiers, beryllia in white ceramic of power parts.`,
  consequence: say`Dust, oil and smoke of them harm for years.`,
  avoid: say`Do not file, break, heat or wipe them with bare hands; leave what leaks oil or crumbles closed, and ask the waste office.`,
  electric: false,
}

/** Before a unit for another voltage could be tried behind the lamp. */
export const noConverter: Caution = {
  signal: 'WARNING',
  hazard: say`A lamp is no converter: what it drops depends on what the unit draws.`,
  consequence: say`A unit for a lower voltage gets nearly the whole mains when idle, and may burst or burn.`,
  avoid: say`Only a unit made for this voltage goes behind the lamp.`,
  electric: false,
}

/** Before a machine with a picture tube is opened or moved. */
export const pictureTube: Caution = {
  signal: 'DANGER',
  hazard: say`The anode of a picture tube holds tens of kilovolts for days, which come back after a discharge; the tube is under vacuum and implodes when struck.`,
  consequence: say`A shock that kills or throws you; glass that flies.`,
  avoid: say`Stay away from the thick lead, the neck and the glass; leave the tube and its supply to trained hands.`,
  electric: true,
}

/** Before a supply that may hold metallised-paper capacitors meets the mains. */
export const cleanPaper: Caution = {
  signal: 'WARNING',
  hazard: say`Metallised-paper capacitors crack, take in moisture and fail on the mains, some minutes after power, some with the switch off.`,
  consequence: say`Thick smoke, and in some reports fire.`,
  avoid: say`Replaced before power, whatever they look like.`,
  electric: false,
}

/** Before a capacitor of more than extra-low voltage is reformed. */
export const lethalCapacitor: Caution = {
  signal: 'DANGER',
  hazard: say`A capacitor being reformed carries a voltage that kills, for hours.`,
  consequence: say`Touching its terminals can kill, also after the source is off.`,
  avoid: say`Out of circuit, covered, labelled; discharge through a resistor and measure before touching.`,
  electric: true,
}

/** Before each reach inside. */
export const storedCharge: Caution = {
  signal: 'WARNING',
  hazard: say`Capacitors keep their charge after the plug is out.`,
  consequence: say`A shock, or an arc that destroys what you wanted to keep.`,
  avoid: say`Unplug, wait, measure; discharge through a resistor, then measure again.`,
  electric: true,
}

/** Before a load resistor is touched. */
export const hotLoad: Caution = {
  signal: 'CAUTION',
  hazard: say`The load resistor gets hot enough to burn skin and mark a table.`,
  consequence: say`Burns; a melted lead can short the output.`,
  avoid: say`Stand it on metal or ceramic, switch off before you move it, let it cool.`,
  electric: false,
}

/** Before the machine is connected to any source. */
export const reversed: Caution = {
  signal: 'NOTICE',
  hazard: say`Reversed polarity destroys tantalum capacitors and logic even at ${0.1}\u00a0A.`,
  consequence: say`Parts that cannot be replaced are gone in an instant.`,
  avoid: say`Measure the polarity at the plug with a meter before the plug goes in.`,
  electric: false,
}

/** Before a machine is opened or powered for the first time. */
export const oldBatteries: Caution = {
  signal: 'CAUTION',
  hazard: say`Old batteries leak and may burst when current flows back into them.`,
  consequence: say`Burnt skin and eyes; eaten circuit boards.`,
  avoid: say`Take every battery out first, with gloves and glasses.`,
  electric: false,
}

/** Before a source is turned up on a machine that shows a fault. */
export const noMoreCurrent: Caution = {
  signal: 'NOTICE',
  hazard: say`A higher limit does not make a fault go away, it feeds it.`,
  consequence: say`One failed part takes others with it.`,
  avoid: say`Leave the limit, lower the voltage, and look for the part that warms.`,
  electric: false,
}

/** Before the load is taken to a point the lamp cannot feed. */
export const withoutLamp: Caution = {
  signal: 'DANGER',
  hazard: say`At this point the lamp would starve the supply, so it is left out: nothing but the fuse-link limits a fault.`,
  consequence: say`A fault draws the full current of the mains: fire and shock.`,
  avoid: say`Only after every reading before this one was within its limits; stay at the switch.`,
  electric: true,
}

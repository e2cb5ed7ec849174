import type { LabelInput, LabelReading } from '../../plate/labelReading.js'
import { openPhrases } from '../../plate/openPhrases.js'
import { hertzOn, says } from '../../plate/sayings.js'
import { extraLowVoltageMostV } from '../../tables/thresholds.js'
import { knownReading } from './knownReading.js'
import { deviceContradictions } from './plateAgainstEntry.js'
import { fromLabel, preparePlug, type ReadPlate, readLabel } from './prepareSupply.js'
import type { Device, DeviceInput, Readings } from './request.js'
import type { DeviceRail, PreparedDevice } from './situation.js'

/**
 * What is known of a machine: what the plate beside its power socket says, with the fields that were filled in by hand in front of it.
 * A machine whose plate names mains and no low voltage is taken to want that mains voltage itself.
 *
 * @param readings  which doubtful figures a person confirmed, and which unread phrases do not matter
 */
export function prepareDevice(device: Device, read: ReadPlate, readings?: Readings): PreparedDevice {
  const reading = readLabel(device.label, 'device', read)
  const { known, doubts } = knownReading(reading, 'device', readings?.confirmed)
  const prepared = prepareBy(device, known, (reading?.takes.length ?? 0) > 0)
  const proposed = doubts.length > 0 ? { situation: prepareBy(device, reading, false), doubts } : null
  return { ...prepared, reading, openPhrases: openPhrases(reading, readings?.dismissed ?? []), proposed }
}

/** @param takesLow  its plate names low volts, known or doubtful: it does not want the mains itself */
function prepareBy(device: Device, reading: LabelReading | null, takesLow: boolean): PreparedDevice {
  const takes = (reading?.takes ?? []).map(
    (rail): DeviceRail => ({ ...fromLabel(rail), currentIs: 'plate', tolerance: null }),
  )
  const printed = takes.length > 0 || takesLow ? takes : mainsRails(reading?.input ?? null)
  const rails = device.inputs?.length ? device.inputs.map(asRail) : printed
  const prepared: PreparedDevice = {
    facts: device,
    reading,
    openPhrases: [],
    takesEither: says(device.label, 'either kind'),
    frequenciesHz: reading?.input?.frequenciesHz.length ? reading.input.frequenciesHz : hertzOn(device.label),
    rails,
    takesMains: !device.inputs?.length && takes.length === 0 && rails.length > 0,
    regulatedNeeded: device.regulatedNeeded ?? null,
    jack: preparePlug(device.jack, reading),
    turns: turnsWithMains(device),
    motor: device.mains?.motor ?? null,
    contradictions: [],
    proposed: null,
  }
  return { ...prepared, contradictions: deviceContradictions(prepared, reading, takes) }
}

/** Whether something in it may follow the mains: as entered, else as its plate speaks. */
const turnsWithMains = ({ label, mains }: Device): boolean =>
  mains?.motor == null
    ? says(label, 'turns with the mains')
    : mains.motor === 'synchronous' || mains.motor === 'induction'

const asRail = ({ currentA, currentIs, tolerancePercent, ...input }: DeviceInput): DeviceRail => ({
  ...input,
  voltageMaxV: null,
  currentA: currentA ?? null,
  powerW: null,
  currentIs: currentIs ?? 'plate',
  tolerance: tolerancePercent == null ? null : tolerancePercent / 100,
})

function mainsRails(input: LabelInput | null): DeviceRail[] {
  const window = input?.voltages.find(({ max }) => max > extraLowVoltageMostV.value)
  if (!input || !window) return []
  return [
    {
      kind: input.kind,
      voltageV: window.min,
      voltageMaxV: window.max > window.min ? window.max : null,
      currentA: input.currentA,
      powerW: input.powerW ?? input.powerVA,
      currentIs: 'plate',
      tolerance: null,
    },
  ]
}

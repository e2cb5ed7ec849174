import type { CheckRequest, DcPlug } from '../../chain/request.js'
import { addressOf } from './checkForm.js'
import { railRows, rails } from './checkNames.js'

/** A number as plain figures that can be read one way only: never "1e-7", and "1.1250" for 1.125. */
export function figures(value: number): string {
  const short = String(value)
  const plain = short.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : short
  return /^-?[1-9]\d{0,2}\.\d{3}$/.test(plain) ? `${plain}0` : plain
}

const text = (value: number | string | null | undefined): string =>
  value == null ? '' : typeof value === 'number' ? figures(value) : value

const yesNo = (value: boolean | null | undefined): string => (value == null ? '' : value ? 'yes' : 'no')

const plugValues = (prefix: 'plug' | 'jack', plug: DcPlug | null | undefined): Record<string, string> => ({
  [`${prefix}outer`]: text(plug?.outerMm),
  [`${prefix}inner`]: text(plug?.innerMm),
  [`${prefix}pol`]: text(plug?.polarity),
  [`${prefix}name`]: text(plug?.name),
})

/**
 * The form's values for a check: the way back from {@link readCheckForm}.
 *
 * @throws RangeError where the check has more rails than the form has rows
 */
export function checkValues({ site, supply, device, cord, converter }: CheckRequest): Record<string, string> {
  const { outputs, measured, lead, input } = supply
  const values: Record<string, string> = {
    country: text(site.country),
    mains: text(site.voltageV),
    hz: text(site.frequencyHz),
    socket: text(site.socket),
    supply: text(supply.label),
    in: (input?.voltages ?? [])
      .map(({ min, max }) => (min === max ? figures(min) : `${figures(min)}-${figures(max)}`))
      .join('/'),
    inhz: (input?.frequenciesHz ?? []).map(figures).join('/'),
    ina: text(input?.currentA),
    inva: text(input?.powerVA),
    inw: text(input?.powerW),
    selector: text(input?.selectorV),
    type: supply.technology === 'unknown' ? '' : text(supply.technology),
    regulated: yesNo(supply.regulated),
    class: text(supply.protectionClass),
    inlet: text(supply.inlet),
    fuse: text(supply.fuse),
    outtotal: text(supply.outputsTotalW),
    ...plugValues('plug', supply.plug),
    leadm: text(lead?.lengthM),
    leadmm2: text(lead?.areaMm2),
    leadawg: text(lead?.awg),
    offload: text(measured?.offLoadV),
    loaded: text(measured?.loadedV),
    measuredpol: text(measured?.polarity),
    machine: text(device.label),
    needreg: yesNo(device.regulatedNeeded),
    ...plugValues('jack', device.jack),
    cordplug: text(cord?.plug),
    cordend: text(cord?.connector),
    cordv: text(cord?.ratedV),
    corda: text(cord?.ratedA),
    cordearth: yesNo(cord?.earthed),
    cordmm2: text(cord?.areaMm2),
    cordawg: text(cord?.awg),
    cordplugfitted: text(cord?.plugFitted),
    adapter: cord?.adapter
      ? cord.adapter.earthed === null
        ? 'unknown'
        : cord.adapter.earthed
          ? 'earthed'
          : 'unearthed'
      : '',
    converter: converter ? (converter.kind ?? 'unknown') : '',
    converterv: text(converter?.outputV),
    converterva: text(converter?.ratedVA),
  }
  for (const rows of [outputs, device.inputs])
    if (rows && rows.length > railRows) throw new RangeError(`at most ${railRows} rails, got ${rows.length}`)
  for (const { row, out, need } of rails) {
    const [given, taken] = [outputs?.[row - 1], device.inputs?.[row - 1]]
    if (given) {
      values[out.voltage] = text(given.voltageV)
      values[out.kind] = text(given.kind)
      values[out.current] = text(given.currentA)
      values[out.power] = text(given.powerW)
    }
    if (taken) {
      values[need.voltage] = text(taken.voltageV)
      values[need.kind] = text(taken.kind)
      values[need.current] = text(taken.currentA)
      values[need.currentBy] = text(taken.currentIs)
      values[need.tolerance] = text(taken.tolerancePercent)
    }
  }
  return values
}

/** The address of a check on the page "/": "/?country=DE&supply=…". */
export const checkAddress = (request: CheckRequest): string => `/?${addressOf(checkValues(request))}`

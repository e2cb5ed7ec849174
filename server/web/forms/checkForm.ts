import type { CheckRequest, DcPlug, DeviceInput, Output, VoltageWindow } from '../../chain/request.js'
import { leastTaken } from '../../facts/leastTaken.js'
import { amperes, hertz, millimetres, plain, voltAmperes, volts, watts } from '../../physics/quantity.js'
import { type NumberAsked, readNumber } from '../number.js'
import { countryCode, countryName } from '../viewModels/countryNames.js'
import {
  adapters,
  type Choice,
  converterKinds,
  currentSources,
  kinds,
  plugFittings,
  polarities,
  protectionClasses,
  sockets,
  technologies,
  yesNo,
} from './checkChoices.js'
import { checkNames, labelOf, rails } from './checkNames.js'
import { type FormFault, FormReader, type FormState, longestLine, longestText } from './formState.js'

export interface CheckForm {
  state: FormState
  faults: FormFault[]
  /** `null` while anything typed cannot be used, or nothing was entered */
  request: CheckRequest | null
  /** true when no field holds anything */
  empty: boolean
  /** the sparse query string of what was typed */
  query: string
}

/** Leaves out what is null; `null` where nothing is left. */
function filled<Group extends object>(group: Group): Group | null {
  const kept: Partial<Group> = {}
  let any = false
  for (const key in group) {
    if (group[key] === null) continue
    kept[key] = group[key]
    any = true
  }
  return any ? (kept as Group) : null
}

class CheckReader extends FormReader {
  constructor(sent: unknown) {
    super(sent, checkNames, labelOf, (name) => (name === 'supply' || name === 'machine' ? longestText : longestLine))
    for (const name of Object.keys((sent ?? {}) as object))
      if (!checkNames.includes(name))
        this.fault(
          'check-form',
          `The address holds “${name.slice(0, 40)}”, which is no part of a check; take it out, or correct its name.`,
        )
  }

  quantity(name: string, asked: Omit<NumberAsked, 'label'>, show: (value: number) => string): number | null {
    // most boxes are empty
    if (this.state.values[name] === undefined && !asked.required) return null
    return this.number(name, { label: labelOf(name), ...asked }, show)
  }

  pick<Value extends string>(name: string, choices: readonly Choice<Value>[]): Value | null {
    if (this.state.values[name] === undefined) return null
    const found = this.choice(
      name,
      choices.map(({ value }) => value),
      labelOf(name),
    )
    const label = choices.find(({ value }) => value === found)?.label
    if (label !== undefined) this.state.shown[name] = label
    return found
  }

  words(name: string): string | null {
    const text = this.text(name)?.replace(/\r\n?/g, '\n') ?? null
    if (text !== null) this.state.shown[name] = text
    return text
  }

  yes(name: string): boolean | null {
    const answer = this.pick(name, yesNo)
    return answer === null ? null : answer === 'yes'
  }

  country(): string | null {
    const text = this.text('country')
    if (text === null) return null
    const code = countryCode(text)
    if (code === undefined) {
      this.fault(
        'country',
        `Country must be a name from the list or its two-letter code; received “${text.slice(0, 40)}”.`,
      )
      return null
    }
    this.state.shown.country = countryName(code)
    return code
  }

  /** "100-240", "115/230", "230 V" as windows. */
  windows(name: string): VoltageWindow[] | null {
    const text = this.text(name)
    if (text === null) return null
    const asked = { label: labelOf(name), unit: 'V', above: 0, min: leastTaken.voltageV, max: 1000 }
    const windows: VoltageWindow[] = []
    for (const part of text.split(/\s*(?:\/|;|\bor\b)\s*/i)) {
      const ends = part.split(/\s*(?:-|–|—|~|\bto\b)\s*/i)
      const read = ends.map((end) => readNumber(end, asked))
      const wrong = read.find((end) => 'message' in end)
      if (wrong && 'message' in wrong && ends.length <= 2 && ends.every((end) => /\d/.test(end))) {
        this.fault(name, wrong.message)
        return null
      }
      const values = read.map((end) => ('value' in end ? end.value : null))
      const [min = null, max = min] = values
      if (ends.length > 2 || min === null || max === null || min > max) {
        this.fault(name, `${labelOf(name)} must be one value, a range or a choice, such as 230, 100-240 or 115/230.`)
        return null
      }
      windows.push({ min, max })
    }
    this.state.shown[name] = windows
      .map(({ min, max }) => (min === max ? volts(min) : `${volts(min)} to ${volts(max)}`))
      .join(' or ')
    return windows
  }

  /** "50/60", "50-60 Hz", "60". */
  frequencies(name: string): number[] | null {
    const text = this.text(name)
    if (text === null) return null
    const values: number[] = []
    for (const part of text.split(/\s*(?:\/|;|-|–|\bto\b|\bor\b)\s*/i)) {
      const read = readNumber(part, { label: labelOf(name), unit: 'Hz', min: leastTaken.frequencyHz, max: 1000 })
      if ('message' in read || read.value === null) {
        this.fault(name, 'message' in read ? read.message : `${labelOf(name)} must be such as 50, 60 or 50/60.`)
        return null
      }
      values.push(read.value)
    }
    this.state.shown[name] = values.map((value) => hertz(value)).join(' or ')
    return values
  }

  plug(prefix: 'plug' | 'jack'): DcPlug | null {
    const diameter = { unit: 'mm', above: 0, min: leastTaken.diameterMm, max: 30 }
    const plug: DcPlug = {
      outerMm: this.quantity(`${prefix}outer`, diameter, millimetres),
      innerMm: this.quantity(`${prefix}inner`, diameter, millimetres),
      polarity: this.pick(`${prefix}pol`, polarities),
      name: this.words(`${prefix}name`),
    }
    if (plug.outerMm != null && plug.innerMm != null && plug.innerMm >= plug.outerMm)
      this.fault(
        `${prefix}inner`,
        `${labelOf(`${prefix}inner`)} must be less than the outer diameter, ${millimetres(plug.outerMm)}.`,
      )
    return filled(plug)
  }

  /** Whether any box of a row holds something; a row that does needs its voltage. */
  private rowVoltage(names: readonly string[], voltage: string): number | null {
    const used = names.some((name) => (this.state.values[name] ?? '').trim() !== '')
    if (!used) return null
    return this.signedVolts(voltage, true)
  }

  /** A voltage that may be negative; near 0 V there is nothing to judge. */
  signedVolts(name: string, required = false): number | null {
    const value = this.quantity(name, { unit: 'V', min: -1000, max: 1000, required }, volts)
    if (value === null || Math.abs(value) >= leastTaken.voltageV) return value
    this.fault(
      name,
      `${labelOf(name)} must be ${volts(leastTaken.voltageV)} or more, plus or minus; leave it empty if it is not known.`,
    )
    return null
  }

  outputs(): Output[] | null {
    const rows: Output[] = []
    for (const { out: names } of rails) {
      const voltageV = this.rowVoltage(Object.values(names), names.voltage)
      const output = {
        kind: this.pick(names.kind, kinds),
        currentA: this.quantity(names.current, { unit: 'A', above: 0, min: leastTaken.currentA, max: 1000 }, amperes),
        powerW: this.quantity(names.power, { unit: 'W', above: 0, min: leastTaken.power, max: 100_000 }, watts),
      }
      if (voltageV !== null) rows.push({ voltageV, ...output })
    }
    return rows.length > 0 ? rows : null
  }

  needs(): DeviceInput[] | null {
    const rows: DeviceInput[] = []
    for (const { need: names } of rails) {
      const voltageV = this.rowVoltage(Object.values(names), names.voltage)
      const input = {
        kind: this.pick(names.kind, kinds),
        currentA: this.quantity(names.current, { unit: 'A', above: 0, min: leastTaken.currentA, max: 1000 }, amperes),
        currentIs: this.pick(names.currentBy, currentSources),
        tolerancePercent: this.quantity(names.tolerance, { unit: '%', min: 0, max: 50 }, (value) => plain(value, '%')),
      }
      if (voltageV !== null) rows.push({ voltageV, ...input })
    }
    return rows.length > 0 ? rows : null
  }
}

const current = { unit: 'A', above: 0, min: leastTaken.currentA, max: 1000 }
const area = { unit: 'mm²', above: 0, min: leastTaken.areaMm2, max: 100 }
const gauge = { unit: 'AWG', min: 0, max: 40, whole: true }
const squareMillimetres = (value: number): string => plain(value, 'mm²')
const awg = (value: number): string => `AWG\u00a0${value}`

function readRequest(read: CheckReader): CheckRequest {
  const site = {
    country: read.country(),
    voltageV: read.quantity('mains', { unit: 'V', min: 50, max: 1000 }, volts),
    frequencyHz: read.quantity('hz', { unit: 'Hz', min: 10, max: 1000 }, hertz),
    socket: read.pick('socket', sockets),
  }
  const supply = {
    label: read.words('supply'),
    input: filled({
      voltages: read.windows('in'),
      frequenciesHz: read.frequencies('inhz'),
      currentA: read.quantity('ina', current, amperes),
      powerVA: read.quantity('inva', { unit: 'VA', above: 0, min: leastTaken.power, max: 100_000 }, voltAmperes),
      powerW: read.quantity('inw', { unit: 'W', above: 0, min: leastTaken.power, max: 100_000 }, watts),
      selectorV: read.quantity('selector', { unit: 'V', above: 0, min: leastTaken.voltageV, max: 1000 }, volts),
    }),
    technology: read.pick('type', technologies),
    regulated: read.yes('regulated'),
    protectionClass: read.pick('class', protectionClasses),
    inlet: read.words('inlet'),
    fuse: read.words('fuse'),
    outputs: read.outputs(),
    outputsTotalW: read.quantity('outtotal', { unit: 'W', above: 0, min: leastTaken.power, max: 100_000 }, watts),
    plug: read.plug('plug'),
    lead: readLead(read),
    measured: filled({
      offLoadV: read.signedVolts('offload'),
      loadedV: read.signedVolts('loaded'),
      polarity: read.pick('measuredpol', polarities),
    }),
  }
  const device = {
    label: read.words('machine'),
    inputs: read.needs(),
    regulatedNeeded: read.yes('needreg'),
    jack: read.plug('jack'),
  }
  return { site, supply, device, cord: readCord(read), converter: readConverter(read) }
}

function readLead(read: CheckReader): CheckRequest['supply']['lead'] {
  const lengthM = read.quantity('leadm', { unit: 'm', above: 0, min: leastTaken.lengthM, max: 100 }, (value) =>
    plain(value, 'm'),
  )
  const areaMm2 = read.quantity('leadmm2', area, squareMillimetres)
  const size = read.quantity('leadawg', gauge, awg)
  // without its length nothing can be worked out from a lead
  return lengthM === null ? null : { lengthM, areaMm2, awg: size }
}

function readCord(read: CheckReader): CheckRequest['cord'] {
  const adapter = read.pick('adapter', adapters)
  return filled({
    plug: read.words('cordplug'),
    connector: read.words('cordend'),
    ratedV: read.quantity('cordv', { unit: 'V', above: 0, min: leastTaken.voltageV, max: 1000 }, volts),
    ratedA: read.quantity('corda', current, amperes),
    earthed: read.yes('cordearth'),
    areaMm2: read.quantity('cordmm2', area, squareMillimetres),
    awg: read.quantity('cordawg', gauge, awg),
    plugFitted: read.pick('cordplugfitted', plugFittings),
    adapter: adapter === null ? null : { earthed: adapter === 'unknown' ? null : adapter === 'earthed' },
  })
}

function readConverter(read: CheckReader): CheckRequest['converter'] {
  const kind = read.pick('converter', converterKinds)
  const outputV = read.quantity('converterv', { unit: 'V', min: 50, max: 1000 }, volts)
  const ratedVA = read.quantity(
    'converterva',
    { unit: 'VA', above: 0, min: leastTaken.power, max: 100_000 },
    voltAmperes,
  )
  if (kind === null && outputV === null && ratedVA === null) return null
  return { kind: kind === 'unknown' ? null : kind, outputV, ratedVA }
}

/** Reads the parameters of a check's address, or a form of the same fields. What was typed is kept whatever it is. */
export function readCheckForm(sent: unknown): CheckForm {
  const read = new CheckReader(sent)
  const empty = Object.values(read.state.values).every((value) => value.trim() === '')
  const request = readRequest(read)
  return {
    state: read.state,
    faults: read.faults,
    request: empty || read.faults.length > 0 ? null : request,
    empty,
    query: addressOf(read.state.values),
  }
}

/** The same from an address or query string, as a job or a link keeps it: "country=DE&supply=…". */
export function readCheckAddress(address: string): CheckForm {
  const sent: Record<string, string | string[]> = Object.create(null)
  const parameters = new URLSearchParams(address.replace(/^[^?]*\?/, ''))
  for (const name of new Set(parameters.keys())) {
    const values = parameters.getAll(name)
    sent[name] = values.length > 1 ? values : (values[0] ?? '')
  }
  return readCheckForm(sent)
}

/** The sparse query string for what was typed: known names in their order, empty ones left out, a country as its code. */
export function addressOf(values: Record<string, string>): string {
  const address = new URLSearchParams()
  for (const name of checkNames) {
    const value = values[name]?.trim() ?? ''
    if (value !== '')
      address.append(name, name === 'country' ? (countryCode(value) ?? value) : value.replace(/\r\n?/g, '\n'))
  }
  return address.toString()
}

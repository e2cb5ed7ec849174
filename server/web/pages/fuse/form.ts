import { circuitKinds, type FuseRequest, fusePositions, inrushShapes } from '../../../chain/fuse/fuseRequest.js'
import type { Phrase } from '../../../words/phrase.js'
import { amperes, decimal, duration, plain, volts, watts } from '../../../words/quantity.js'
import { type Choice, type FormFault, FormReader, type FormState } from '../../parts/formState.js'
import { fuseLimits } from '../../schemas/fuse.js'

const labels = {
  marking: 'Marking of the link that is fitted',
  prescribed: 'Prescribed beside the holder or in the manual',
  position: 'Where the fuse is',
  volts: 'Voltage in use',
  kind: 'Kind of current',
  former: 'Mains it was made for',
  amps: 'Operating current',
  watts: 'Power',
  pf: 'Power factor',
  peak: 'Inrush, peak current',
  pulse: 'Inrush, time',
  shape: 'Inrush, shape',
  pulses: 'Switch-ons in its life',
  ambient: 'Temperature around the link',
  fault: 'Fault current',
  lamp: 'Short-circuit current behind the series lamp',
  blown: 'The link was found open',
  a: 'Candidate A',
  b: 'Candidate B',
  c: 'Candidate C',
} as const

export type FuseField = keyof typeof labels

export const fuseFields = Object.keys(labels) as FuseField[]

/** A field's label as it stands on the page. */
export const fieldLabel = (name: string): string => labels[name as FuseField] ?? name

export const positionChoices: readonly Choice<(typeof fusePositions)[number]>[] = [
  { value: 'mains', label: 'Mains side of the supply' },
  { value: 'plug', label: 'In a plug (BS 1362)' },
  { value: 'low-voltage', label: 'Low-voltage side' },
]

export const kindChoices: readonly Choice<(typeof circuitKinds)[number]>[] = [
  { value: 'ac', label: 'AC ~' },
  { value: 'dc', label: 'DC ⎓' },
]

export const shapeChoices: readonly Choice<(typeof inrushShapes)[number]>[] = [
  { value: 'exponential', label: 'Dying away (time constant)' },
  { value: 'half-sine', label: 'Half a sine wave' },
  { value: 'triangle', label: 'Triangle' },
  { value: 'rectangle', label: 'Rectangle' },
]

export interface Candidate {
  letter: 'A' | 'B' | 'C'
  text: string
}

export interface FuseForm {
  state: FormState
  faults: FormFault[]
  /** null while anything typed cannot be used, or nothing was entered */
  request: FuseRequest | null
  candidates: Candidate[]
  empty: boolean
}

/** Reads the form of the fuse page from an address. */
export function readFuseForm(sent: unknown): FuseForm {
  const form = new FormReader(sent, fuseFields, fieldLabel)
  for (const name of Object.keys((sent ?? {}) as object))
    if (!fuseFields.includes(name as FuseField))
      form.fault(
        'fuse-form',
        `The address holds “${name.slice(0, 40)}”, which is no part of a fuse review; take it out, or correct its name.`,
      )
  const empty = Object.values(form.state.values).every((value) => value.trim() === '') && form.faults.length === 0
  const positive = (
    name: FuseField,
    unit: string,
    max: number,
    show: (value: number) => Phrase,
    min: number = fuseLimits.least,
  ): number | null => form.number(name, { label: labels[name], unit, above: 0, min, max }, show)
  const position = form.choice('position', fusePositions, labels.position)
  const circuit: FuseRequest['circuit'] = {
    voltageV: positive('volts', 'V', fuseLimits.voltageV, volts, fuseLimits.leastV) ?? 0,
    kind: form.choice('kind', circuitKinds, labels.kind),
    currentA: positive('amps', 'A', fuseLimits.currentA, amperes),
    powerW: positive('watts', 'W', fuseLimits.powerW, watts),
    powerFactor: form.number('pf', { label: labels.pf, above: 0, min: fuseLimits.leastPowerFactor, max: 1 }, (value) =>
      decimal(value),
    ),
    inrushPeakA: positive('peak', 'A', fuseLimits.inrushPeakA, amperes),
    inrushTimeS: positive('pulse', 's', fuseLimits.inrushTimeS, duration, fuseLimits.leastTimeS),
    inrushShape: form.choice('shape', inrushShapes, labels.shape),
    pulses: form.number('pulses', { label: labels.pulses, min: 1, max: fuseLimits.pulses, whole: true }, (value) =>
      decimal(value, 10),
    ),
    ambientC: form.number(
      'ambient',
      { label: labels.ambient, unit: '°C', min: fuseLimits.ambientMinC, max: fuseLimits.ambientMaxC },
      (value) => plain(value, '°C'),
    ),
    prospectiveFaultA: positive('fault', 'A', fuseLimits.faultA, amperes),
  }
  const request: FuseRequest = {
    marking: form.text('marking'),
    prescribed: form.text('prescribed'),
    position: position ?? 'mains',
    circuit,
    formerVoltageV: positive('former', 'V', fuseLimits.voltageV, volts, fuseLimits.leastV),
    blown: form.choice('blown', ['yes'], labels.blown) === 'yes',
    seriesLampA: positive('lamp', 'A', fuseLimits.currentA, amperes),
  }
  const candidates = (['a', 'b', 'c'] as const).flatMap((name) => {
    const text = form.text(name)
    return text === null ? [] : [{ letter: name.toUpperCase() as Candidate['letter'], text }]
  })
  if (!empty) {
    if (!form.state.values.volts?.trim()) form.fault('volts', 'Enter the voltage in use.')
    if (!form.state.values.position?.trim()) form.fault('position', 'Enter where the fuse is.')
    if (circuit.inrushPeakA !== null && !form.state.values.pulse?.trim())
      form.fault('pulse', 'Enter the inrush, time, or leave out the peak current.')
    if (circuit.inrushTimeS !== null && !form.state.values.peak?.trim())
      form.fault('peak', 'Enter the inrush, peak current, or leave out the time.')
  }
  return {
    state: form.state,
    faults: form.faults,
    request: empty || form.faults.length > 0 ? null : request,
    candidates,
    empty,
  }
}

/** The query string that holds what was typed and nothing empty. */
export function fuseQuery(values: Partial<Record<FuseField, string>>): string {
  const address = new URLSearchParams()
  for (const name of fuseFields) {
    const value = values[name]?.trim() ?? ''
    if (value !== '') address.set(name, value.replace(/\s+/g, ' '))
  }
  return address.toString()
}

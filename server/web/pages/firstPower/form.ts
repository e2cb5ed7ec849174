import type { AtHand } from '../../../bench/atHand/atHand.js'
import type { ProtectionClass } from '../../../chain/case/request.js'
import { figures } from '../../../facts/address.js'
import type { FirstPowerOptions } from '../../../plan/planFirstPower.js'
import { type SafetyScheme, safetySchemes } from '../../../tables/safetyTestLimits.js'
import type { Words } from '../../../words/phrase.js'
import { amperes, farads, ohms, plain, volts, watts } from '../../../words/quantity.js'
import { type Choice, type FormFault, FormReader, type FormState } from '../../parts/formState.js'
import { atHandBounds as bounds } from '../../schemas/atHand.js'
import { addressOf, type CheckForm, checkNames, readCheckForm } from '../check/form.js'

/** Rows for lamps at hand: as many as can be at hand. */
export const lampRows: readonly number[] = Array.from({ length: bounds.rows }, (_, index) => index + 1)

/** One row of lamps at hand: `lamp1v`, `lamp1w`, `lamp1n`. */
export const lampRow = (row: number) => ({ voltage: `lamp${row}v`, watts: `lamp${row}w`, count: `lamp${row}n` })

const labels: Record<string, string> = Object.assign(
  Object.create(null),
  ...lampRows.map((row) => ({
    [lampRow(row).voltage]: `Lamp ${row}, rated voltage`,
    [lampRow(row).watts]: `Lamp ${row}, power`,
    [lampRow(row).count]: `Lamp ${row}, how many`,
  })),
  {
    idle: 'Taken with nothing connected',
    bulk: 'Largest capacitor, value',
    bulkv: 'Largest capacitor, rated voltage',
    years: 'Years without power',
    ohm: 'Resistance across the machine’s input',
    takes: 'What the machine’s input is',
    scheme: 'Limits by',
    earthohm: 'Earth path',
    insulation: 'Insulation',
    touch: 'Touch current',
  },
)

/** Parameters that stand in the address beside those of the check. */
export const firstPowerNames: readonly string[] = Object.keys(labels)

const labelOf = (name: string): string => labels[name] ?? name

const tests: readonly string[] = ['scheme', 'earthohm', 'insulation', 'touch']

/** Boxes of what a plan is worked out with besides the check. */
export const planNames: readonly string[] = firstPowerNames.filter((name) => !tests.includes(name))

/** What a box of a plan is called; null of any other. */
export const planLabel = (name: string): string | null => (planNames.includes(name) ? labelOf(name) : null)

export const machineInputs: readonly Choice<'plain' | 'constant-power'>[] = [
  { value: 'plain', label: 'Logic, linear regulators, motors' },
  { value: 'constant-power', label: 'A converter (switch-mode)' },
]

export const schemeChoices: readonly Choice<SafetyScheme>[] = safetySchemes
  .filter(({ typeTest }) => !typeTest)
  .map(({ key, title, place }) => ({ value: key, label: `${title} (${place})` }))

/** Readings of earth, insulation and touch current, and the scheme they are held against. */
interface TestReadings {
  scheme: SafetyScheme
  earthOhm: number | null
  insulationMOhm: number | null
  touchmA: number | null
}

export interface FirstPowerForm {
  check: CheckForm
  state: FormState
  faults: FormFault[]
  options: FirstPowerOptions
  readings: TestReadings | null
  protectionClass: ProtectionClass | null
  /** nothing entered at all */
  empty: boolean
}

/** What was sent with the lamps at hand in it, where it names none itself; lamps are the same for every job. */
export function withLampsAtHand(sent: Record<string, unknown>, { lamps }: AtHand): Record<string, unknown> {
  const isCase = checkNames.some((name) => name in sent)
  const named = lampRows.some((row) => Object.values(lampRow(row)).some((name) => name in sent))
  return named || !isCase ? sent : { ...sent, ...lampValues(lamps) }
}

/** Reads the address of the page: the parameters of a check, and those of a first power-up. */
export function readFirstPowerForm(sent: unknown): FirstPowerForm {
  const entries = Object.entries((sent ?? {}) as Record<string, unknown>)
  const check = readCheckForm(Object.fromEntries(entries.filter(([name]) => checkNames.includes(name))))
  const form = new FormReader(sent, firstPowerNames, labelOf)
  for (const [name] of entries)
    if (!checkNames.includes(name) && !firstPowerNames.includes(name))
      form.fault(
        'first-power-form',
        `The address holds “${name.slice(0, 40)}”, which is no part of a first power-up; take it out, or correct its name.`,
      )
  const options = readOptions(form)
  const readings = readReadings(form)
  const merge = <Value extends Words>(of: 'values' | 'errors' | 'shown' | 'read'): Record<string, Value> =>
    Object.assign(Object.create(null), check.state[of], form.state[of])
  const state = {
    values: merge<string>('values'),
    errors: merge<Words>('errors'),
    shown: merge<Words>('shown'),
    read: merge<Words>('read'),
  }
  const blank = Object.values(form.state.values).every((value) => value.trim() === '')
  return {
    check,
    state,
    faults: [...check.faults, ...form.faults],
    options,
    readings,
    protectionClass: check.request?.supply.protectionClass ?? null,
    empty: check.empty && blank,
  }
}

function readOptions(form: FormReader): FirstPowerOptions {
  const microfarads = form.number('bulk', { label: labelOf('bulk'), unit: 'µF', min: 0.1, max: 100_000 }, (value) =>
    farads(value / 1e6),
  )
  return {
    lampsOnHand: lampRows.flatMap((row) => readLamp(form, row)),
    idleW: form.number('idle', { label: labelOf('idle'), unit: 'W', min: 0.05, max: 5000 }, watts),
    bulkF: microfarads === null ? null : microfarads / 1e6,
    bulkRatedV: form.number('bulkv', { label: labelOf('bulkv'), unit: 'V', min: 1, max: 1000 }, volts),
    yearsUnused: form.number('years', { label: labelOf('years'), min: 0, max: 150 }, (value) => plain(value, 'years')),
    measuredOhm: form.number('ohm', { label: labelOf('ohm'), unit: 'Ω', min: 0, max: 1e9 }, ohms),
    machineInput: form.choice(
      'takes',
      machineInputs.map(({ value }) => value),
      labelOf('takes'),
    ),
  }
}

function readLamp(form: FormReader, row: number): { ratedV: number; ratedW: number; count: number }[] {
  const names = lampRow(row)
  const used = Object.values(names).some((name) => (form.state.values[name] ?? '').trim() !== '')
  if (!used) return []
  const ratedV = form.number(
    names.voltage,
    { label: labelOf(names.voltage), unit: 'V', ...bounds.lampV, required: true },
    volts,
  )
  const ratedW = form.number(
    names.watts,
    { label: labelOf(names.watts), unit: 'W', ...bounds.lampW, required: true },
    watts,
  )
  const count = form.number(names.count, { label: labelOf(names.count), ...bounds.count, whole: true }) ?? 1
  return ratedV !== null && ratedW !== null ? [{ ratedV, ratedW, count }] : []
}

function readReadings(form: FormReader): TestReadings | null {
  const scheme = form.choice(
    'scheme',
    safetySchemes.map(({ key }) => key),
    labelOf('scheme'),
  )
  const readings = {
    earthOhm: form.number('earthohm', { label: labelOf('earthohm'), unit: 'Ω', min: 0, max: 1e6 }, ohms),
    insulationMOhm: form.number('insulation', { label: labelOf('insulation'), unit: 'MΩ', min: 0, max: 1e6 }, (value) =>
      ohms(value * 1e6),
    ),
    touchmA: form.number('touch', { label: labelOf('touch'), unit: 'mA', min: 0, max: 1000 }, (value) =>
      amperes(value / 1e3),
    ),
  }
  const typed = Object.values(readings).some((value) => value !== null)
  if (typed && scheme === null && !form.state.values.scheme?.trim())
    form.fault('scheme', 'Enter which limits the readings are held against, or take the readings out.')
  return scheme === null ? null : { scheme, ...readings }
}

/** The boxes of lamps. */
const lampValues = (lamps: NonNullable<FirstPowerOptions['lampsOnHand']>): Record<string, string> =>
  Object.assign(
    {},
    ...lamps.map(({ ratedV, ratedW, count }, index) => {
      const names = lampRow(index + 1)
      return {
        [names.voltage]: figures(ratedV),
        [names.watts]: figures(ratedW),
        [names.count]: figures(count),
      }
    }),
  )

/** What the boxes of the page held, from what a kept plan was given. */
export function firstPowerValues(given: FirstPowerOptions): Record<string, string> {
  const text = (value: number | null | undefined): string => (value == null ? '' : figures(value))
  return {
    ...lampValues(given.lampsOnHand ?? []),
    idle: text(given.idleW),
    bulk: text(given.bulkF == null ? null : Number((given.bulkF * 1e6).toPrecision(12))),
    bulkv: text(given.bulkRatedV),
    years: text(given.yearsUnused),
    ohm: text(given.measuredOhm),
    takes: given.machineInput === 'unknown' ? '' : (given.machineInput ?? ''),
  }
}

/** The query string that holds what was typed and nothing empty. */
export function firstPowerQuery(values: Record<string, string>): string {
  const own = new URLSearchParams()
  for (const name of firstPowerNames) {
    const value = values[name]?.trim() ?? ''
    if (value !== '') own.set(name, value.replace(/\s+/g, ' '))
  }
  return [addressOf(values), own.toString()].filter((part) => part !== '').join('&')
}

import type { ShelfItem, ShelfKind } from '../../../bench/shelf/shelfItem.js'
import type { Device, Supply } from '../../../chain/case/request.js'
import { checkValues } from '../../../facts/address.js'
import { labelOf } from '../../../facts/boxes.js'
import { type FormFault, FormReader, type FormState } from '../../parts/formState.js'
import { readCheckForm } from '../check/form.js'

/** The boxes of a row of the shelf that are not those of a check. */
const own = ['name', 'place', 'rownote'] as const

const labels: Record<string, string> = { name: 'Name', place: 'Place', rownote: 'Note' }

/** The label of a box of this form. */
export const shelfLabel = (name: string): string => labels[name] ?? labelOf(name)

export interface ShelfForm {
  state: FormState
  faults: FormFault[]
  name: string | null
  place: string | null
  note: string | null
  supply: Supply
  device: Device
}

/** Reads the form of a supply or a machine: its own boxes, and those boxes of a check that describe it. */
export function readShelfForm(sent: Record<string, unknown>): ShelfForm {
  const { name: _name, place: _place, rownote: _note, version: _version, once: _once, ...facts } = sent
  const read = new FormReader(sent, own, shelfLabel)
  if (read.text('name') === null) read.fault('name', 'Enter the name.')
  const check = readCheckForm(facts)
  const state: FormState = {
    values: { ...check.state.values, ...read.state.values },
    errors: { ...check.state.errors, ...read.state.errors },
    shown: { ...check.state.shown },
    read: {},
  }
  return {
    state,
    faults: [...read.faults, ...check.faults],
    name: read.text('name'),
    place: read.text('place'),
    note: read.text('rownote'),
    supply: check.request?.supply ?? {},
    device: check.request?.device ?? {},
  }
}

const emptyState = (values: Record<string, string>): FormState => ({ values, errors: {}, shown: {}, read: {} })

/**
 * The form of a row as it is kept.
 *
 * @throws RangeError where the row has more rails than the form has boxes for
 */
export function shelfFormOf(kind: ShelfKind, item: ShelfItem | null): FormState {
  if (item === null) return emptyState({})
  const supply = kind === 'supply' && 'supply' in item ? item.supply : {}
  const device = kind === 'device' && 'device' in item ? item.device : {}
  const values = Object.fromEntries(
    Object.entries(checkValues({ site: {}, supply, device })).filter(([, value]) => value !== ''),
  )
  return {
    ...emptyState({ ...values, name: item.name, place: item.place ?? '', rownote: item.note ?? '' }),
    filled: true,
  }
}

import type { Device, Supply } from '../../chain/case/request.js'
import type { Draft } from '../../store/store.js'

/** A supply one has: what is known of it, and where it lies. */
export interface ShelfSupply {
  name: string
  place: string | null
  note: string | null
  supply: Supply
}

/** A machine one has. */
export interface ShelfDevice {
  name: string
  place: string | null
  note: string | null
  device: Device
}

export type ShelfItem = ShelfSupply | ShelfDevice

export type ShelfKind = 'supply' | 'device'

/** What the list shows of a row of the shelf. */
export interface ShelfSummary {
  place: string | null
  note: string | null
  label: string | null
}

/** A row of the shelf as the store keeps it: found by its name, place, note and plate. */
export function shelfDraft<Item extends ShelfItem>(item: Item): Draft<Item> {
  const label = ('supply' in item ? item.supply.label : item.device.label) ?? null
  const { name, place, note } = item
  return {
    name,
    search: [name, place, note, label].filter(Boolean).join('\n'),
    state: null,
    summary: { place, note, label } satisfies ShelfSummary,
    body: item,
  }
}

import { boxes } from '../../../facts/boxes.js'
import { dcPlugRows } from '../../../tables/dcPlugRows.js'
import { say, type Words } from '../../../words/phrase.js'
import { millimetres, volts } from '../../../words/quantity.js'
import { head, type PageHead } from '../../page.js'
import { FormReader, type FormState, longestText } from '../../parts/formState.js'

/** How long the ruler is where nothing enlarges it [mm]: the height of a bank card, ISO/IEC 7810 ID-1: so a narrow phone has room for it. */
export const cardMm = 53.98

interface Size {
  name: string
  says: Words
  /** of the whole drawing, on a screen whose ruler is as long as it says [mm] */
  sideMm: number
  circles: { r: number; kind: 'metal' | 'bore' | 'pin' }[]
  /** the check with this size in it */
  asPlug: string
  asJack: string
}

export interface PlugSizesModel {
  page: PageHead
  form: FormState
  /** how much larger all is drawn, so that it is as large as it is */
  enlarged: number
  cardMm: number
  sizes: Size[]
  rulerSays: Words
  proves: Words
  /** the check that was left, or an empty one */
  back: string
  /** what of it goes through this page's form */
  kept: { name: string; value: string }[]
}

const rounded = (value: number): number => Math.round(value * 100) / 100

export function plugSizesView(sent: unknown): PlugSizesModel {
  const reader = new FormReader(sent, ['ruler'], () => 'Length of the ruler')
  const measured = reader.number('ruler', { label: 'Length of the ruler', unit: 'mm', min: 20, max: 400 })
  const given = (sent ?? {}) as Record<string, unknown>
  const kept = boxes.flatMap(({ name }) =>
    [given[name]]
      .flat()
      .filter(
        (value): value is string => typeof value === 'string' && value.trim() !== '' && value.length <= longestText,
      )
      .map((value) => ({ name, value })),
  )
  const checkWith = (sizes: Record<string, number>): string => {
    const query = new URLSearchParams(kept.map(({ name, value }): [string, string] => [name, value]))
    for (const [name, value] of Object.entries(sizes)) query.set(name, String(value))
    return query.size === 0 ? '/' : `/?${query}`
  }
  const enlarged = measured == null ? 1 : cardMm / measured
  return {
    page: head('Plugs as large as they are', 'check', reader.faults),
    form: reader.state,
    enlarged: rounded(enlarged),
    cardMm: rounded(cardMm * enlarged),
    sizes: dcPlugRows.map(({ name, outerMm, innerMm, centrePinMm }) => ({
      name,
      says: say`${millimetres(outerMm)} outside, ${millimetres(innerMm)} bore`,
      sideMm: rounded((outerMm + 1) * enlarged),
      circles: [
        { r: outerMm / 2, kind: 'metal' },
        { r: innerMm / 2, kind: 'bore' },
        ...(centrePinMm === null ? [] : [{ r: centrePinMm / 2, kind: 'pin' as const }]),
      ],
      asPlug: checkWith({ plugouter: outerMm, pluginner: innerMm }),
      asJack: checkWith({ jackouter: outerMm, jackinner: innerMm }),
    })),
    rulerSays: say`${millimetres(cardMm)}, the height of a bank card, its short side (ISO/IEC 7810, size ID-1); a mark every ${millimetres(10)}.`,
    proves: say`A size proves neither voltage nor polarity: plugs of one size carry anything from ${volts(3)} to ${volts(24)}, either way round. Bores of ${millimetres(2.1)} and ${millimetres(2.5)} look alike: try a drill shank.`,
    back: checkWith({}),
    kept,
  }
}

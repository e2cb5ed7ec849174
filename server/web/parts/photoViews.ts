import type { Photo } from '../../store/store.js'
import { type Moment, moment } from './dates.js'

/** A photo with the typed words of the plate it shows, where it shows one. */
export interface PhotoView {
  id: string
  large: string
  small: string
  alt: string
  caption: string
  at: Moment
  plate: string | null
}

/** The photo that `?photo=` names as just deleted; null for anything else. */
export const deletedPhoto = (sent: unknown): string | null =>
  typeof sent === 'string' && /^[\w-]{16,64}$/.test(sent) ? sent : null

/** Photos as a page shows them: those of a plate first, beside what was typed of it. */
export function photoViews(
  photos: readonly Photo[],
  plates: { supply?: string | null | undefined; machine?: string | null | undefined },
): PhotoView[] {
  const plateOf = (caption: string): string | null =>
    (caption === 'supply plate' ? plates.supply : caption === 'machine plate' ? plates.machine : null)?.trim() || null
  return photos
    .map((photo) => ({
      id: photo.id,
      large: `/photos/${photo.id}`,
      small: `/photos/${photo.id}/small`,
      alt: photo.caption === '' ? 'Photo without a caption' : `Photo: ${photo.caption}`,
      caption: photo.caption,
      at: moment(photo.createdAt),
      plate: plateOf(photo.caption),
    }))
    .sort((one, other) => Number(other.plate !== null) - Number(one.plate !== null))
}

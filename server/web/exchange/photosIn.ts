import { Full, Missing } from '../../store/errors.js'
import type { Words } from '../../words/phrase.js'
import type { Context } from '../context.js'
import { Unprocessable } from '../errors.js'
import { keepPhoto } from '../parts/keepPhoto.js'
import { lookAtPhoto } from '../parts/photoImage.js'
import { firstOf, largestPacked, type OpenedZip } from './readZip.js'
import type { ListedPhoto } from './recordsZip.js'

/** A photo of a record file that was not taken, and why. */
export interface RefusedPhoto {
  file: string
  message: Words
}

export interface PhotosIn {
  /** taken, or to be taken */
  adds: number
  /** kept here already */
  same: number
  refused: RefusedPhoto[]
}

/**
 * Looks at the photos of a record file, or keeps them: each on its own, so that one that cannot be used is refused by its
 * name and the others are taken.
 *
 * @param owners  records of the file, which may not be kept yet while it is looked at
 */
export async function photosIn(
  context: Context,
  { photos, picture }: OpenedZip,
  { owners, keep }: { owners: ReadonlySet<string>; keep: boolean },
): Promise<PhotosIn> {
  const result: PhotosIn = { adds: 0, same: 0, refused: [] }
  const kept = new Set((await context.store.everyPhoto()).map(({ id }) => id))
  const here = new Set((await context.store.held(photos.map(({ owner }) => owner))).map(({ id }) => id))
  for (const photo of photos) {
    if (kept.has(photo.id)) {
      result.same += 1
      continue
    }
    try {
      if (!owners.has(photo.owner) && !here.has(photo.owner))
        throw new Missing('The record it belongs to is not there.')
      const bytes = picture(photo)
      if (keep)
        await keepPhoto(context, photo.owner, photo.caption, bytes, photo.id, {
          createdAt: photo.createdAt,
          largest: largestPacked,
        })
      else await lookAtPhoto(bytes, largestPacked)
      result.adds += 1
    } catch (error) {
      if (!(error instanceof Unprocessable || error instanceof Full || error instanceof Missing)) throw error
      result.refused.push({ file: nameOf(photo), message: firstOf(error) })
    }
  }
  return result
}

const nameOf = ({ file, caption }: ListedPhoto): string => (caption === '' ? file : `${file} (${caption})`)

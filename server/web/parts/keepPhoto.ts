import type { RequestHandler } from 'express'
import multer from 'multer'
import { Missing } from '../../store/errors.js'
import { newId } from '../../store/openStore.js'
import { removePhotoFiles, writePhotoFiles } from '../../store/photoFiles.js'
import type { Photo } from '../../store/store.js'
import type { Context } from '../context.js'
import { Unprocessable } from '../errors.js'
import { largestPhoto, photoImage } from './photoImage.js'

/** The most photos of one job, or of one row of the shelf. */
export const mostPhotos = 12

const upload = multer({
  storage: multer.memoryStorage(),
  limits: { fileSize: largestPhoto, files: 1, fields: 10, fieldSize: 10_000, parts: 12 },
}).single('photo')

const words: Record<string, string> = {
  LIMIT_FILE_SIZE: 'The photo is larger than the 8 MB that are kept; make it smaller and send it again.',
  LIMIT_FILE_COUNT: 'Send one photo at a time.',
  LIMIT_UNEXPECTED_FILE: 'Send the photo in the field “photo”, one at a time.',
}

/** Reads a form with one file in its field "photo"; what cannot be read becomes a sentence. */
export const photoForm: RequestHandler = (request, response, next) => {
  upload(request, response, (error: unknown) => {
    if (!error) {
      next()
      return
    }
    const { code = '' } = error as { code?: string }
    const message = words[code] ?? 'The form cannot be read; send it again with one photo.'
    next(new Unprocessable([{ path: 'photo', message }]))
  })
}

/**
 * Keeps one photo of a record: the files first, then the row, so that a row never names a file that is not there.
 *
 * @param id  of the photo; one that is kept already stays as it is and is the answer
 * @param of  when it was taken, where it waited on a device; when it was first kept, and the most bytes taken, of one that was kept elsewhere
 */
export async function keepPhoto(
  { store, config, now }: Context,
  owner: string,
  caption: string,
  bytes: Uint8Array,
  id: string = newId(),
  { createdAt = now(), largest }: { createdAt?: number; largest?: number } = {},
): Promise<Photo> {
  // sent again: writing its files once more could only lose them, where the disk is full by now
  const known = await store.photo(id).catch((error: unknown) => {
    if (error instanceof Missing) return null
    throw error
  })
  if (known) return known
  const { large, small, ...image } = await photoImage(bytes, largest)
  const photo: Photo = { id, owner, caption, bytes: large.length, createdAt, ...image }
  await writePhotoFiles(config.dataDir, photo, { large, small })
  try {
    return await store.addPhoto(photo, mostPhotos)
  } catch (error) {
    await removePhotoFiles(config.dataDir, photo).catch(() => undefined)
    throw error
  }
}

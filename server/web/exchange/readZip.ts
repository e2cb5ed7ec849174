import { strFromU8, unzipSync } from 'fflate'
import { z } from 'zod'
import type { Words } from '../../words/phrase.js'
import { type FieldError, Unprocessable } from '../errors.js'
import { refuseKeysIn } from '../guards/refusePrototypeKeys.js'
import { parse } from '../parse.js'
import { captionSchema } from '../schemas/photos.js'
import { type ListedPhoto, photosName, recordsName } from './recordsZip.js'

/** The largest record file that is brought in, and the largest of what is packed in it, unpacked [bytes]. */
export const largestZip = 256 * 1024 * 1024
const largestJson = 64 * 1024 * 1024
export const largestPacked = 32 * 1024 * 1024

/** The most photos of one file. */
const mostPhotos = 20_000

const idSchema = z.string().regex(/^[\w-]{16,64}$/, { error: 'must be 16 to 64 letters, figures, _ and -' })

const listSchema = z
  .array(
    z.strictObject({
      id: idSchema,
      owner: idSchema,
      caption: captionSchema,
      createdAt: z.int().min(0).max(253_402_300_799_999),
      file: z
        .string()
        .regex(/^photos\/[\w-]{16,64}\.(jpg|png|webp)$/, { error: 'must be a file of the folder photos' }),
    }),
  )
  .max(mostPhotos)

/** Whether a file begins as ZIP files do. */
export const isZip = (bytes: Uint8Array): boolean =>
  bytes[0] === 0x50 && bytes[1] === 0x4b && (bytes[2] === 3 || bytes[2] === 5)

const unusable = (message: string): Unprocessable => new Unprocessable([{ path: 'file', message }], message)

/** One file of a ZIP file, unpacked; null where it has none of this name. Throws where it is damaged, or too large. */
function unpack(zip: Uint8Array, name: string, largest: number): Uint8Array | null {
  const found = unzipSync(zip, {
    filter(file) {
      if (file.name !== name) return false
      if (file.originalSize > largest) throw unusable(`“${name}” in the file is larger than what is read at once.`)
      return true
    },
  })
  return found[name] ?? null
}

function json(zip: Uint8Array, name: string): unknown {
  try {
    const bytes = unpack(zip, name, largestJson)
    const sent: unknown = bytes && JSON.parse(strFromU8(bytes))
    refuseKeysIn(sent)
    return sent
  } catch (error) {
    if (error instanceof Unprocessable) throw error
    throw unusable(
      `The file begins like a record file, but “${name}” in it cannot be read; it may be cut off or damaged.`,
    )
  }
}

export interface OpenedZip {
  /** as the file without photos has them, not looked at yet */
  records: unknown
  photos: ListedPhoto[]
  /** the bytes of a photo; throws Unprocessable where they are not there */
  picture: (photo: ListedPhoto) => Uint8Array
}

/**
 * Opens a record file. Its photos are unpacked one at a time, when asked for.
 *
 * @throws Unprocessable with what is wrong with it
 */
export function openZip(zip: Uint8Array): OpenedZip {
  if (!isZip(zip)) throw unusable('The file is no ZIP file; choose one that Lampline wrote.')
  const records = json(zip, recordsName)
  if (records === null)
    throw unusable(`The file is a ZIP file, but has no “${recordsName}”; choose one that Lampline wrote.`)
  return {
    records,
    photos: parse(listSchema, json(zip, photosName) ?? []),
    picture({ file }) {
      let bytes: Uint8Array | null
      try {
        bytes = unpack(zip, file, largestPacked)
      } catch (error) {
        if (error instanceof Unprocessable) throw error
        throw unusable('It cannot be unpacked; the file may be damaged there.')
      }
      if (!bytes) throw unusable('It is listed, and not in the file.')
      return bytes
    },
  }
}

/** The first sentence of what is wrong. */
export const firstOf = ({ fields, message }: { fields?: FieldError[]; message: Words }): Words =>
  fields?.[0]?.message ?? message

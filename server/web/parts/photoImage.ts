import type { Sharp } from 'sharp'
import type { Photo } from '../../store/store.js'
import { Unprocessable } from '../errors.js'

/** The largest file taken, in bytes. */
export const largestPhoto = 8 * 1024 * 1024

/** The longest side kept and the longest side of the small picture [px]. */
const longestPx = 4096
const smallPx = 360

/** More pixels than any camera on a bench gives; a small file can unpack to more. */
const mostPixels = 100_000_000

const types: Record<string, Photo['type']> = { jpeg: 'image/jpeg', png: 'image/png', webp: 'image/webp' }

export interface PhotoImage {
  type: Photo['type']
  large: Uint8Array
  small: Uint8Array
  widthPx: number
  heightPx: number
}

const refused = (message: string): Unprocessable => new Unprocessable([{ path: 'photo', message }])

/** Opens a picture; what it throws, and what reading it throws, becomes a sentence. */
async function withPicture<Result>(
  bytes: Uint8Array,
  largest: number,
  use: (picture: Sharp, type: Photo['type'], sharp: typeof import('sharp').default) => Promise<Result>,
): Promise<Result> {
  // loaded with the first photo: it takes a tenth of a second, and many a start sees none
  const { default: sharp } = await import('sharp')
  if (bytes.length > largest)
    throw refused('The photo is larger than the 8 MB that are kept; make it smaller and send it again.')
  try {
    const picture = sharp(bytes, { limitInputPixels: mostPixels, failOn: 'error' })
    const { format = '' } = await picture.metadata()
    const type = types[format]
    if (!type) throw refused('The file is no JPEG, PNG or WebP picture; only these are kept.')
    return await use(picture, type, sharp)
  } catch (error) {
    if (error instanceof Unprocessable) throw error
    throw refused('The file is no whole JPEG, PNG or WebP picture; it may be damaged, or of another kind.')
  }
}

/**
 * Decodes a picture to see whether it is whole.
 *
 * @throws Unprocessable as {@link photoImage}
 */
export const lookAtPhoto = (bytes: Uint8Array, largest = largestPhoto): Promise<void> =>
  withPicture(bytes, largest, async (picture) => {
    await picture.resize(smallPx, smallPx, { fit: 'inside' }).raw().toBuffer()
  })

/**
 * The picture in a file, decoded and written anew: turned as the camera says, without the place it was taken at and
 * without anything else that was hidden in the file.
 *
 * @param largest  the most bytes taken: what was written anew before may be larger than what came from a camera
 * @throws Unprocessable where the content is not a whole JPEG, PNG or WebP picture, whatever its name says
 */
export const photoImage = (bytes: Uint8Array, largest = largestPhoto): Promise<PhotoImage> =>
  withPicture(bytes, largest, async (picture, type, sharp) => {
    const upright = picture.autoOrient().resize(longestPx, longestPx, { fit: 'inside', withoutEnlargement: true })
    const anew =
      type === 'image/jpeg'
        ? upright.jpeg({ quality: 88 })
        : type === 'image/png'
          ? upright.png()
          : upright.webp({ quality: 88 })
    const { data, info } = await anew.toBuffer({ resolveWithObject: true })
    const small = await sharp(data)
      .resize(smallPx, smallPx, { fit: 'inside', withoutEnlargement: true })
      .webp({ quality: 78 })
      .toBuffer()
    return { type, large: data, small, widthPx: info.width, heightPx: info.height }
  })

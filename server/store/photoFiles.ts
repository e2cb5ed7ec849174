import { mkdir, open, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { storageFault } from './storageFault.js'
import type { Photo } from './store.js'

export type PhotoSize = 'large' | 'small'

const endings: Record<Photo['type'], string> = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' }

/** Where a photo lies under the data folder; the small one is always WebP. */
export function photoPath(dataDir: string, { id, type }: Pick<Photo, 'id' | 'type'>, size: PhotoSize): string {
  // ids are our own, of letters, figures, _ and -; anything else must not become a path
  if (!/^[\w-]{16,64}$/.test(id)) throw new RangeError('a photo id has 16 to 64 letters, figures, _ and -')
  const name = size === 'large' ? `${id}.${endings[type]}` : `${id}-small.webp`
  return join(dataDir, 'photos', id.slice(0, 2), name)
}

/** Writes the file whole or not at all, and returns when it is on the disk. */
async function writeFile(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true })
  const unfinished = `${path}.part`
  const file = await open(unfinished, 'w')
  try {
    await file.writeFile(bytes)
    await file.sync()
  } finally {
    await file.close()
  }
  await rename(unfinished, path)
  const folder = await open(dirname(path), 'r')
  await folder.sync()
  await folder.close()
}

export async function removePhotoFiles(dataDir: string, photo: Pick<Photo, 'id' | 'type'>): Promise<void> {
  for (const size of ['large', 'small'] as const) {
    const path = photoPath(dataDir, photo, size)
    await rm(path, { force: true })
    await rm(`${path}.part`, { force: true })
  }
}

/** Keeps both sizes of a photo; throws StorageFault with words, and then neither is left. */
export async function writePhotoFiles(
  dataDir: string,
  photo: Pick<Photo, 'id' | 'type'>,
  { large, small }: Record<PhotoSize, Uint8Array>,
): Promise<void> {
  try {
    await writeFile(photoPath(dataDir, photo, 'small'), small)
    await writeFile(photoPath(dataDir, photo, 'large'), large)
  } catch (error) {
    await removePhotoFiles(dataDir, photo).catch(() => undefined)
    throw storageFault(error) ?? error
  }
}

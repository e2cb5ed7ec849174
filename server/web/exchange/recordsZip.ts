import { readFile } from 'node:fs/promises'
import { strToU8, Zip, ZipDeflate, ZipPassThrough } from 'fflate'
import { photoPath } from '../../store/photoFiles.js'
import type { Photo, Store } from '../../store/store.js'
import { exportFile } from './recordsFile.js'

/** The records, as the file without photos has them, and the list of the photos, in a record file. */
export const recordsName = 'records.json'
export const photosName = 'photos.json'

const folder = 'photos/'

/** One photo of a record file. */
export interface ListedPhoto {
  id: string
  /** the record it belongs to */
  owner: string
  caption: string
  createdAt: number
  /** its name in the file */
  file: string
}

const endings: Record<Photo['type'], string> = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' }

/** The same for every file, so that equal records give equal bytes: a ZIP file knows no time before 1980. */
const noTime = new Date(1980, 0, 1)

/** The bytes of a photo; null where its file is gone. */
async function pictureOf(dataDir: string, photo: Photo): Promise<Uint8Array | null> {
  try {
    return await readFile(photoPath(dataDir, photo, 'large'))
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null
    throw error
  }
}

/** Everything that is kept with its photos, as one ZIP file, piece by piece: no more than one photo is held at a time. */
export async function* recordsZip(store: Store, dataDir: string): AsyncGenerator<Uint8Array> {
  const ready: Uint8Array[] = []
  const zip = new Zip((error, piece) => {
    if (error) throw error
    ready.push(piece)
  })
  const add = (file: ZipPassThrough | ZipDeflate, bytes: Uint8Array): Uint8Array[] => {
    file.mtime = noTime
    zip.add(file)
    file.push(bytes, true)
    return ready.splice(0)
  }
  yield* add(new ZipDeflate(recordsName), strToU8(await exportFile(store)))
  const listed: ListedPhoto[] = []
  for (const photo of await store.everyPhoto()) {
    const bytes = await pictureOf(dataDir, photo)
    if (!bytes) continue
    const { id, owner, caption, createdAt } = photo
    const file = `${folder}${id}.${endings[photo.type]}`
    listed.push({ id, owner, caption, createdAt, file })
    yield* add(new ZipPassThrough(file), bytes)
  }
  yield* add(new ZipDeflate(photosName), strToU8(`${JSON.stringify(listed, null, 1)}\n`))
  zip.end()
  yield* ready.splice(0)
}

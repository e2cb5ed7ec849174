import { StorageFault } from './errors.js'

const full = /^(SQLITE_FULL|ENOSPC|EDQUOT|53100)$/
const readOnly = /^(SQLITE_READONLY|SQLITE_PERM|EACCES|EPERM|EROFS|25006|42501)/
const ioFault = /^(SQLITE_IOERR|EIO$|EFBIG)/
const cannotOpen = /^(SQLITE_CANTOPEN|ENOTDIR|EEXIST|ENOENT|EMFILE|ENFILE)/
const busy = /^(SQLITE_BUSY|SQLITE_LOCKED|40001|40P01|55P03)/
const broken = /^(SQLITE_CORRUPT|SQLITE_NOTADB)/
/** refused, reset, timed out, no such host; the server starts, stops, has no room or does not let us in */
const noServer = /^(ECONN|ETIMEDOUT|ENOTFOUND|EAI_AGAIN|EHOSTUNREACH|EPIPE|08|57P0|53300|28|3D000)/

/** True where the file itself is damaged, or is not one of ours. */
export const isBroken = (error: unknown): boolean =>
  broken.test(String((((error instanceof StorageFault ? error.cause : error) ?? {}) as { code?: unknown }).code ?? ''))

/** A fault as the driver would tell it, where it is seen here that the file is damaged. */
export const brokenFile = (message: string): Error => Object.assign(new Error(message), { code: 'SQLITE_CORRUPT' })

/** What a driver's or the file system's fault means in words; null where it is none of these and so a bug. */
export function storageFault(error: unknown): StorageFault | null {
  if (error instanceof StorageFault) return error
  const { code = '', message = '' } = (error ?? {}) as { code?: unknown; message?: string }
  const name = String(code)
  if (full.test(name))
    return new StorageFault(507, 'The disk is full, so nothing was saved. Make room, then send it again.', error)
  if (readOnly.test(name))
    return new StorageFault(
      503,
      'The place where records are kept cannot be written to, so nothing was saved. Give the account that runs Lampline the right to write there (DATA_DIR), then send it again.',
      error,
    )
  if (ioFault.test(name))
    return new StorageFault(
      503,
      'The disk does not take or give back what is kept on it, so nothing was saved. Look at the disk that holds DATA_DIR, then send it again.',
      error,
    )
  if (cannotOpen.test(name) || /Unable to open connection to local database/.test(message))
    return new StorageFault(
      503,
      'The place where records are kept cannot be opened, so nothing was saved. Check the folder named by DATA_DIR, then send it again.',
      error,
    )
  if (busy.test(name))
    return new StorageFault(
      503,
      'The records are being written to by another process; send it again in a moment.',
      error,
    )
  if (broken.test(name))
    return new StorageFault(
      503,
      'The file that holds the records is damaged or is not one of ours, and was left as it is. Checks work without it.',
      error,
    )
  if (noServer.test(name) || /Connection terminated|timeout exceeded when trying to connect/.test(message))
    return new StorageFault(
      503,
      'The database server named by DATABASE_URL does not answer, so nothing was saved. Start it, then send it again.',
      error,
    )
  if (/corrupted migrations/.test(message))
    return new StorageFault(
      503,
      'The records were written by a newer Lampline than this one and were left as they are. Start the newer one.',
      error,
    )
  return null
}

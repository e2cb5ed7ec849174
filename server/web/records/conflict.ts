import { Stale } from '../../store/errors.js'
import { Conflict } from '../errors.js'

/** Does the work; a stale version becomes a 409 with the record as it is answered elsewhere. */
export async function conflictAs<Current, Result>(
  present: (current: Current) => unknown,
  work: Promise<Result>,
): Promise<Result> {
  try {
    return await work
  } catch (error) {
    if (error instanceof Stale) throw new Conflict(error.message, await present(error.current as Current))
    throw error
  }
}

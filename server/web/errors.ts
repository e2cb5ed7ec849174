import type { Words } from '../words/phrase.js'
import { tell } from '../words/tell.js'

/** One thing wrong with what was sent: `path` as in the body ("supply.input.voltages.0.max"). */
export interface FieldError {
  path: string
  message: Words
}

/** What was sent cannot be used: status 422, with each field that is wrong. */
export class Unprocessable extends Error {
  readonly status = 422
  constructor(
    readonly fields: FieldError[],
    /** all of it in a sentence */
    readonly said: Words = fields.length === 1
      ? (fields[0]?.message ?? 'The request cannot be used.')
      : `${fields.length} fields cannot be used.`,
  ) {
    super(tell(said))
  }
}

/** No such thing: status 404. */
export class NotFound extends Error {
  readonly status = 404
  constructor(message = 'There is nothing at this address.') {
    super(message)
  }
}

/** The record was changed by someone else meanwhile: status 409, with the record as it is now. */
export class Conflict extends Error {
  readonly status = 409
  constructor(
    message: string,
    readonly current: unknown,
  ) {
    super(message)
  }
}

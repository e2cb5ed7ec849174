/** No such record, or it was deleted: status 404. */
export class Missing extends Error {
  readonly status = 404
  constructor(message = 'There is no such record; it may have been deleted.') {
    super(message)
  }
}

/** The record was changed meanwhile: status 409; `current` is what is kept now, and nothing was changed. */
export class Stale extends Error {
  readonly status = 409
  constructor(readonly current: { id: string; version: number }) {
    super(
      `This record was changed meanwhile: it is now at version ${current.version}. Nothing of yours was saved; compare and send it again with that version.`,
    )
  }
}

/** As many as may be kept are kept already: status 422. */
export class Full extends Error {
  readonly status = 422
}

/** The disk, the folder or the database server does not take what should be kept: status 507 or 503, with words. */
export class StorageFault extends Error {
  constructor(
    readonly status: 503 | 507,
    message: string,
    override readonly cause: unknown,
  ) {
    super(message)
  }
}

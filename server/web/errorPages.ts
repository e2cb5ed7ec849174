import type { ErrorRequestHandler, RequestHandler } from 'express'
import { StorageFault } from '../store/errors.js'
import type { Words } from '../words/phrase.js'
import { tell } from '../words/tell.js'
import type { Context } from './context.js'
import { Conflict, type FieldError, NotFound, Unprocessable } from './errors.js'
import { render, wantsFragment } from './page.js'
import { pathOf, requestId } from './requestLog.js'

export const notFound: RequestHandler = () => {
  throw new NotFound()
}

interface Answer {
  status: number
  message: Words
  fields: FieldError[]
}

/** body-parser's own faults, in our words; anything else without a 4xx status is a bug. */
function answer(error: unknown): Answer {
  const fault = (error ?? {}) as {
    status?: number
    type?: string
    message?: string
    fields?: FieldError[]
    limit?: number
  }
  const status = fault.status ?? 500
  const fields = fault.fields ?? []
  if (fault.type === 'entity.parse.failed')
    return { status: 400, message: 'The body is not JSON; send one JSON object as described in docs/api.md.', fields }
  if (fault.type === 'entity.too.large')
    return {
      status: 413,
      message: `The body is larger than the ${Math.round((fault.limit ?? 0) / 1024)} kB accepted here.`,
      fields,
    }
  if (status === 415 || fault.type?.startsWith('charset') || fault.type?.startsWith('encoding'))
    return { status: 415, message: 'The body is in an encoding that is not read here; send JSON in UTF-8.', fields }
  if (error instanceof StorageFault) return { status, message: error.message, fields }
  if (error instanceof Unprocessable) return { status, message: error.said, fields }
  if (error instanceof Unprocessable) return { status, message: error.said, fields }
  if (status >= 400 && status < 500) return { status, message: fault.message ?? 'The request cannot be used.', fields }
  return {
    status: 500,
    message: 'This is a fault in Lampline itself, not in what you entered. Go back and try again.',
    fields: [],
  }
}

const titles: Record<number, string> = {
  403: 'Sent from another site',
  404: 'Not found',
  409: 'Changed meanwhile',
  413: 'Too large',
  421: 'Not under this name',
  429: 'Too much at once',
  500: 'A fault in Lampline',
  503: 'Not available now',
}

/** Every error as a page, as a part of a page where htmx asked, or as JSON under /api/. */
export function handleErrors({ logger }: Context): ErrorRequestHandler {
  return (error, request, response, next) => {
    if (response.headersSent) return next(error)
    const { status, message, fields } = answer(error)
    // under this name the line with the cause is found again
    const id = status >= 500 ? { id: requestId(response) } : {}
    if (status >= 500)
      logger.error({ ...id, error, method: request.method, path: pathOf(request) }, 'a request could not be answered')
    response.status(status)
    if (request.path.startsWith('/api/') || !request.accepts('html')) {
      const current = error instanceof Conflict ? { current: error.current } : {}
      response.json(tell({ error: { message, ...id, ...(fields.length ? { fields } : {}) }, ...current }))
      return
    }
    const page = {
      title: titles[status] ?? 'This cannot be used',
      nav: null,
      errors: [],
      status,
      message,
      fields,
      ...id,
    }
    render(request, response, wantsFragment(request) ? 'errorPart' : 'error', { page })
  }
}

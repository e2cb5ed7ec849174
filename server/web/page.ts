import type { Request, Response } from 'express'
import type { Words } from '../words/phrase.js'
import { tell } from '../words/tell.js'
import { decimalSign } from './decimalSign.js'
import { glossary } from './glossary.js'
import { onceForPage } from './once.js'
import type { FormFault, FormState } from './parts/formState.js'

export type NavName = 'check' | 'first-power' | 'fuse' | 'jobs' | 'shelf' | 'at-hand' | 'reference'

/** What the layout needs to know about a page. */
export interface PageHead {
  title: Words
  nav: NavName | null
  /** what was typed wrong; the title then begins with "Error: " and the answer is a 422 */
  errors: FormFault[]
}

export const head = (title: Words, nav: NavName | null, errors: FormFault[] = []): PageHead => ({ title, nav, errors })

/** True where htmx asks for a part of the page rather than for the page; going back in the history wants the whole of it. */
export const wantsFragment = (request: Request): boolean =>
  request.get('HX-Request') === 'true' && request.get('HX-History-Restore-Request') !== 'true'

export interface Shown<Model extends { page: PageHead }> {
  /** the pug file of the whole page, under views/ without its ending */
  view: string
  /** the pug file of the part that is swapped; absent where there is none */
  fragment?: string
  /** everything the views read; a missing local prints as nothing, so the type must be complete */
  model: Model
  /** 422 when `model.page.errors` has entries, else 200, unless given */
  status?: number
}

/**
 * Answers with a view, its model told for the reader of this request. Beside it each view has the glossary, `decimalSign` for
 * the boxes that the program fills in, and `once`: the key that goes with each form that adds something, so that one sent twice
 * is kept once.
 */
export function render(request: Request, response: Response, view: string, model: object): void {
  const sign = decimalSign(request.acceptsLanguages())
  response.vary('HX-Request').vary('Accept-Language')
  response.render(
    view,
    { ...tell({ glossary, ...model }, { decimal: sign }), decimalSign: sign, once: onceForPage(request) },
    (error, html) => {
      if (error) {
        request.next?.(error)
        return
      }
      const body = Buffer.from(html)
      // no tag to tell a page by: the most asked for carry a key of their own and are never the same twice
      response.type('html').set('Content-Length', String(body.length)).end(body)
    },
  )
}

/** Answers with the page, or with its fragment when htmx asked. */
export function show<Model extends { page: PageHead }>(
  request: Request,
  response: Response,
  { view, fragment, model, status }: Shown<Model>,
): void {
  response.status(status ?? (model.page.errors.length > 0 ? 422 : 200))
  render(request, response, fragment !== undefined && wantsFragment(request) ? fragment : view, model)
}

/**
 * A browser sends every empty field of a GET form; this sends it on to the address that holds only what was entered.
 * Not where a part of the page is asked for, and not where the shorter address would hide a fault (a field given twice,
 * a name that is no field).
 *
 * @returns true when the answer has been sent
 */
export function redirectToSparse(
  request: Request,
  response: Response,
  {
    sent,
    state,
    faults,
    address,
  }: { sent: Request['query']; state: FormState; faults: readonly FormFault[]; address: string },
): boolean {
  const padded = Object.values(state.values).some((value) => value.trim() === '')
  const hides = faults.some(({ name }) => state.values[name] === undefined) || Object.values(sent).some(Array.isArray)
  if (!padded || hides || wantsFragment(request)) return false
  response.redirect(303, address)
  return true
}

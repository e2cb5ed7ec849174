import { Router } from 'express'
import { accessCookie, sameSecret } from '../access.js'
import type { Context } from '../context.js'
import { render } from '../page.js'

/** Only a path of this server: an address elsewhere ("//host", "/\host") must not be a target. */
const localPath = (to: unknown): string => (typeof to === 'string' && /^\/(?![/\\])[^\r\n]*$/.test(to) ? to : '/')

/** Wrong tries are answered this much later, to make guessing slow [ms]. */
const delayMs = 700

/** The page that asks for the passphrase when the server is reached over a network. */
export function enterRoutes({ config }: Context): Router {
  const router = Router()
  router.get('/enter', (request, response) => {
    render(request, response, 'enter', { page: { title: 'Passphrase', to: localPath(request.query.to), error: null } })
  })
  router.post('/enter', async (request, response) => {
    const { passphrase, to } = (request.body ?? {}) as Record<string, unknown>
    if (config.passphrase === undefined) {
      response.redirect(303, localPath(to))
      return
    }
    if (typeof passphrase === 'string' && sameSecret(passphrase, config.passphrase)) {
      response.set('Set-Cookie', accessCookie(config.passphrase)).redirect(303, localPath(to))
      return
    }
    await new Promise((resolve) => setTimeout(resolve, delayMs))
    const error = passphrase
      ? 'The passphrase does not match the one this server was started with.'
      : 'Enter the passphrase.'
    response.status(422)
    render(request, response, 'enter', { page: { title: 'Error: Passphrase', to: localPath(to), error } })
  })
  return router
}

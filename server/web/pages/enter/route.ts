import { Router } from 'express'
import { type Access, forget } from '../../guards/access.js'
import { render } from '../../page.js'

/** Only a path of this server: an address elsewhere ("//host", "/\host") must not be a target. */
const localPath = (to: unknown): string => (typeof to === 'string' && /^\/(?![/\\])[^\r\n]*$/.test(to) ? to : '/')

/** The page that asks for the passphrase when the server is reached over a network, and lets a browser forget it. */
export function enterRoutes(access: Access): Router {
  const router = Router()
  router.get('/enter', async (request, response) => {
    const remembered = await access.remembers(request)
    const page = { title: 'Passphrase', to: localPath(request.query.to), error: null, remembered }
    render(request, response, 'enter', { page })
  })
  router.post('/enter', async (request, response) => {
    const { passphrase, to } = (request.body ?? {}) as Record<string, unknown>
    if (!access.asks) {
      response.redirect(303, localPath(to))
      return
    }
    if (typeof passphrase === 'string' && passphrase !== '' && access.matches(request, response, passphrase)) {
      response.set('Set-Cookie', await access.remember(request)).redirect(303, localPath(to))
      return
    }
    const error = passphrase
      ? 'The passphrase does not match the one this server was started with.'
      : 'Enter the passphrase.'
    response.status(422)
    const page = { title: 'Error: Passphrase', to: localPath(to), error, remembered: false }
    render(request, response, 'enter', { page })
  })
  router.post('/leave', (_request, response) => {
    response.set('Set-Cookie', forget).redirect(303, '/enter')
  })
  return router
}

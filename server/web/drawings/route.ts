import { Router } from 'express'
import { NotFound } from '../errors.js'
import { drawings } from './index.js'

/** The drawings that choices are shown with, each a file of its own. */
export function drawingRoutes(): Router {
  const router = Router()
  router.get('/drawings/:name', (request, response) => {
    const file = drawings.get(request.params.name.replace(/\.svg$/, ''))
    if (file === undefined) throw new NotFound('There is no drawing of that name.')
    response.type('image/svg+xml').set('Cache-Control', 'public, max-age=86400').send(file)
  })
  return router
}

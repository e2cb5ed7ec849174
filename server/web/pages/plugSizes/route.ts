import { Router } from 'express'
import { show } from '../../page.js'
import { plugSizesView } from './view.js'

/** The page "/plug-sizes": plugs as large as they are. `?ruler=` tells how long its ruler turns out, the rest is a check's address. */
export function plugSizesRoutes(): Router {
  const router = Router()
  router.get('/plug-sizes', (request, response) => {
    show(request, response, { view: 'plug-sizes', model: plugSizesView(request.query) })
  })
  return router
}

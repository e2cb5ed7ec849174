import { Router } from 'express'

export function healthRoutes(): Router {
  const router = Router()
  router.get('/healthz', (_request, response) => {
    response.json({ status: 'ok' })
  })
  return router
}

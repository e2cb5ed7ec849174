import { Router } from 'express'
import { openApiDocument } from '../openapi.js'

export function openApiRoutes(): Router {
  const router = Router()
  const document = openApiDocument()
  router.get('/api/openapi.json', (_request, response) => {
    response.json(document)
  })
  return router
}

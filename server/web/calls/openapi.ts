import { Router } from 'express'
import { openApiDocument } from '../openapi.js'

export function openApiRoutes(): Router {
  const router = Router()
  // drawn up from all schemas when it is first asked for: the server starts sooner
  let document: ReturnType<typeof openApiDocument> | undefined
  router.get('/api/openapi.json', (_request, response) => {
    document ??= openApiDocument()
    response.json(document)
  })
  return router
}

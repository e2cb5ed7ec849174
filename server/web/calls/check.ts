import { Router } from 'express'
import { assess } from '../../chain/assess.js'
import { checkSchema } from '../../facts/check.js'
import { tell } from '../../words/tell.js'
import { parse } from '../parse.js'

/** The whole check, as JSON. */
export function checkRoutes(): Router {
  const router = Router()
  router.post('/api/check', (request, response) => {
    response.json(tell(assess(parse(checkSchema, request.body))))
  })
  return router
}

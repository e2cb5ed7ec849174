import { Router } from 'express'
import { leadLoss } from '../../chain/leadLoss.js'
import { tell } from '../../words/tell.js'
import { parse } from '../parse.js'
import { leadDropSchema } from '../schemas/check.js'

/** What a lead between supply and machine loses. */
export function leadDropRoutes(): Router {
  const router = Router()
  router.post('/api/lead-drop', (request, response) => {
    response.json(tell(leadLoss(parse(leadDropSchema, request.body))))
  })
  return router
}

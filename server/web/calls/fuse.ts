import { Router } from 'express'
import { reviewFuse } from '../../chain/fuse/review.js'
import { readFuseMarking } from '../../plate/fuseMarking.js'
import { tell } from '../../words/tell.js'
import { parse } from '../parse.js'
import { fuseMarkingRequest, fuseRequest } from '../schemas/fuse.js'

export function fuseRoutes(): Router {
  const router = Router()
  router.post('/api/fuse', (request, response) => {
    response.json(tell(reviewFuse(parse(fuseRequest, request.body))))
  })
  router.post('/api/fuse/marking', (request, response) => {
    response.json(readFuseMarking(parse(fuseMarkingRequest, request.body).text))
  })
  return router
}

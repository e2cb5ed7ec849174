import { Router } from 'express'
import { readPlate } from '../../plate/readPlate.js'
import { parse } from '../parse.js'
import { labelRequest } from '../schemas/label.js'

/** Reads the words printed on a rating plate. */
export function labelRoutes(): Router {
  const router = Router()
  router.post('/api/label', (request, response) => {
    const { text, of } = parse(labelRequest, request.body)
    response.json(readPlate(text, of ?? 'supply'))
  })
  return router
}

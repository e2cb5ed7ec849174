import { Router } from 'express'
import { prepareSite } from '../../chain/case/prepareSite.js'
import { prepareSupply } from '../../chain/case/prepareSupply.js'
import { chooseConverter } from '../../chain/chooseConverter.js'
import { readPlate } from '../../plate/readPlate.js'
import { tell } from '../../words/tell.js'
import { parse } from '../parse.js'
import { chooseConverterSchema } from '../schemas/check.js'

/** Which converter a supply needs. */
export function converterRoutes(): Router {
  const router = Router()
  router.post('/api/converter', (request, response) => {
    const { site, supply } = parse(chooseConverterSchema, request.body)
    response.json(tell(chooseConverter(prepareSite(site), prepareSupply(supply, readPlate))))
  })
  return router
}

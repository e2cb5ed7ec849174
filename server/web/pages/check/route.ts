import { Router } from 'express'
import { answerCheck } from '../../../chain/answer.js'
import type { LabelReading, PlateOf } from '../../../plate/labelReading.js'
import { readPlate } from '../../../plate/readPlate.js'
import { redirectToSparse, show, wantsFragment } from '../../page.js'
import { readCheckForm } from './form.js'
import { checkView } from './view.js'

/** The page "/": one address, one form, one result; a part of it where htmx asks. */
export function checkPageRoutes(): Router {
  const router = Router()
  router.get('/', (request, response) => {
    const sent = request.query
    const form = readCheckForm(sent)
    const { state, query } = form
    const address = query === '' ? '/' : `/?${query}`
    if (redirectToSparse(request, response, { ...form, sent, address })) return
    const plate = (name: string, of: PlateOf): LabelReading | null => {
      const text = state.errors[name] === undefined ? state.values[name]?.trim() : ''
      return text ? readPlate(text, of) : null
    }
    const judged = form.request && answerCheck(form.request)
    // a form that cannot be judged yet still shows what its plates say
    const readings = judged
      ? { supply: judged.readings.supply, machine: judged.readings.device }
      : { supply: plate('supply', 'supply'), machine: plate('machine', 'device') }
    const model = checkView({ form, readings, response: judged })
    if (wantsFragment(request)) response.set('HX-Replace-Url', address)
    show(request, response, { view: 'check', fragment: 'check/answer', model })
  })
  return router
}

import { Router } from 'express'
import { assess } from '../../chain/assess.js'
import type { LabelReading, PlateOf } from '../../plate/labelReading.js'
import { readPlate } from '../../plate/readPlate.js'
import { addressOf, readCheckForm } from '../forms/checkForm.js'
import { show, wantsFragment } from '../page.js'
import { checkView } from '../viewModels/checkView.js'

/** The page "/": one address, one form, one result; a part of it where htmx asks. */
export function checkPageRoutes(): Router {
  const router = Router()
  router.get('/', (request, response) => {
    const form = readCheckForm(request.query)
    const { state, faults } = form
    const fragment = wantsFragment(request)
    const sparse = addressOf(state.values)
    const padded = Object.values(state.values).some((value) => value.trim() === '')
    // a browser sends every empty field; the address keeps only what was entered. A fault must not be hidden by it.
    const faultless = faults.every(({ name }) => state.values[name] !== undefined)
    if (padded && !fragment && faultless && !Object.values(request.query).some(Array.isArray)) {
      response.redirect(303, sparse === '' ? '/' : `/?${sparse}`)
      return
    }
    const plate = (name: string, of: PlateOf): LabelReading | null => {
      const text = state.errors[name] === undefined ? state.values[name]?.trim() : ''
      return text ? readPlate(text, of) : null
    }
    const readings = { supply: plate('supply', 'supply'), machine: plate('machine', 'device') }
    const model = checkView({ form, readings, response: form.request && assess(form.request) })
    if (fragment) response.set('HX-Replace-Url', sparse === '' ? '/' : `/?${sparse}`)
    show(request, response, { view: 'check', fragment: 'check/answer', model })
  })
  return router
}

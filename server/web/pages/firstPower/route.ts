import { Router } from 'express'
import { atHandIfReadable } from '../../../bench/atHand/atHand.js'
import type { Context } from '../../context.js'
import { show, wantsFragment } from '../../page.js'
import { firstPowerQuery, readFirstPowerForm, withLampsAtHand } from './form.js'
import { firstPowerView } from './view.js'

/** The page "/first-power": a check's own address with the lamps and readings added; a part of the page where htmx asks. */
export function firstPowerPageRoutes({ store }: Context): Router {
  const router = Router()
  router.get('/first-power', async (request, response) => {
    const form = readFirstPowerForm(withLampsAtHand(request.query, await atHandIfReadable(store)))
    const { values } = form.state
    const query = firstPowerQuery(values)
    const address = query === '' ? '/first-power' : `/first-power?${query}`
    const fragment = wantsFragment(request)
    // a browser sends every empty field; the address keeps only what was entered. A fault must not be hidden by it.
    const padded = Object.values(values).some((value) => value.trim() === '')
    const faultless = form.faults.every(({ name }) => values[name] !== undefined)
    if (padded && !fragment && faultless && !Object.values(request.query).some(Array.isArray)) {
      response.redirect(303, address)
      return
    }
    if (fragment) response.set('HX-Replace-Url', address)
    show(request, response, { view: 'first-power', fragment: 'first-power/answer', model: firstPowerView(form) })
  })
  return router
}

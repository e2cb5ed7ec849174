import { Router } from 'express'
import { keepAtHand, readAtHand } from '../../../bench/atHand/atHand.js'
import type { Context } from '../../context.js'
import { show } from '../../page.js'
import { atHandState, readAtHandForm } from './form.js'
import { atHandView } from './view.js'

/** The page "/at-hand": place, lamps, loads, sources and meters, entered once for every job. */
export function atHandRoutes({ store }: Context): Router {
  const router = Router()
  router.get('/at-hand', async (request, response) => {
    const state = atHandState(await readAtHand(store))
    show(request, response, { view: 'at-hand', model: atHandView(state, [], request.query.kept === '1') })
  })
  router.post('/at-hand', async (request, response) => {
    const { state, faults, atHand } = readAtHandForm((request.body ?? {}) as Record<string, unknown>)
    if (faults.length > 0) {
      show(request, response, { view: 'at-hand', model: atHandView(state, faults, false) })
      return
    }
    await keepAtHand(store, atHand)
    response.redirect(303, '/at-hand?kept=1')
  })
  return router
}

import { Router } from 'express'
import { atHandIfReadable, nothingAtHand } from '../../../bench/atHand/atHand.js'
import { answerCheck } from '../../../chain/answer.js'
import type { LabelReading, PlateOf } from '../../../plate/labelReading.js'
import { readPlate } from '../../../plate/readPlate.js'
import type { Context } from '../../context.js'
import { redirectToSparse, show, wantsFragment } from '../../page.js'
import { readCheckForm } from './form.js'
import { fromShelfLater, fromShelfView } from './fromShelfView.js'
import { lastPlace, rememberPlace } from './lastPlace.js'
import { factsAddress, sectionNamed } from './sections.js'
import { checkView } from './view.js'

/** The page "/": one address, one form, one result; a part of it where htmx asks. */
export function checkPageRoutes({ store }: Context): Router {
  const router = Router()
  router.get('/', async (request, response) => {
    const { at: place, ...sent } = request.query
    // the button that was pressed stands behind the section that was open
    const at = sectionNamed(Array.isArray(place) ? place.at(-1) : place)
    const form = readCheckForm(sent)
    const { state, query, usable } = form
    const address = query === '' ? '/' : `/?${query}`
    const whole = at === null ? address : factsAddress(query, at).replace('#facts', '')
    if (redirectToSparse(request, response, { ...form, sent, address: whole })) return
    // an address names the country by its code, whatever it was called
    const named = form.request?.site.country
    if (named && state.values.country !== named && !wantsFragment(request)) return response.redirect(303, whole)
    const plate = (name: string, of: PlateOf): LabelReading | null => {
      const text = state.errors[name] === undefined ? state.values[name]?.trim() : ''
      return text ? readPlate(text, of) : null
    }
    const judged = usable && answerCheck(usable)
    const readings = judged
      ? { supply: judged.readings.supply, machine: judged.readings.device }
      : { supply: plate('supply', 'supply'), machine: plate('machine', 'device') }
    // what is at hand fills a box that stands open, or the place of an empty form
    const atHand = form.empty || at === 'site' ? await atHandIfReadable(store) : nothingAtHand
    const model = checkView({
      form,
      readings,
      response: judged,
      fromShelf:
        usable && (wantsFragment(request) ? fromShelfLater(usable, whole) : await fromShelfView(store, usable)),
      at,
      // only an empty form begins with a place
      place: lastPlace(request) ?? (form.empty ? atHand.country : null),
      residualA: at === 'site' ? atHand.residualCurrentA : null,
    })
    if (usable?.site.country) rememberPlace(response, usable.site.country)
    if (wantsFragment(request)) response.set('HX-Replace-Url', whole)
    show(request, response, { view: 'check', fragment: 'check/answer', model })
  })
  return router
}

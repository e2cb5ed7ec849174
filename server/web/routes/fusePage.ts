import { Router } from 'express'
import { fuseQuery, readFuseForm } from '../forms/fuseForm.js'
import { show, wantsFragment } from '../page.js'
import { fuseView } from '../viewModels/fuseView.js'

/** The page "/fuse": the whole review stands in its address; a part of the page where htmx asks. */
export function fusePageRoutes(): Router {
  const router = Router()
  router.get('/fuse', (request, response) => {
    const form = readFuseForm(request.query)
    const { values } = form.state
    const query = fuseQuery(values)
    const address = query === '' ? '/fuse' : `/fuse?${query}`
    const fragment = wantsFragment(request)
    // a browser sends every empty field; the address keeps only what was entered
    const padded = Object.values(values).some((value) => value.trim() === '')
    const hidden = form.faults.some(({ name }) => values[name] === undefined && name === 'fuse-form')
    if (padded && !fragment && !hidden && !Object.values(request.query).some(Array.isArray)) {
      response.redirect(303, address)
      return
    }
    if (fragment) response.set('HX-Replace-Url', address)
    show(request, response, { view: 'fuse', fragment: 'fuse/answer', model: fuseView(form) })
  })
  return router
}

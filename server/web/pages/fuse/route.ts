import { Router } from 'express'
import { redirectToSparse, show, wantsFragment } from '../../page.js'
import { fuseQuery, readFuseForm } from './form.js'
import { fuseView } from './view.js'

/** The page "/fuse": the whole review stands in its address; a part of the page where htmx asks. */
export function fusePageRoutes(): Router {
  const router = Router()
  router.get('/fuse', (request, response) => {
    const sent = request.query
    const form = readFuseForm(sent)
    const query = fuseQuery(form.state.values)
    const address = query === '' ? '/fuse' : `/fuse?${query}`
    if (redirectToSparse(request, response, { ...form, sent, address })) return
    if (wantsFragment(request)) response.set('HX-Replace-Url', address)
    show(request, response, { view: 'fuse', fragment: 'fuse/answer', model: fuseView(form) })
  })
  return router
}

import { Router } from 'express'
import { atHandIfReadable } from '../../../bench/atHand/atHand.js'
import type { Job } from '../../../bench/jobs/job.js'
import { assessCase } from '../../../chain/assess.js'
import { prepareCase } from '../../../chain/case/case.js'
import { planFirstPower } from '../../../plan/planFirstPower.js'
import { tell } from '../../../words/tell.js'
import { checklistOf, jobChecklist } from '../../checklistOf.js'
import type { Context } from '../../context.js'
import { dataVersion } from '../../dataVersion.js'
import { show } from '../../page.js'
import { caseName } from '../../parts/caseName.js'
import { firstPowerQuery, readFirstPowerForm, withLampsAtHand } from '../firstPower/form.js'
import { checklistView } from './view.js'

/** The bench checklist: of a kept job, or of a check and plan that stand in the address. */
export function checklistRoutes({ store, now }: Context): Router {
  const router = Router()
  router.get('/api/jobs/:id/checklist', async (request, response) => {
    const { body } = await store.get<Job>('job', request.params.id)
    response.json({ name: body.name, dataVersion: body.assessment.dataVersion, ...tell(jobChecklist(body)) })
  })
  router.get('/jobs/:id/checklist', async (request, response) => {
    const { id, body } = await store.get<Job>('job', request.params.id)
    const back = { href: `/jobs/${id}`, text: 'Back to the job' }
    const model = checklistView(jobChecklist(body), {
      caseName: body.name,
      dataVersion: body.assessment.dataVersion,
      now: now(),
      back,
      check: body.check,
      job: body,
    })
    show(request, response, { view: 'checklist', model })
  })
  router.get('/checklist', async (request, response) => {
    const sent = withLampsAtHand(request.query, await atHandIfReadable(store))
    const { check, faults, options, state } = readFirstPowerForm(sent)
    const query = firstPowerQuery(state.values)
    if (check.request === null || faults.length > 0) {
      // the form says what is missing or wrong, and keeps what was typed
      response.redirect(303, query === '' ? '/first-power' : `/first-power?${query}`)
      return
    }
    const of = prepareCase(check.request)
    const assessment = assessCase(of)
    const checklist = checklistOf(of, assessment, planFirstPower(of, assessment, options))
    const back = { href: `/first-power?${query}`, text: 'Back to the first power-up' }
    show(request, response, {
      view: 'checklist',
      model: checklistView(checklist, {
        caseName: caseName(check.request, assessment.readings),
        dataVersion: dataVersion(),
        now: now(),
        back,
        check: check.request,
      }),
    })
  })
  return router
}

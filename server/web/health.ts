import { Router } from 'express'
import { StorageFault } from '../store/errors.js'
import type { Context } from './context.js'

/** A database server that takes longer than this to answer is not there [ms]. */
const patienceMs = 2000

/** For whoever watches the process: /healthz, it runs; /readyz, it can keep records and is not about to stop. */
export function healthRoutes({ store, logger, stopping }: Context): Router {
  const router = Router()
  router.get('/healthz', (_request, response) => {
    response.json({ status: 'ok' })
  })
  router.get('/readyz', async (_request, response) => {
    response.set('Cache-Control', 'no-store')
    if (stopping?.()) {
      response.status(503).json({ status: 'stopping', message: 'Lampline is stopping: it finishes what has begun.' })
      return
    }
    let waiting: NodeJS.Timeout | undefined
    const tooLate = new Promise<'late'>((resolve) => {
      waiting = setTimeout(() => resolve('late'), patienceMs)
    })
    const message = await Promise.race([store.list('job', { limit: 1 }), tooLate])
      .then((found) => (found === 'late' ? 'The place where records are kept does not answer.' : null))
      .catch((error: unknown) => {
        if (error instanceof StorageFault) return error.message
        logger.error({ error }, 'the store cannot be read')
        return 'The place where records are kept cannot be read.'
      })
      .finally(() => clearTimeout(waiting))
    if (message === null) response.json({ status: 'ok' })
    else response.status(503).json({ status: 'no records', message })
  })
  return router
}

import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { calls } from '../../server/web/calls/index.js'
import { openApiDocument } from '../../server/web/openapi.js'
import { testApp } from './testApp.js'

interface Layer {
  route?: { path: string; methods: Record<string, boolean> }
  handle: { stack?: Layer[] }
}

/** Every route of an express router and of those mounted in it, as "post /api/check". */
const routes = (stack: Layer[]): string[] =>
  stack.flatMap(({ route, handle }) =>
    route ? Object.keys(route.methods).map((method) => `${method} ${route.path}`) : routes(handle.stack ?? []),
  )

describe('the description of the calls', () => {
  it('names every call that is mounted under /api, and no other', async () => {
    const { app } = await testApp()
    const mounted = routes((app as unknown as { router: { stack: Layer[] } }).router.stack)
    const underApi = mounted.filter((name) => name.includes(' /api/'))
    expect(underApi.length).toBeGreaterThan(30)
    const described = calls.map(({ method, path }) => `${method} ${path}`)
    expect([...new Set(described)].sort()).toEqual([...new Set(underApi)].sort())
  })

  it('is served as OpenAPI 3.1 and refers only to shapes it holds', async () => {
    const { app } = await testApp()
    const answer = await request(app).get('/api/openapi.json')
    expect(answer.status).toBe(200)
    expect(answer.body.openapi).toBe('3.1.0')
    const names = [...JSON.stringify(answer.body).matchAll(/"#\/components\/schemas\/(\w+)"/g)].map(([, name]) => name)
    expect(names.length).toBeGreaterThan(20)
    for (const name of names) expect(answer.body.components.schemas).toHaveProperty([name ?? ''])
  })

  it('tells of the header Idempotency-Key at every call that adds something, and at no other', () => {
    interface Described {
      parameters: { name: string; in: string }[]
      responses: Record<string, unknown>
    }
    const paths = openApiDocument(calls).paths as Record<string, Record<string, Described>>
    const listed = Object.entries(paths).flatMap(([path, methods]) =>
      Object.entries(methods).map(([method, call]) => ({ name: `${method} ${path}`, ...call })),
    )
    const honouring = listed.filter(({ parameters }) => parameters.some((one) => one.name === 'Idempotency-Key'))
    expect(honouring.map(({ name }) => name)).toEqual(
      listed
        .filter(({ responses, name }) => '201' in responses || name === 'post /api/shelf.csv')
        .map(({ name }) => name),
    )
    expect(honouring.length).toBeGreaterThan(5)
  })

  it('gives every operation a name of its own', () => {
    const paths = openApiDocument(calls).paths as Record<string, Record<string, { operationId: string }>>
    const ids = Object.values(paths).flatMap((methods) => Object.values(methods).map(({ operationId }) => operationId))
    expect(new Set(ids).size).toBe(ids.length)
    expect(ids.length).toBe(calls.length)
  })
})

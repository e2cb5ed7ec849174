import { z } from 'zod'
import type { Call } from './calls/call.js'
import { errorAnswer } from './schemas/answers.js'

type Schema = Record<string, unknown>

/** A zod schema as JSON Schema 2020-12, the dialect of OpenAPI 3.1; named shapes go into `components`. */
function describe(schema: z.ZodType, io: 'input' | 'output', components: Record<string, Schema>): Schema {
  const {
    $schema: _dialect,
    $defs,
    ...rest
  } = z.toJSONSchema(schema, {
    io,
    unrepresentable: 'any',
    // an answer may get further fields
    override: ({ jsonSchema }) => {
      if (io === 'output' && jsonSchema.additionalProperties === false) delete jsonSchema.additionalProperties
    },
  }) as Schema
  for (const [name, shape] of Object.entries(($defs ?? {}) as Record<string, Schema>)) components[name] = shape
  const text = JSON.stringify(rest).replaceAll('"#/$defs/', '"#/components/schemas/')
  return JSON.parse(text) as Schema
}

const parameter = (place: 'path' | 'query', name: string, description: string): Schema => ({
  name,
  in: place,
  required: place === 'path',
  description,
  schema: { type: 'string' },
})

const onceParameter: Schema = {
  name: 'Idempotency-Key',
  in: 'header',
  required: false,
  description:
    'a key made for this call, such as a UUID; the same call sent again with it adds nothing and has the same answer',
  schema: { type: 'string', pattern: '^"?[A-Za-z0-9_-]{16,64}"?$' },
}

const pathMeaning: Record<string, string> = {
  id: 'the record’s id',
  partId: 'the part’s id',
  photoId: 'the photo’s id',
  changeId: 'the change’s id',
  country: 'ISO 3166-1 alpha-2 code, in capitals or small letters',
}

const refusals: Record<string, string> = {
  '400': 'The body is not JSON.',
  '413': 'The body is too large.',
  '415': 'The body is in an encoding that is not read.',
  '422': 'Something sent cannot be used; `fields` says what, what was received and what would be accepted.',
}

/** What any call may be answered, whatever it asks. */
const everywhere: Record<string, string> = {
  '401': 'The server was started with a passphrase: send it as "Authorization: Bearer …".',
  '421': 'The server does not go by the name in the header Host; the setting ALLOWED_HOSTS adds one.',
  '429': 'Too much was asked, or a wrong passphrase sent too often; Retry-After says how many seconds to wait.',
  '500': 'A fault in the server; `id` is the name of the request in its log.',
}

/** The description of every call under /api as OpenAPI 3.1, made from the schemas that check the requests. */
export function openApiDocument(calls: readonly Call[]): Schema {
  const components: Record<string, Schema> = {}
  const errorSchema = describe(errorAnswer, 'output', components)
  const refused = (description: string): Schema => ({
    description,
    content: { 'application/json': { schema: errorSchema } },
  })
  const paths: Record<string, Record<string, Schema>> = {}
  for (const entry of calls) {
    const path = entry.path.replace(/:(\w+)/g, '{$1}')
    const inPath = [...entry.path.matchAll(/:(\w+)/g)].map(([, name = '']) => name)
    const answered: Schema = { description: 'Done.' }
    if (entry.answer === 'csv') answered.content = { 'text/csv': { schema: { type: 'string' } } }
    else if (entry.answer === 'zip') answered.content = { 'application/zip': { schema: {} } }
    else if (entry.answer !== 'nothing')
      answered.content = { 'application/json': { schema: describe(entry.answer, 'output', components) } }
    const refusedWith = entry.body || entry.file ? Object.keys(refusals) : []
    const at = paths[path] ?? {}
    paths[path] = at
    at[entry.method] = {
      tags: [entry.group],
      summary: entry.summary,
      operationId: `${entry.method}${entry.path.replace(/[^a-zA-Z]+(\w?)/g, (_whole, first: string) => first.toUpperCase())}`,
      parameters: [
        ...inPath.map((name) => parameter('path', name, pathMeaning[name] ?? name)),
        ...Object.entries(entry.query ?? {}).map(([name, meaning]) => parameter('query', name, meaning)),
        ...(entry.once ? [onceParameter] : []),
      ],
      ...(entry.body
        ? {
            requestBody: {
              required: true,
              content: { 'application/json': { schema: describe(entry.body, 'input', components) } },
            },
          }
        : {}),
      ...(entry.file ? { requestBody: { required: true, content: { [entry.file.type]: { schema: {} } } } } : {}),
      responses: {
        [entry.status ?? 200]: answered,
        ...Object.fromEntries(refusedWith.map((status) => [status, refused(refusals[status] ?? '')])),
        ...Object.fromEntries(Object.entries(everywhere).map(([status, words]) => [status, refused(words)])),
        ...(entry.method === 'get'
          ? {}
          : { '403': refused('A page of another site made a browser send this; nothing was changed.') }),
        ...(inPath.length > 0 ? { '404': refused('There is no such thing.') } : {}),
        ...(entry.method === 'put' || entry.method === 'patch'
          ? { '409': refused('The record was changed meanwhile; `current` holds it as it is now.') }
          : {}),
      },
    }
  }
  return {
    openapi: '3.1.0',
    info: {
      title: 'Lampline',
      version: '1',
      description:
        'Checks an imported supply against the local mains and a machine, and works out a first power-up. Quantities are plain numbers in SI units with the unit in the field name; what is not known is null. Nothing is ever called safe.',
      license: { name: 'MIT', identifier: 'MIT' },
    },
    tags: [...new Set(calls.map(({ group }) => group))].map((name) => ({ name })),
    paths,
    components: { schemas: components },
  }
}

import { z } from 'zod'
import { checkSchema } from '../facts/check.js'
import * as answers from './schemas/answers.js'
import * as bench from './schemas/bench.js'
import { chooseConverterSchema, leadDropSchema } from './schemas/check.js'
import { fuseMarkingRequest, fuseRequest } from './schemas/fuse.js'
import * as jobs from './schemas/jobs.js'
import { labelRequest } from './schemas/label.js'
import * as lamp from './schemas/seriesLamp.js'
import * as shelf from './schemas/shelf.js'

export interface Operation {
  method: 'get' | 'post' | 'put' | 'patch' | 'delete'
  /** as the router has it: "/api/jobs/:id" */
  path: string
  group: 'Check' | 'Mains' | 'Fuse' | 'First power' | 'Shelf' | 'Jobs' | 'Photos' | 'In and out' | 'This document'
  summary: string
  body?: z.ZodType
  /** names of optional parameters in the address, with what they mean */
  query?: Record<string, string>
  answer: z.ZodType | 'csv' | 'nothing'
  /** of an answer that succeeds; 200 unless given */
  status?: 201 | 204
  /** true: a call sent again with its Idempotency-Key adds nothing more */
  once?: true
  /** the body is a file of this type instead of a described JSON object */
  file?: 'text/csv' | 'application/json' | 'multipart/form-data'
}

const list = <Item extends z.ZodType>(name: string, item: Item) =>
  z.object({ [name]: z.array(item), total: z.number() })
const listQuery = { search: 'words to find', limit: 'how many at the most', offset: 'how many to pass over' }
const country = { country: 'where it will be used, ISO 3166-1 alpha-2' }
const apply = { apply: '1 does it; without it the answer says what would change' }
const whatChanges = z.looseObject({})

function records(
  group: 'Shelf' | 'Jobs',
  path: string,
  plural: string,
  noun: string,
  record: z.ZodType,
  create: z.ZodType,
  change: { method: 'put' | 'patch'; body: z.ZodType },
): Operation[] {
  const one = `${path}/:id`
  return [
    { method: 'get', path, group, summary: `All ${plural}`, query: listQuery, answer: list(plural, record) },
    { method: 'post', path, group, summary: `Keep a ${noun}`, body: create, answer: record, status: 201, once: true },
    { method: 'get', path: one, group, summary: `One ${noun}`, answer: record },
    { method: change.method, path: one, group, summary: `Change a ${noun}`, body: change.body, answer: record },
    {
      method: 'delete',
      path: one,
      group,
      summary: `Delete a ${noun}; can be undone for 30 days`,
      answer: 'nothing',
      status: 204,
    },
    { method: 'post', path: `${one}/restore`, group, summary: `Undo the deletion of a ${noun}`, answer: record },
  ]
}

const firstPower = (path: string, summary: string, body: z.ZodType, answer: z.ZodType): Operation => ({
  method: 'post',
  path: `/api/${path}`,
  group: 'First power',
  summary,
  body,
  answer,
})

/** Every call under /api, in the order of the documentation. A test holds this list against the routes that are mounted. */
export const operations: readonly Operation[] = [
  {
    method: 'post',
    path: '/api/label',
    group: 'Check',
    summary: 'Read the words of a rating plate',
    body: labelRequest,
    answer: answers.labelAnswer,
  },
  {
    method: 'post',
    path: '/api/check',
    group: 'Check',
    summary: 'Judge a supply, a machine and a place',
    body: checkSchema,
    answer: answers.checkAnswer,
  },
  {
    method: 'get',
    path: '/api/facts',
    group: 'Check',
    summary: 'Every fact that a check may hold',
    answer: z.array(answers.factAnswer),
  },
  {
    method: 'post',
    path: '/api/converter',
    group: 'Check',
    summary: 'Size and kind of converter a supply would need',
    body: chooseConverterSchema,
    answer: answers.converterAnswer,
  },
  {
    method: 'post',
    path: '/api/lead-drop',
    group: 'Check',
    summary: 'Voltage lost in a lead',
    body: leadDropSchema,
    answer: answers.leadDropAnswer,
  },
  {
    method: 'get',
    path: '/api/mains',
    group: 'Mains',
    summary: 'All countries',
    answer: z.array(answers.mainsCountryAnswer),
  },
  {
    method: 'get',
    path: '/api/mains/:country',
    group: 'Mains',
    summary: 'One country',
    answer: answers.mainsCountryAnswer,
  },
  {
    method: 'post',
    path: '/api/fuse',
    group: 'Fuse',
    summary: 'Review a fuse-link',
    body: fuseRequest,
    answer: answers.fuseAnswer,
  },
  {
    method: 'post',
    path: '/api/fuse/marking',
    group: 'Fuse',
    summary: 'Read a marking',
    body: fuseMarkingRequest,
    answer: answers.fuseMarkingAnswer,
  },
  firstPower(
    'series-lamp',
    'Operating point of lamps in series with a load',
    lamp.seriesLampSchema,
    answers.seriesLampAnswer,
  ),
  firstPower(
    'series-lamp/reading',
    'From the volts across the lamps to the current',
    lamp.lampReadingSchema,
    answers.lampReadingAnswer,
  ),
  firstPower(
    'series-lamp/choose',
    'Which lamps suit a load, and in which order',
    lamp.lampChoiceSchema,
    answers.lampChoiceAnswer,
  ),
  firstPower(
    'series-lamp/transient',
    'Glow and capacitor voltage after switching on',
    lamp.lampTransientSchema,
    answers.lampTransientAnswer,
  ),
  firstPower('inrush', 'Inrush of a rectifier and capacitor without a lamp', lamp.inrushSchema, answers.inrushAnswer),
  firstPower('bench-supply', 'Stages of voltage and current limit', bench.benchSupplySchema, answers.benchSupplyAnswer),
  firstPower('dummy-load', 'Resistors that load an output', bench.dummyLoadSchema, answers.dummyLoadAnswer),
  firstPower('discharge', 'Discharging a capacitor', bench.dischargeSchema, answers.dischargeAnswer),
  firstPower('reform', 'Reforming an electrolytic capacitor', bench.reformSchema, answers.reformAnswer),
  firstPower('off-load', 'Off-load voltage of an unregulated supply', bench.offLoadSchema, answers.offLoadAnswer),
  firstPower('leakage', 'Current through a capacitor to earth', bench.leakageSchema, answers.leakageAnswer),
  firstPower(
    'insulation',
    'Test readings against the limits of a scheme',
    bench.insulationSchema,
    answers.insulationAnswer,
  ),
  firstPower(
    'first-power',
    'The four stages of a first power-up, worked out from a check',
    bench.firstPowerSchema,
    answers.firstPowerAnswer,
  ),
  ...records(
    'Shelf',
    '/api/shelf/supplies',
    'supplies',
    'supply',
    answers.supplyRecordAnswer,
    shelf.shelfSupplySchema,
    {
      method: 'put',
      body: shelf.shelfSupplyPutSchema,
    },
  ),
  ...records('Shelf', '/api/shelf/devices', 'devices', 'machine', answers.deviceRecordAnswer, shelf.shelfDeviceSchema, {
    method: 'put',
    body: shelf.shelfDevicePutSchema,
  }),
  {
    method: 'get',
    path: '/api/shelf/devices/:id/matches',
    group: 'Shelf',
    summary: 'Supplies for a machine, best first',
    query: country,
    answer: answers.matchesAnswer,
  },
  {
    method: 'get',
    path: '/api/shelf/supplies/:id/matches',
    group: 'Shelf',
    summary: 'Machines for a supply, best first',
    query: country,
    answer: answers.matchesAnswer,
  },
  {
    method: 'get',
    path: '/api/shelf/devices/:id/wanted',
    group: 'Shelf',
    summary: 'What to look for when no supply suits',
    query: country,
    answer: whatChanges,
  },
  {
    method: 'get',
    path: '/api/shelf/matrix',
    group: 'Shelf',
    summary: 'Every supply against every machine, 60 of each at a time',
    query: { ...country, row: 'which 60 supplies, from 1', column: 'which 60 machines, from 1' },
    answer: answers.matrixAnswer,
  },
  ...records('Jobs', '/api/jobs', 'jobs', 'job', answers.jobAnswer, jobs.newJobSchema, {
    method: 'patch',
    body: jobs.jobPatchSchema,
  }),
  {
    method: 'post',
    path: '/api/jobs/:id/readings',
    group: 'Jobs',
    summary: 'Keep a reading, judged at once',
    body: jobs.readingSchema,
    answer: answers.readingAnswer,
    status: 201,
    once: true,
  },
  {
    method: 'post',
    path: '/api/jobs/:id/parts',
    group: 'Jobs',
    summary: 'Keep a part',
    body: jobs.partSchema,
    answer: answers.partAnswer,
    status: 201,
    once: true,
  },
  {
    method: 'delete',
    path: '/api/jobs/:id/parts/:partId',
    group: 'Jobs',
    summary: 'Take a part away that is not needed after all',
    answer: 'nothing',
    status: 204,
  },
  {
    method: 'patch',
    path: '/api/jobs/:id/parts/:partId',
    group: 'Jobs',
    summary: 'Change a part',
    body: jobs.partPatchSchema,
    answer: answers.partAnswer,
  },
  {
    method: 'post',
    path: '/api/jobs/:id/log',
    group: 'Jobs',
    summary: 'Write into the log',
    body: jobs.logSchema,
    answer: z.looseObject({ text: z.string() }),
    status: 201,
    once: true,
  },
  {
    method: 'get',
    path: '/api/jobs/:id/rejudge',
    group: 'Jobs',
    summary: 'What judging anew would change',
    answer: whatChanges,
  },
  {
    method: 'post',
    path: '/api/jobs/:id/rejudge',
    group: 'Jobs',
    summary: 'Judge anew with the data of today',
    body: jobs.rejudgeSchema,
    answer: answers.jobAnswer,
  },
  {
    method: 'get',
    path: '/api/jobs/:id/checklist',
    group: 'Jobs',
    summary: 'The bench checklist',
    answer: answers.checklistAnswer,
  },
  { method: 'get', path: '/api/jobs/:id/export', group: 'Jobs', summary: 'One job as a file', answer: whatChanges },
  ...['jobs', 'shelf/supplies', 'shelf/devices'].flatMap((of): Operation[] => [
    {
      method: 'get',
      path: `/api/${of}/:id/photos`,
      group: 'Photos',
      summary: 'The photos of a record',
      answer: z.object({ photos: z.array(answers.photoAnswer), most: z.number() }),
    },
    {
      method: 'post',
      path: `/api/${of}/:id/photos`,
      group: 'Photos',
      summary: 'Keep a photo: a file in the field “photo”, words in “caption”; what it tells of its place is taken out',
      file: 'multipart/form-data',
      answer: answers.photoAnswer,
      status: 201,
      once: true,
    },
  ]),
  {
    method: 'delete',
    path: '/api/photos/:photoId',
    group: 'Photos',
    summary: 'Delete a photo; can be undone for 30 days',
    answer: 'nothing',
    status: 204,
  },
  {
    method: 'post',
    path: '/api/photos/:photoId/restore',
    group: 'Photos',
    summary: 'Undo the deletion of a photo',
    answer: answers.photoAnswer,
  },
  { method: 'get', path: '/api/export', group: 'In and out', summary: 'Everything that is kept', answer: whatChanges },
  {
    method: 'post',
    path: '/api/import',
    group: 'In and out',
    summary: 'Bring such a file in, all or nothing',
    query: apply,
    file: 'application/json',
    answer: whatChanges,
  },
  { method: 'get', path: '/api/shelf.csv', group: 'In and out', summary: 'The shelf as CSV', answer: 'csv' },
  {
    method: 'post',
    path: '/api/shelf.csv',
    group: 'In and out',
    summary: 'Bring such a CSV in, all or nothing',
    once: true,
    query: apply,
    file: 'text/csv',
    answer: whatChanges,
  },
  {
    method: 'get',
    path: '/api/openapi.json',
    group: 'This document',
    summary: 'The description of all calls',
    answer: whatChanges,
  },
]

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
export function openApiDocument(): Schema {
  const components: Record<string, Schema> = {}
  const errorSchema = describe(answers.errorAnswer, 'output', components)
  const refused = (description: string): Schema => ({
    description,
    content: { 'application/json': { schema: errorSchema } },
  })
  const paths: Record<string, Record<string, Schema>> = {}
  for (const operation of operations) {
    const path = operation.path.replace(/:(\w+)/g, '{$1}')
    const inPath = [...operation.path.matchAll(/:(\w+)/g)].map(([, name = '']) => name)
    const answered: Schema = { description: 'Done.' }
    if (operation.answer === 'csv') answered.content = { 'text/csv': { schema: { type: 'string' } } }
    else if (operation.answer !== 'nothing')
      answered.content = { 'application/json': { schema: describe(operation.answer, 'output', components) } }
    const refusedWith = operation.body || operation.file ? Object.keys(refusals) : []
    const at = paths[path] ?? {}
    paths[path] = at
    at[operation.method] = {
      tags: [operation.group],
      summary: operation.summary,
      operationId: `${operation.method}${operation.path.replace(/[^a-zA-Z]+(\w?)/g, (_whole, first: string) => first.toUpperCase())}`,
      parameters: [
        ...inPath.map((name) => parameter('path', name, pathMeaning[name] ?? name)),
        ...Object.entries(operation.query ?? {}).map(([name, meaning]) => parameter('query', name, meaning)),
        ...(operation.once ? [onceParameter] : []),
      ],
      ...(operation.body
        ? {
            requestBody: {
              required: true,
              content: { 'application/json': { schema: describe(operation.body, 'input', components) } },
            },
          }
        : {}),
      ...(operation.file ? { requestBody: { required: true, content: { [operation.file]: { schema: {} } } } } : {}),
      responses: {
        [operation.status ?? 200]: answered,
        ...Object.fromEntries(refusedWith.map((status) => [status, refused(refusals[status] ?? '')])),
        ...Object.fromEntries(Object.entries(everywhere).map(([status, words]) => [status, refused(words)])),
        ...(operation.method === 'get'
          ? {}
          : { '403': refused('A page of another site made a browser send this; nothing was changed.') }),
        ...(inPath.length > 0 ? { '404': refused('There is no such thing.') } : {}),
        ...(operation.method === 'put' || operation.method === 'patch'
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
    tags: [...new Set(operations.map(({ group }) => group))].map((name) => ({ name })),
    paths,
    components: { schemas: components },
  }
}

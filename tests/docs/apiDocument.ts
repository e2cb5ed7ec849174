import { calls } from '../../server/web/calls/index.js'
import { openApiDocument } from '../../server/web/openapi.js'

interface Shape {
  type?: string | string[]
  properties?: Record<string, Shape>
  required?: string[]
  items?: Shape
  anyOf?: Shape[]
  oneOf?: Shape[]
  enum?: unknown[]
  const?: unknown
  minimum?: number
  maximum?: number
  exclusiveMinimum?: number
  $ref?: string
}

/** A shape in one short line: "number, 0.1 to 1000", "list of Finding", "one of ac, dc". */
function brief(shape: Shape): string {
  if (shape.$ref) return shape.$ref.split('/').pop() ?? ''
  const options = shape.anyOf ?? shape.oneOf
  if (options) {
    const texts = options.filter(({ type }) => type !== 'null').map(brief)
    return [...new Set(texts)].join(' or ') + (options.some(({ type }) => type === 'null') ? ' or null' : '')
  }
  if (shape.enum) return `one of ${shape.enum.map((value) => `\`${String(value)}\``).join(' ')}`
  if (shape.const !== undefined) return `\`${String(shape.const)}\``
  if (shape.type === 'array') return `list of ${shape.items ? brief(shape.items) : 'anything'}`
  if (shape.type === 'object' && shape.properties)
    return `{ ${Object.entries(shape.properties)
      .map(([name, inner]) => `${name}${shape.required?.includes(name) ? '' : '?'}: ${brief(inner)}`)
      .join(', ')} }`
  const low = shape.exclusiveMinimum !== undefined ? `above ${shape.exclusiveMinimum}` : shape.minimum
  const range = [low, shape.maximum === undefined ? undefined : `to ${shape.maximum}`].filter(
    (end) => end !== undefined,
  )
  const name = Array.isArray(shape.type) ? shape.type.join(' or ') : (shape.type ?? 'anything')
  return /number|integer/.test(name) && range.length > 0 ? `${name}, ${range.join(' ')}` : name
}

function fields(shape: Shape | undefined, head: string): string[] {
  if (!shape?.properties) return shape && Object.keys(shape).length > 0 ? [`${head}: ${brief(shape)}`, ''] : []
  return [
    `${head}:`,
    '',
    ...Object.entries(shape.properties).map(
      ([name, inner]) => `- \`${name}\`${shape.required?.includes(name) ? '' : ' (may be left out)'}: ${brief(inner)}`,
    ),
    '',
  ]
}

type Described = Record<
  string,
  Record<
    string,
    {
      requestBody?: { content: Record<string, { schema: Shape }> }
      responses: Record<string, { content?: Record<string, { schema: Shape }> }>
    }
  >
>

/** docs/api.md as the schemas give it now. */
export function apiDocument(): string {
  const document = openApiDocument(calls)
  const paths = document.paths as Described
  const { schemas } = document.components as { schemas: Record<string, Shape> }
  const groups = [...new Set(calls.map(({ group }) => group))]
  const call = ({ method, path, summary, query, answer, status, file, once }: (typeof calls)[number]): string[] => {
    const at = paths[path.replace(/:(\w+)/g, '{$1}')]?.[method]
    const answered = at?.responses[String(status ?? 200)]?.content?.['application/json']?.schema
    return [
      `### ${method.toUpperCase()} ${path}`,
      '',
      `${summary}.`,
      '',
      ...(query
        ? [
            `In the address: ${Object.entries(query)
              .map(([name, meaning]) => `\`${name}\` (${meaning})`)
              .join(', ')}.`,
            '',
          ]
        : []),
      ...(once ? ['Honours the header `Idempotency-Key`.', ''] : []),
      ...(file
        ? [`Takes a file: \`${file.type}\`.`, '']
        : fields(at?.requestBody?.content['application/json']?.schema, 'Takes')),
      ...(answer === 'csv'
        ? ['Answers CSV.', '']
        : answer === 'zip'
          ? ['Answers a ZIP file.', '']
          : answer === 'nothing'
            ? [`Answers ${status}.`, '']
            : fields(answered, status === 201 ? 'Answers 201 with' : 'Answers')),
    ]
  }
  return [
    '# The calls',
    '',
    'This page is written by `npm run docs` from the schemas that check the requests; a test fails when it is stale. The same is served as OpenAPI 3.1 at',
    '`/api/openapi.json`.',
    '',
    'Quantities are plain numbers in SI units with the unit in the field name. What is not known is `null` or left out, never 0. A field that is not known here is',
    'refused, not dropped. Errors: 400 (the body is not JSON), 401 (the passphrase is asked for), 404, 409 (a stale `version`; `current` holds the record as it is),',
    '413, 415, or 422 with `{"error":{"message":"…","fields":[{"path":"…","message":"…"}]}}`: what is wrong, what was received, what would be accepted. Fields may be',
    'added to an answer; none is renamed or removed. `?` marks a field that may be left out.',
    '',
    'Every answer carries the name of its request in the header `X-Request-Id`: the one that was sent in the same header where it is of 1 to 64 letters, figures,',
    '`.`, `_` and `-`, else a new one; an answer 500 or above repeats it as `id`, and the log has it beside the cause. Any call may also be answered 403 (a page of',
    'another site made a browser send it), 421 (a name that the server does not go by) or 429 (too much at once; `Retry-After` in seconds): see security.md.',
    '',
    'For whoever watches the process: `GET /healthz` answers 200 `{"status":"ok"}` as long as it runs; `GET /readyz` the same while records can be kept, else 503',
    'with `{"status":"no records","message":"…"}`, or `"stopping"` once it was told to stop. Neither asks for the passphrase.',
    '',
    'A call that adds something may carry a key of 16 to 64 letters, figures, `_` and `-` in the header `Idempotency-Key`, such as a UUID made for it. The same call',
    'sent again with the same key, as after an answer that was lost, adds nothing more and is answered with what was kept the first time, as it is now.',
    '',
    ...groups.flatMap((group) => [
      `## ${group}`,
      '',
      ...calls.filter((operation) => operation.group === group).flatMap(call),
    ]),
    '## Shapes',
    '',
    ...Object.entries(schemas).flatMap(([name, shape]) => [`### ${name}`, '', ...fields(shape, 'Holds')]),
  ]
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
}

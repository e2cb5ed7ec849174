import fc from 'fast-check'
import { strToU8, zipSync } from 'fflate'
import {
  brokenJson,
  contentTypes,
  hostilePaths,
  methods,
  oddTexts,
  oddValue,
  rawRequests,
  wellFormed,
} from './hostile.js'
import { type Fields, type Kind, kinds } from './routes.js'
import { withOneWrong } from './shapes.js'

/** One request before its ids are known: the record it is about is picked when it is sent. */
export interface Draft {
  route: string
  /** picks a record, a country or a table for each name in the path */
  picks: number[]
  query: string
  method: string
  headers: Record<string, string>
  json?: unknown
  body?: string | Buffer
  /** sent as these bytes, past any client */
  raw?: string
  /** true: the version kept now is put in, where the body has one */
  fresh: boolean
}

const routeNames = Object.keys(kinds)

const queryOf = (fields: Fields, repeat: number): string => {
  const pairs = Object.entries(fields).map(([name, value]) => {
    return `${encodeURIComponent(name)}=${encodeURIComponent(wellFormed(value))}`
  })
  const [first] = pairs
  return [...pairs, ...(first ? Array.from({ length: repeat }, () => first) : [])].join('&')
}

const headers: fc.Arbitrary<Record<string, string>> = fc.record(
  {
    'HX-Request': fc.constantFrom('true', 'true', 'false', 'x'),
    'HX-Current-URL': fc.constantFrom('http://127.0.0.1/', 'not an address'),
    'Idempotency-Key': fc.oneof(
      { weight: 4, arbitrary: fc.constantFrom('0123456789abcdef', '"fedcba9876543210"', 'aaaabbbbccccdddd-_') },
      { weight: 1, arbitrary: fc.constantFrom('short', 'with blanks in it and more', 'x'.repeat(200)) },
    ),
    'Accept-Language': fc.constantFrom('en', 'de-DE,de;q=0.9', 'ar', 'xx-invalid;q=7', '*'),
    Accept: fc.constantFrom('text/html', 'application/json', '*/*', 'image/webp', 'nonsense'),
    'Accept-Encoding': fc.constantFrom('gzip', 'br', 'identity', 'nonsense'),
    'If-None-Match': fc.constantFrom('*', '"x"', 'W/"1-2"'),
    Range: fc.constantFrom('bytes=0-10', 'bytes=-1', 'bytes=9-1', 'lines=1-2'),
  },
  { requiredKeys: [] },
)

const boundary = 'parts-of-a-form'

const part = (name: string, value: string | Buffer, file?: string): Buffer =>
  Buffer.concat([
    Buffer.from(
      `--${boundary}\r\nContent-Disposition: form-data; name="${name}"${file === undefined ? '' : `; filename="${file}"\r\nContent-Type: image/png`}\r\n\r\n`,
    ),
    Buffer.from(value),
    Buffer.from('\r\n'),
  ])

const fileNames = ['photo.png', '../../x.png', 'a\u0000b', '', 'ü.jpg', 'x'.repeat(300)]

/** Files that are sent as photos or to be brought in: whole, cut off, empty, of other kinds. */
export interface Files {
  photos: readonly Buffer[]
}

const csvs: readonly string[] = [
  'kind,name,place,plate,inlet\nsupply,Brick,box 9,"OUTPUT 12V 2A",C8\ndevice,Recorder,,DC IN 12V 1A,\n',
  'kind;name;off-load V\r\nsupply;Brick;17,5\r\n',
  '\ufeffkind\tname\nsupply\tBrick\n',
  'kind,name\nsupply,=1+1\n',
  'kind,name,id,version\nsupply,Brick,0123456789abcdefABCDEF,1\n',
  'kind,name\nsupply,"unpaired\n',
  'kind,name\nlamp,Brick\n',
  'name\nBrick\n',
  '\u0000\u0001\u0002',
  '',
  '\ud83d',
  `kind,name\nsupply,${'x'.repeat(100_001)}\n`,
  `kind,name,${'c,'.repeat(500)}\nsupply,Brick\n`,
  'kind,name,input V,rails\nsupply,Brick,"1,500","DC 12 V 1.5 A; ?"\n',
]

const record = (pick: number, name: string) => ({
  id: `brought-in-${String(pick % 40).padStart(8, '0')}`,
  version: 1 + (pick % 5),
  createdAt: 1_700_000_000_000,
  updatedAt: 1_700_000_000_000 + pick,
  name,
  place: null,
  note: null,
})

const recordFiles = fc.tuple(fc.nat(1000), fc.nat(5)).map(([pick, odd]): unknown => ({
  format: odd === 5 ? 'something else' : 'lampline records',
  formatVersion: odd === 4 ? 2 : 1,
  supplies: [{ ...record(pick, 'Brick'), supply: { label: 'OUTPUT 12V 2A' } }],
  devices: odd === 3 ? [{ ...record(pick, 'x'), device: {} }] : [],
  jobs: [],
}))

/** A record file: whole, cut off, without its records, with a photo that is none. */
function zipOf(file: unknown, odd: number): Buffer {
  const listed = [
    {
      id: 'photo-of-nothing-1',
      owner: 'brought-in-00000001',
      caption: '',
      createdAt: 1,
      file: 'photos/photo-of-nothing-1.jpg',
    },
  ]
  const zip = zipSync({
    ...(odd !== 1 && { 'records.json': strToU8(odd === 2 ? '{' : JSON.stringify(file)) }),
    ...(odd > 2 && { 'photos.json': strToU8(odd === 3 ? '[{}]' : JSON.stringify(listed)) }),
    ...(odd > 4 && { 'photos/photo-of-nothing-1.jpg': strToU8('no picture') }),
  })
  return Buffer.from(odd === 0 ? zip.subarray(0, 40) : zip)
}

/** A body for this kind of route, with its type. */
function bodyOf(kind: Kind, { photos }: Files): fc.Arbitrary<Pick<Draft, 'json' | 'body'> & { type?: string }> {
  if (kind.json) return kind.json.map((json) => ({ json, type: 'application/json' }))
  if (kind.raw === 'records') return recordFiles.map((json) => ({ json, type: 'application/json' }))
  if (kind.raw === 'zip')
    return fc.tuple(recordFiles, fc.nat(6)).map(([file, odd]) => ({ body: zipOf(file, odd), type: 'application/zip' }))
  if (kind.raw === 'csv') return fc.constantFrom(...csvs).map((body) => ({ body, type: 'text/csv' }))
  if (kind.form)
    return kind.form.map((fields) => ({ body: queryOf(fields, 0), type: 'application/x-www-form-urlencoded' }))
  if (!kind.file) return fc.constant({})
  const field = kind.file
  const contents: fc.Arbitrary<string | Buffer> =
    field === 'photo'
      ? fc.constantFrom(...photos)
      : fc.oneof(
          fc.constantFrom(...csvs),
          recordFiles.map((file) => JSON.stringify(file)),
        )
  return fc
    .record({
      content: contents,
      file: fc.oneof(
        { weight: 6, arbitrary: fc.constant('photo.png') },
        { weight: 1, arbitrary: fc.constantFrom(...fileNames) },
      ),
      field: fc.oneof(
        { weight: 9, arbitrary: fc.constant<string>(field) },
        { weight: 1, arbitrary: fc.constantFrom('other', '__proto__', '') },
      ),
      caption: fc.constantFrom('supply plate', '', ...oddTexts.slice(0, 20)),
      end: fc.oneof(
        { weight: 9, arbitrary: fc.constant(`--${boundary}--\r\n`) },
        { weight: 1, arbitrary: fc.constantFrom('', '--', 'x') },
      ),
    })
    .map(({ content, file, field: name, caption, end }) => ({
      body: Buffer.concat([part('caption', caption), part(name, content, file), Buffer.from(end)]),
      type: `multipart/form-data; boundary=${boundary}`,
    }))
}

type Twist = 'none' | 'one wrong' | 'type' | 'broken' | 'method' | 'repeat' | 'path' | 'raw' | 'site'

const twist: fc.Arbitrary<Twist> = fc.oneof(
  { weight: 52, arbitrary: fc.constant<Twist>('none') },
  { weight: 26, arbitrary: fc.constant<Twist>('one wrong') },
  { weight: 4, arbitrary: fc.constant<Twist>('type') },
  { weight: 4, arbitrary: fc.constant<Twist>('broken') },
  { weight: 4, arbitrary: fc.constant<Twist>('method') },
  { weight: 3, arbitrary: fc.constant<Twist>('repeat') },
  { weight: 4, arbitrary: fc.constant<Twist>('path') },
  { weight: 2, arbitrary: fc.constant<Twist>('raw') },
  { weight: 1, arbitrary: fc.constant<Twist>('site') },
)

/** Requests of every route, with what is wrong with them drawn anew for each. */
export function drafts(files: Files): fc.Arbitrary<Draft> {
  const ofRoute = routeNames.map((route) => {
    const kind = kinds[route] as Kind
    return fc
      .record({
        picks: fc.array(fc.nat(10_000), { minLength: 2, maxLength: 2 }),
        query: kind.query ?? fc.constant<Fields>({}),
        body: bodyOf(kind, files),
        headers,
        twist,
        pick: fc.nat(1000),
        odd: oddValue,
        how: fc.constantFrom('replace', 'replace', 'replace', 'remove', 'add'),
        method: fc.constantFrom(...methods),
        type: fc.constantFrom(...contentTypes),
        broken: fc.constantFrom(...brokenJson),
        path: fc.constantFrom(...hostilePaths),
        raw: fc.constantFrom(...rawRequests),
        site: fc.constantFrom('cross-site', 'same-origin', 'none', 'same-site', 'nonsense'),
        fresh: fc.nat(3),
      })
      .map((drawn): Draft => {
        const [method = 'get'] = route.split(' ')
        const { type, ...body } = drawn.body
        const draft: Draft = {
          route,
          picks: drawn.picks,
          query: queryOf(drawn.query, drawn.twist === 'repeat' ? 1 + (drawn.pick % 3) : 0),
          method: method.toUpperCase(),
          headers: { ...drawn.headers, ...(type === undefined ? {} : { 'Content-Type': type }) },
          fresh: drawn.fresh > 0,
          ...body,
        }
        switch (drawn.twist) {
          case 'one wrong':
            if ('json' in draft) draft.json = withOneWrong(draft.json, drawn.pick, drawn.odd, drawn.how as 'add')
            else if (typeof draft.body === 'string' && drawn.pick % 3 === 0)
              draft.body = `${draft.body}&odd=1&__proto__=x&constructor=y`
            else if (Buffer.isBuffer(draft.body))
              draft.body = draft.body.subarray(0, draft.body.length - (drawn.pick % 200))
            break
          case 'type':
            if (drawn.type === null) delete draft.headers['Content-Type']
            else draft.headers['Content-Type'] = drawn.type
            break
          case 'broken':
            delete draft.json
            draft.body = drawn.broken
            if (method === 'get') draft.method = 'POST'
            draft.headers['Content-Type'] ??= 'application/json'
            break
          case 'method':
            draft.method = drawn.method
            break
          case 'path':
            return {
              ...draft,
              route: drawn.path,
              method: 'GET',
              query: '',
              headers: drawn.headers,
              json: undefined,
              body: undefined,
            }
          case 'raw':
            return { ...draft, raw: drawn.raw }
          case 'site':
            draft.headers['Sec-Fetch-Site'] = drawn.site
            draft.headers.Origin = 'http://elsewhere.example'
            break
        }
        return draft
      })
  })
  return fc.oneof(...ofRoute)
}

/** The path of a draft, each name in it filled by the picker. */
export const pathOf = (
  { route, picks }: Draft,
  fill: (name: string, pick: number, route: string) => string,
): string => {
  const [, template] = route.split(' ')
  if (template === undefined || route.startsWith('/')) return route
  let index = 0
  return template.replace(/:(\w+)/g, (_whole, name: string) => fill(name, picks[index++ % picks.length] ?? 0, template))
}

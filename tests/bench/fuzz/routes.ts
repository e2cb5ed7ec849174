import type { Express } from 'express'
import fc from 'fast-check'
import { calls as entries } from '../../../server/web/calls/index.js'
import { checkNames } from '../../../server/web/pages/check/form.js'
import { firstPowerNames } from '../../../server/web/pages/firstPower/form.js'
import { fuseFields } from '../../../server/web/pages/fuse/form.js'
import { groups } from '../../../server/web/pages/reference/pageTables.js'
import { bodiesOf, boxes } from './shapes.js'

export type Fields = Record<string, string>

/** What can be sent to a route, apart from its ids. */
export interface Kind {
  query?: fc.Arbitrary<Fields>
  json?: fc.Arbitrary<unknown>
  form?: fc.Arbitrary<Fields>
  /** a form with a file in this field */
  file?: 'photo' | 'file'
  /** the body is a file by itself */
  raw?: 'csv' | 'records' | 'zip'
}

interface Layer {
  route?: { path: string; methods: Record<string, boolean> }
  handle: { stack?: Layer[] }
}

const routesIn = (stack: Layer[]): string[] =>
  stack.flatMap(({ route, handle }) =>
    route ? Object.keys(route.methods).map((method) => `${method} ${route.path}`) : routesIn(handle.stack ?? []),
  )

/** Every route an app has, as "post /api/check". */
export const routesOf = (app: Express): string[] => [
  ...new Set(routesIn((app as unknown as { router: { stack: Layer[] } }).router.stack)),
]

const some = (fields: Record<string, fc.Arbitrary<string>>, required: string[] = []): fc.Arbitrary<Fields> =>
  fc.record(fields, { requiredKeys: required }) as fc.Arbitrary<Fields>

/** Few of many boxes, as people fill them in. */
const few = (fields: Record<string, fc.Arbitrary<string>>, most: number): fc.Arbitrary<Fields> =>
  fc
    .subarray(Object.keys(fields), { maxLength: most })
    .chain((names) =>
      some(Object.fromEntries(names.map((name) => [name, fields[name] as fc.Arbitrary<string>])), names),
    )

const wordBoxes = ['supply', 'machine', 'plugname', 'jackname', 'fuse', 'marking', 'prescribed', 'a', 'b', 'c']
const choiceBoxes: Record<string, string[]> = {
  country: ['DE', 'Japan', 'us', 'Brazil'],
  socket: ['F', 'A', 'G'],
  type: ['switch-mode', 'transformer', 'unknown'],
  regulated: ['yes', 'no'],
  class: ['I', 'II', 'III'],
  inlet: ['C8', 'C14', 'captive'],
  plugpol: ['centre-positive', 'centre-negative'],
  jackpol: ['centre-positive', 'centre-negative'],
  measuredpol: ['centre-positive', 'centre-negative'],
  needreg: ['yes', 'no'],
  cordplug: ['CEE 7/16', 'CEE 7/7', 'BS 1363'],
  cordend: ['C7', 'C13'],
  cordearth: ['yes', 'no'],
  cordplugfitted: ['moulded', 'rewired'],
  adapter: ['earthed', 'unearthed', 'unknown'],
  converter: ['autotransformer', 'isolating', 'electronic'],
  position: ['mains', 'plug', 'low-voltage'],
  shape: ['exponential', 'half-sine', 'triangle', 'rectangle'],
  blown: ['yes'],
  scheme: ['repaired', 'en-50678', 'none'],
  takes: ['plain', 'constant-power'],
}

const box = (name: string): fc.Arbitrary<string> => {
  if (name === 'supply' || name === 'machine') return boxes.text('label')
  if (wordBoxes.includes(name)) return boxes.text('marking')
  const choices =
    choiceBoxes[name] ?? (/kind$/.test(name) ? ['dc', 'ac'] : /by$/.test(name) ? ['plate', 'measured'] : null)
  return choices ? boxes.choice(...choices) : boxes.number
}

const boxesOf = (names: readonly string[]) => Object.fromEntries(names.map((name) => [name, box(name)]))

const check = few(boxesOf(checkNames), 14)
const firstPower = few(boxesOf([...checkNames, ...firstPowerNames]), 18)
const once = fc.constantFrom('0123456789abcdef', 'fedcba9876543210-_', 'short', '')
const version = fc.constantFrom('1', '2', '3', '0', '-1', '99999999999', 'x')
const search = boxes.choice('brick', 'box 9', '12', 'ü', '%_\\')
const page = fc.constantFrom('1', '2', '0', '-1', '1e9', 'x', '99999999999999999999')
const someId = fc.constantFrom('0123456789abcdefABCDEF', 'x', '__proto__')
const state = boxes.choice('wanted', 'ordered', 'arrived', 'fitted')
const listed = some({ search, limit: page, offset: page, state: boxes.choice('ready', 'finished'), version })
const deletable: Kind = { form: some({ once }) }
const shelfRow = (own: string[]): fc.Arbitrary<Fields> =>
  fc
    .tuple(
      few(boxesOf(checkNames.filter((name) => own.some((start) => name.startsWith(start)))), 12),
      some({ place: boxes.text('place'), rownote: boxes.text('note'), once }),
      boxes.text('name'),
    )
    .map(([row, rest, name]) => ({ ...row, ...rest, name }))
const supplyRow = shelfRow(['supply', 'in', 'out', 'plug', 'lead', 'type', 'regulated', 'class', 'fuse', 'offload'])
const deviceRow = shelfRow(['machine', 'need', 'jack'])
const withVersion = (row: fc.Arbitrary<Fields>): fc.Arbitrary<Fields> =>
  fc.tuple(row, version).map(([fields, at]) => ({ ...fields, version: at }))

const shelf = (row: fc.Arbitrary<Fields>, path: string): Record<string, Kind> => ({
  [`get ${path}/new`]: {},
  [`post ${path}`]: { form: row },
  [`get ${path}/:id`]: { query: some({ country: boxes.choice('DE', 'us'), photo: someId }) },
  [`get ${path}/:id/edit`]: {},
  [`post ${path}/:id`]: { form: withVersion(row) },
  [`post ${path}/:id/delete`]: deletable,
  [`post ${path}/:id/restore`]: deletable,
  [`post ${path}/:id/photos`]: { file: 'photo' },
  [`post ${path}/:id/photos/:photoId/delete`]: deletable,
  [`post ${path}/:id/photos/:photoId/restore`]: deletable,
})

const observed = some({
  name: boxes.text('name'),
  lamps: boxes.text('note'),
  display: boxes.text('note'),
  sounds: boxes.text('note'),
  smells: boxes.text('note'),
  moved: boxes.text('note'),
  drawn: boxes.number,
  works: boxes.choice('yes', 'partly', 'no'),
  note: boxes.text('note'),
  seen: boxes.text('place'),
})

const examined = {
  seen: boxes.choice('lamp-bright', 'bang-smoke,tingle', 'nothing-known', ','),
  yes: boxes.choice('bridge-shorted', 'x-cracked', '__proto__'),
  no: boxes.choice('chopper-shorted,bridge-shorted', 'x'),
  done: boxes.choice('bridge-shorted', 'constructor'),
  read: boxes.choice('lamp:210:V', 'output-1:8.5:V:loaded', 'ripple-1:1e999:V', '::::'),
  what: boxes.choice('lamp:V', 'output-1:V:warm', 'nothing'),
  value: boxes.number,
}

const tables = groups.flatMap(({ tables: of }) => of.map(({ name }) => name))

/** What each page can be sent; a test holds this list against the routes of the app. */
const pages: Record<string, Kind> = {
  'get /healthz': {},
  'get /readyz': {},
  'get /enter': { query: some({ to: boxes.text('place') }) },
  'post /enter': { form: some({ passphrase: boxes.text('name'), to: boxes.text('place') }) },
  'post /leave': { form: some({ once }) },
  'get /': { query: check },
  'get /drawings/:name': {},
  'get /at-hand': {},
  'post /at-hand': {
    form: some({
      country: boxes.choice('DE', 'us', 'zz'),
      socket: boxes.choice('F', 'Q'),
      lamp1v: boxes.number,
      lamp1w: boxes.number,
      lamp2n: boxes.number,
      load1ohm: boxes.number,
      load1w: boxes.number,
      transformer1kind: boxes.choice('isolating', 'other'),
      transformer1va: boxes.number,
      meter1cat: boxes.choice('CAT II', 'CAT IX'),
      meter1v: boxes.number,
      benchv: boxes.number,
      bencha: boxes.number,
      tester: boxes.number,
      residual: boxes.number,
    }),
  },
  'get /plug-sizes': { query: few(boxesOf(fuseFields), 10) },
  'get /fuse': { query: few(boxesOf(fuseFields), 10) },
  'get /first-power': { query: firstPower },
  'get /checklist': { query: firstPower },
  'get /examine': { query: few({ ...boxesOf(checkNames), ...examined }, 12) },
  'get /jobs/:id/examine': {},
  'post /jobs/:id/examine': { form: some({ ...examined, back: boxes.choice('bridge-shorted', 'x'), once }) },
  'get /reference': { query: some({ q: search }) },
  'get /reference/:name': { query: some({ q: search }) },
  'get /reference/:name.csv': {},
  'get /photos/:photoId': {},
  'get /photos/:photoId/small': {},
  'get /jobs': { query: some({ search, state: boxes.choice('ready', 'finished'), page, deleted: someId }) },
  'post /jobs': {
    form: fc.oneof(
      check,
      firstPower.map((fields) => ({ plan: new URLSearchParams(fields).toString() })),
    ),
  },
  'get /jobs/:id': { query: some({ photo: someId }) },
  'post /jobs/:id': { form: observed },
  'post /jobs/:id/readings': {
    form: some({
      value: boxes.number,
      what: boxes.text('key'),
      unit: boxes.text('unit'),
      once,
    }),
  },
  'post /jobs/:id/parts': { form: some({ part: boxes.text('name'), state, partnote: boxes.text('note'), once }) },
  'post /jobs/:id/parts/:partId': { form: some({ state, note: boxes.text('note'), version }) },
  'post /jobs/:id/parts/:partId/delete': deletable,
  'get /jobs/:id/bench': { query: some({ step: boxes.text('key') }) },
  'post /jobs/:id/bench': {
    query: some({ step: boxes.choice('look.discharge', 'look.case', 'none') }),
    form: some({
      value: boxes.number,
      unit: boxes.choice('V', 'mA'),
      as: boxes.choice('wrong', 'as-expected'),
      words: boxes.text('note'),
      age: boxes.number,
      once,
    }),
  },
  'get /static/judge.js': {},
  'post /jobs/:id/causes': { form: some({ of: someId, text: boxes.text('note'), once }) },
  'post /jobs/:id/entries/:entryId/withdraw': {
    form: some({ why: boxes.text('note'), value: boxes.number, once }),
  },
  'post /jobs/:id/log': { form: some({ text: boxes.text('note'), once }) },
  'post /jobs/:id/photos': { file: 'photo' },
  'post /jobs/:id/photos/:photoId/delete': deletable,
  'post /jobs/:id/photos/:photoId/restore': deletable,
  'get /jobs/:id/facts': { query: some({ at: boxes.choice('supply', 'site', 'plan', 'nothing') }) },
  'post /jobs/:id/facts': {
    form: fc
      .tuple(check, some({ at: boxes.choice('supply', 'device'), seen: boxes.text('place'), once }))
      .map(([facts, rest]) => ({ ...facts, ...rest })),
  },
  'post /jobs/:id/changes/:changeId/undo': deletable,
  'get /jobs/:id/rejudge': {},
  'post /jobs/:id/rejudge': { form: some({ version }) },
  'post /jobs/:id/delete': deletable,
  'post /jobs/:id/restore': deletable,
  'get /jobs/:id/checklist': {},
  'get /records': {},
  'post /records': { file: 'file' },
  'post /records/apply': { form: some({ token: someId }) },
  'get /shelf': {
    query: some({ search, country: boxes.choice('DE', 'us'), supplies: page, devices: page, undo: someId }),
  },
  'get /tags': { query: some({ sheet: boxes.choice('a4', 'letter', 'x'), first: boxes.number, id: someId }) },
  'get /shelf/matrix': { query: some({ country: boxes.choice('DE', 'us'), row: page, column: page }) },
  ...shelf(supplyRow, '/shelf/supplies'),
  ...shelf(deviceRow, '/shelf/devices'),
}

const calls: Record<string, Kind> = Object.fromEntries(
  entries.map((operation): [string, Kind] => {
    const kind: Kind = {}
    if (operation.body) kind.json = bodiesOf(operation.body)
    if (operation.file?.type === 'multipart/form-data') kind.file = 'photo'
    if (operation.file?.type === 'text/csv') kind.raw = 'csv'
    if (operation.file?.type === 'application/zip') kind.raw = 'zip'
    if (operation.file?.type === 'application/json') kind.raw = 'records'
    if (operation.query) {
      const fields: Record<string, fc.Arbitrary<string>> = {
        search,
        limit: page,
        offset: page,
        country: boxes.choice('DE', 'us', 'zz'),
        apply: boxes.choice('1', '0', '2'),
      }
      kind.query = some(Object.fromEntries(Object.keys(operation.query).map((name) => [name, fields[name] ?? search])))
    } else if (operation.method === 'get') kind.query = listed
    else if (operation.method === 'delete') kind.query = some({ version })
    return [`${operation.method} ${operation.path}`, kind]
  }),
)

/** What can be sent to each route, by its name. */
export const kinds: Readonly<Record<string, Kind>> = { ...calls, ...pages }

export { tables as tableNames }

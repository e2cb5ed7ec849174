import type { Page } from 'playwright-core'
import sharp from 'sharp'
import { StorageFault } from '../../server/store/errors.js'
import type { Store } from '../../server/store/store.js'
import { mostTries } from '../../server/web/guards/access.js'
import { exampleRows, examples } from '../../server/web/parts/examples.js'

/** What a form sends: a text for each field, or a file. */
type Sent = Record<string, string | { file: string; text: string }>

/**
 * One state of a page: its name, the status it is answered with, its address (`{full}` stands for the id of what was kept
 * under that name), and what is sent to it.
 */
export type State = [name: string, status: number, address: string, sent?: Sent]

const query = (index: number): string => (examples[index]?.address ?? '').replace(/^\/\?/, '')

const plan = `${query(0)}&lamp1v=230&lamp1w=60&lamp1n=2&years=20&bulk=68&bulkv=400`

const fuse =
  'marking=T2AL250V&prescribed=F1.6AL250V&position=mains&volts=230&watts=60&peak=20&pulse=1+ms&shape=exponential&fault=1500&lamp=0.43&a=T1.6AH250V&b=3%2F8A+T-D+250V&c=F2AH250V'

/** One state of each page, the fullest: the short run looks at these, the long one at all. */
export const walked: ReadonlySet<string> = new Set([
  'Check with a stop',
  'Check with the facts of the supply',
  'First power-up with lamps',
  'Fuse with a result',
  'Checklist of a clean match',
  'What to examine',
  'Add a supply, with faults',
  'A reference table',
  'A job with readings, parts, notes and photos',
  'Jobs',
  'Every supply for every machine',
  'Passphrase, none given',
])

/** States of a server on which nothing is kept. */
export const emptyStates: State[] = [
  ['Check, empty', 200, '/'],
  ['Check of a clean match', 200, `/?${query(0)}`],
  ['Check with a stop', 200, `/?${query(1)}`],
  ['Check with a caution', 200, `/?${query(2)}`],
  ['Check behind a converter', 200, `/?${query(3)}`],
  ['Check with faults', 422, '/?mains=1%2C500&supply=12V'],
  ['Check with the facts of the supply', 200, `/?${query(0)}&at=supply`],
  ['Check with words not read and in doubt', 200, '/?country=DE&supply=INPUT+l00-240V+50Hz+NICHT+MIT+FREMDEN+GERATEN'],
  ['First power-up, empty', 200, '/first-power'],
  ['First power-up of a clean match', 200, `/first-power?${query(0)}`],
  ['First power-up with lamps', 200, `/first-power?${plan}`],
  ['First power-up behind a converter', 200, `/first-power?${query(3)}`],
  ['First power-up with a faulty lamp', 422, `/first-power?${query(0)}&lamp1v=1%2C500&lamp1w=x`],
  ['At hand, empty', 200, '/at-hand'],
  [
    'At hand, with faults',
    422,
    '/at-hand',
    { country: 'Nowhere', lamp1v: 'abc', lamp1w: '60', bencha: '2', meter1v: '1000' },
  ],
  ['Plug sizes', 200, '/plug-sizes?country=DE'],
  ['Plug sizes, a ruler that cannot be', 422, '/plug-sizes?ruler=2000'],
  ['Fuse, empty', 200, '/fuse'],
  ['Fuse with a result', 200, '/fuse?marking=T2AL250V&prescribed=F1.6AL250V&position=mains&volts=230&watts=60'],
  ['Fuse, everything entered', 200, `/fuse?${fuse}`],
  ['Fuse with faults', 422, '/fuse?marking=T2A&volts=abc&amps=0'],
  ['Checklist of a clean match', 200, `/checklist?${query(0)}`],
  ['What was seen', 200, '/examine'],
  [
    'What to examine',
    200,
    `/examine?${query(0)}&seen=lamp-bright,output-low&no=bridge-shorted&read=output-1:9:V:loaded`,
  ],
  ['What to examine, a cause confirmed', 200, `/examine?${query(0)}&seen=bang-smoke&yes=x-cracked`],
  ['What to examine, with faults', 422, '/examine?seen=nothing-known&what=lamp:V&value=x'],
  ['Jobs, empty', 200, '/jobs'],
  ['A check that cannot be kept as a job', 422, '/jobs', { check: 'mains=1%2C500' }],
  ['Shelf, empty', 200, '/shelf'],
  ['Every supply for every machine, empty', 200, '/shelf/matrix'],
  ['Add a supply', 200, '/shelf/supplies/new'],
  ['Add a supply, with faults', 422, '/shelf/supplies', { plugouter: '5,500', in: 'x' }],
  ['Add a machine', 200, '/shelf/devices/new'],
  ['Add a machine, with faults', 422, '/shelf/devices', { jackinner: '-1' }],
  ['Bring in or take out', 200, '/records'],
  ['Bring in, with nothing chosen', 422, '/records', {}],
  [
    'Bring in a file with faults',
    422,
    '/records',
    { file: { file: 'shelf.csv', text: 'kind,name\nlamp,\nsupply,\n' } },
  ],
  ['Bring in, looked at', 200, '/records', { file: { file: 'shelf.csv', text: 'kind,name\nsupply,Grey brick\n' } }],
  ['Reference', 200, '/reference'],
  ['Reference, something found', 200, '/reference?q=polarity'],
  ['Reference, nothing found', 200, '/reference?q=zzz'],
  ['A reference table', 200, '/reference/fuse-gates'],
  ['Reference, countries', 200, '/reference/countries?q=an'],
  ['Reference, sockets', 200, '/reference/sockets'],
  ['Reference, plugs of direct current', 200, '/reference/dc-plugs'],
  ['Reference, which plug fits', 200, '/reference/plug-fits?q=16'],
  ['Reference, findings', 200, '/reference/findings'],
  ['Reference, words', 200, '/reference/words'],
  ['Reference, colours of conductors', 200, '/reference/conductor-colours'],
  ['Passphrase', 200, '/enter'],
  ['An address that does not exist', 404, '/nowhere'],
]

/** States of a server on which `keep` kept its records. */
export const keptStates: State[] = [
  ['A job that can begin', 200, '/jobs/{match}'],
  ['A job with a stop', 200, '/jobs/{stop}'],
  ['A job with readings, parts, notes and photos', 200, '/jobs/{full}'],
  ['A job judged again', 200, '/jobs/{stop}/rejudge'],
  ['The facts of a job’s supply', 200, '/jobs/{full}/facts?at=supply'],
  ['The facts of a job’s machine', 200, '/jobs/{match}/facts?at=device'],
  ['What the first power-up of a job is planned with', 200, '/jobs/{full}/facts?at=plan'],
  ['The facts of a job, one that cannot be used', 422, '/jobs/{full}/facts', { seen: 'x', at: 'cord', cordv: '1,500' }],
  ['The facts of a job, changed meanwhile', 409, '/jobs/{full}/facts', { seen: 'x', at: 'cord', cordv: '125' }],
  ['The checklist of a job', 200, '/jobs/{full}/checklist'],
  ['A job, what to examine', 200, '/jobs/{full}/examine'],
  ['A stopped job at the machine', 200, '/jobs/{full}/bench'],
  ['A job at the machine', 200, '/jobs/{match}/bench'],
  ['A reading at the machine', 200, '/jobs/{match}/bench?step=look.discharge'],
  ['A step that waits for its gates', 200, '/jobs/{match}/bench?step=supply-alone.lamp-volts'],
  ['A job, its name emptied', 422, '/jobs/{full}', { drawn: 'x' }],
  ['A job, a reading that cannot be read', 422, '/jobs/{full}/readings', { value: '1,500' }],
  ['A job, a part without a name', 422, '/jobs/{full}/parts', {}],
  ['A job, an empty note', 422, '/jobs/{full}/log', {}],
  ['A job, no photo chosen', 422, '/jobs/{full}/photos', { photo: { file: '', text: '' } }],
  ['A job changed meanwhile', 409, '/jobs/{full}', { seen: 'earlier', name: 'Another name', lamps: 'Amber lit' }],
  ['A part changed meanwhile', 409, '/jobs/{full}/parts/{part}', { version: '1', state: 'arrived', note: 'Too long' }],
  ['Jobs', 200, '/jobs'],
  ['Jobs, nothing found', 200, '/jobs?search=nothing+at+all'],
  ['Jobs, one deleted', 200, '/jobs?deleted={match}'],
  ['A supply', 200, '/shelf/supplies/{supply}'],
  ['A supply being changed', 200, '/shelf/supplies/{supply}/edit'],
  [
    'A supply changed meanwhile',
    409,
    '/shelf/supplies/{supply}',
    { version: '1', name: 'Black brick', plugouter: '5.5' },
  ],
  ['A machine with 500 supplies and what to look for', 200, '/shelf/devices/{device}?country=DE'],
  [
    'A check of a machine that has no supply, with 500 on the shelf',
    200,
    '/?have=machine-only&country=DE&machine=DC+12V+1A&jackpol=centre-positive',
  ],
  ['Shelf', 200, '/shelf?country=DE'],
  ['Shelf, nothing found', 200, '/shelf?search=nothing+at+all'],
  ['Every supply for every machine', 200, '/shelf/matrix?country=DE'],
  ['Tags', 200, '/tags?id={supply}&id={device}'],
  ['Tags, a label that the sheet has not', 422, '/tags?id={supply}&first=15'],
]

const wrong = { passphrase: 'not it' }

/** Tries wrong passphrases until the next but one is one too many. */
export async function tryWrongPassphrases(origin: string): Promise<void> {
  for (let tries = 2; tries <= mostTries; tries += 1)
    await fetch(`${origin}/enter`, { method: 'POST', body: new URLSearchParams(wrong) })
}

/** States of a server reached over a network, in this order after `tryWrongPassphrases`: the last one is one too many. */
export const sharedStates: State[] = [
  ['Passphrase, asked for', 200, '/jobs'],
  ['Passphrase, none given', 422, '/enter', {}],
  ['Passphrase, a wrong one', 422, '/enter', wrong],
  ['Passphrase, wrong too often', 429, '/enter', wrong],
]

/** States of a server whose records are `outOfOrder`. */
export const brokenStates: State[] = [
  ['Records that cannot be reached', 503, '/jobs'],
  ['A shelf that takes nothing', 503, '/shelf/supplies', exampleRows.supply],
  ['A fault of the program', 500, '/jobs/something-0123456789'],
]

/** A store that can neither be read nor written to, one of its calls by a fault of the program. */
export function outOfOrder(store: Store): Store {
  const failing = async (): Promise<never> => {
    throw new StorageFault(503, 'The place where records are kept cannot be written to.', null)
  }
  const faulty = async (): Promise<never> => {
    throw new Error('made for the test')
  }
  return { ...store, add: failing, list: failing, countStates: failing, get: faulty }
}

/** Keeps jobs, a supply, a machine and 500 further supplies; answers with the ids that stand in the addresses above. */
export async function keep(origin: string): Promise<Map<string, string>> {
  const kept = new Map<string, string>()
  const send = async (address: string, body: URLSearchParams | FormData): Promise<string> => {
    const answer = await fetch(origin + address, { method: 'POST', redirect: 'manual', body })
    if (answer.status !== 303) throw new Error(`${address} was answered ${answer.status}`)
    return answer.headers.get('location') ?? ''
  }
  const fields = (values: Record<string, string>) => new URLSearchParams(values)
  const add = async (name: string, address: string, values: Record<string, string>): Promise<void> => {
    kept.set(name, /[^/#?]+$/.exec(await send(address, fields(values)))?.[0] ?? '')
  }
  const csv = [
    'kind,name,plate',
    ...Array.from({ length: 500 }, (_, at) => `supply,Brick ${at},OUTPUT 12V DC ${1000 + at}mA`),
  ]
  const answer = await fetch(`${origin}/api/shelf.csv?apply=1`, { method: 'POST', body: csv.join('\n') })
  if (!answer.ok) throw new Error(`500 supplies were answered ${answer.status}`)
  await add('match', '/jobs', { check: query(0) })
  await add('stop', '/jobs', { check: query(1) })
  await add('full', '/jobs', { plan })
  await add('supply', '/shelf/supplies', exampleRows.supply)
  await add('device', '/shelf/devices', exampleRows.device)
  await send(`/shelf/supplies/${kept.get('supply')}`, fields({ ...exampleRows.supply, version: '1', place: 'Rack B' }))

  const job = `/jobs/${kept.get('full')}`
  await send(`${job}/bench?step=supply-alone.off-load-1`, fields({ value: '12.1', unit: 'V', despite: 'yes' }))
  await send(`${job}/bench?step=supply-alone.off-load-1`, fields({ value: '14.9', unit: 'V', despite: 'yes' }))
  await send(`${job}/readings`, fields({ what: 'Ripple at full load', value: '35', unit: 'mV' }))
  await send(`${job}/parts`, fields({ part: 'Capacitor 68 µF 400 V', state: 'ordered', partnote: 'Radial, 105 °C' }))
  await send(`${job}/parts`, fields({ part: 'Drive belt', state: 'arrived' }))
  await send(`${job}/log`, fields({ text: 'Opened, dusted, capacitor bulging.\nBelt turned to tar.' }))
  const picture = await sharp({ create: { width: 900, height: 600, channels: 3, background: '#7a6a58' } })
    .jpeg()
    .toBuffer()
  const photo = new FormData()
  photo.set('photo', new Blob([new Uint8Array(picture)], { type: 'image/jpeg' }), 'inside.jpg')
  await send(`${job}/photos`, photo)
  const { parts } = (await (await fetch(`${origin}/api${job}`)).json()) as { parts: { id: string; version: number }[] }
  const part = parts[0]?.id ?? ''
  kept.set('part', part)
  await send(`${job}/parts/${part}`, fields({ version: String(parts[0]?.version), state: 'wanted', note: 'Axial' }))
  return kept
}

/** In the browser: a form made of what is sent, and sent. */
const sendForm = `(action, fields) => {
  const form = Object.assign(document.createElement('form'), { method: 'post', action })
  for (const [name, value] of Object.entries(fields)) {
    const input = Object.assign(document.createElement('input'), { name })
    if (typeof value === 'string') input.value = value
    else {
      form.enctype = 'multipart/form-data'
      input.type = 'file'
      const files = new DataTransfer()
      if (value.file) files.items.add(new File([value.text], value.file))
      input.files = files.files
    }
    form.append(input)
  }
  document.body.append(form)
  form.submit()
}`

/** Brings a page to a state, as a reader without script would; answers with the status. */
export async function enter(
  page: Page,
  origin: string,
  state: State,
  kept = new Map<string, string>(),
): Promise<number> {
  const [, , address, sent] = state
  const target = origin + address.replace(/\{(\w+)\}/g, (_, name) => kept.get(name) ?? name)
  if (!sent) return (await page.goto(target))?.status() ?? 0
  // any page of ours will do to send from
  await page.goto(`${origin}/enter`)
  const answer = page.waitForResponse((one) => one.request().method() === 'POST')
  const loaded = page.waitForEvent('load')
  await page.evaluate(`(${sendForm})(...${JSON.stringify([target, sent])})`)
  await loaded
  return (await answer).status()
}

import type { Ask, LoadKind } from './load.js'

const plate = 'SWITCHING POWER SUPPLY\nINPUT: 100-240V~ 50/60Hz 0.8A\nOUTPUT: 12V ⎓ 2.0A 24W\nclass II'
const check = {
  site: { country: 'DE', socket: 'F' },
  supply: { label: plate, technology: 'switch-mode', inlet: 'C8' },
  device: { inputs: [{ kind: 'dc', voltageV: 12, currentA: 1.2 }] },
}

const page = new URLSearchParams({ country: 'DE', supply: plate, machine: 'DC IN 12V 1.2A' })

interface Acknowledged {
  path: string
  /** what was acknowledged last, without what the server works out anew */
  name: string
  version: number
}

/** What the server acknowledged, to be held against what it keeps at the end. */
export class Ledger {
  readonly records = new Map<string, Acknowledged>()
  /** texts of log entries acknowledged, by job */
  readonly entries = new Map<string, string[]>()
  /** names and texts sent whose answer did not come: they may be there or not */
  readonly unanswered = new Set<string>()
  private count = 0

  next(): number {
    this.count += 1
    return this.count
  }

  /** What is written under a name or text stays unanswered until an answer is there. */
  async answered<Answer>(text: string, answer: Promise<Answer>): Promise<Answer> {
    this.unanswered.add(text)
    const got = await answer
    this.unanswered.delete(text)
    return got
  }
}

const json = async (
  ask: Ask,
  method: string,
  path: string,
  status: number,
  body?: unknown,
  once?: string,
): Promise<Record<string, unknown>> => {
  const text = body === undefined ? undefined : JSON.stringify(body)
  const answer = await ask({
    method,
    path,
    headers: {
      ...(text === undefined
        ? {}
        : { 'Content-Type': 'application/json', 'Content-Length': String(Buffer.byteLength(text)) }),
      ...(once === undefined ? {} : { 'Idempotency-Key': once }),
    },
    ...(text === undefined ? {} : { body: text }),
  })
  if (answer.status !== status) throw new Error(`${method} ${path}: ${answer.status} ${answer.text.slice(0, 200)}`)
  return answer.text === '' ? {} : (JSON.parse(answer.text) as Record<string, unknown>)
}

const shows = async (ask: Ask, path: string): Promise<void> => {
  const { status, text } = await ask({ method: 'GET', path, headers: { 'Accept-Encoding': 'gzip' } })
  if (status !== 200 || !text.includes('</html>')) throw new Error(`GET ${path}: ${status}`)
}

/** The mix of a workshop: mostly checks and pages, some plans, a write in every fifth request. */
export function workshop(ledger: Ledger): LoadKind[] {
  const some = (prefix: string): [string, Acknowledged] | undefined => {
    const known = [...ledger.records].filter(([, { path }]) => path.startsWith(prefix)).slice(-50)
    return known[ledger.next() % Math.max(1, known.length)]
  }
  const adds =
    (path: string, body: (name: string) => unknown) =>
    async (ask: Ask): Promise<void> => {
      const name = `${path} ${ledger.next()}`
      const once = `soak-${String(ledger.next()).padStart(16, '0')}`
      const kept = await ledger.answered(name, json(ask, 'POST', path, 201, body(name), once))
      ledger.records.set(String(kept.id), { path, name, version: Number(kept.version) })
      // a client that lost the answer sends it again: nothing may be there twice
      if (ledger.next() % 5 === 0) {
        const again = await json(ask, 'POST', path, 201, body(name), once)
        if (again.id !== kept.id) throw new Error(`${path}: sent again it was kept twice`)
      }
    }
  return [
    { name: 'check, JSON', weight: 25, once: async (ask) => void (await json(ask, 'POST', '/api/check', 200, check)) },
    { name: 'check, page', weight: 20, once: (ask) => shows(ask, `/?${page}`) },
    { name: 'plan, page', weight: 5, once: (ask) => shows(ask, `/first-power?${page}&lamp1v=230&lamp1w=60`) },
    {
      name: 'plan, JSON',
      weight: 3,
      once: async (ask) => void (await json(ask, 'POST', '/api/first-power', 200, { check })),
    },
    { name: 'lists', weight: 12, once: (ask) => shows(ask, ledger.next() % 2 ? '/jobs' : '/shelf') },
    {
      name: 'one record, page',
      weight: 10,
      once: async (ask) => {
        const known = some('/api/')
        if (known) await shows(ask, `${known[1].path.replace('/api', '')}/${known[0]}`)
      },
    },
    { name: 'tables', weight: 5, once: (ask) => shows(ask, '/reference') },
    {
      name: 'add a supply or machine',
      weight: 6,
      once: (ask) =>
        ledger.next() % 2
          ? adds('/api/shelf/supplies', (name) => ({ name, supply: check.supply }))(ask)
          : adds('/api/shelf/devices', (name) => ({ name, device: check.device }))(ask),
    },
    { name: 'add a job', weight: 4, once: adds('/api/jobs', (name) => ({ name, check })) },
    {
      name: 'change a record',
      weight: 5,
      once: async (ask) => {
        const known = some('/api/shelf/supplies')
        if (!known) return
        const [id, { path, version }] = known
        const name = `${path} changed ${ledger.next()}`
        const text = JSON.stringify({ name, supply: check.supply, version })
        const headers = { 'Content-Type': 'application/json', 'Content-Length': String(Buffer.byteLength(text)) }
        const answer = await ledger.answered(name, ask({ method: 'PUT', path: `${path}/${id}`, headers, body: text }))
        // another change of the same record was acknowledged meanwhile: this one must be refused
        if (answer.status === 409) return
        if (answer.status !== 200) throw new Error(`PUT ${path}: ${answer.status}`)
        const kept = JSON.parse(answer.text) as { version: number }
        const before = ledger.records.get(id)
        if (!before || before.version < kept.version) ledger.records.set(id, { path, name, version: kept.version })
      },
    },
    {
      name: 'write into a log',
      weight: 5,
      once: async (ask) => {
        const known = some('/api/jobs')
        if (!known) return
        const text = `entry ${ledger.next()}`
        const once = `soak-${String(ledger.next()).padStart(16, '0')}`
        await ledger.answered(text, json(ask, 'POST', `/api/jobs/${known[0]}/log`, 201, { text }, once))
        ledger.entries.set(known[0], [...(ledger.entries.get(known[0]) ?? []), text])
      },
    },
  ]
}

/** What of the acknowledged writes is not as it was acknowledged; empty where nothing was lost, changed or doubled. */
export async function lostOf(ledger: Ledger, ask: Ask): Promise<string[]> {
  const lost: string[] = []
  const names = new Map<string, number>()
  for (const [path, list] of [
    ['/api/shelf/supplies', 'supplies'],
    ['/api/shelf/devices', 'devices'],
    ['/api/jobs', 'jobs'],
  ] as const) {
    const answer = await json(ask, 'GET', path, 200)
    for (const { id, name, version } of answer[list] as { id: string; name: string; version: number }[]) {
      names.set(name, (names.get(name) ?? 0) + 1)
      if (ledger.unanswered.has(name)) continue
      const known = ledger.records.get(id)
      if (!known) lost.push(`${path}/${id} is there and was never acknowledged`)
      else if (known.name !== name || (path !== '/api/jobs' && known.version !== version))
        lost.push(
          `${path}/${id} is "${name}" at version ${version}, acknowledged was "${known.name}" at ${known.version}`,
        )
    }
    const kept = new Set((answer[list] as { id: string }[]).map(({ id }) => id))
    for (const [id, known] of ledger.records)
      if (known.path === path && !kept.has(id)) lost.push(`${path}/${id} is gone`)
  }
  for (const [name, times] of names) if (times > 1) lost.push(`"${name}" is there ${times} times`)
  for (const [id, texts] of ledger.entries) {
    const { log } = (await json(ask, 'GET', `/api/jobs/${id}`, 200)) as { log: { text: string }[] }
    const kept = log.flatMap(({ text }) => (ledger.unanswered.has(text) ? [] : [text])).sort()
    if (kept.join('\n') !== texts.toSorted().join('\n'))
      lost.push(`the log of ${id} has ${kept.length} entries, acknowledged were ${texts.length}`)
  }
  return lost
}

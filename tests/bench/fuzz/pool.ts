import { hostilePaths, oddTexts, wellFormed } from './hostile.js'
import { tableNames } from './routes.js'

type RecordKind = 'jobs' | 'supplies' | 'devices'

const countries = ['DE', 'jp', 'US', 'ZZ', 'gb']
const most = 120

interface Known {
  id: string
  version: number
  parts: string[]
}

/** What the server was seen to keep, so that later requests are about records there are; a bounded number of them. */
export class Pool {
  readonly kept: Record<RecordKind, Known[]> = { jobs: [], supplies: [], devices: [] }
  readonly photos: string[] = []
  readonly tokens: string[] = []
  /** ids of records beyond the bound, to be deleted */
  readonly surplus: { kind: RecordKind; id: string }[] = []

  private kindOf = (path: string): RecordKind =>
    path.includes('supplies') ? 'supplies' : path.includes('devices') ? 'devices' : 'jobs'

  /** Something for a name in a path: mostly a record there is, now and then one there is not or no id at all. */
  fill(name: string, pick: number, path: string): string {
    if (pick % 11 === 0)
      return encodeURIComponent(wellFormed(oddTexts[pick % oddTexts.length] ?? 'x').slice(0, 300)) || 'x'
    if (pick % 13 === 0) return 'AAAAAAAAAAAAAAAAAAAAAA'
    if (pick % 97 === 0) return hostilePaths[pick % hostilePaths.length]?.split('/').pop() || 'x'
    if (name === 'country') return countries[pick % countries.length] ?? 'DE'
    if (name === 'name') return tableNames[pick % tableNames.length] ?? 'x'
    if (name === 'photoId') return this.photos[pick % this.photos.length] ?? 'none'
    const records = this.kept[this.kindOf(path)]
    const record = records[pick % records.length]
    if (name === 'partId') {
      const parts = this.kept.jobs.flatMap(({ parts: of }) => of)
      return parts[pick % parts.length] ?? 'none'
    }
    return record?.id ?? 'none'
  }

  version(path: string): number | undefined {
    const id = path
      .split('?')[0]
      ?.split('/')
      .find((part) => part.length === 22)
    return Object.values(this.kept)
      .flat()
      .find((known) => known.id === id)?.version
  }

  /** Learns from an answer. */
  learn(path: string, status: number, location: string | undefined, text: string): void {
    const token = /name="token" value="([\w-]{22})"/.exec(text)?.[1]
    if (token) this.tokens.push(token)
    if (this.tokens.length > 5) this.tokens.shift()
    const kind = this.kindOf(path)
    const at = location?.match(/\/(?:jobs|supplies|devices)\/([\w-]{16,64})/)?.[1]
    if (at) this.know(kind, at, 1)
    for (const [, photo] of text.matchAll(/\/photos\/([\w-]{22})/g))
      if (photo && !this.photos.includes(photo)) this.photos.push(photo)
    if (this.photos.length > most) this.photos.splice(0, this.photos.length - most)
    if (!path.startsWith('/api/') || status >= 300 || !text.startsWith('{') || text.length > 200_000) return
    const body = JSON.parse(text) as { id?: string; version?: number; parts?: { id: string }[]; state?: string }
    const parent = path.match(/^\/api\/jobs\/([\w-]{22})\/parts/)?.[1]
    const job = this.kept.jobs.find(({ id }) => id === parent)
    if (parent && job && body.id) job.parts = [...new Set([...job.parts, body.id])].slice(-5)
    else if (/^\/api\/(jobs|shelf\/\w+)(\/[\w-]{22})?(\?|$)/.test(path) && body.id)
      this.know(kind, body.id, body.version ?? 1)
  }

  private know(kind: RecordKind, id: string, version: number): void {
    const known = this.kept[kind].find((record) => record.id === id)
    if (known) {
      known.version = version
      return
    }
    this.kept[kind].push({ id, version, parts: [] })
    while (this.kept[kind].length > most) this.surplus.push({ kind, id: (this.kept[kind].shift() as Known).id })
  }
}

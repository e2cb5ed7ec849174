import { deniedByPower, deniedDemands } from './deniedFigures.js'
import type { Folded } from './fold.js'
import type { LabelPlug, LabelReading, Polarity, ProtectionClass } from './labelReading.js'
import type { Ratings, UsedQuantity } from './ratings.js'
import type { Token } from './token.js'
import { isBesideTorn } from './tornBeside.js'

/** Tokens [first, last). */
type Range = readonly [number, number]

interface Read {
  ratings: Ratings
  tokens: readonly Token[]
  folded: Folded
  original: (first: Token, last: Token) => string
  polarity: Polarity | null
  protectionClass: ProtectionClass | null
  fuses: readonly Range[]
  /** where the sizes of the plug stand */
  sized: readonly Range[]
  plug: LabelPlug | null
}

/** How far from a voltage the word for its kind of current may stand, in tokens. */
const kindReach = 16

/** Which words gave each field, which fields a person must confirm, and what damaged print was taken for. */
export function claimsOf(read: Read): Pick<LabelReading, 'from' | 'unsure' | 'proposals'> {
  const { ratings, tokens, original, plug } = read
  const said = ([first, last]: Range): string => original(tokens[first]!, tokens[last - 1]!)
  const words = new Map<string, string[]>()
  const unsure = new Set<string>()
  const tell = (field: string, range: Range): void => {
    const known = words.get(field)
    if (known) known.push(said(range))
    else words.set(field, [said(range)])
  }
  for (const { fields, quantity, unsure: isDoubted } of ratings.used) {
    const isUnsure = isDoubted || isBesideTorn(read.folded.text, tokens, quantity.first, quantity.last)
    for (const field of fields) {
      tell(field, [quantity.first, quantity.last])
      if (isUnsure) unsure.add(field)
    }
  }
  for (const { field, at, isUnsure } of kinds(read)) {
    tell(field, at)
    if (isUnsure) unsure.add(field)
  }
  for (const field of [...deniedByPower(ratings), ...deniedDemands(ratings, read.folded.text)])
    if (words.has(field)) unsure.add(field)
  const roles = (role: string): Range[] =>
    tokens.flatMap((token, at) => (token.role === role ? [[at, at + 1] as const] : []))
  if (read.polarity) for (const at of runs(roles('polarity'))) tell('polarity', at)
  if (read.protectionClass) for (const at of roles('protection class')) tell('protectionClass', at)
  for (const at of read.fuses) tell('fuse', at)
  if (plug) {
    for (const field of ['outerMm', 'innerMm', 'name'] as const)
      if (plug[field] !== null) for (const at of read.sized) tell(`plug.${field}`, at)
    if (plug.polarity)
      for (const one of words.get('polarity') ?? [])
        words.set('plug.polarity', [...(words.get('plug.polarity') ?? []), one])
  }
  return {
    from: [...words].map(([field, all]) => ({ field, words: [...new Set(all)].join(' … ') })),
    unsure: [...unsure],
    proposals: proposals(read, said),
  }
}

/** The words for the kind of current of the input and of each rail. */
function kinds({ ratings, tokens }: Read): { field: string; at: Range; isUnsure: boolean }[] {
  const { input, outputs, takes, used } = ratings
  const places: [string, unknown, (one: UsedQuantity) => boolean][] = [
    ['input.kind', input?.kind, ({ fields }) => fields[0] === 'input.voltages'],
    ...(['outputs', 'takes'] as const).flatMap((list) =>
      (list === 'outputs' ? outputs : takes).map(({ kind }, at): (typeof places)[number] => [
        `${list}.${at}.kind`,
        kind,
        ({ fields }) => fields.includes(`${list}.${at}.voltageV`),
      ]),
    ),
  ]
  const hertz = used.find(({ fields }) => fields[0] === 'input.frequenciesHz')
  return places.flatMap(([field, kind, isOwn]) => {
    const volts = used.find(isOwn)
    if (kind == null) return []
    const found = (volts && kindNear(tokens, volts)) ?? (field === 'input.kind' && hertz ? rangeOf(hertz) : undefined)
    const at = found ?? (volts && rangeOf(volts))
    if (!at) return []
    const isUnsure = tokens.slice(...at).some((token) => token.type === 'word' && token.reads !== null)
    return [{ field, at, isUnsure }]
  })
}

const rangeOf = ({ quantity }: UsedQuantity): Range => [quantity.first, quantity.last]

/** The voltage itself where its unit or a sign in it says the kind, else the nearest word or sign that was read as one. */
function kindNear(tokens: readonly Token[], { quantity }: UsedQuantity): Range | undefined {
  const { first, last } = quantity
  const says = (token: Token | undefined): boolean =>
    (token?.type === 'number' && token.unit?.kind != null) ||
    token?.role === 'kind' ||
    (token?.type === 'word' && (token.meaning === 'ac' || token.meaning === 'dc')) ||
    (token?.type === 'symbol' && (token.meaning === 'ac' || token.meaning === 'dc')) ||
    (token?.type === 'sign' && '~=--'.includes(token.sign) && tokens.indexOf(token) === last - 1)
  if (tokens.slice(first, last).some(says)) return [first, last]
  for (let step = 1; step <= kindReach; step += 1) {
    if (tokens[first - step]?.role === 'kind') return [first - step, first - step + 1]
    if (tokens[last - 1 + step]?.role === 'kind') return [last - 1 + step, last + step]
  }
  return undefined
}

/** Neighbouring tokens as one stretch. */
function runs(all: readonly Range[]): Range[] {
  const out: [number, number][] = []
  for (const [first, last] of all) {
    const before = out.at(-1)
    if (before && first - before[1] <= 1) before[1] = last
    else out.push([first, last])
  }
  return out
}

/** Each damaged word for a side, and each damaged figure that found a place. */
function proposals({ ratings, tokens, folded }: Read, said: (range: Range) => string): LabelReading['proposals'] {
  const out = new Map<string, string>()
  tokens.forEach((token, at) => {
    if (token.type === 'word' && token.reads !== null && token.role !== undefined)
      out.set(said([at, at + 1]), token.reads)
  })
  for (const { quantity } of ratings.used) {
    if (!quantity.unsure) continue
    const own = tokens.slice(quantity.first, quantity.last)
    const reads = own.map((token, at) => {
      const before = own[at - 1]
      const lacksJoint = token.type === 'number' && before?.type === 'number' && before.unit === null
      const text = 'reads' in token && token.reads !== null ? token.reads : folded.text.slice(token.start, token.end)
      return `${lacksJoint ? '/' : before?.spaceAfter ? ' ' : ''}${text}`
    })
    const { first, last } = quantity
    const [word, hyphen] = tokens.slice(Math.max(0, first - 2), first)
    // "Singleport-54VDC"
    if (hyphen?.type === 'sign' && word?.type === 'text' && word.end === hyphen.start && hyphen.end === own[0]!.start)
      out.set(said([first - 2, last]), `${folded.text.slice(word.start, word.end)} ${reads.join('')}`)
    else out.set(said([first, last]), reads.join(''))
  }
  return [...out].filter(([was, reads]) => was !== reads).map(([was, reads]) => ({ was, reads }))
}

/** An answer as it came over the wire. */
export interface Answer {
  status: number
  headers: Record<string, string | string[] | undefined>
  text: string
}

/** Words that only a program that lost a value writes. */
const odd = /\bNaN\b|\bInfinity\b|\bundefined\b|\[object \w+\]/
const stackTrace = /\n\s+at .{1,200}:\d+:\d+|node_modules\/|\/server\/\w+/

/** What is wrong with an answer; null where nothing is. `sent` is everything that was sent, whose words may come back. */
export function faultOf(method: string, path: string, sent: string, { status, headers, text }: Answer): string | null {
  if (status >= 500) return `status ${status}`
  if (stackTrace.test(text)) return 'tells of its own code'
  const word = odd.exec(text)?.[0]
  if (word && !sent.includes(word)) return `has the word ${word}`
  if (method === 'HEAD' || method === 'OPTIONS' || status === 304 || status < 200) return null
  const type = String(headers['content-type'] ?? '')
  if (path.startsWith('/api/') && status >= 400) {
    if (!type.startsWith('application/json')) return `an error of type ${type}`
    const body = JSON.parse(text) as { error?: { message?: unknown; fields?: unknown } }
    if (typeof body.error?.message !== 'string' || body.error.message === '') return 'an error without a message'
    const { fields } = body.error
    if (
      fields !== undefined &&
      !(Array.isArray(fields) && fields.every((field) => typeof field.path === 'string' && field.message))
    )
      return 'an error with fields of another form'
    return null
  }
  if (type.startsWith('application/json')) JSON.parse(text)
  if (status >= 400 && !/^(text\/html|text\/plain|application\/json)/.test(type)) return `an error of type ${type}`
  return null
}

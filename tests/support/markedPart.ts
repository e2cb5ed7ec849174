const begin = (name: string): string => `<!-- ${name}: begin, written by the program -->`
const end = (name: string): string => `<!-- ${name}: end -->`

/** The part of a page between the marks of a name, without them. */
export function markedPart(page: string, name: string): string {
  const [from, to] = [page.indexOf(begin(name)), page.indexOf(end(name))]
  if (from < 0 || to < from) throw new Error(`the page has no part marked “${name}”`)
  return page.slice(from + begin(name).length, to).trim()
}

/** The page with what stands between the marks of a name written anew. */
export function withMarkedPart(page: string, name: string, text: string): string {
  const old = markedPart(page, name)
  const from = page.indexOf(begin(name)) + begin(name).length
  const to = page.indexOf(end(name))
  return old === text.trim() ? page : `${page.slice(0, from)}\n\n${text.trim()}\n\n${page.slice(to)}`
}

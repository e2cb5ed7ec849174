/** One page of a long list. */
export interface Pager {
  /** "51 to 100 of 2000" */
  text: string
  previous: string | null
  next: string | null
}

export const perPage = 50

/** The number of a page in an address: 1 where it is missing or no number. */
export function pageNumber(sent: unknown): number {
  const number = typeof sent === 'string' && /^\d{1,6}$/.test(sent) ? Number(sent) : 1
  return Math.max(1, number)
}

/** The pager of a list; null where everything stands on one page. `address` makes the address of a page. */
export function pager(page: number, total: number, address: (page: number) => string): Pager | null {
  if (total <= perPage && page === 1) return null
  const first = (page - 1) * perPage + 1
  const last = Math.min(total, page * perPage)
  return {
    text: first > total ? `nothing beyond ${total}` : `${first} to ${last} of ${total}`,
    previous: page > 1 ? address(page - 1) : null,
    next: last < total ? address(page + 1) : null,
  }
}

/** An address with its parameters; empty ones are left out. */
export function addressWith(path: string, parameters: Record<string, string | number | undefined>): string {
  const query = new URLSearchParams()
  for (const [name, value] of Object.entries(parameters))
    if (value !== undefined && value !== '') query.set(name, String(value))
  const text = query.toString()
  return text === '' ? path : `${path}?${text}`
}

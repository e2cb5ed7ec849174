/** A moment as it stands on a page, with the form machines read. */
export interface Moment {
  iso: string
  text: string
}

/** "2026-01-05 09:00 UTC". */
export const moment = (ms: number): Moment => {
  const iso = new Date(ms).toISOString()
  return { iso, text: `${iso.slice(0, 10)} ${iso.slice(11, 16)} UTC` }
}

/** "2026-01-05". */
export const day = (ms: number): Moment => {
  const iso = new Date(ms).toISOString()
  return { iso, text: iso.slice(0, 10) }
}

const dayMs = 24 * 3600 * 1000

/** How long something has lasted, in whole days: "today", "1 day", "12 days". */
export function lasting(since: number, now: number): string {
  const days = Math.floor((now - since) / dayMs)
  return days < 1 ? 'today' : days === 1 ? '1 day' : `${days} days`
}

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

/** How a day stands to today, both as "2026-01-05": "today", "2 days late", "in 3 days". */
export function untilDay(expected: string, now: number): { text: string; late: boolean; due: boolean } {
  const days = Math.round((Date.parse(expected) - Date.parse(day(now).iso.slice(0, 10))) / dayMs)
  const count = Math.abs(days) === 1 ? '1 day' : `${Math.abs(days)} days`
  return { text: days === 0 ? 'today' : days < 0 ? `${count} late` : `in ${count}`, late: days < 0, due: days <= 0 }
}

/** Farthest back that is looked [characters]. */
const reach = 24

/** Marks that join no figures of a plate: between two of them they stand for one that was not recognised. */
const strayMark = /\d[ \t]{0,3}[|&·•∙⋅‧\\;!'"→][ \t]{0,3}$|\d[:+]$|\d[ \t]{0,3}(?:u\.|&)[ \t]{1,3}$/u
/** A place where print was missing or left out: "[..]", "(?)", "(illegible)", "...5A"; brackets with letters name something. */
const hole =
  /\[[^\p{L}\]]*\][ \t]?$|\([ \t]*(?:\?+|illegible|unreadable|unleserlich|illisible|illeggibile|ilegible)[ \t]*\)[ \t]?$|(?:^|[\s:])(?:\.{3}|…)$/iu
/** A mains voltage without its unit at the end of a line: "115", and the next line begins "230V". */
const lineBefore = /(?:^|\n|[~:]|INPUT|MAINS|LINE|AC|PRI\w*)[ \t]*(?:1\d\d|2[0-7]\d)[ \t]*\n[ \t]*$/iu

/**
 * Whether the figures that begin here are the rest of others that were lost or cut off by a mark that joins nothing: "115|230V", "0·3A", "[..]2V".
 * They are then no figure by themselves.
 *
 * @param text   folded
 * @param start  where the figures begin
 */
export function isTorn(text: string, start: number): boolean {
  const before = text.slice(Math.max(0, start - reach), start)
  if (hole.test(before) || (text.charAt(start) === '.' && before.endsWith('#'))) return true
  if (/^[12]\d\d/.test(text.slice(start, start + 3)) && lineBefore.test(before)) return true
  if (!strayMark.test(before)) return false
  // "12V+12V", "12+12V": two windings of one voltage
  const twin = /(\d+)\+$/.exec(before)?.[1]
  return twin === undefined || twin !== /^\d+/.exec(text.slice(start, start + 8))?.[0]
}

/** What people write where they know nothing; the signs alone ("-", "?", "…") have neither letter nor figure. */
const nothing = /^(?:n\W?a|tbd|unknown|not (?:known|given)|none|nobody|no one|xx+)\W*$/iu

/** Whether a line of free text tells anything: it has a letter or a figure, and is no word for nothing. */
export const isGiven = (text: string | null | undefined): text is string =>
  text != null && /[\p{L}\p{N}]/u.test(text) && !nothing.test(text.trim())

/** A line of free text without the spaces around it; null where it tells nothing. */
export const given = (text: string | null | undefined): string | null => (isGiven(text) ? text.trim() : null)

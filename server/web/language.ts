/** The language of the pages, as a BCP 47 tag. docs/languages.md lists what a further one would take. */
export const language = 'en'

/** Which of two names stands first in a list. */
export const byName = (one: string, other: string): number => one.localeCompare(other, language)

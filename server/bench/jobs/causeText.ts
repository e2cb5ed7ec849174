/** Letters that a cause takes at least: less says nothing. */
export const fewestLetters = 3

/** Whether words can be the cause of a stop. */
export const saysCause = (text: string): boolean => (text.match(/\p{L}/gu) ?? []).length >= fewestLetters

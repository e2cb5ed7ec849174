/**
 * Spreadsheets run a cell that begins with one of these as a formula; tab, return and line feed are dropped first by
 * some, and the wide forms are taken as the narrow ones by others.
 */
const formulaStart = /^'*[=+\-@\t\r\n＝＋－＠]/

/** The text with an apostrophe in front where a spreadsheet would run it; apostrophes before such a text are kept apart by one more. */
export const neutralised = (text: string): string => (formulaStart.test(text) ? `'${text}` : text)

/** Undoes {@link neutralised}: for every text, `restored(neutralised(text))` is the text. */
export const restored = (cell: string): string =>
  cell.startsWith("'") && formulaStart.test(cell) ? cell.slice(1) : cell

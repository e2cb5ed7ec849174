/** The sign that stands before the decimals. */
export type DecimalSign = '.' | ','

/**
 * The words of another language: the English template of a phrase, "The plug is {}; the jack wants {}", and what stands for
 * it. Where the order of the parts differs they are numbered from 0: "{1} … {0}". A template that is missing is told in English.
 */
export type Catalogue = Readonly<Record<string, string>>

/** Who a text is made for. */
export interface Reader {
  readonly decimal: DecimalSign
  readonly catalogue?: Catalogue
}

/** English words and a decimal point: what JSON, CSV and kept records hold. */
export const plainReader: Reader = { decimal: '.' }

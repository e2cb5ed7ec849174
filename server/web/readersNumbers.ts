/** The signs that stand before the decimals. */
export type DecimalSign = '.' | ','

/**
 * The decimal sign of the language and region that a browser asks for first.
 *
 * @param languages  tags in the order of preference, as of the header Accept-Language: "de-CH", "en"
 * @returns the point where the platform does not know the first tag, or knows a third sign for it
 * @source Unicode CLDR, as the platform carries it
 */
export function decimalSign([first = 'en']: readonly string[]): DecimalSign {
  try {
    if (Intl.NumberFormat.supportedLocalesOf(first).length === 0) return '.'
    const parts = new Intl.NumberFormat(first).formatToParts(1.5)
    return parts.some(({ type, value }) => type === 'decimal' && value === ',') ? ',' : '.'
  } catch {
    // not a language tag
    return '.'
  }
}

/** A decimal number: not part of a longer chain as 8.1.4 and 60320.1:2004 are, and not glued to letters as in T1.6A. */
const decimalNumber = /(?<![\p{L}\d.])(\d+)\.(\d+)(?![\p{L}\d]|[.:]\d)/gu

/** What stands in “ ” was typed or printed so, and stays. */
const quotation = /(“[^“”]*”)/

function withComma(text: string): string {
  // most texts of a page hold no number
  if (!text.includes('.')) return text
  return text
    .split(quotation)
    .map((part, index) => (index % 2 === 0 ? part.replace(decimalNumber, '$1,$2') : part))
    .join('')
}

const readAttribute = /(\s(?:aria-label|title|alt|placeholder|data-label)=")([^"]+)/g

const tag = /<(\/?)([a-zA-Z][\w:-]*)([^>"]*(?:"[^"]*"[^>"]*)*)>|<!--[\s\S]*?-->/g

/** Elements without an end tag. */
const single = new Set(['area', 'br', 'col', 'hr', 'img', 'input', 'link', 'meta', 'wbr'])

/** Elements whose text is typed, or is no text for people; the title of a page may hold a name that was typed. */
const kept = new Set(['head', 'textarea', 'script', 'style'])

/**
 * A page with its decimal numbers in the reader's sign. Changed are the texts between the tags and the attributes that
 * people hear or read. What was typed, printed or quoted stays: the value of every box, every text area, what stands in
 * “ ”, and all inside an element with translate="no" (sources, clauses, names, notes, plate words).
 *
 * @param html  well-formed, with double quotes around attributes, as the views make it
 * @param sign  the point changes nothing
 */
export function readersNumbers(html: string, sign: DecimalSign): string {
  if (sign === '.') return html
  let done = ''
  let from = 0
  /** the element that keeps its text, and how many of its name are open in it */
  let keeping = ''
  let depth = 0
  for (const found of html.matchAll(tag)) {
    const [whole, end = '', name = '', attributes = ''] = found
    const before = html.slice(from, found.index)
    done += keeping ? before : withComma(before)
    from = found.index + whole.length
    const opens = name !== '' && end === '' && !single.has(name) && !attributes.endsWith('/')
    if (keeping) {
      done += whole
      if (name === keeping) depth += opens ? 1 : end ? -1 : 0
      if (depth === 0) keeping = ''
      continue
    }
    const keeps = kept.has(name) || attributes.includes(' translate="no"')
    // most tags hold no number
    done +=
      keeps || !attributes.includes('.')
        ? whole
        : whole.replace(readAttribute, (_all, start: string, text: string) => start + withComma(text))
    if (keeps && opens) [keeping, depth] = [name, 1]
  }
  return done + withComma(html.slice(from))
}

import { escaped, joined, type Phrase, type Words } from '../../words/phrase.js'

/** A drawing on the server: an SVG element, what it shows in words, and the same points as a table. */
export interface Drawing {
  svg: Phrase
  /** what the drawing shows, for a caption */
  caption: Words
  table: DrawingTable
}

interface DrawingTable {
  headings: Words[]
  rows: Words[][]
}

/**
 * The element around a drawing, with its text alternative.
 *
 * @param id     unique on the page; letters, digits and hyphens
 * @param fixed  class of a drawing that keeps its own size, so that several stand at one scale; else it fills its column
 */
export function svgFrame(
  {
    id,
    width,
    height,
    title,
    description,
    fixed,
  }: { id: string; width: number; height: number; title: Words; description: Words; fixed?: string },
  content: readonly Words[],
): Phrase {
  return joined(
    [
      `<svg${fixed ? ` class="${fixed}" width="${width}" height="${height}"` : ''} viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
      `<title id="${id}-title">`,
      escaped(title),
      `</title><desc id="${id}-desc">`,
      escaped(description),
      '</desc>',
      ...content,
      '</svg>',
    ],
    '',
  )
}

/** A position to a tenth of a unit: finer is not seen and makes the page longer. */
export const place = (value: number): number => Math.round(value * 10) / 10

export interface LabelPlace {
  x: number
  y: number
  anchor?: 'start' | 'middle' | 'end'
  soft?: boolean
  turned?: boolean
}

export const svgLabel = (text: Words, { x, y, anchor = 'start', soft, turned }: LabelPlace): Phrase =>
  joined(
    [
      `<text x="${place(x)}" y="${place(y)}" text-anchor="${anchor}"${soft ? ' class="soft"' : ''}${turned ? ` transform="rotate(-90 ${place(x)} ${place(y)})"` : ''}>`,
      escaped(text),
      '</text>',
    ],
    '',
  )

export const svgLine = (x1: number, y1: number, x2: number, y2: number, name = 'draw-thin', dash?: string): string =>
  `<line x1="${place(x1)}" y1="${place(y1)}" x2="${place(x2)}" y2="${place(y2)}" class="${name}"${dash ? ` stroke-dasharray="${dash}"` : ''}/>`

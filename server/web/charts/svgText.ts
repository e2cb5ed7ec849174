/** Text made fit to stand in SVG, as content or in an attribute in double quotes. */
const svgText = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`)

/** A drawing on the server: an SVG element, what it shows in words, and the same points as a table. */
export interface Drawing {
  svg: string
  /** what the drawing shows, for a caption */
  caption: string
  table: DrawingTable
}

interface DrawingTable {
  headings: string[]
  rows: string[][]
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
  }: { id: string; width: number; height: number; title: string; description: string; fixed?: string },
  content: readonly string[],
): string {
  return (
    `<svg${fixed ? ` class="${fixed}" width="${width}" height="${height}"` : ''} viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${svgText(id)}-title ${svgText(id)}-desc">` +
    `<title id="${svgText(id)}-title">${svgText(title)}</title><desc id="${svgText(id)}-desc">${svgText(description)}</desc>` +
    `${content.join('')}</svg>`
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

export const svgLabel = (text: string, { x, y, anchor = 'start', soft, turned }: LabelPlace): string =>
  `<text x="${place(x)}" y="${place(y)}" text-anchor="${anchor}"${soft ? ' class="soft"' : ''}${turned ? ` transform="rotate(-90 ${place(x)} ${place(y)})"` : ''}>${svgText(text)}</text>`

export const svgLine = (x1: number, y1: number, x2: number, y2: number, name = 'draw-thin', dash?: string): string =>
  `<line x1="${place(x1)}" y1="${place(y1)}" x2="${place(x2)}" y2="${place(y2)}" class="${name}"${dash ? ` stroke-dasharray="${dash}"` : ''}/>`

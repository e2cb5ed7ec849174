import { type Drawing, svgFrame, svgLabel, svgLine } from './svgText.js'

const size = { width: 420, height: 330 }

/**
 * The circuit of a series lamp, every part labelled in words: switch and lamps in the line conductor, neutral and earth
 * straight through, a residual-current device upstream.
 *
 * @param lamps  how many, drawn up to three
 * @param id     unique on the page
 */
export function lampCircuit(
  lamps: { count: number; arrangement: 'series' | 'parallel'; words: string },
  unit: { words: string; earthed: boolean | null },
  id = 'lamp-circuit',
): Drawing {
  const line = 70
  const neutral = 210
  const earth = 272
  const shown = Math.min(lamps.count, 3)
  const series = lamps.arrangement === 'series'
  const left = 206
  const right = series ? left + 36 * shown + 8 : left + 64
  const top = line - (series ? 0 : (shown - 1) * 18)
  const lampMarks = Array.from({ length: shown }, (_, at) =>
    series ? lampMark(left + 22 + 36 * at, line, 15) : lampMark(left + 32, top + 36 * at, 15),
  )
  const bars =
    series || shown === 1
      ? []
      : [left, right]
          .map((x) => svgLine(x, top, x, top + (shown - 1) * 36, 'draw'))
          .concat(Array.from({ length: shown }, (_, at) => svgLine(left, top + 36 * at, right, top + 36 * at, 'draw')))
  const earthed = unit.earthed !== false
  const parts = [
    svgLabel('mains', { x: 8, y: 24 }),
    svgLabel('line', { x: 8, y: line - 8 }),
    svgLabel('neutral', { x: 8, y: neutral - 8 }),
    svgLine(8, line, 158, line, 'draw'),
    svgLine(188, line, left, line, 'draw'),
    ...(series || shown === 1 ? [svgLine(left, line, right, line, 'draw')] : []),
    svgLine(right, line, 330, line, 'draw'),
    svgLine(8, neutral, 330, neutral, 'draw'),
    ...(earthed ? [svgLine(8, earth, 365, earth, 'draw', '8 4'), svgLine(365, earth, 365, 226, 'draw', '8 4')] : []),
    svgLabel(earthed ? 'earth, straight through, never by way of the lamp' : 'no earth: this unit has none', {
      x: 8,
      y: earth + 20,
    }),
    `<rect x="62" y="${line - 18}" width="76" height="${neutral - line + 36}" class="draw-fill"/>`,
    ...['residual-', 'current', 'device'].map((words, at) =>
      svgLabel(words, { x: 100, y: 132 + 18 * at, anchor: 'middle' }),
    ),
    `<path d="M158 ${line}l28 -14" class="draw"/><circle cx="158" cy="${line}" r="3" class="draw-mark"/><circle cx="188" cy="${line}" r="3" class="draw-mark"/>`,
    svgLabel('switch', { x: 173, y: line + 24, anchor: 'middle' }),
    ...bars,
    ...lampMarks,
    svgLabel(lamps.words, { x: 228, y: line + (series ? 46 : 18 * shown + 36), anchor: 'middle' }),
    `<rect x="318" y="${line - 16}" width="94" height="${neutral - line + 32}" class="draw-fill"/>`,
    ...wrapped(unit.words, 11).map((words, at) => svgLabel(words, { x: 365, y: 130 + 18 * at, anchor: 'middle' })),
  ]
  const description =
    `From the mains the line conductor passes a residual-current device, a switch and ${lamps.words}, then the unit: ${unit.words}. ` +
    `The neutral conductor goes from the unit straight back. ${unit.earthed === false ? 'The unit has no earth.' : 'The earth conductor goes straight from the mains to the unit and never through the lamp.'} ` +
    'Nothing here isolates the unit from the mains.'
  return {
    svg: svgFrame({ id, ...size, title: 'The lamp in series', description }, parts),
    caption: description,
    table: {
      headings: ['Conductor', 'Passes, in this order'],
      rows: [
        ['Line', `residual-current device, switch, ${lamps.words}, ${unit.words}`],
        ['Neutral', `residual-current device, ${unit.words}`],
        ['Earth', unit.earthed === false ? 'none: the unit has no earth' : unit.words],
      ],
    },
  }
}

/** Lamp: a circle with a cross. */
function lampMark(x: number, y: number, r: number): string {
  const d = r * Math.SQRT1_2
  return `<circle cx="${x}" cy="${y}" r="${r}" class="draw-fill"/><path d="M${x - d} ${y - d}L${x + d} ${y + d}M${x + d} ${y - d}L${x - d} ${y + d}" class="draw-lamp"/>`
}

/** Words broken into lines of about so many letters. */
function wrapped(text: string, width: number): string[] {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const joined = `${lines[lines.length - 1] ?? ''} ${word}`
    if (lines.length > 0 && joined.length <= width) lines[lines.length - 1] = joined
    else lines.push(word)
  }
  return lines
}

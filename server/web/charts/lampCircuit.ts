import type { FedBy } from '../../plan/stages/fedBy.js'
import { type Drawing, svgFrame, svgLabel, svgLine } from './svgText.js'

const size = { width: 420, height: 350 }
const line = 70
const neutral = 210
const earth = 272
const boxMiddle = 96
const switchAt = 160
const unitAt = 318

/** What a drawing and its words call the two conductors of a source; the lamp stands in the first. */
interface Conductors {
  first: string
  second: string
  which: string
  /** what one pole that is switched or protected alone leaves live; nothing to add where the other conductor is none */
  left: string
  /** the same in the drawing */
  leftShort: string
}

const conductors: Record<FedBy['bothLive'], Conductors> = {
  no: {
    first: 'line, live',
    second: 'neutral',
    which: 'The line conductor is live, up to the switch also while that is open.',
    left: 'In the neutral, switch and fuse-link would leave the whole unit live.',
    leftShort: 'a switch in the neutral: all of the unit stays live',
  },
  yes: {
    first: '1, live',
    second: '2, live',
    which: 'Both conductors are live, so switch and fuse-link break both; the lamp stands in one.',
    left: 'A single-pole switch or fuse-link in one conductor leaves the other, and through the unit everything up to the open contact, live; a fault to earth from conductor 2 does not pass the lamp.',
    leftShort: 'one pole broken alone: all of the unit stays live',
  },
  perhaps: {
    first: '1, may be live',
    second: '2, may be live',
    which: 'Either conductor may be live, or both, so switch and fuse-link break both; the lamp stands in one.',
    left: 'A single-pole switch or fuse-link in one conductor may leave the other, and through the unit everything up to the open contact, live; a fault to earth from conductor 2 does not pass the lamp.',
    leftShort: 'one pole broken alone: all of the unit may stay live',
  },
}

/**
 * The circuit of a series lamp, every part labelled in words, for the conductors that its source has: a line conductor and a neutral, with
 * switch and lamps in the line; or two that are or may be live, with a switch and a fuse-link in both. Earth goes straight through.
 *
 * @param lamps  how many, drawn up to three
 * @param fed    what stands behind the socket
 * @param id     unique on the page
 */
export function lampCircuit(
  lamps: { count: number; arrangement: 'series' | 'parallel'; words: string },
  unit: { words: string; earthed: boolean | null },
  fed: FedBy,
  id = 'lamp-circuit',
): Drawing {
  const { first, second, which, left, leftShort } = conductors[fed.bothLive]
  const single = fed.bothLive === 'no'
  // behind a source of its own no residual-current device is relied on: the source stands in its place
  const protects = fed.residual === 'acts'
  const before = protects ? 'residual-current device' : fed.says.replace(/^an? /, '')
  const broken = single ? 'switch' : 'fuse-link, switch'
  const from = protects ? 8 : boxMiddle
  const earthed = unit.earthed !== false
  const shown = Math.min(lamps.count, 3)
  const series = lamps.arrangement === 'series'
  const lampsAt = 206
  const lampsEnd = series ? lampsAt + 36 * shown + 8 : lampsAt + 64
  const top = line - (series ? 0 : (shown - 1) * 18)
  const boxWords = wrapped(before.replace('residual-current', 'residual- current'), 11)
  const parts = [
    svgLabel(protects ? 'mains' : 'source', { x: 8, y: 24 }),
    svgLabel(first, { x: 412, y: line - 24, anchor: 'end' }),
    svgLabel(second, { x: 308, y: neutral + 22, anchor: 'end' }),
    svgLine(from, line, switchAt, line, 'draw'),
    svgLine(switchAt + 30, line, lampsAt, line, 'draw'),
    ...(series || shown === 1 ? [svgLine(lampsAt, line, lampsEnd, line, 'draw')] : []),
    svgLine(lampsEnd, line, unitAt + 12, line, 'draw'),
    ...(single
      ? [svgLine(from, neutral, unitAt + 12, neutral, 'draw')]
      : [
          svgLine(from, neutral, switchAt, neutral, 'draw'),
          svgLine(switchAt + 30, neutral, unitAt + 12, neutral, 'draw'),
          svgLine(switchAt + 14, line - 7, switchAt + 14, neutral - 7, 'draw-thin', '4 4'),
          switchMark(neutral),
          fuseMark(line),
          fuseMark(neutral),
          svgLabel('fuse-links', { x: 152, y: line - 24, anchor: 'middle' }),
        ]),
    // the middle of a winding on earth
    ...(fed.bothLive === 'yes' && !protects
      ? [svgLine(boxMiddle, 228, boxMiddle, earth, 'draw', '8 4'), svgLine(8, earth, boxMiddle, earth, 'draw', '8 4')]
      : []),
    ...(earthed ? [svgLine(8, earth, 365, earth, 'draw', '8 4'), svgLine(365, earth, 365, 226, 'draw', '8 4')] : []),
    svgLabel(earthed ? 'earth, straight through, never by way of the lamp' : 'no earth: this unit has none', {
      x: 8,
      y: earth + 22,
    }),
    svgLabel(leftShort, { x: 8, y: earth + 46 }),
    `<rect x="${boxMiddle - 46}" y="${line - 18}" width="92" height="${neutral - line + 36}" class="draw-fill"/>`,
    ...boxWords.map((words, at) =>
      svgLabel(words, { x: boxMiddle, y: 154 - 9 * boxWords.length + 18 * at, anchor: 'middle' }),
    ),
    switchMark(line),
    svgLabel('switch', single ? { x: 173, y: line + 24, anchor: 'middle' } : { x: 181, y: neutral - 24 }),
    ...parallelBars(series ? 1 : shown, { from: lampsAt, to: lampsEnd, top }),
    ...Array.from({ length: shown }, (_, at) =>
      series ? lampMark(lampsAt + 22 + 36 * at, line, 15) : lampMark(lampsAt + 32, top + 36 * at, 15),
    ),
    svgLabel(lamps.words, { x: 238, y: line + (series ? 48 : 18 * shown + 36), anchor: 'middle' }),
    `<rect x="${unitAt}" y="${line - 16}" width="94" height="${neutral - line + 32}" class="draw-fill"/>`,
    ...wrapped(unit.words, 11).map((words, at) => svgLabel(words, { x: 365, y: 130 + 18 * at, anchor: 'middle' })),
  ]
  const description = [
    single
      ? `From the mains the line conductor passes a ${before}, a switch and ${lamps.words}, then the unit: ${unit.words}. The neutral conductor goes from the unit straight back.`
      : `From ${fed.says} each conductor passes ${protects ? `a ${before}, ` : ''}a fuse-link and a pole of the switch; the first also ${lamps.words}, then the unit: ${unit.words}.`,
    which,
    left,
    fed.earth,
    unit.earthed === false
      ? 'The unit has no earth.'
      : 'The earth conductor goes straight from the mains to the unit and never through the lamp.',
    'Nothing here isolates the unit from the mains.',
  ].join(' ')
  return {
    svg: svgFrame({ id, ...size, title: 'The lamp in series', description }, parts),
    caption: description,
    table: {
      headings: ['Conductor', 'Passes, in this order'],
      rows: [
        [single ? 'Line, live' : first, `${before}, ${broken}, ${lamps.words}, ${unit.words}`],
        [single ? 'Neutral' : second, [before, ...(single ? [] : [broken]), unit.words].join(', ')],
        ['Earth', unit.earthed === false ? 'none: the unit has no earth' : unit.words],
      ],
    },
  }
}

/** A pole of the switch, open. */
const switchMark = (y: number): string =>
  `<path d="M${switchAt} ${y}l28 -14" class="draw"/><circle cx="${switchAt}" cy="${y}" r="3" class="draw-mark"/><circle cx="${switchAt + 30}" cy="${y}" r="3" class="draw-mark"/>`

const fuseMark = (y: number): string => `<rect x="144" y="${y - 5}" width="14" height="10" class="draw-fill"/>`

const parallelBars = (shown: number, { from, to, top }: { from: number; to: number; top: number }) =>
  shown === 1
    ? []
    : [
        ...[from, to].map((x) => svgLine(x, top, x, top + (shown - 1) * 36, 'draw')),
        ...Array.from({ length: shown }, (_, at) => svgLine(from, top + 36 * at, to, top + 36 * at, 'draw')),
      ]

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

import { describe, expect, it } from 'vitest'
import type { CheckRequest, Site } from '../../../server/chain/case/request.js'
import type { LampSetup } from '../../../server/plan/firstPower/lamps.js'
import { loadLine } from '../../../server/plan/firstPower/seriesLamp.js'
import { lampTransient } from '../../../server/plan/firstPower/transient.js'
import { fedBy } from '../../../server/plan/stages/fedBy.js'
import { mainsSourceNames } from '../../../server/tables/mainsSources.js'
import { lampCircuit } from '../../../server/web/charts/lampCircuit.js'
import { loadLineChart } from '../../../server/web/charts/loadLine.js'
import type { Drawing } from '../../../server/web/charts/svgText.js'
import { transientChart } from '../../../server/web/charts/transientChart.js'
import { type Told, tell } from '../../../server/words/tell.js'

const setup = {
  mains: { voltageV: 230, frequencyHz: 50 },
  lamps: [{ ratedV: 230, ratedW: 60 }],
  arrangement: 'series',
} satisfies LampSetup

const names = { lamp: 'lamp <60 W> & "old"', load: 'load 15 W' }
const twoPoints = tell(loadLineChart(loadLine(setup, { kind: 'constant-power', powerW: 15, minimumV: 50 }), names, 'a'))
const shorted = tell(loadLineChart(loadLine(setup, { kind: 'short' }), names, 'b'))
const starved = tell(loadLineChart(loadLine(setup, { kind: 'constant-power', powerW: 60 }), names, 'c'))
const run = lampTransient(setup, { bulkF: 1e-4, loadOhm: 5000, shortAfterS: 0.4 }, 'crest', 1)
const transient = tell(transientChart(run, 'Switch-on', 0.4, 'd'))

/** The circuit on a source. */
const circuitOn = (
  source: Site['source'],
  { count = 2, earthed = true, converter = null as CheckRequest['converter'] } = {},
): Told<Drawing> =>
  tell(
    lampCircuit(
      { count, arrangement: 'parallel', words: 'two lamps of 60 W' },
      { words: 'supply under test', earthed },
      fedBy({ source: source ?? null, check: { site: {}, supply: {}, device: {}, converter } }),
      `on-${source ?? 'wall'}`,
    ),
  )
const circuit = circuitOn('wall')

const all: { name: string; drawing: Told<Drawing> }[] = [
  { name: 'two points', drawing: twoPoints },
  { name: 'a short', drawing: shorted },
  { name: 'starved', drawing: starved },
  { name: 'a switch-on', drawing: transient },
  ...mainsSourceNames.map((source) => ({ name: `the circuit on ${source}`, drawing: circuitOn(source) })),
]

describe('every drawing', () => {
  it.each(all)('has a title and a description tied to it, and a table: $name', ({ drawing }) => {
    const { svg, table, caption } = drawing
    const [, title, desc] = /role="img" aria-labelledby="(\S+) (\S+)"/.exec(svg) ?? []
    expect(svg).toMatch(new RegExp(`<title id="${title}">[^<]+</title>`))
    expect(svg).toMatch(new RegExp(`<desc id="${desc}">[^<]{40,}</desc>`))
    expect(caption.length).toBeGreaterThan(20)
    expect(table.rows.length).toBeGreaterThan(1)
    for (const row of table.rows) expect(row).toHaveLength(table.headings.length)
  })

  it.each(all)('holds no colour of its own, no style and no number that is not one: $name', ({ drawing }) => {
    expect(drawing.svg).not.toMatch(/NaN|Infinity|undefined|null/)
    expect(drawing.svg).not.toMatch(/#[0-9a-f]{3,6}\b|rgb\(|style=|fill="|stroke="/i)
  })

  it.each(all)('keeps everything inside its frame: $name', ({ drawing }) => {
    const [, width = 0, height = 0] = (/viewBox="0 0 (\d+) (\d+)"/.exec(drawing.svg) ?? []).map(Number)
    const xs = [...drawing.svg.matchAll(/ (?:x|cx|x1|x2)="([^"]+)"/g)].map(([, value]) => Number(value))
    const ys = [...drawing.svg.matchAll(/ (?:y|cy|y1|y2)="([^"]+)"/g)].map(([, value]) => Number(value))
    for (const x of xs) expect(x >= 0 && x <= width, `x ${x}`).toBe(true)
    for (const y of ys) expect(y >= 0 && y <= height, `y ${y}`).toBe(true)
  })
})

describe('the load line', () => {
  it('marks a stable point by a filled circle and an unstable one by a ring, each numbered and named', () => {
    expect(twoPoints.svg.match(/<circle [^>]*class="draw-mark"/g)).toHaveLength(1)
    expect(twoPoints.svg.match(/<circle [^>]*class="draw"/g)).toHaveLength(1)
    expect(twoPoints.caption).toMatch(/1: operating point.*2: unstable point/)
    expect(twoPoints.table.rows.map((row) => row[3]).filter((name) => name !== '')).toEqual([
      'operating point',
      'unstable point',
    ])
  })

  it('names its axes with their units', () => {
    expect(twoPoints.svg).toMatch(/Volts across the lamps \(V\)/)
    expect(twoPoints.svg).toMatch(/Current \(mA\)/)
  })

  it('says starved where the lines do not meet', () => {
    expect(starved.caption).toMatch(/starved/)
    expect(starved.svg).toMatch(/class="draw-stop"/)
  })

  it('writes names as text, not as markup', () => {
    expect(twoPoints.svg).toContain('lamp &#60;60 W&#62; &#38; &#34;old&#34;')
    expect(twoPoints.svg).not.toContain('<60')
  })
})

describe('the switch-on', () => {
  it('names both axes with units and the glow in words', () => {
    for (const words of [
      'Filament (K)',
      'Reservoir capacitor (V)',
      'Time after switch-on (s)',
      '>none<',
      '>full<',
      '>shorted<',
    ])
      expect(transient.svg).toContain(words)
  })

  it('tables the first and the last moment, rising', () => {
    const times = transient.table.rows.map((row) => row[0])
    expect(times[0]).toMatch(/^0/)
    expect(times.at(-1)).toMatch(/^1\ss$/)
  })
})

describe('the circuit', () => {
  it('is labelled in words and takes earth past the lamp', () => {
    for (const words of ['mains', 'line', 'neutral', 'switch', 'two lamps of 60 W', 'earth, straight through'])
      expect(circuit.svg).toContain(words)
    expect(circuit.caption).toMatch(/never through the lamp.*Nothing here isolates/)
  })

  it('draws no earth for a unit without one', () => {
    const { svg } = circuitOn('wall', { count: 1, earthed: false })
    expect(svg).toContain('no earth: this unit has none')
    expect(svg).not.toContain('straight through, never')
  })

  it('on the wall has one live conductor, one pole of a switch in it, and earth on the neutral', () => {
    expect(circuitOn(null)).toEqual(circuit)
    expect(circuit.svg).toContain('>line, live<')
    expect(circuit.svg.match(/l28 -14/g)).toHaveLength(1)
    expect(circuit.svg).not.toContain('fuse-links')
    expect(circuit.caption).toMatch(/neutral is joined to earth in the building/)
  })

  // the facts of each source: split phase has no neutral, 55-0-55 V has its middle on earth, an isolating winding is on nothing
  it.each<[NonNullable<Site['source']>, live: string, RegExp, earth: RegExp]>([
    ['two-live', 'live', /Both conductors are live/, /middle between them, so each stands at half the voltage/],
    ['site-transformer', 'live', /Both conductors are live/, /middle of the winding: each conductor stands at half/],
    ['isolating-transformer', 'may be live', /may be live, or both/, /joined to neither conductor; the first fault/],
    ['generator', 'may be live', /may be live, or both/, /to nothing, or to one conductor by a bond/],
    ['inverter-sine', 'may be live', /may be live, or both/, /to nothing, to the middle or to one conductor/],
  ])(
    'on %s breaks both conductors, says what a single pole leaves live, and where earth stands',
    (source, live, which, earth) => {
      const { svg, caption, table } = circuitOn(source)
      for (const conductor of [1, 2]) expect(svg).toContain(`>${conductor}, ${live}<`)
      expect(svg).not.toContain('neutral')
      expect(svg.match(/l28 -14/g)).toHaveLength(2)
      expect(svg).toContain('>fuse-links<')
      expect(svg).toMatch(/>one pole broken alone: all of the unit (?:stays|may stay) live</)
      expect(caption).toMatch(which)
      expect(caption).toMatch(/single-pole switch or fuse-link in one conductor (?:leaves|may leave) the other/)
      expect(caption).toMatch(earth)
      const [first, second] = table.rows
      expect(first?.[1]).toMatch(/fuse-link, switch, two lamps/)
      expect(second?.[1]).toMatch(/fuse-link, switch/)
      expect(second?.[1]).not.toContain('lamp')
    },
  )

  it('relies on no residual-current device behind windings of their own, and on one for two live conductors of the wall', () => {
    expect(circuitOn('two-live').caption).toContain('residual-current device')
    for (const source of ['isolating-transformer', 'site-transformer', 'generator'] as const)
      expect(circuitOn(source).caption).not.toContain('residual-current device')
  })

  it('draws the middle of a site transformer on earth, also for a unit that has none', () => {
    const downFromTheBox = /<line[^>]*x1="96" y1="228"|M96 228/
    expect(circuitOn('site-transformer', { earthed: false }).svg).toMatch(downFromTheBox)
    expect(circuitOn('two-live').svg).not.toMatch(downFromTheBox)
  })

  it('takes a converter with separate windings for an isolating transformer', () => {
    const converter = { kind: 'isolating', outputV: 120, ratedVA: 300 } as const
    expect(circuitOn('wall', { converter }).caption).toMatch(/joined to neither conductor/)
  })
})

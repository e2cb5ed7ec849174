import { afterEach, describe, expect, it, vi } from 'vitest'

const source = { title: 't', detail: 'd', kind: 'published' }

/** The faults found when one table is exchanged for another. */
async function faultsWith(file: string, tables: Record<string, unknown>): Promise<string[]> {
  vi.doMock(`../../server/reference/${file}.js`, async (original) => ({
    ...(await original<Record<string, unknown>>()),
    ...tables,
  }))
  const { validateReference } = await import('../../server/reference/validate.js')
  return validateReference()
}

afterEach(() => {
  vi.doUnmock('../../server/reference/awg.js')
  vi.resetModules()
})

const wire = { awg: 18, diameterMm: 1.024, areaMm2: 0.823, ohmPerKm: 20.95, sources: [source] }
const dcPlug = {
  name: 'p',
  aliases: [],
  standard: null,
  outerMm: 5.5,
  innerMm: 2.1,
  centrePinMm: null,
  voltageMinV: null,
  voltageMaxV: null,
  contactA: null,
  notes: [],
  sources: [source],
}

describe('a faulty table is told, with its row', () => {
  it.each([
    { fault: 'a row without a source', rows: [{ ...wire, sources: [] }], tells: 'awgRows, 18: has no source' },
    { fault: 'a key twice', rows: [wire, wire], tells: 'awgRows: 18 stands twice' },
    { fault: 'no rows', rows: [], tells: 'awgRows: has no rows' },
    { fault: 'rows out of order', rows: [wire, { ...wire, awg: 17 }], tells: 'awgRows: rows do not rise' },
    {
      fault: 'NaN',
      rows: [{ ...wire, areaMm2: Number.NaN }],
      tells: 'awgRows, 18: has a size that is not more than 0',
    },
    {
      fault: 'an area that is not the diameter’s',
      rows: [{ ...wire, areaMm2: 0.83 }],
      tells: 'awgRows, 18: diameter and area disagree',
    },
  ])('$fault', async ({ rows, tells }) => {
    expect(await faultsWith('awg', { awgRows: rows })).toContain(tells)
  })

  it.each([
    {
      fault: 'a bore over the outside',
      rows: [{ ...dcPlug, innerMm: 6 }],
      tells: 'dcPlugRows, p: the bore is not smaller than the outside',
    },
    {
      fault: 'half a voltage class',
      rows: [{ ...dcPlug, voltageMinV: 5 }],
      tells: 'dcPlugRows, p: has half a voltage class',
    },
    {
      fault: 'one alias for two',
      rows: [
        { ...dcPlug, aliases: ['z'] },
        { ...dcPlug, name: 'Z' },
      ],
      tells: 'dcPlugRows: Z names two plugs',
    },
  ])('$fault', async ({ rows, tells }) => {
    expect(await faultsWith('dcPlugRows', { dcPlugRows: rows })).toContain(tells)
    vi.doUnmock('../../server/reference/dcPlugRows.js')
  })

  it('a plug that no table has, a socket letter that is none, an earth for a plug that does not fit', async () => {
    const row = {
      plugs: ['X'],
      letters: ['Z'],
      socket: 's',
      commonness: 'usual',
      fits: 'no',
      earth: 'made',
      note: '',
      sources: [source],
    }
    const faults = await faultsWith('plugFits', { plugFits: [row] })
    vi.doUnmock('../../server/reference/plugFits.js')
    expect(faults).toContain('plugFits, X / Z / s / : names X, which no table has')
    expect(faults).toContain('plugFits, X / Z / s / : names Z, which no table has')
    expect(faults).toContain('plugFits, X / Z / s / : does not fit, yet says something of the earth')
    expect(faults).toContain('plugFits: nothing fits socket G')
  })
})

import { describe, expect, it } from 'vitest'
import { connectorByName, connectorFits, inletByName } from '../../server/tables/inlets.js'

/** AS/NZS 60320.1:2004 as tabulated by accesscomms.com.au, "IEC 320": class, highest pin temperature, amperes. */
const table = [
  { connector: 'C1', inlet: 'C2', protectionClass: 'II', maxPinC: 70, ratedA: 0.2, earthed: false },
  { connector: 'C5', inlet: 'C6', protectionClass: 'I', maxPinC: 70, ratedA: 2.5, earthed: true },
  { connector: 'C7', inlet: 'C8', protectionClass: 'II', maxPinC: 70, ratedA: 2.5, earthed: false },
  { connector: 'C9', inlet: 'C10', protectionClass: 'II', maxPinC: 70, ratedA: 6, earthed: false },
  { connector: 'C13', inlet: 'C14', protectionClass: 'I', maxPinC: 70, ratedA: 10, earthed: true },
  { connector: 'C15', inlet: 'C16', protectionClass: 'I', maxPinC: 120, ratedA: 10, earthed: true },
  { connector: 'C15A', inlet: 'C16A', protectionClass: 'I', maxPinC: 155, ratedA: 10, earthed: true },
  { connector: 'C17', inlet: 'C18', protectionClass: 'II', maxPinC: 70, ratedA: 10, earthed: false },
  { connector: 'C19', inlet: 'C20', protectionClass: 'I', maxPinC: 70, ratedA: 16, earthed: true },
  { connector: 'C21', inlet: 'C22', protectionClass: 'I', maxPinC: 155, ratedA: 16, earthed: true },
  { connector: 'C23', inlet: 'C24', protectionClass: 'II', maxPinC: 70, ratedA: 16, earthed: false },
] as const

describe('the couplers of IEC 60320', () => {
  it.each(table)('$connector belongs to $inlet: class $protectionClass, $ratedA A, $maxPinC °C', (row) => {
    expect(inletByName(row.inlet)).toMatchObject(row)
    expect(connectorByName(row.connector)).toMatchObject(row)
    expect(connectorFits(row.connector, row.inlet)).toMatchObject({ fits: true })
  })

  /** Museum of Plugs and Sockets, page on appliance couplers: 10 A devices are 15 A, 16 A ones 20 A in North America. */
  it.each([
    { inlet: 'C14', ratedANorthAmerica: 15 },
    { inlet: 'C16', ratedANorthAmerica: 15 },
    { inlet: 'C18', ratedANorthAmerica: 15 },
    { inlet: 'C20', ratedANorthAmerica: 20 },
    { inlet: 'C22', ratedANorthAmerica: 20 },
  ])('$inlet is rated $ratedANorthAmerica A in North America', ({ inlet, ratedANorthAmerica }) => {
    expect(inletByName(inlet)?.ratedANorthAmerica).toBe(ratedANorthAmerica)
  })

  it.each([
    {
      connector: 'C15',
      inlet: 'C14',
      fits: true,
      source: 'StayOnline, "The Shape of Things", 2025; cableleader.com chart',
    },
    { connector: 'C13', inlet: 'C16', fits: false, source: 'the same two' },
    { connector: 'C21', inlet: 'C20', fits: true, source: 'StayOnline, "The Shape of Things", 2025' },
    { connector: 'C19', inlet: 'C22', fits: false, source: 'StayOnline, "The Shape of Things", 2025' },
    {
      connector: 'C5',
      inlet: 'C8',
      fits: false,
      source: 'StayOnline, reference chart: not interchangeable with C7/C8',
    },
    {
      connector: 'C7',
      inlet: 'C6',
      fits: false,
      source: 'StayOnline, reference chart: not interchangeable with C5/C6',
    },
    { connector: 'C13', inlet: 'C20', fits: false, source: 'IEC 60320-3 sheets, from memory' },
    { connector: 'C17', inlet: 'C14', fits: false, source: 'IEC 60320-3 sheets, from memory' },
    { connector: 'C13', inlet: 'C18', fits: true, source: 'IEC 60320-3 sheets, from memory' },
    { connector: 'C7', inlet: 'C14', fits: false, source: 'IEC 60320-3 sheets, from memory' },
    { connector: 'C15A', inlet: 'C14', fits: true, source: 'IEC 60320-3 sheets, from memory' },
    { connector: 'C15', inlet: 'C16A', fits: false, source: 'IEC 60320-3 sheets, from memory' },
  ])('$connector into $inlet: $fits ($source)', ({ connector, inlet, fits }) => {
    expect(connectorFits(connector, inlet)?.fits).toBe(fits)
  })
})

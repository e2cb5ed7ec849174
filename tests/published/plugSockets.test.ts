import { describe, expect, it } from 'vitest'
import { fits, plugByName } from '../../server/tables/sockets.js'

const museum = 'Museum of Plugs and Sockets'
const wikipedia = 'Wikipedia, AC power plugs and sockets'

describe('plugs in sockets', () => {
  it.each([
    { plug: 'CEE 7/16', letter: 'C', fits: 'yes', earth: 'not applicable', source: `${museum}, Europlug` },
    { plug: 'CEE 7/16', letter: 'E', fits: 'yes', earth: 'not applicable', source: `${museum}, Europlug` },
    { plug: 'CEE 7/16', letter: 'F', fits: 'yes', earth: 'not applicable', source: `${museum}, Europlug` },
    { plug: 'CEE 7/16', letter: 'J', fits: 'yes', earth: 'not applicable', source: `${museum}, Swiss` },
    { plug: 'CEE 7/16', letter: 'K', fits: 'yes', earth: 'not applicable', source: `${wikipedia}, Danish plugs` },
    { plug: 'CEE 7/16', letter: 'L', fits: 'yes', earth: 'not applicable', source: `${museum}, Italian` },
    { plug: 'CEE 7/16', letter: 'H', fits: 'yes', earth: 'not applicable', source: `${museum}, Israeli` },
    { plug: 'CEE 7/16', letter: 'N', fits: 'yes', earth: 'not applicable', source: `${museum}, Europlug` },
    { plug: 'CEE 7/16', letter: 'G', fits: 'forced', earth: 'not applicable', source: 'Wikipedia on BS 1363 shutters' },
    { plug: 'CEE 7/16', letter: 'I', fits: 'no', earth: 'not applicable', source: 'Wikipedia (de), Eurostecker' },
    { plug: 'CEE 7/16', letter: 'A', fits: 'no', earth: 'not applicable', source: 'Wikipedia (de), Eurostecker' },
    { plug: 'CEE 7/16', letter: 'B', fits: 'no', earth: 'not applicable', source: 'Wikipedia (de), Eurostecker' },
    { plug: 'CEE 7/7', letter: 'E', fits: 'yes', earth: 'made', source: `${museum}, E/F hybrid` },
    { plug: 'CEE 7/7', letter: 'F', fits: 'yes', earth: 'made', source: `${museum}, E/F hybrid` },
    { plug: 'CEE 7/7', letter: 'C', fits: 'yes', earth: 'lost', source: `${wikipedia}, CEE 7` },
    { plug: 'CEE 7/7', letter: 'K', fits: 'yes', earth: 'lost', source: `${wikipedia}, Danish plugs` },
    { plug: 'CEE 7/7', letter: 'O', fits: 'yes', earth: 'lost', source: `${museum}, Thai` },
    { plug: 'CEE 7/7', letter: 'J', fits: 'forced', earth: 'lost', source: `${museum}, Swiss` },
    { plug: 'CEE 7/7', letter: 'H', fits: 'forced', earth: 'lost', source: `${museum}, Israeli` },
    { plug: 'CEE 7/7', letter: 'L', fits: 'forced', earth: 'lost', source: 'gufosaggio.net' },
    { plug: 'CEE 7/7', letter: 'N', fits: 'no', earth: 'not applicable', source: `${museum}, IEC 60906-1` },
    { plug: 'CEE 7/7', letter: 'G', fits: 'no', earth: 'not applicable', source: 'BS 1363, from memory' },
    { plug: 'CEE 7/4', letter: 'F', fits: 'yes', earth: 'made', source: 'Wikipedia, CEE 7' },
    { plug: 'CEE 7/4', letter: 'E', fits: 'no', earth: 'not applicable', source: 'wall-switchs.com, page 8772' },
    { plug: 'CEE 7/4', letter: 'C', fits: 'yes', earth: 'lost', source: `${wikipedia}, CEE 7` },
    { plug: 'CEE 7/6', letter: 'E', fits: 'yes', earth: 'made', source: `${wikipedia}, CEE 7/5 and 7/6` },
    { plug: 'CEE 7/6', letter: 'F', fits: 'forced', earth: 'lost', source: 'kyautomation.com' },
    { plug: 'CEE 7/17', letter: 'F', fits: 'yes', earth: 'not applicable', source: `${museum}, CEE 7/17` },
    { plug: 'NEMA 1-15', letter: 'A', fits: 'yes', earth: 'not applicable', source: `${wikipedia}, NEMA 1-15` },
    { plug: 'NEMA 1-15', letter: 'B', fits: 'yes', earth: 'not applicable', source: `${wikipedia}, NEMA 1-15` },
    { plug: 'NEMA 5-15', letter: 'B', fits: 'yes', earth: 'made', source: 'plugandcable.com' },
    { plug: 'NEMA 5-15', letter: 'A', fits: 'no', earth: 'not applicable', source: `${wikipedia}, NEMA 1-15` },
    { plug: 'NEMA 5-15', letter: 'G', fits: 'no', earth: 'not applicable', source: 'shapes differ, from memory' },
    { plug: 'NEMA 1-15', letter: 'C', fits: 'no', earth: 'not applicable', source: 'shapes differ, from memory' },
    { plug: 'BS 1363', letter: 'G', fits: 'yes', earth: 'made', source: 'pat-testing.info' },
    { plug: 'BS 1363', letter: 'C', fits: 'no', earth: 'not applicable', source: 'pat-testing.info' },
    { plug: 'BS 1363', letter: 'D', fits: 'no', earth: 'not applicable', source: 'pat-testing.info' },
    { plug: 'BS 546 5 A', letter: 'D', fits: 'yes', earth: 'made', source: `${wikipedia}, BS 546` },
    { plug: 'BS 546 5 A', letter: 'M', fits: 'no', earth: 'not applicable', source: `${wikipedia}, BS 546` },
    { plug: 'BS 546 15 A', letter: 'M', fits: 'yes', earth: 'made', source: `${wikipedia}, BS 546` },
    { plug: 'BS 546 15 A', letter: 'D', fits: 'no', earth: 'not applicable', source: `${wikipedia}, BS 546` },
    { plug: 'AS/NZS 3112', letter: 'I', fits: 'yes', earth: 'made', source: 'Wikipedia, AS/NZS 3112' },
    { plug: 'AS/NZS 3112 15 A', letter: 'I', fits: 'no', earth: 'not applicable', source: 'Wikipedia, AS/NZS 3112' },
    { plug: 'SN 441011 T12', letter: 'J', fits: 'yes', earth: 'made', source: `${museum}, Swiss` },
    { plug: 'SN 441011 T12', letter: 'N', fits: 'no', earth: 'not applicable', source: `${museum}, IEC 60906-1` },
    { plug: 'DS 60884-2-D1', letter: 'K', fits: 'yes', earth: 'made', source: `${wikipedia}, Danish plugs` },
    { plug: 'CEI 23-50 S11', letter: 'L', fits: 'yes', earth: 'made', source: `${museum}, Italian` },
    { plug: 'CEI 23-50 S11', letter: 'F', fits: 'no', earth: 'not applicable', source: 'pinogiunta.com' },
    { plug: 'CEI 23-50 S17', letter: 'L', fits: 'depends', earth: 'made', source: `${museum}, Italian: 10 A or 16 A` },
    { plug: 'SI 32', letter: 'H', fits: 'yes', earth: 'made', source: `${museum}, Israeli` },
    { plug: 'TIS 166-2549', letter: 'O', fits: 'yes', earth: 'made', source: `${museum}, Thai` },
    { plug: 'TIS 166-2549', letter: 'K', fits: 'no', earth: 'not applicable', source: 'World Standards, type O' },
  ])('$plug in $letter: $fits, earth $earth ($source)', ({ plug, letter, ...expected }) => {
    expect(fits(plug, letter)).toMatchObject({ fits: expected.fits, earth: expected.earth })
  })

  it.each([
    { plug: 'NBR 14136 10 A', letter: 'N', country: 'BR', fits: 'yes', source: `${museum}, IEC 60906-1` },
    { plug: 'NBR 14136 20 A', letter: 'N', country: 'BR', fits: 'depends', source: 'NBR 14136, from memory' },
    { plug: 'IEC 60906-1', letter: 'N', country: 'BR', fits: 'no', source: `${museum}, IEC 60906-1` },
    { plug: 'IEC 60906-1', letter: 'N', country: 'ZA', fits: 'yes', source: `${museum}, IEC 60906-1` },
    {
      plug: 'CEE 7/16',
      letter: 'A',
      country: 'CN',
      fits: 'yes',
      source: 'Wikipedia (de), Eurostecker: combined outlet',
    },
    {
      plug: 'NEMA 1-15',
      letter: 'A',
      country: 'JP',
      fits: 'depends',
      source: 'techwalla.com: old outlets have narrow slots',
    },
  ])('$plug in $letter of $country: $fits ($source)', ({ plug, letter, country, fits: expected }) => {
    expect(fits(plug, letter, country)?.fits).toBe(expected)
  })

  /** Argentine and Australasian line and neutral are the other way round: Wikipedia, AS/NZS 3112. */
  it('an Australasian plug in Argentina fits, and the row says line and neutral are reversed', () => {
    const found = fits('AS/NZS 3112', 'I', 'AR')
    expect(found).toMatchObject({ fits: 'yes', earth: 'made' })
    expect(found?.rows.map((row) => row.note).join()).toContain('reversed')
  })
})

describe('ratings of plugs', () => {
  it.each([
    { plug: 'CEE 7/16', ratedV: 250, ratedA: 2.5, earthed: false, rewirable: false, source: 'EN 50075:1990, title' },
    { plug: 'CEE 7/7', ratedV: 250, ratedA: 16, earthed: true, rewirable: true, source: `${museum}, E/F hybrid` },
    { plug: 'BS 1363', ratedV: 250, ratedA: 13, earthed: true, rewirable: true, source: 'BS 1363-1, abstract' },
    { plug: 'NEMA 1-15', ratedV: 125, ratedA: 15, earthed: false, rewirable: true, source: wikipedia },
    { plug: 'NEMA 5-15', ratedV: 125, ratedA: 15, earthed: true, rewirable: true, source: 'plugandcable.com' },
    { plug: 'AS/NZS 3112', ratedV: 250, ratedA: 10, earthed: true, rewirable: true, source: 'Wikipedia, AS/NZS 3112' },
  ])('$plug: $ratedA A $ratedV V ($source)', ({ plug, ratedV, ratedA, earthed, rewirable }) => {
    expect(plugByName(plug)).toMatchObject({ ratedV, ratedA, earthed, rewirable })
  })
})

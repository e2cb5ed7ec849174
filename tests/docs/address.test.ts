import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { boxes } from '../../server/facts/boxes.js'
import { addressDocument } from './addressDocument.js'

const page = readFileSync(new URL('../../docs/address.md', import.meta.url), 'utf8')

it('the page of the address is the one that the rows of the facts make', () => {
  expect(page).toBe(addressDocument())
})

/** Names that stood in addresses before facts were rows; what was bookmarked by them stays good. */
const kept =
  'country mains hz socket supply in inhz ina inva inw selector type regulated class inlet fuse outtotal plugouter ' +
  'pluginner plugpol plugname leadm leadmm2 leadawg offload loaded measuredpol machine needreg jackouter jackinner ' +
  'jackpol jackname cordplug cordend cordv corda cordearth cordmm2 cordawg cordplugfitted adapter converter converterv ' +
  'converterva out1 out1kind out1a out1w out6 out6kind out6a out6w need1 need1kind need1a need1by need1tol need6 need6tol'

it('every name that ever stood in an address is still read', () => {
  const names = new Set(boxes.map(({ name }) => name))
  expect(kept.split(' ').filter((name) => !names.has(name))).toEqual([])
})

import { readFileSync } from 'node:fs'
import { assess } from '../../../server/chain/assess.js'
import { assessPrepared } from '../../../server/chain/assessPrepared.js'
import { prepareSite } from '../../../server/chain/prepareSite.js'
import type { CheckRequest } from '../../../server/chain/request.js'
import { readPlate } from '../../../server/plate/readPlate.js'
import { deviceReady, supplyReady } from '../../../server/shelf/prepared.js'
import type { Rates } from './chain.js'
import { perSecond } from './rate.js'

/** What the chain is measured with. */
export interface ChainCases {
  situations: CheckRequest[]
  /** the same with nothing to be read */
  typedIn: CheckRequest[]
  plates: string[]
}

const { situations, typedIn, plates } = JSON.parse(readFileSync(process.argv[2] as string, 'utf8')) as ChainCases

const turning =
  <Case>(cases: readonly Case[], work: (one: Case) => unknown) =>
  (turn: number): unknown =>
    work(cases[turn % cases.length] as Case)

const prepared = situations.map(
  ({ site, supply, device, cord, converter }) =>
    [prepareSite(site), supplyReady(supply), deviceReady(device), cord, converter] as const,
)

const answers = typedIn.map((one) => assess(one))

const rates: Rates = perSecond({
  assess: turning(typedIn, (one) => assess(one)),
  withPlates: turning(situations, (one) => assess(one)),
  prepared: turning(prepared, (one) => assessPrepared(...one)),
  plates: turning(plates, (text) => readPlate(text, 'supply')),
  json: turning(answers, (answer) => JSON.stringify(answer)),
})
console.log(JSON.stringify(rates))

import { readFileSync } from 'node:fs'
import { assess } from '../../../server/chain/assess.js'
import { assessPrepared } from '../../../server/chain/assessPrepared.js'
import { prepareSite } from '../../../server/chain/prepareSite.js'
import type { CheckRequest } from '../../../server/chain/request.js'
import { readPlate } from '../../../server/plate/readPlate.js'
import { deviceReady, supplyReady } from '../../../server/shelf/prepared.js'
import type { Rate, Rates } from './chain.js'
import { perSecond } from './rate.js'

/** What the chain is measured with. */
export interface ChainCases {
  situations: CheckRequest[]
  /** the same with nothing to be read */
  typedIn: CheckRequest[]
  plates: string[]
}

const { situations, typedIn, plates } = JSON.parse(readFileSync(process.argv[2] as string, 'utf8')) as ChainCases

const rate = <Case>(cases: readonly Case[], work: (one: Case) => unknown): Rate =>
  perSecond((turn) => work(cases[turn % cases.length] as Case))

const prepared = situations.map(
  ({ site, supply, device, cord, converter }) =>
    [prepareSite(site), supplyReady(supply), deviceReady(device), cord, converter] as const,
)

const measured = (): Rates => ({
  assess: rate(typedIn, (one) => assess(one)),
  withPlates: rate(situations, (one) => assess(one)),
  prepared: rate(prepared, (one) => assessPrepared(...one)),
  plates: rate(plates, (text) => readPlate(text, 'supply')),
  json: rate(
    typedIn.map((one) => assess(one)),
    (answer) => JSON.stringify(answer),
  ),
})

// once to warm up: the compiler of Node.js is done with this much code only after seconds of all of it
measured()
console.log(JSON.stringify(measured()))

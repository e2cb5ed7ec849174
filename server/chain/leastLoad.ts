import { commonPractice, published } from '../tables/source.js'
import { say } from '../words/phrase.js'
import { amperes, ohms, volts, watts } from '../words/quantity.js'
import { underPower } from './action.js'
import type { PairSituation, Rail } from './case/situation.js'
import { caution, type Judgement } from './judgement.js'
import { drawnA } from './matching/matchRails.js'
import { railText } from './matching/railText.js'
import { ratingPlate } from './words.js'

const outsideLeast = published(
  'ATX12V Power Supply Design Guide 2.0',
  'tables 3, 4 and 6: each output has a least current, outside which its regulation is not promised',
)
const sensedOutput = commonPractice(
  'Load on the output that is regulated',
  'repair notes on supplies with several outputs: the one that the supply regulates by must be loaded, or the others leave their voltages',
)

/**
 * Outputs of which less is drawn than they need.
 *
 *   I_more = I_least − Σ I_drawn,   R ≤ V / I_more,   P = V · I_more
 *
 * Nothing for an output whose least current is not known, or of which it is not known what is drawn. Where the outputs may be
 * the positions of one switch, those that nothing is drawn from may not be there.
 */
export function leastLoads({ supply, pairs }: Pick<PairSituation, 'supply' | 'pairs'>): Judgement[] {
  return supply.rails.flatMap((rail) => {
    const drawing = pairs.filter((pair) => pair.supply === rail)
    if (rail.leastA == null || (drawing.length === 0 && supply.railsMayBePositions)) return []
    let drawn = 0
    for (const { device } of drawing) {
      const one = drawnA(device)
      if (one === null) return []
      drawn += one
    }
    return drawn < rail.leastA ? [tooLittle(rail, rail.leastA, drawn)] : []
  })
}

const tooLittle = (rail: Rail, leastA: number, drawn: number): Judgement =>
  caution(() => {
    const size = Math.abs(rail.voltageV)
    const moreA = leastA - drawn
    const resistor = say`a resistor of ${ohms(size / moreA, 3, 'down')} or less across that output, which turns ${watts(size * moreA, 3, 'up')} into heat`
    return {
      title: say`${railText(rail)}: at least ${amperes(leastA, 4, 'up')} must be drawn, the machine takes ${drawn > 0 ? amperes(drawn, 4, 'down') : say`nothing`}`,
      why: say`With less than its least load a supply may not start, may shut itself off, or may let this output or its others rise beyond what the machine stands.`,
      working: [
        say`${amperes(leastA, 4, 'up')} − ${amperes(drawn, 4, 'down')} = ${amperes(moreA, 4, 'up')}`,
        say`${volts(size)} / ${amperes(moreA, 4, 'up')} = ${ohms(size / moreA, 3, 'down')}; ${volts(size)} × ${amperes(moreA, 4, 'up')} = ${watts(size * moreA, 3, 'up')}`,
      ],
      action: [
        say`Put ${resistor}, rated for at least twice that, before the supply is switched on.`,
        underPower(say`Then prove every output alone before the machine is connected.`, 'mains'),
      ],
      sources: [ratingPlate, outsideLeast, sensedOutput],
    }
  })

import { atMost } from '../physics/tolerance.js'
import { motorConverter, motorStart } from '../tables/inside.js'
import { say } from '../words/phrase.js'
import { decimal, voltAmperes } from '../words/quantity.js'
import type { MainsSituation } from './case/situation.js'
import { inputPower } from './inputPower.js'
import { caution, clear, type Judgement, unknown } from './judgement.js'
import { mainsTopic } from './topic.js'

/** Sources that give up at a peak: what a start asks for decides. */
const peaky: readonly MainsSituation['site']['source'][] = ['inverter-sine', 'inverter-stepped', 'generator']

/** A recorder for 230 V behind a converter, with a motor on the mains. */
const motorExample = { mains: { motor: 'induction' as const } }

/** Whether what a mains motor asks for at its start can be given: by a converter, an inverter, a generator. */
export const starting = mainsTopic({
  name: 'starting',
  words: say`the start of motors`,
  links: ['converter', 'source', 'machine'],
  asks: ['converter.ratedVA', 'supply.input.powerVA'],
  when: {
    stop: { never: say`A start that cannot be made shows at once: the motor hums and stands, and is switched off.` },
    unknown: {
      rule: say`A motor on the mains is fed by a converter, and its rating or what the machine takes is not known.`,
      example: { converter: { kind: 'isolating', outputV: 230, ratedVA: null }, device: motorExample },
    },
    caution: {
      rule: say`The rating is less than ${decimal(motorConverter.value)} times what the machine takes; or an inverter or a generator feeds it, which gives up at its peak.`,
      example: { converter: { kind: 'isolating', outputV: 230, ratedVA: 60 }, device: motorExample },
    },
    clear: {
      rule: say`The rating is ${decimal(motorConverter.value)} times what the machine takes or more.`,
      example: { converter: { kind: 'isolating', outputV: 230, ratedVA: 500 }, device: motorExample },
    },
  },
  judge(situation) {
    const { device, converter, site } = situation
    const motor = device?.motor
    if (motor !== 'induction' && motor !== 'synchronous' && motor !== 'universal') return []
    return [
      ...(converter ? [behindConverter(situation, converter.ratedVA)] : []),
      ...(peaky.includes(site.source) ? [fromPeaky(motorStart[motor])] : []),
    ]
  },
})

const stalled =
  'A source that sags keeps the motor standing: it then draws its starting current until something opens or burns. A larger fuse-link is never the answer.'

function behindConverter({ supply }: MainsSituation, ratedVA: number | null): Judgement {
  const power = inputPower(supply)
  if (ratedVA === null || power === null)
    return unknown(() => ({
      title: say`Whether the converter starts the motor is not known: ${ratedVA === null ? say`its rating` : say`what the machine takes`} is missing`,
      why: stalled,
      working: [],
      action: say`Read the plate of the ${ratedVA === null ? say`converter` : say`machine`} and enter it.`,
      sources: [motorConverter.source],
    }))
  const neededVA = motorConverter.value * power.powerVA
  const enough = atMost(neededVA, ratedVA)
  return (enough ? clear : caution)(() => ({
    title: enough
      ? say`A converter of ${voltAmperes(ratedVA)} starts a motor that takes ${voltAmperes(power.powerVA, 3, 'up')}`
      : say`A converter of ${voltAmperes(ratedVA)} may not start a motor that takes ${voltAmperes(power.powerVA, 3, 'up')}`,
    why: stalled,
    working: [
      ...power.working,
      say`${decimal(motorConverter.value)} × ${voltAmperes(power.powerVA, 4, 'up')} = ${voltAmperes(neededVA, 4, 'up')}`,
    ],
    action: enough
      ? null
      : say`Prefer one of ${voltAmperes(neededVA, 3, 'up')} or more; switch off at once where the motor hums and stands.`,
    sources: [...power.sources, motorConverter.source],
  }))
}

const fromPeaky = (times: number): Judgement =>
  caution(() => ({
    title: say`A motor may ask for up to ${decimal(times)} times its current at the start, and this source gives up at its peak`,
    why: stalled,
    working: [],
    action: say`Look on the source for its peak rating: it has to be at least ${decimal(times)} times what the machine takes. Switch off at once where the motor hums and stands.`,
    sources: [motorStart.source],
  }))

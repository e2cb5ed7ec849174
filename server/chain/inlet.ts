import { connectorByName, connectorFits, inletByName } from '../tables/inlets.js'
import { commonPractice, fromMemory } from '../tables/source.js'
import { say } from '../words/phrase.js'
import { prose } from '../words/prose.js'
import { buying, nearWiring } from './action.js'
import { classOne, earthedCord } from './example.js'
import { clear, stop, type Text, unknown } from './judgement.js'
import { isCaptive, isPlugIn } from './protectionClass.js'
import { mainsTopic } from './topic.js'

const sheets = fromMemory('IEC 60320-1 and IEC 60320-3', 'standard sheets of connectors and appliance inlets')
const noCoupler = commonPractice('Captive flex', 'a flex led into the unit has no appliance coupler')

/** Whether the cord's connector goes into the supply's appliance inlet. */
export const inlet = mainsTopic({
  name: 'inlet',
  words: say`the connector in the inlet`,
  links: ['inlet', 'cord'],
  asks: ['supply.inlet', 'cord.connector'],
  when: {
    stop: {
      rule: say`The connector does not mate with the inlet.`,
      example: { supply: classOne, cord: { ...earthedCord, connector: 'C7' } },
    },
    unknown: {
      rule: say`Inlet or connector is not known or not one of IEC 60320, or a captive flex and a connector are both named.`,
      example: { supply: { inlet: null } },
    },
    caution: { never: say`Two shapes fit or do not; there is nothing between.` },
    clear: {
      rule: say`The connector is the inlet’s own, or a hotter one that mates; or the flex is captive.`,
      example: {},
    },
  },
  judge({ supply, cord }) {
    const { called } = supply
    if (supply.input.kind === 'dc') return []
    const has = supply.inlet
    const connector = cord?.connector?.trim() || null
    const captive = isCaptive(has) || isPlugIn(has)
    if (captive && (connector === null || isCaptive(connector))) return [clear(captiveBoth)]
    if (has === null || connector === null) return [unknown(() => missing(called, has, connector))]
    if (captive || isCaptive(connector)) return [unknown(() => contradiction(has, connector))]
    const mating = connectorFits(connector, has)
    if (!mating) return [unknown(() => notListed(has, connector))]
    const text: Text = {
      title: mating.fits
        ? say`A ${name(connector)} connector goes into the ${inletName(has)} inlet`
        : say`A ${name(connector)} connector does not go into the ${inletName(has)} inlet`,
      why: mating.fits
        ? mating.why
        : say`${mating.why} Forced or filed it makes poor contact, or leaves the earth out.`,
      working: mating.doubt ? [prose(mating.doubt)] : [],
      action: mating.fits
        ? null
        : buying(
            nearWiring(
              say`Buy a whole cord set with a ${inletByName(has)?.connector ?? say`matching`} connector; change neither connector nor inlet by hand.`,
            ),
          ),
      sources: [...mating.sources],
    }
    return [mating.fits ? clear(() => text) : stop(() => text)]
  },
})

const name = (connector: string): string => connectorByName(connector)?.connector ?? connector
const inletName = (has: string): string => inletByName(has)?.inlet ?? has

const captiveBoth = (): Text => ({
  title: say`The flex is captive: there is no inlet to match`,
  why: say`Nothing can be plugged together wrongly here.`,
  working: [],
  action: null,
  sources: [noCoupler],
})

const missing = (called: string, has: string | null, connector: string | null): Text => ({
  title:
    has === null && connector === null
      ? say`Neither the ${called}’s inlet nor the cord’s connector is known`
      : has === null
        ? say`The ${called}’s inlet is not known; the cord has a ${connector ?? say``} connector`
        : say`The cord’s connector is not known; the ${called} has a ${has ?? say``} inlet`,
  why: say`A connector of another pair does not go in, or goes in without its earth or at too high a temperature.`,
  working: [],
  action: say`Compare the shapes: C14 is the usual three-pin inlet, C8 the figure of eight, C6 the clover leaf, C16 has a notch and a ridge for hot pins, C18 is a C14 without earth. A flex that cannot be pulled out is “captive”.`,
  sources: [sheets],
})

const contradiction = (has: string, connector: string): Text => ({
  title: say`A captive flex and a coupler exclude each other: inlet ${has}, connector ${connector}`,
  why: say`One of the two facts belongs to another unit.`,
  working: [],
  action: say`Look whether the flex can be pulled out of the unit, and enter both again.`,
  sources: [noCoupler],
})

const notListed = (has: string, connector: string): Text => ({
  title: say`Inlet “${has.slice(0, 30)}” with connector “${connector.slice(0, 30)}” is not in the table`,
  why: say`Whether they mate, at what current and with what earth, cannot be told.`,
  working: [],
  action: nearWiring(
    say`Look for a number such as C13 or C14 moulded into them and enter it. An inlet of another system needs its own maker’s cord.`,
  ),
  sources: [sheets],
})

import { connectorByName, inletByName } from '../tables/inlets.js'
import { plugByName, plugsFor } from '../tables/sockets.js'
import { commonPractice, fromMemory, type Source } from '../tables/source.js'
import { extraLowVoltageMostV } from '../tables/thresholds.js'
import { capital, listed, or, type Phrase, say } from '../words/phrase.js'
import { volts } from '../words/quantity.js'
import { byQualified, nearWiring } from './action.js'
import type { MainsSituation } from './case/situation.js'
import { classOne, earthedCord } from './example.js'
import { fitsAt } from './fitsAt.js'
import { caution, clear, type Judgement, stop, type Text, uniqueSources, unknown } from './judgement.js'
import { isCaptive, isPlugIn, type KnownClass, protectionClassOf } from './protectionClass.js'
import { mainsTopic } from './topic.js'
import { wholeCordSet } from './wholeCordSet.js'
import { ratingPlate, windowText } from './words.js'

const classes = fromMemory(
  'IEC 61140, classes of equipment',
  'class I relies on the protective earth; class II needs none; class III takes extra-low voltage only',
)

const everyLink = commonPractice(
  'Protective earth of class I equipment',
  'it is only as good as its weakest link, so each is judged and each is tested with an instrument before first power',
)

interface Link {
  name: string
  carries: 'yes' | 'no' | 'not known'
  /** what is known, or how to find out */
  says: Phrase
  sources: readonly Source[]
}

/** Whether the protective earth reaches the supply, if it needs one. */
export const earthing = mainsTopic({
  name: 'earthing',
  words: say`the earth path`,
  links: ['cord', 'socket', 'adapter'],
  asks: [
    'supply.inlet',
    'supply.protectionClass',
    'cord.earthed',
    'cord.plug',
    'cord.adapter.earthed',
    'site.socket',
    'site.country',
  ],
  when: {
    stop: {
      rule: say`A class I supply has a link that is known not to carry the earth: inlet, cord, plug, socket or adapter; or a class III unit claims mains.`,
      example: { supply: classOne, cord: { ...earthedCord, adapter: { earthed: false } } },
    },
    unknown: {
      rule: say`The class of protection is not known, or a link of a class I supply is not known to carry the earth.`,
      example: { supply: classOne, cord: { ...earthedCord, earthed: null } },
    },
    caution: {
      rule: say`Class II by words on an inlet with an earth pin, every link carrying an earth. One that may be missing counts as not known: there is no half of an earth.`,
      example: { supply: { ...classOne, protectionClass: 'II', protectionClassBy: 'words' }, cord: earthedCord },
    },
    clear: { rule: say`The supply is of class II, or every link of a class I supply carries the earth.`, example: {} },
  },
  judge(situation) {
    const { supply } = situation
    if (supply.input.kind === 'dc') return []
    if (supply.classZero) return [unknown(classZero)]
    const known = protectionClassOf(supply)
    if (!known) return [unknown(() => classNotKnown(situation))]
    if (known.protectionClass === 'II') return [againstInlet(situation, known) ?? clear(() => classTwo(known))]
    if (known.protectionClass === 'III') return [classThree(situation)]
    const links = linksOf(situation)
    if (links.some(({ carries }) => carries === 'no')) return [stop(() => lost(situation, known, links))]
    if (links.some(({ carries }) => carries === 'not known')) return [unknown(() => notKnown(known, links))]
    return [clear(() => carried(known, links))]
  },
})

/** Class II by words or a guess, on an inlet that has an earth pin: the double square alone settles it. */
function againstInlet(situation: MainsSituation, known: KnownClass): Judgement | null {
  const { inlet } = situation.supply
  const pair = inlet === null ? undefined : inletByName(inlet)
  if (!pair || !known.doubted) return null
  const links = linksOf(situation)
  const missing = links.some(({ carries }) => carries !== 'yes')
  return (missing ? unknown : caution)(() => ({
    title: missing
      ? say`Class II (${known.from}) on a ${pair.inlet} inlet, which has an earth pin, and not every link is known to carry an earth`
      : say`Class II (${known.from}) on a ${pair.inlet} inlet, which has an earth pin`,
    why: say`That inlet is made for class I: if the unit relies on an earth after all, one fault puts mains on metal parts and on the machine’s chassis.`,
    working: links.map(linkLine),
    action: say`Look on the plate for a square inside a square, and enter that the class is known by its symbol. Until it is found, use an earthed cord in an earthed socket.`,
    sources: sourcesOf(known, links),
  }))
}

function linksOf(situation: MainsSituation): Link[] {
  const captive = isCaptive(situation.supply.inlet)
  return [
    inletLink(situation),
    ...(captive ? [] : [cordLink(situation)]),
    ...plugLinks(situation),
    ...converterLink(situation),
  ]
}

function inletLink({ supply, cord }: MainsSituation): Link {
  const name = 'inlet'
  const { inlet } = supply
  if (isCaptive(inlet))
    return {
      name: 'captive flex',
      carries: cord?.earthed == null ? 'not known' : cord.earthed ? 'yes' : 'no',
      says:
        cord?.earthed == null
          ? say`count its cores or read the print on it (3G, 3 ×)`
          : cord.earthed
            ? say`three-core`
            : say`two-core`,
      sources: [everyLink],
    }
  if (isPlugIn(inlet)) return { name, carries: 'yes', says: say`plugs straight into the socket`, sources: [everyLink] }
  const pair = inlet === null ? undefined : inletByName(inlet)
  if (!pair)
    return {
      name,
      carries: 'not known',
      says: say`read its shape: C14 and C6 have an earth pin, C8 and C18 have none`,
      sources: [classes],
    }
  return {
    name: `${pair.inlet} inlet`,
    carries: pair.earthed ? 'yes' : 'no',
    says: pair.earthed ? say`has an earth pin` : say`has no earth pin`,
    sources: pair.sources,
  }
}

function cordLink({ supply, cord }: MainsSituation): Link {
  const name = 'cord'
  if (isPlugIn(supply.inlet)) return { name, carries: 'yes', says: say`none between`, sources: [everyLink] }
  const connector = cord?.connector ? connectorByName(cord.connector) : undefined
  if (connector && !connector.earthed)
    return {
      name,
      carries: 'no',
      says: say`a ${connector.connector} connector has no earth contact`,
      sources: connector.sources,
    }
  if (cord?.earthed == null)
    return {
      name,
      carries: 'not known',
      says: say`find out whether the cord has an earth conductor: measure from the plug’s earth contact to the connector’s`,
      sources: [everyLink],
    }
  return {
    name,
    carries: cord.earthed ? 'yes' : 'no',
    says: cord.earthed ? say`earthed` : say`not earthed`,
    sources: [everyLink],
  }
}

function plugLinks({ cord, site, converter }: MainsSituation): Link[] {
  const plug = cord?.plug ? plugByName(cord.plug) : undefined
  if (!plug)
    return [{ name: 'plug', carries: 'not known', says: say`say which plug is on the cord`, sources: [everyLink] }]
  if (!plug.earthed)
    return [{ name: `${plug.name} plug`, carries: 'no', says: say`has no earth contact`, sources: plug.sources }]
  if (cord?.adapter)
    return [
      {
        name: 'adapter',
        carries: cord.adapter.earthed === null ? 'not known' : cord.adapter.earthed ? 'yes' : 'no',
        says:
          cord.adapter.earthed === null
            ? say`find out whether it passes the earth on: measure it from side to side`
            : cord.adapter.earthed
              ? say`earthed`
              : say`drops the earth`,
        sources: [everyLink],
      },
      ...(converter ? [] : [adapterSocketLink(site)]),
    ]
  if (converter)
    return [{ name: `${plug.name} plug`, carries: 'yes', says: say`has an earth contact`, sources: plug.sources }]
  if (site.source === 'two-live' && site.sockets.length === 0)
    return [
      {
        name: `${plug.name} plug in its outlet`,
        carries: 'yes',
        says: say`has an earth contact; its own topic says whether it goes in`,
        sources: plug.sources,
      },
    ]
  if (site.sockets.length === 0)
    return [
      {
        name: `${plug.name} plug in the socket`,
        carries: 'not known',
        says: say`say which socket the site has`,
        sources: plug.sources,
      },
    ]
  return [socketLink(plug.name, site)]
}

/** Behind an adapter the plug is not known, but a socket that gives no plug an earth gives none to an adapter. */
function adapterSocketLink({ sockets, country }: MainsSituation['site']): Link {
  const name = 'socket behind the adapter'
  const bare = sockets.filter((letter) => plugsFor(letter, true, country ?? undefined).length === 0)
  const sources = [everyLink]
  if (sockets.length === 0) return { name, carries: 'not known', says: say`say which socket the site has`, sources }
  if (bare.length === 0)
    return { name, carries: 'yes', says: say`${listed(sockets, or)} has an earth contact`, sources }
  if (bare.length === sockets.length)
    return { name, carries: 'no', says: say`socket ${listed(bare, or)} has no earth contact`, sources }
  return {
    name,
    carries: 'not known',
    says: say`socket ${listed(bare, or)} has no earth contact; look at the socket and enter its letter`,
    sources,
  }
}

function socketLink(plug: string, site: MainsSituation['site']): Link {
  const { sockets } = site
  const made: { letter: string; earth: string; sources: readonly Source[] }[] = []
  for (const letter of sockets) {
    const fit = fitsAt(plug, letter, site)
    if (!fit) made.push({ letter, earth: 'depends', sources: [] })
    else if (fit.fits !== 'no')
      made.push({ letter, earth: fit.earth, sources: fit.rows.flatMap(({ sources }) => sources) })
  }
  const sources = made.flatMap((entry) => entry.sources)
  const each = listed(made.map(({ letter, earth }) => `${letter}: ${earthText(earth)}`))
  const name = `${plug} plug in the socket`
  if (made.length === 0)
    return {
      name,
      carries: 'not known',
      says: say`it goes into none of ${listed(sockets, or)}`,
      sources: [everyLink],
    }
  if (made.every(({ earth }) => earth === 'made')) return { name, carries: 'yes', says: each, sources }
  if (made.every(({ earth }) => earth === 'lost' || earth === 'not applicable'))
    return { name, carries: 'no', says: each, sources }
  return { name, carries: 'not known', says: say`${each}; look at the socket and enter its letter`, sources }
}

const earthText = (earth: string): string =>
  earth === 'made' ? 'earth made' : earth === 'depends' ? 'depends on the socket' : 'earth lost'

function converterLink({ converter }: MainsSituation): Link[] {
  if (!converter) return []
  if (converter.earthed != null)
    return [
      {
        name: 'converter',
        carries: converter.earthed ? 'yes' : 'no',
        says: converter.earthed ? say`passes the earth on` : say`does not pass the earth on`,
        sources: [everyLink],
      },
    ]
  return [
    {
      name: 'converter',
      carries: 'not known',
      says: say`measure from the earth contact of its output socket to that of its plug`,
      sources: [everyLink],
    },
  ]
}

const linkLine = ({ name, carries, says }: Link): Phrase =>
  say`${name}: ${carries === 'yes' ? say`carries the earth` : carries === 'no' ? say`breaks the earth` : say`not known`} (${says})`

const sourcesOf = (known: KnownClass, links: readonly Link[]): Source[] =>
  uniqueSources([...known.sources, classes, everyLink, ...links.flatMap(({ sources }) => sources)])

function lost(situation: MainsSituation, known: KnownClass, links: readonly Link[]): Text {
  const broken = links.filter(({ carries }) => carries === 'no')
  return {
    title: say`Class I (${known.from}) needs an earth, and it is lost at the ${listed(broken.map(({ name, says }) => say`${name} (${says})`))}`,
    why: say`After one fault inside, every metal part and the machine’s chassis can carry mains.`,
    working: links.map(linkLine),
    action: [
      say`Do not connect it.`,
      wholeCordSet(
        situation,
        say`with three cores, whose plug meets the socket’s earth contact, in an earthed socket, without an adapter; do not make up an earth by hand`,
      ),
    ],
    sources: sourcesOf(known, links),
  }
}

function notKnown(known: KnownClass, links: readonly Link[]): Text {
  const open = links.filter(({ carries }) => carries === 'not known')
  return {
    title: say`Class I (${known.from}) needs an earth; not known: ${listed(open.map(({ name }) => name))}`,
    why: say`After one fault inside, every metal part and the machine’s chassis can carry mains, unless each link carries the earth.`,
    working: links.map(linkLine),
    action: [
      ...open.map(({ name, says }) => say`${capital(name)}: ${says}.`),
      byQualified(
        say`Whether the socket’s own earth is connected is for a licensed electrician or another qualified person to test.`,
      ),
    ],
    sources: sourcesOf(known, links),
  }
}

const carried = (known: KnownClass, links: readonly Link[]): Text => ({
  title: say`Class I (${known.from}): every link described carries the earth`,
  why: say`A fault inside then blows a fuse or trips the circuit, as long as the socket’s earth is connected.`,
  working: links.map(linkLine),
  action: nearWiring(byQualified(say`Before first power have the earth resistance from plug to chassis measured.`)),
  sources: sourcesOf(known, links),
})

const classTwo = (known: KnownClass): Text => ({
  title: say`Class II (${known.from}): needs no earth`,
  why: say`Its insulation is double or reinforced; a two-core cord is right.`,
  working: [],
  action: say`Never add an earth by hand.`,
  sources: uniqueSources([...known.sources, classes]),
})

function classThree({ supply }: MainsSituation) {
  const { windows } = supply.input
  const claimed = windows.filter(({ max }) => max > extraLowVoltageMostV.value)
  const sources = [classes, extraLowVoltageMostV.source, ratingPlate]
  if (claimed.length > 0)
    return stop(() => ({
      title: say`Class III cannot take mains, yet its input is entered as ${listed(claimed.map(windowText), or)}`,
      why: say`Class III equipment is built for extra-low voltage and has no insulation against mains: one of the two facts is wrong.`,
      working: [
        say`${volts(Math.max(...claimed.map(({ max }) => max)))} is more than ${volts(extraLowVoltageMostV.value)}`,
      ],
      action: say`Do not connect it. Read the plate again: the class (a square in a square is class II, a rhombus with III is class III) and the input voltage.`,
      sources,
    }))
  if (windows.length === 0)
    return unknown(() => ({
      title: say`Class III takes extra-low voltage only; the input on the plate is not known`,
      why: say`Equipment of class III has no insulation against mains.`,
      working: [],
      action: say`Read the input line of the plate and enter it. Never connect class III equipment to mains.`,
      sources,
    }))
  return clear(() => ({
    title: say`Class III on ${listed(windows.map(windowText), or)} needs no earth`,
    why: say`It takes extra-low voltage only, from a unit that is itself judged.`,
    working: [],
    action: null,
    sources,
  }))
}

const classZero = (): Text => ({
  title: say`The plate names class 0: basic insulation alone, and no earth through inlet or flex`,
  why: say`One fault of that insulation puts mains on metal parts and on the machine’s chassis. Class 0I wants an earth wire of its own; many places no longer allow class 0.`,
  working: [],
  action: nearWiring(
    byQualified(
      say`Have its insulation tested, and decided whether and how it may be used, before it meets any mains; then enter the class that it was found to be.`,
    ),
  ),
  sources: [classes, ratingPlate],
})

const classNotKnown = ({ supply }: MainsSituation): Text => ({
  title: say`Whether the ${supply.called} needs an earth is not known: no class stated${supply.inlet === null ? say` and no inlet named` : isCaptive(supply.inlet) ? say`, and a captive flex does not tell` : say``}`,
  why: say`Of class I without an earth, it can put mains on the machine’s chassis after one fault.`,
  working: [],
  action: say`Look on the plate for a square inside a square (class II: no earth), or find the inlet: two pins mean class II, three mean class I. A metal case with a captive flex: count the cores.`,
  sources: [classes],
})

import { inletByName } from '../tables/inlets.js'
import type { PlugType } from '../tables/plugTypes.js'
import { plugByName, plugsFor } from '../tables/sockets.js'
import { commonPractice, type Source } from '../tables/source.js'
import { highVoltageCordV, lowClassMostV, lowVoltageCordMostV } from '../tables/thresholds.js'
import { capital, joined, listed, or, type Phrase, say } from '../words/phrase.js'
import { prose } from '../words/prose.js'
import { amperes, volts } from '../words/quantity.js'
import { buying, byQualified, type Doing, nearWiring } from './action.js'
import type { MainsSituation } from './case/situation.js'
import { fitsAt } from './fitsAt.js'
import { caution, clear, type Judgement, stop, type Text, uniqueSources, unknown } from './judgement.js'
import { loadAtReach } from './matching/loadCurrent.js'
import { isCaptive, isPlugIn, protectionClassOf } from './protectionClass.js'
import { mainsTopic } from './topic.js'
import { cordIsCaptive } from './wholeCordSet.js'
import { aPlug } from './words.js'

const wholeSet = commonPractice(
  'Cord sets',
  'a whole moulded set with the right plug and connector is approved as one; a plug changed by hand is not',
)
const adapters = commonPractice(
  'Travel adapters',
  'they change the shape only; many drop the earth, few carry more than a few amperes for long',
)

/** Whether the plug goes into the socket. */
export const socket = mainsTopic({
  name: 'socket',
  words: say`the wall plug in the socket`,
  links: ['socket', 'cord'],
  asks: ['cord.plug', 'site.socket', 'site.country'],
  when: {
    stop: {
      rule: say`The plug does not go into the socket, or goes in by force only.`,
      example: { cord: { plug: 'NEMA 1-15' } },
    },
    unknown: {
      rule: say`The plug or the socket is not known or not listed, or the sockets met at the place disagree.`,
      example: { cord: { plug: null } },
    },
    caution: {
      rule: say`An adapter stands between, or the plug goes into a converter whose outlets are not described.`,
      example: { cord: { plug: 'NEMA 1-15', adapter: { earthed: false } } },
    },
    clear: { rule: say`The table of fits says that the plug goes into every socket that may be met.`, example: {} },
  },
  judge(situation) {
    const { supply, cord, site } = situation
    if (supply.input.kind === 'dc') return []
    if (!cord?.plug) return [unknown(() => plugNotKnown(situation))]
    const plug = plugByName(cord.plug)
    if (!plug) return [unknown(() => plugNotListed(situation, cord.plug ?? ''))]
    if (cord.adapter) return [caution(() => withAdapter(situation, plug.name))]
    if (site.source === 'two-live' && site.sockets.length === 0) return [atTwoLive(plug)]
    if (site.sockets.length === 0) return [unknown(() => socketNotKnown(plug.name))]
    const found = judgePlug(situation, plug.name)
    // the plug goes into the converter, whose outlets are not described
    return [situation.converter ? caution(() => intoConverter(plug.name, found.outcome === 'clear')) : found]
  },
})

/** The plugs of two live conductors in a country of split phases: outlets of the same figures. */
const lineToLine = (plug: PlugType): boolean => /^NEMA (?:L?6|L?14)-/.test(plug.name)

function atTwoLive(plug: PlugType): Judgement {
  if (lineToLine(plug))
    return clear(() => ({
      title: say`${capital(aPlug(plug.name))} is made for an outlet of two live conductors of its own name`,
      why: say`Its blades keep what is made for the half of the voltage out.`,
      working: [],
      action: say`Read the name on the outlet: it has to be the same.`,
      sources: [...plug.sources],
    }))
  return stop(() => ({
    title: say`${capital(aPlug(plug.name))} is none for an outlet of two live conductors`,
    why: say`Outlets for foreign plugs are not permitted in the fixed wiring, and an adapter hides that both conductors are live.`,
    working: [],
    action: buying(
      nearWiring(
        say`Use a whole cord set whose plug bears the name on the outlet, such as NEMA 6-15P, rated ${volts(highVoltageCordV.value)}.`,
      ),
    ),
    sources: [wholeSet],
  }))
}

function judgePlug(situation: MainsSituation, plug: string): Judgement {
  const { sockets, country } = situation.site
  const each = sockets.map((letter) => ({ letter, fit: fitsAt(plug, letter, situation.site) }))
  const verdictOf = ({ fit }: (typeof each)[number]): string => fit?.fits ?? 'not known'
  const letters = (verdict: string): string[] =>
    each.filter((entry) => verdictOf(entry) === verdict).map(({ letter }) => letter)
  const yes = letters('yes')
  const no = letters('no')
  const forced = letters('forced')
  const working = (): Phrase[] =>
    each.map((entry) => {
      const notes = entry.fit?.rows.map(({ note }) => note).filter((note) => note !== '') ?? []
      return say`${plug} in socket ${entry.letter}: ${verdictOf(entry)}${notes.length > 0 ? say` (${joined(notes.map(prose), '; ')})` : say``}`
    })
  const sources = (): Source[] => {
    const listed = uniqueSources(each.flatMap(({ fit }) => fit?.rows.flatMap((row) => row.sources) ?? []))
    return listed.length > 0 ? listed : [wholeSet]
  }
  const refuse = (title: Phrase, why: string): Judgement =>
    stop(() => ({
      title,
      why,
      working: working(),
      action: whatToBuy(situation),
      sources: [...sources(), wholeSet],
    }))

  if (no.length === sockets.length)
    return refuse(
      say`${capital(aPlug(plug))} does not go into socket ${listed(sockets, or)}`,
      'Pins bent, filed or pushed in loosely make hot contacts and can leave live metal exposed.',
    )
  if (yes.length === 0 && forced.length > 0 && forced.length + no.length === sockets.length)
    return refuse(
      say`${capital(aPlug(plug))} can only be forced into socket ${listed(forced, or)}`,
      'Forced, it defeats shutters or makes poor contact; it runs hot and may leave the fuse or the earth out.',
    )
  if (yes.length > 0 && yes.length + no.length === sockets.length)
    return clear(() => ({
      title: say`${capital(aPlug(plug))} fits socket ${listed(yes)}${no.length > 0 ? say`, and does not go into ${listed(no)}` : say``}`,
      why: say`Plug and socket are made for each other.`,
      working: working(),
      action:
        no.length > 0
          ? say`Where the site has socket ${listed(no, or)} instead, do not use an adapter without checking its earth and rating.`
          : null,
      sources: sources(),
    }))
  return unknown(() => ({
    title: say`Whether ${aPlug(plug)} fits depends on the socket: ${joined(
      each.map((entry) => say`${entry.letter} ${verdictOf(entry)}`),
      say`, `,
    )}`,
    why: say`Forced into the wrong one it makes poor contact or loses the earth.`,
    working: working(),
    action: say`Look at the socket where it will be used and enter its letter${country === null ? say`, and the country` : say``}; never push a plug in by force.`,
    sources: sources(),
  }))
}

/** The cord set to ask for: plug, connector, ratings; a captive flex is not for laymen. */
function whatToBuy(situation: MainsSituation): Doing {
  const { supply, site } = situation
  if (isPlugIn(supply.inlet)) return nearWiring(say`Use a supply with the right plug.`)
  if (cordIsCaptive(situation))
    return byQualified(
      say`The plug sits on captive flex: changing it is for a licensed electrician or another competent, qualified person, under local codes. Do not cut it off yourself.`,
    )
  if (!hasPlug(situation))
    return byQualified(
      say`No plug brings an earth from socket ${listed(site.sockets, or)}, and this ${supply.called} ${protectionClassOf(supply) ? say`needs one` : say`may need one`}: use an earthed socket; having one fitted is for a licensed electrician or another qualified person.`,
    )
  return buying(
    say`Buy a whole cord set${cordSet(situation)}; do not change the plug by hand${site.sockets.length > 1 ? say`, and check which socket the site has` : say``}.`,
  )
}

/** Plugs for the site's sockets; with an earth unless the supply surely needs none. */
function plugsOf({ supply, site }: MainsSituation): string[] {
  const known = protectionClassOf(supply)
  const earthed = known?.protectionClass !== 'II' || known.doubted
  return site.sockets.flatMap((letter) => plugsFor(letter, earthed, site.country ?? undefined).map(({ name }) => name))
}

const hasPlug = (situation: MainsSituation): boolean =>
  situation.site.sockets.length === 0 || plugsOf(situation).length > 0

function cordSet(situation: MainsSituation): Phrase {
  const { supply, reach } = situation
  const plugs = plugsOf(situation)
  const pair = supply.inlet === null ? undefined : inletByName(supply.inlet)
  const load = loadAtReach(situation)
  const ends = [
    ...(plugs.length > 0 ? [say`a plug ${listed([...new Set(plugs)].slice(0, 3), or)}`] : []),
    ...(pair ? [say`connector ${pair.connector}`] : []),
  ]
  const ratedV =
    reach.voltageV !== null && reach.voltageV <= lowClassMostV.value ? lowVoltageCordMostV : highVoltageCordV
  return say`${ends.length > 0 ? say` with ${joined(ends, say`, `)},` : say``} rated ${volts(ratedV.value)}${load ? say` and at least ${amperes(load.currentA, 3, 'up')}` : say``}`
}

const intoConverter = (plug: string, fitsWall: boolean): Text => ({
  title: say`The ${plug} plug goes into the converter’s outlet, not into the wall${fitsWall ? say`, which it fits too` : say``}`,
  why: say`Converters have outlets for several plugs; many pass no earth on. In the wall socket it meets the full mains.`,
  working: [],
  action: say`Look whether the converter’s outlet is made for ${aPlug(plug)}, and tie a label to the plug: “only through the converter”.`,
  sources: [adapters],
})

const withAdapter = (situation: MainsSituation, plug: string): Text => {
  const load = loadAtReach(situation)
  return {
    title: say`${capital(aPlug(plug))} through an adapter`,
    why: say`An adapter changes the shape only. One more pair of contacts may run hot, sit loose, or leave the earth or the fuse out.`,
    working: load ? load.working : [],
    action: [
      say`Read the adapter’s rating${load ? say`: it has to carry ${amperes(load.currentA, 3, 'up')}` : say``}, and measure with nothing plugged in whether it passes the earth on.`,
      ...(cordIsCaptive(situation) ? [] : [buying(say`Better: buy a whole cord set${cordSet(situation)}.`)]),
    ],
    sources: [adapters],
  }
}

const plugNotKnown = (situation: MainsSituation): Text => ({
  title: say`Which plug the cord has is not known`,
  why: say`A plug that does not belong to the socket makes poor contact or loses the earth.`,
  working: [],
  action: [
    say`Name the plug on the cord (CEE 7/7, BS 1363, NEMA 5-15 …).`,
    ...(cordIsCaptive(situation) || situation.site.sockets.length === 0
      ? []
      : [buying(say`Without a cord: buy a whole cord set${cordSet(situation)}.`)]),
  ],
  sources: [wholeSet],
})

const lookAtPictures = say`Compare it with the pictures of plug types and enter its name (CEE 7/7, BS 1363, NEMA 5-15 …).`

const plugNotListed = (situation: MainsSituation, name: string): Text => ({
  title: say`No plug called “${name.slice(0, 40)}” is in the table`,
  why: say`Whether it fits, and whether it meets the earth contact, cannot be told.`,
  working: [],
  action: isCaptive(situation.supply.inlet) ? nearWiring(lookAtPictures) : lookAtPictures,
  sources: [wholeSet],
})

const socketNotKnown = (plug: string): Text => ({
  title: say`Which socket the site has is not known; the cord has ${aPlug(plug)}`,
  why: say`A plug that does not belong to the socket makes poor contact or loses the earth.`,
  working: [],
  action: say`Enter the country, or the letter of the socket.`,
  sources: [wholeSet],
})

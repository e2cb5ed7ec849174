import { homeFrequencyRows } from '../../tables/homeFrequencies.js'
import { bandFor, mainsOf } from '../../tables/mains.js'
import { mainsSourceRows } from '../../tables/mainsSources.js'
import { commonPractice, type Source } from '../../tables/source.js'
import { frequencyMatch, nominalMatch } from '../../tables/thresholds.js'
import { listed, or, say } from '../../words/phrase.js'
import { mainsText } from '../words.js'
import type { Contradiction } from './contradiction.js'
import type { Site } from './request.js'
import type { Mains, PreparedSite } from './situation.js'

const near = (a: number, b: number, share: number): boolean => Math.abs(a - b) <= share * b

const stated: Source = commonPractice('Site as entered', 'voltage and frequency as stated by the person who is there')

/**
 * The mains systems and sockets of a place. What is stated comes before what the country's list says;
 * a country with several systems gives all that the stated facts do not rule out.
 */
export function prepareSite(site: Site): PreparedSite {
  const country = site.country ? mainsOf(site.country) : undefined
  const iso = country?.country ?? null
  // outlets for two live conductors of a split phase are none of those for the half of it
  const own = site.source === 'two-live' && (country?.systems ?? []).some(({ voltageV }) => voltageV in acrossTwo)
  const sockets = site.socket ? [site.socket.trim().toUpperCase()] : own ? [] : (country?.sockets ?? [])
  const inList = fedBy(site.source ?? null, systemsOf(country?.systems ?? []), iso)
  const systems = statedFrequency(statedVoltage(inList, site, iso), site, iso)
  const prepared: PreparedSite = {
    systems,
    source: site.source ?? null,
    residualCurrentA: site.residualCurrentA ?? null,
    othersLeakA: site.othersLeakA ?? null,
    sockets,
    country: iso,
    sources: country?.sources ?? [],
    contradictions: [],
  }
  return {
    ...prepared,
    contradictions: [...againstList(prepared, inList), ...againstSockets(prepared, country?.sockets ?? [])],
  }
}

/** A stated socket that the country's list does not have: it may be a foreign one, seen with one's own eyes. */
function againstSockets(site: PreparedSite, inList: readonly string[]): Contradiction<PreparedSite>[] {
  if (inList.length === 0 || site.sockets.every((letter) => inList.includes(letter))) return []
  return [
    {
      says: say`the tables list socket ${listed(inList, or)} for ${site.country ?? say``}, ${listed(site.sockets)} was entered`,
      weighs: 'remark',
      lookAgain: say`Look at the socket again, and whether it is part of the house’s wiring.`,
      otherwise: { ...site, sockets: inList },
    },
  ]
}

/** A stated voltage outside every listed band, or a stated frequency that none has. */
function againstList(site: PreparedSite, inList: readonly Mains[]): Contradiction<PreparedSite>[] {
  const holds = (system: Mains, { voltageV, frequencyHz }: Mains): boolean =>
    (voltageV === null || (voltageV >= (system.minV ?? voltageV) && voltageV <= (system.maxV ?? voltageV))) &&
    (frequencyHz === null || near(frequencyHz, system.frequencyHz ?? frequencyHz, frequencyMatch.value))
  const known = site.systems.every((entered) => inList.some((system) => holds(system, entered)))
  if (inList.length === 0 || known) return []
  return [
    {
      says: say`the tables list ${listed(inList.map(mainsText), or)} for ${site.country ?? say``}, ${listed(site.systems.map(mainsText), or)} was entered`,
      weighs: 'caution',
      lookAgain: say`Look at the country again, or ask the electricity company or the house’s licensed electrician.`,
      otherwise: { ...site, systems: inList },
    },
  ]
}

/** Between two live conductors, by what each has to the neutral [V]: split phases, and 127 V of three. */
const acrossTwo: Readonly<Record<number, number>> = { 100: 200, 110: 220, 115: 230, 120: 240, 127: 220 }

/**
 * The systems as their source hands them on. What it gives of its own is not known from the country: a transformer's voltage, and of what
 * makes its own mains the frequency too. Its plate or a meter tells them.
 */
function fedBy(source: PreparedSite['source'], systems: readonly Mains[], country: string | null): Mains[] {
  const own = mainsSourceRows.find((row) => row.source === source)?.own ?? 'nothing'
  if (own === 'voltage and frequency') return [nothing]
  if (own === 'voltage')
    return [...new Set(systems.map(({ frequencyHz }) => frequencyHz))].map((frequencyHz) => ({
      ...nothing,
      frequencyHz,
    }))
  return systems.map((system) => {
    const { voltageV, frequencyHz } = system
    const givenV = source === 'two-live' && voltageV !== null ? acrossTwo[voltageV] : undefined
    return givenV === undefined ? system : withBand(givenV, frequencyHz, country)
  })
}

const systemsOf = (
  systems: readonly {
    voltageV: number
    frequencyHz: number
    minV: number
    maxV: number
    bandSources: readonly Source[]
  }[],
): Mains[] =>
  systems.map(({ voltageV, frequencyHz, minV, maxV, bandSources }) => ({
    voltageV,
    frequencyHz,
    minV,
    maxV,
    sources: bandSources,
  }))

function statedVoltage(systems: Mains[], site: Site, country: string | null): Mains[] {
  const voltageV = site.voltageV
  if (voltageV == null) return systems
  const same = systems.filter(
    (system) => system.voltageV !== null && near(voltageV, system.voltageV, nominalMatch.value),
  )
  if (same.length > 0) return same.map((system) => ({ ...system, voltageV }))
  const frequencies = [...new Set(systems.map(({ frequencyHz }) => frequencyHz))]
  return (frequencies.length > 0 ? frequencies : [null]).map((frequencyHz) => withBand(voltageV, frequencyHz, country))
}

function statedFrequency(systems: Mains[], site: Site, country: string | null): Mains[] {
  const frequencyHz = site.frequencyHz
  if (frequencyHz == null) return systems.length > 0 ? systems : [nothing]
  if (systems.length === 0) return [{ ...nothing, frequencyHz }]
  const same = systems.filter(
    (system) => system.frequencyHz !== null && near(frequencyHz, system.frequencyHz, frequencyMatch.value),
  )
  if (same.length > 0) return same.map((system) => ({ ...system, frequencyHz }))
  const voltages = [...new Set(systems.map(({ voltageV }) => voltageV))]
  return voltages.map((voltageV) =>
    voltageV === null ? { ...nothing, frequencyHz } : withBand(voltageV, frequencyHz, country),
  )
}

const nothing: Mains = { voltageV: null, frequencyHz: null, minV: null, maxV: null, sources: [] }

/** Frequencies whose bands are taken together where the frequency is not known [Hz]. */
const usualFrequenciesHz = [...new Set(homeFrequencyRows.flatMap(({ frequenciesHz }) => frequenciesHz))]

function withBand(voltageV: number, frequencyHz: number | null, country: string | null): Mains {
  const bands = (frequencyHz === null ? usualFrequenciesHz : [frequencyHz]).map((hz) =>
    bandFor(voltageV, hz, country ?? undefined),
  )
  return {
    voltageV,
    frequencyHz,
    minV: Math.min(...bands.map(({ minV }) => minV)),
    maxV: Math.max(...bands.map(({ maxV }) => maxV)),
    sources: [stated, ...bands.flatMap(({ sources }) => sources)],
  }
}

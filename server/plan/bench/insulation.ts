import { byQualified } from '../../chain/action.js'
import { byWorst, type Finding, type Outcome } from '../../chain/finding.js'
import { type Text, toFinding } from '../../chain/judgement.js'
import { conductorEarthLimit, steppedEarthLimit } from '../../physics/insulation.js'
import { flexibleCores } from '../../tables/benchSupply.js'
import {
  competentPerson,
  insulationVoltage,
  longestCord,
  type SafetyLimit,
  type SafetyScheme,
  safetyLimits,
  safetySchemes,
} from '../../tables/safetyTestLimits.js'
import { type Phrase, say, type Words } from '../../words/phrase.js'
import { amperes, ohms, plain, quantity, quantityRange } from '../../words/quantity.js'
import type { Explained } from '../firstPower/lamps.js'

export interface InsulationRequest {
  /** one, or several where a name stands for two editions */
  schemes: readonly SafetyScheme[]
  protectionClass: 'I' | 'II' | 'III'
  earthOhm?: number | null
  cordLengthM?: number | null
  cordAreaMm2?: number | null
  insulationMOhm?: number | null
  touchmA?: number | null
}

const who = say`Have it done by a competent person with the instrument made for this test; repairs on the mains side are for a licensed electrician or other qualified person.`
const voltageNote = say`The 500 V of an insulation test can itself destroy filters, suppressors and electronics: 250 V is allowed for such parts; the low-voltage side is never tested this way unless its maker says so.`

/** Schemes a typed name stands for, by key, by title or by a part of it; none where nothing fits. */
export function schemesNamed(name: string): SafetyScheme[] {
  const bare = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, '')
  const asked = bare(name)
  if (asked.length < 2) return []
  const exact = safetySchemes.filter(({ key, title }) => bare(key) === asked || bare(title) === asked)
  if (exact.length > 0) return exact.map(({ key }) => key)
  const within = safetySchemes.filter(({ key, title }) => {
    const whole = bare(title)
    return (
      whole.includes(asked) ||
      bare(key).startsWith(asked) ||
      asked.startsWith(whole) ||
      parts(title).some((part) => asked.startsWith(bare(part)))
    )
  })
  return within.map(({ key }) => key)
}

const parts = (title: string): string[] => title.split(/ and |:\d+/).filter((part) => part.trim().length > 4)

/**
 * Readings of earth path, insulation and touch current against the limits of a scheme.
 *
 * @source the rows of the safety-test table
 */
function insulation(request: InsulationRequest): Finding[] {
  return request.schemes
    .flatMap((scheme) => [...earth(request, scheme), ...insulating(request, scheme), ...touching(request, scheme)])
    .map(({ outcome, ...text }) => toFinding('earthing', { outcome, say: () => text }))
}

/** What a reading comes to, with its words. */
type Found = { outcome: Outcome } & Text

export interface InsulationAnswer extends Explained {
  findings: Finding[]
}

/** The findings with their working and sources together, worst first. */
export function insulationAnswer(request: InsulationRequest): InsulationAnswer {
  const findings = insulation(request).sort(byWorst)
  return {
    findings,
    working: findings.flatMap(({ working }) => working),
    cautions: [who, voltageNote, say`Readings within the limits say nothing about what was not measured.`],
    sources: [...new Set(findings.flatMap(({ sources }) => sources))],
  }
}

const titleOf = (scheme: SafetyScheme): string => safetySchemes.find(({ key }) => key === scheme)?.title ?? scheme

function limitFor(scheme: SafetyScheme, test: SafetyLimit['test'], of: 'I' | 'II' | 'III'): SafetyLimit | undefined {
  return safetyLimits.find(
    (row) => row.scheme === scheme && row.test === test && row.general && row.classes.includes(of),
  )
}

function earth(request: InsulationRequest, scheme: SafetyScheme): Found[] {
  const { protectionClass, earthOhm, cordLengthM } = request
  if (protectionClass !== 'I') {
    return earthOhm == null
      ? []
      : [
          {
            outcome: 'caution',
            title: say`An earth path of ${ohms(earthOhm)} was read on a class ${protectionClass} unit, which has no earth`,
            why: say`The class or the reading is not what it seems: a metal case that is earthed makes the unit class I, with other limits.`,
            working: [],
            action: say`Look at the plate for the double square of class II, and at the inlet for an earth contact.`,
            sources: [competentPerson],
          },
        ]
  }
  const row = limitFor(scheme, 'earth-resistance', 'I')
  if (!row || row.limit === null) return [noLimit(scheme, 'earth path')]
  if (earthOhm == null)
    return [
      {
        outcome: 'unknown',
        title: say`Earth path not measured: ${titleOf(scheme)} allows ${ohms(row.limit)}${row.addsConductor ? say` and the cord’s conductor` : say``}`,
        why: say`A class I unit protects people only through its earth; a broken one shows nothing until a fault makes the case live.`,
        working: [row.condition],
        action: [say`Measure from the earth pin of the plug to the bare metal of the case.`, byQualified(who)],
        sources: [row.source, competentPerson],
      },
    ]
  const judged = earthLimits(row, cordLengthM ?? null, request.cordAreaMm2 ?? null)
  const rest = {
    why: say`The earth path must carry a fault current until the fuse or breaker opens; too much resistance leaves the case live.`,
    working: judged.working,
    sources: [row.source, competentPerson, ...judged.sources],
  }
  if (earthOhm > judged.most)
    return [
      {
        outcome: 'stop',
        title: say`Earth path ${ohms(earthOhm)} is above the ${ohms(judged.most)} of ${titleOf(scheme)}`,
        ...rest,
        action: [
          say`Do not connect it to the mains. Have cord, plug and earth connection inspected.`,
          byQualified(who),
        ],
      },
    ]
  if (earthOhm > judged.least)
    return [
      {
        outcome: 'unknown',
        title: say`Earth path ${ohms(earthOhm)} lies between ${ohms(judged.least)} and ${ohms(judged.most)}: the cord decides`,
        ...rest,
        action: [judged.ask, byQualified(who)],
      },
    ]
  return [
    {
      outcome: 'clear',
      title: say`Earth path ${ohms(earthOhm)} is within the ${ohms(judged.least)} of ${titleOf(scheme)}`,
      ...rest,
      action: null,
    },
  ]
}

interface EarthLimits {
  /** strictest and most generous limit that the facts given leave open [Ω] */
  least: number
  most: number
  ask: Phrase
  working: Words[]
  sources: SafetyLimit['source'][]
}

function earthLimits(row: SafetyLimit, lengthM: number | null, areaMm2: number | null): EarthLimits {
  const base = row.limit ?? 0
  if (row.stepped) {
    const { mostOhm } = row.stepped
    const rule = { baseOhm: base, ...row.stepped }
    const least = lengthM === null ? base : steppedEarthLimit(lengthM, rule, false)
    const most = lengthM === null ? mostOhm : steppedEarthLimit(lengthM, rule, true)
    return {
      least,
      most,
      ask:
        lengthM === null
          ? say`Enter the length of the cord.`
          : say`Whether a begun stretch of cord counts is not settled in the sources; take the lower limit or shorten the cord.`,
      working: [
        row.condition,
        lengthM === null
          ? say`cord length not given: ${quantityRange(least, most, 'Ω')}`
          : say`cord of ${plain(lengthM, 'm')}: ${ohms(least)}${most > least ? say`, or ${ohms(most)} if a begun stretch counts` : say``}`,
      ],
      sources: [],
    }
  }
  if (!row.addsConductor) return { least: base, most: base, ask: say``, working: [row.condition], sources: [] }
  if (lengthM === null)
    return {
      least: base,
      most: base + widest(areaMm2) * longestCord.lengthM,
      ask: say`Enter the length and conductor area of the cord.`,
      working: [row.condition, say`cord not given: ${ohms(base)} and whatever its conductor has`],
      sources: [...flexibleCores.slice(0, 1).map(({ source }) => source), longestCord.source],
    }
  const least = conductorEarthLimit(lengthM, narrowest(areaMm2), base)
  const most = conductorEarthLimit(lengthM, widest(areaMm2), base)
  return {
    least,
    most,
    ask: say`Enter the conductor area of the cord.`,
    working: [
      row.condition,
      least === most
        ? say`${ohms(base)} + ${plain(lengthM, 'm')} × ${plain(narrowest(areaMm2) * 1000, 'mΩ/m')} = ${ohms(least)}`
        : say`cord of ${plain(lengthM, 'm')}, area not given: ${quantityRange(least, most, 'Ω')}`,
    ],
    sources: flexibleCores.slice(0, 1).map(({ source }) => source),
  }
}

const perMetre = (areaMm2: number | null): readonly number[] => {
  const rows = areaMm2 === null ? flexibleCores : flexibleCores.filter((core) => core.areaMm2 <= areaMm2).slice(-1)
  return rows.length > 0 ? rows.map(({ ohmPerM }) => ohmPerM) : flexibleCores.slice(0, 1).map(({ ohmPerM }) => ohmPerM)
}
const narrowest = (areaMm2: number | null): number => Math.min(...perMetre(areaMm2))
const widest = (areaMm2: number | null): number => Math.max(...perMetre(areaMm2))

const megohms = (value: number): Phrase => quantity(value * 1e6, 'Ω')
const milliamperes = (value: number): Phrase => amperes(value / 1e3)

function insulating(request: InsulationRequest, scheme: SafetyScheme): Found[] {
  const { protectionClass, insulationMOhm } = request
  const row = limitFor(scheme, 'insulation', protectionClass)
  if (!row || row.limit === null) return [noLimit(scheme, 'insulation', row)]
  const sources = [row.source, competentPerson, insulationVoltage]
  const why = say`Low insulation lets mains reach the case or the output: damp, dirt, a cracked filter capacitor or a scorched transformer are the usual causes.`
  if (insulationMOhm == null)
    return [
      {
        outcome: 'unknown',
        title: say`Insulation not measured: ${titleOf(scheme)} asks for ${megohms(row.limit)} in class ${protectionClass}`,
        why,
        working: [row.condition],
        action: [voltageNote, byQualified(who)],
        sources,
      },
    ]
  const working = [say`${megohms(insulationMOhm)} read, at least ${megohms(row.limit)} asked for (${row.condition})`]
  return insulationMOhm < row.limit
    ? [
        {
          outcome: 'stop',
          title: say`Insulation ${megohms(insulationMOhm)} is below the ${megohms(row.limit)} of ${titleOf(scheme)}`,
          why,
          working,
          action: [say`Do not connect it to the mains. ${voltageNote}`, byQualified(who)],
          sources,
        },
      ]
    : [
        {
          outcome: 'clear',
          title: say`Insulation ${megohms(insulationMOhm)} meets the ${megohms(row.limit)} of ${titleOf(scheme)}`,
          why,
          working,
          action: null,
          sources,
        },
      ]
}

function touching(request: InsulationRequest, scheme: SafetyScheme): Found[] {
  const { protectionClass, touchmA } = request
  if (protectionClass === 'III') return []
  const row = limitFor(scheme, 'touch-current', protectionClass)
  if (!row || row.limit === null) return [noLimit(scheme, 'touch current')]
  const sources = [row.source, competentPerson]
  const why = say`This is what flows through a person who touches the unit and earth. Filter capacitors make some of it; more is a fault.`
  if (touchmA == null)
    return [
      {
        outcome: 'unknown',
        title: say`Touch current not measured: ${titleOf(scheme)} allows ${milliamperes(row.limit)} in class ${protectionClass}`,
        why,
        working: [row.condition],
        action: [say`It is measured with the unit on the mains, through an instrument made for it.`, byQualified(who)],
        sources,
      },
    ]
  const working = [say`${milliamperes(touchmA)} read, at most ${milliamperes(row.limit)} allowed (${row.condition})`]
  return touchmA > row.limit
    ? [
        {
          outcome: 'stop',
          title: say`Touch current ${milliamperes(touchmA)} is above the ${milliamperes(row.limit)} of ${titleOf(scheme)}`,
          why,
          working,
          action: [say`Disconnect it and do not touch it meanwhile.`, byQualified(who)],
          sources,
        },
      ]
    : [
        {
          outcome: 'clear',
          title: say`Touch current ${milliamperes(touchmA)} is within the ${milliamperes(row.limit)} of ${titleOf(scheme)}`,
          why,
          working,
          action: null,
          sources,
        },
      ]
}

const noLimit = (scheme: SafetyScheme, what: string, row?: SafetyLimit): Found => ({
  outcome: 'unknown',
  title: say`${titleOf(scheme)} gives no limit here for ${what}`,
  why: say`Without a limit a reading cannot be judged; the schemes of other places may be used for comparison.`,
  working: row ? [row.condition] : [],
  action: [say`Compare with another scheme.`, byQualified(who)],
  sources: [...(row ? [row.source] : []), competentPerson],
})

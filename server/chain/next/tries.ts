import { facts } from '../../facts/boxes.js'
import type { LabelReading } from '../../plate/labelReading.js'
import { connectorByName, inletByName } from '../../tables/inlets.js'
import { mainsOf } from '../../tables/mains.js'
import { plugsFor } from '../../tables/sockets.js'
import { lowClassMostV } from '../../tables/thresholds.js'
import type { Case } from '../case/case.js'
import { confirmationOf, isConfirmed } from '../case/confirmation.js'
import { isFor } from '../case/plateWindow.js'
import type { Polarity } from '../case/request.js'
import { loadAtReach } from '../matching/loadCurrent.js'
import { protectionClassOf } from '../protectionClass.js'
import { reachOf } from '../reach.js'

/** The most answers that are tried of one fact. */
const mostTries = 3

type Tries = (of: Case) => readonly unknown[]

/**
 * Answers that a fact may get, for a trial of what they would change: first one that agrees with what is known, then ones on the other side
 * of the thresholds. Empty where the fact is known, or does not come up in this case.
 *
 * @param key  as GET /api/facts has it
 */
export function triesOf(key: string, of: Case): readonly unknown[] {
  const own = tries[key]
  if (own) return own(of).slice(0, mostTries)
  const fact = facts.find((one) => one.key === key)?.fact
  if (!fact || valueAt(of.request, key) != null || !('choices' in fact)) return []
  return (fact.choices ?? []).flatMap(({ value }) => (value === null ? [] : [value])).slice(0, mostTries)
}

const valueAt = (request: unknown, key: string): unknown =>
  key.split('.').reduce<unknown>((at, name) => (at as Record<string, unknown> | null | undefined)?.[name], request)

const unless = (known: unknown, values: () => readonly unknown[]): readonly unknown[] => (known == null ? values() : [])

/** Places that tell the three kinds of mains and their sockets apart. */
const places = ['DE', 'GB', 'US', 'JP']

const siteV = ({ site }: Case): number | null => site.systems[0]?.voltageV ?? null

const fitsWindows = ({ supply }: Case, voltageV: number): boolean =>
  supply.input.windows.some((window) => isFor(window, voltageV))

/** Those for which a test holds, first. */
const first = <Value>(values: readonly Value[], holds: (value: Value) => boolean): Value[] => [
  ...values.filter(holds),
  ...values.filter((value) => !holds(value)),
]

/** Both sides of the mains of the world [V]. */
const otherMains = (voltageV: number): number => (voltageV <= lowClassMostV.value ? 230 : 120)

const wanted = ({ device }: Case) => device.rails[0]
const given = ({ supply }: Case) => supply.rails[0]

const opposite = (polarity: Polarity): Polarity =>
  polarity === 'centre-positive' ? 'centre-negative' : 'centre-positive'

/** The other side's own value, else a usual one; then one apart from it. */
const like = (other: number | null | undefined, usual: number, apart: number): number[] => [
  other ?? usual,
  (other ?? usual) * apart,
]

/** A row that lacks a value; of no rows at all, the first. */
const lacks = (rows: readonly object[], name: string): boolean =>
  rows.some((row) => (row as Record<string, unknown>)[name] == null)

const loadA = (of: Case): number | null => {
  const [mains] = of.site.systems
  return mains
    ? (loadAtReach({ supply: of.supply, reach: reachOf(mains, of.request.converter ?? null) })?.currentA ?? null)
    : null
}

const tries: Readonly<Record<string, Tries>> = {
  'site.country': (of) =>
    unless(of.site.country, () =>
      first(places, (place) => (mainsOf(place)?.systems ?? []).some(({ voltageV }) => fitsWindows(of, voltageV))),
    ),
  'site.voltageV': (of) =>
    of.site.systems.length < 2
      ? []
      : unless(of.request.site.voltageV, () =>
          first([...new Set(of.site.systems.flatMap(({ voltageV }) => voltageV ?? []))], (voltageV) =>
            fitsWindows(of, voltageV),
          ),
        ),
  'site.frequencyHz': (of) =>
    of.site.systems.every(({ frequencyHz }) => frequencyHz !== null) && of.site.systems.length < 2
      ? []
      : unless(of.request.site.frequencyHz, () => [
          ...new Set([...of.site.systems.flatMap(({ frequencyHz }) => frequencyHz ?? []), 50, 60]),
        ]),
  'site.socket': ({ request, site }) =>
    unless(request.site.socket, () => (site.sockets.length === 0 ? ['F', 'G', 'A'] : site.sockets)),
  'supply.input.voltages': (of) =>
    of.supply.input.windows.length > 0
      ? []
      : [siteV(of) ?? 230, otherMains(siteV(of) ?? 230)].map((voltageV) => [{ min: voltageV, max: voltageV }]),
  'supply.input.selectorV': (of) =>
    of.supply.input.windows.length < 2
      ? []
      : unless(of.supply.input.selectorV, () =>
          first(
            of.supply.input.windows.map(({ max }) => max),
            (voltageV) => isFor({ min: voltageV, max: voltageV }, siteV(of) ?? voltageV),
          ),
        ),
  'supply.input.frequenciesHz': ({ supply }) => (supply.input.frequenciesHz.length > 0 ? [] : [[50, 60], [50], [60]]),
  'supply.input.powerVA': (of) => unless(loadA(of), () => [20, 3000]),
  'supply.technology': ({ supply }) => unless(supply.technology, () => ['switch-mode', 'transformer']),
  'supply.regulated': ({ supply }) => unless(supply.regulated, () => [true, false]),
  'supply.protectionClass': ({ supply }) => unless(protectionClassOf(supply), () => ['II', 'I']),
  'supply.inlet': ({ request, supply }) => {
    const mate = request.cord?.connector ? connectorByName(request.cord.connector)?.inlet : undefined
    return unless(supply.inlet, () => [...new Set([mate ?? 'C8', 'C14', 'C8', 'captive'])])
  },
  'supply.fuse': ({ supply }) =>
    supply.fuse.prescribed === null ? [] : unless(supply.fuse.fitted, () => [supply.fuse.prescribed, 'F10A']),
  'supply.outputs.kind': (of) => (lacks(of.supply.rails, 'kind') ? kinds(wanted(of)?.kind) : []),
  'supply.outputs.voltageV': (of) => (given(of) ? [] : like(wanted(of)?.voltageV, 12, 1.6)),
  'supply.outputs.currentA': (of) =>
    lacks(of.supply.rails, 'currentA') ? like((wanted(of)?.currentA ?? 1) * 1.5, 1, 0.3) : [],
  'device.inputs.kind': (of) => (lacks(of.device.rails, 'kind') ? kinds(given(of)?.kind) : []),
  'device.inputs.voltageV': (of) => (wanted(of) ? [] : like(given(of)?.voltageV, 12, 0.6)),
  'device.inputs.currentA': (of) =>
    lacks(of.device.rails, 'currentA') ? like((given(of)?.currentA ?? 1) * 0.6, 1, 3) : [],
  'device.regulatedNeeded': ({ device }) => unless(device.regulatedNeeded, () => [false, true]),
  'supply.measured.offLoadV': (of) =>
    given(of)
      ? unless(of.supply.measured.offLoadV, () => like(wanted(of)?.voltageV, given(of)?.voltageV ?? 12, 1.6))
      : [],
  'supply.measured.polarity': ({ supply, device }) =>
    unless(supply.measured.polarity, () => signs(device.jack.polarity ?? supply.plug.polarity)),
  'supply.plug.polarity': ({ supply, device }) =>
    unless(supply.measured.polarity ?? supply.plug.polarity, () => signs(device.jack.polarity)),
  'device.jack.polarity': ({ supply, device }) =>
    unless(device.jack.polarity, () => signs(supply.measured.polarity ?? supply.plug.polarity)),
  'supply.plug.outerMm': ({ supply, device }) => unless(supply.plug.outerMm, () => like(device.jack.outerMm, 5.5, 0.7)),
  'supply.plug.innerMm': ({ supply, device }) => unless(supply.plug.innerMm, () => like(device.jack.innerMm, 2.1, 0.7)),
  'device.jack.outerMm': ({ supply, device }) => unless(device.jack.outerMm, () => like(supply.plug.outerMm, 5.5, 0.7)),
  'device.jack.innerMm': ({ supply, device }) => unless(device.jack.innerMm, () => like(supply.plug.innerMm, 2.1, 1.3)),
  'supply.lead.areaMm2': ({ supply }) =>
    supply.lead ? unless(supply.lead.areaMm2 ?? supply.lead.awg, () => [1.5, 0.1]) : [],
  'cord.plug': ({ request, site, supply }) =>
    unless(request.cord?.plug, () => {
      const earthed = protectionClassOf(supply)?.protectionClass !== 'II'
      const made = site.sockets.flatMap((letter) =>
        plugsFor(letter, earthed, site.country ?? undefined).map(({ name }) => name),
      )
      return [...new Set([made[0] ?? 'CEE 7/7', 'NEMA 1-15', 'CEE 7/16'])]
    }),
  'cord.connector': ({ request, supply }) =>
    unless(request.cord?.connector, () => {
      const mate = supply.inlet === null ? undefined : inletByName(supply.inlet)?.connector
      return [...new Set([mate ?? supply.inlet ?? 'C7', 'C13', 'C7'])]
    }),
  'cord.ratedV': ({ request }) => unless(request.cord?.ratedV, () => [250, 125]),
  'cord.ratedA': (of) => unless(of.request.cord?.ratedA, () => [10, (loadA(of) ?? 1) * 0.7]),
  'cord.earthed': ({ request }) => unless(request.cord?.earthed, () => [true, false]),
  'cord.adapter.earthed': ({ request }) =>
    request.cord?.adapter ? unless(request.cord.adapter.earthed, () => [true, false]) : [],
  'converter.kind': ({ request }) =>
    request.converter ? unless(request.converter.kind, () => ['isolating', 'autotransformer', 'electronic']) : [],
  'converter.outputV': (of) =>
    of.request.converter
      ? unless(of.request.converter.outputV, () => {
          const plateV = of.supply.input.windows[0]?.max ?? otherMains(siteV(of) ?? 230)
          return [plateV, otherMains(plateV)]
        })
      : [],
  'converter.ratedVA': ({ request }) => (request.converter ? unless(request.converter.ratedVA, () => [2000, 10]) : []),
  'readings.confirmed': ({ supply, device, request }) => {
    const confirmed = request.readings?.confirmed
    const unsure = [...unsureOf(supply.reading, 'supply', confirmed), ...unsureOf(device.reading, 'device', confirmed)]
    return unsure.length === 0 ? [] : [[...(confirmed ?? []), ...unsure]]
  },
}

/** Keys of the figures of a plate that nobody confirmed. */
const unsureOf = (
  reading: LabelReading | null,
  of: 'supply' | 'device',
  confirmed: readonly string[] | null | undefined,
): string[] =>
  (reading?.unsure ?? [])
    .filter((field) => !isConfirmed(confirmed, reading!, of, field))
    .map((field) => confirmationOf(reading!, of, field))

const kinds = (other: 'ac' | 'dc' | null | undefined): ('ac' | 'dc')[] => (other === 'ac' ? ['ac', 'dc'] : ['dc', 'ac'])

const signs = (other: Polarity | null): Polarity[] => {
  const one = other ?? 'centre-positive'
  return [one, opposite(one)]
}

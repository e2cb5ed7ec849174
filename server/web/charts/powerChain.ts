import type { AnsweredCheck } from '../../chain/answer.js'
import { arrangementOf } from '../../chain/case/arrangement.js'
import type { CheckRequest } from '../../chain/case/request.js'
import { chainLinks } from '../../chain/chainLinks.js'
import type { Outcome } from '../../chain/finding.js'
import { findingsAt } from '../../chain/line.js'
import { kindText } from '../../chain/matching/railText.js'
import { windowText } from '../../chain/words.js'
import type { Link } from '../../facts/fact.js'
import { polarityText } from '../../facts/plug.js'
import type { LabelRail, LabelReading } from '../../plate/labelReading.js'
import { joined, say, type Words } from '../../words/phrase.js'
import { amperes, hertz, millimetres, voltAmperes, volts } from '../../words/quantity.js'
import { countryName } from '../parts/countryNames.js'

export interface ChainLink {
  key: Link
  name: string
  /** what is there, in short; `null` where nothing was entered */
  what: Words | null
  /** the worst finding about it; `null` where no topic judged it */
  outcome: Outcome | null
  /** that finding's title */
  title: Words | null
}

const join = (parts: (Words | null | undefined)[], glue = ' '): Words | null => {
  const there = parts.flatMap((part) => (part == null || part === '' ? [] : [part]))
  return there.length === 0 ? null : joined(there, glue)
}

const rail = ({ voltageV, kind, currentA }: Pick<LabelRail, 'voltageV' | 'kind'> & { currentA?: number | null }) =>
  join([volts(voltageV), kind && kindText(kind), currentA == null ? null : amperes(currentA)])

const size = (plug: CheckRequest['supply']['plug']): Words | null =>
  join([
    plug?.outerMm != null && plug.innerMm != null ? say`${plug.outerMm} × ${millimetres(plug.innerMm)}` : plug?.name,
    plug?.polarity && polarityText(plug.polarity),
  ])

function contents(request: CheckRequest, supply: LabelReading | null, device: LabelReading | null) {
  const { site, cord, converter } = request
  const own = arrangementOf(request) === 'built-in' ? (request.device.mains ?? {}) : null
  const gives = request.supply.outputs ?? supply?.outputs ?? []
  const takes = request.device.inputs ?? device?.takes ?? []
  const polarity = request.supply.measured?.polarity ?? request.supply.plug?.polarity ?? supply?.polarity ?? null
  const what: Record<Link, Words | null> = {
    source: join([
      site.voltageV == null ? site.country && countryName(site.country) : volts(site.voltageV),
      site.frequencyHz == null ? null : hertz(site.frequencyHz),
    ]),
    socket: site.socket == null ? null : `type ${site.socket}`,
    adapter: cord?.adapter
      ? cord.adapter.earthed === true
        ? 'earthed'
        : cord.adapter.earthed === false
          ? 'without earth'
          : null
      : null,
    cord: join([cord?.plug, cord?.connector], ' to '),
    converter: converter
      ? join([
          converter.outputV === null ? null : volts(converter.outputV),
          converter.ratedVA === null ? null : voltAmperes(converter.ratedVA),
        ])
      : null,
    inlet: (own ?? request.supply).inlet ?? null,
    fuse: own ? (own.fuse ?? device?.fuse ?? null) : (request.supply.fuse ?? supply?.fuse ?? null),
    supply: join(gives.map(rail), ', '),
    lead: request.supply.lead ? say`${request.supply.lead.lengthM}\u00a0m` : null,
    plug: size({ ...request.supply.plug, polarity }),
    jack: size({ ...request.device.jack, polarity: request.device.jack?.polarity ?? device?.polarity ?? null }),
    machine: own
      ? join((own.input?.voltages ?? device?.input?.voltages ?? []).map(windowText), ' or ')
      : join(takes.map(rail), ', '),
  }
  return what
}

/** The power chain from the wall to the machine, each link with the worst that was found about it. */
export function powerChain(request: CheckRequest, { findings, readings, links }: AnsweredCheck): ChainLink[] {
  const what = contents(request, readings.supply, readings.device)
  return links.map(({ link, outcome }) => ({
    key: link,
    name: chainLinks[link],
    what: what[link],
    outcome,
    title: findingsAt(link, findings, arrangementOf(request))[0]?.title ?? null,
  }))
}

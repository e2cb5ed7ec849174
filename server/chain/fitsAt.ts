import { mainsOf } from '../tables/mains.js'
import { countriesOfFit, type Fit, fits } from '../tables/sockets.js'
import type { Mains, PreparedSite } from './case/situation.js'

/**
 * Whether a plug goes into a socket of a site. Where the country is not known, every country whose sockets of this letter
 * are a case of their own counts too, as far as its mains may be the one that was entered: what they do not agree on depends.
 * Undefined where the table has no row.
 */
export function fitsAt(plug: string, letter: string, { country, systems }: PreparedSite): Fit | undefined {
  if (country !== null) return fits(plug, letter, country)
  const general = fits(plug, letter)
  if (!general || general.fits === 'no') return general
  const national = countriesOfFit(plug, letter)
    .filter((iso) => systems.some((mains) => mayBe(iso, mains)))
    .flatMap((iso) => fits(plug, letter, iso) ?? [])
  const all = [general, ...national]
  return {
    fits: all.every((fit) => fit.fits === general.fits) ? general.fits : 'depends',
    earth: all.every((fit) => fit.earth === general.earth) ? general.earth : 'depends',
    rows: [...new Set(all.flatMap(({ rows }) => rows))],
  }
}

/** Whether the mains that was entered may be that of a country; what is not known rules nothing out. */
const mayBe = (iso: string, { voltageV, frequencyHz }: Mains): boolean =>
  mainsOf(iso)?.systems.some(
    (system) =>
      (voltageV === null || (voltageV >= system.minV && voltageV <= system.maxV)) &&
      (frequencyHz === null || Math.round(frequencyHz) === system.frequencyHz),
  ) ?? false

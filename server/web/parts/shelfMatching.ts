import { byBest, type Pairing, pairing, supplySide } from '../../bench/shelf/matches.js'
import { deviceReady, eachInTurn, supplyReady } from '../../bench/shelf/prepared.js'
import type { ShelfDevice, ShelfSupply } from '../../bench/shelf/shelfItem.js'
import { type Wanted, wantedFor } from '../../bench/shelf/wanted.js'
import { prepareSite } from '../../chain/case/prepareSite.js'
import type { Supply } from '../../chain/case/request.js'
import type { PreparedDevice, PreparedSite, PreparedSupply } from '../../chain/case/situation.js'
import type { Kept, Store } from '../../store/store.js'
import { byName } from '../language.js'

/** One supply for the machine asked about, or one machine for the supply. */
export interface Match extends Pairing {
  id: string
  name: string
}

/** A supply of the shelf for a machine, with where it lies. */
export interface MatchingSupply extends Match {
  place: string | null
  supply: Supply
}

const everything = { limit: 1_000_000 }

export interface ShelfMatching {
  forDevice(id: string, country: string | undefined): Promise<Match[]>
  /** for a machine that need not be on the shelf itself */
  supplies(device: PreparedDevice, site: PreparedSite): Promise<MatchingSupply[]>
  forSupply(id: string, country: string | undefined): Promise<Match[]>
  wanted(id: string, country: string | undefined): Promise<Wanted[]>
}

const ranked = <One extends Match>(matches: One[]): One[] =>
  matches.sort((one, other) => byBest(one, other) || byName(one.name, other.name) || (one.id < other.id ? -1 : 1))

/** Which supply suits which machine, asked about one of them. */
export function shelfMatching(store: Store): ShelfMatching {
  const supplyOf = ({ body }: Kept<ShelfSupply>): PreparedSupply => supplyReady(body.supply)
  const deviceOf = ({ body }: Kept<ShelfDevice>): PreparedDevice => deviceReady(body.device)
  const supplies: ShelfMatching['supplies'] = async (device, site) => {
    const { rows } = await store.listWhole<ShelfSupply>('supply', everything)
    const matches = await eachInTurn(rows, (kept) => ({
      id: kept.id,
      name: kept.name,
      place: kept.body.place,
      supply: kept.body.supply,
      ...pairing(supplySide(site, supplyOf(kept)), device),
    }))
    return ranked(matches)
  }
  return {
    supplies,
    async forDevice(id, country) {
      return supplies(deviceOf(await store.get<ShelfDevice>('device', id)), prepareSite({ country }))
    },
    async forSupply(id, country) {
      const supply = supplyOf(await store.get<ShelfSupply>('supply', id))
      const side = supplySide(prepareSite({ country }), supply)
      const { rows } = await store.listWhole<ShelfDevice>('device', everything)
      const matches = await eachInTurn(rows, (kept) => ({
        id: kept.id,
        name: kept.name,
        ...pairing(side, deviceOf(kept)),
      }))
      return ranked(matches)
    },
    async wanted(id, country) {
      return wantedFor(deviceOf(await store.get<ShelfDevice>('device', id)), prepareSite({ country }))
    },
  }
}

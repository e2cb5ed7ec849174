import { prepareDevice } from '../../chain/case/prepareDevice.js'
import { prepareSupply } from '../../chain/case/prepareSupply.js'
import type { Device, Supply } from '../../chain/case/request.js'
import type { PreparedDevice, PreparedSupply } from '../../chain/case/situation.js'
import { readPlate } from '../../plate/readPlate.js'

/** Reading plates holds the process up, so others are let through after this many. */
const between = 20

const breathe = (): Promise<void> => new Promise((resolve) => setImmediate(resolve))

/** Does something to every entry without holding the process up for long. */
export async function eachInTurn<Entry, Result>(
  entries: readonly Entry[],
  work: (entry: Entry) => Result,
): Promise<Result[]> {
  const results: Result[] = []
  for (const [index, entry] of entries.entries()) {
    if (index > 0 && index % between === 0) await breathe()
    results.push(work(entry))
  }
  return results
}

export const supplyReady = (supply: Supply): PreparedSupply => prepareSupply(supply, readPlate)

export const deviceReady = (device: Device): PreparedDevice => prepareDevice(device, readPlate)

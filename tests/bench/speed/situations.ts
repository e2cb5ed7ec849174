import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { assess } from '../../../server/chain/assess.js'
import type { CheckRequest } from '../../../server/chain/request.js'
import { readCheckForm } from '../../../server/web/forms/checkForm.js'
import { examples } from '../../../server/web/viewModels/examples.js'

/** The four worked cases of the start page. */
export const cases: CheckRequest[] = examples.map(({ address }) => {
  const query = Object.fromEntries(new URL(address, 'http://localhost').searchParams)
  return readCheckForm(query).request as CheckRequest
})

const countries = ['DE', 'US', 'GB', 'JP', 'AU', 'BR', 'IN', 'ZA']

/** The same in eight countries, with the sockets of each: 32 situations, their plates as text. */
export const situations: CheckRequest[] = countries.flatMap((country) =>
  cases.map((check) => ({ ...check, site: { ...check.site, country, socket: null } })),
)

/** A situation with what its plates say entered in the fields, as when there is no text to read. */
export function typedIn(check: CheckRequest): CheckRequest {
  const { supply, device } = assess(check).readings
  return {
    ...check,
    supply: {
      ...check.supply,
      label: null,
      input: { ...supply?.input, ...check.supply.input },
      outputs: supply?.outputs,
      protectionClass: check.supply.protectionClass ?? supply?.protectionClass,
      plug: { ...check.supply.plug, polarity: check.supply.plug?.polarity ?? supply?.polarity },
    },
    device: { ...check.device, label: null, inputs: device?.takes },
  }
}

/** The plates annotated by hand, as text. */
export const plates: string[] = (
  parse(readFileSync(new URL('../../published/labelCorpus.csv', import.meta.url), 'utf8'), {
    columns: true,
  }) as { text: string }[]
).map(({ text }) => text.replaceAll('\\n', '\n'))

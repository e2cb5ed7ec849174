import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildSync } from 'esbuild'
import type { ChainCases } from './chainProgram.js'
import { figure, type Measured, type Part } from './measured.js'
import type { Rate } from './rate.js'
import { plates, situations, typedIn } from './situations.js'
import { targets } from './targets.js'

export interface Rates {
  assess: Rate
  withPlates: Rate
  prepared: Rate
  plates: Rate
  /** writing the answer as JSON, for comparison */
  json: Rate
}

/** Measured in a process of its own, compiled as the program that `npm start` runs is. */
function ratesOf(cases: ChainCases): Rates {
  // within the project, so that packages are found
  const folder = mkdtempSync(join(import.meta.dirname, '../../../.tmp-chain-'))
  try {
    const program = join(folder, 'chain.js')
    buildSync({
      entryPoints: [join(import.meta.dirname, 'chainProgram.ts')],
      outfile: program,
      bundle: true,
      packages: 'external',
      platform: 'node',
      format: 'esm',
    })
    const file = join(folder, 'cases.json')
    writeFileSync(file, JSON.stringify(cases))
    return JSON.parse(execFileSync(process.execPath, [program, file], { encoding: 'utf8' })) as Rates
  } finally {
    rmSync(folder, { recursive: true })
  }
}

const row = (told: Pick<Measured, 'what' | 'target'>, rate: Rate): Measured => ({
  ...told,
  unit: 'a second',
  value: rate.perSecond,
  note: `${figure(rate.least)} to ${figure(rate.most)} in 5 runs`,
})

async function measure(): Promise<Measured[]> {
  const rates = ratesOf({ situations, typedIn: situations.map(typedIn), plates })
  return [
    row(targets.assess, rates.assess),
    row({ what: '`assess` with both plates to be read' }, rates.withPlates),
    row({ what: 'judging and wording alone, everything prepared' }, rates.prepared),
    row({ what: 'for comparison: `JSON.stringify` of what `assess` answers' }, rates.json),
    row(targets.plates, rates.plates),
  ]
}

export const chain: Part = {
  name: 'chain',
  title: 'Judging and reading, in process',
  method:
    'The four worked cases of the start page in eight countries each, by the processor time it takes, compiled as `npm start` compiles: every topic is judged and every finding worded. Plates: those annotated by hand in `tests/published/labelCorpus.csv`.',
  measure,
}

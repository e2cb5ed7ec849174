import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { keptOutcomes, outcomesFile, outcomesNow } from '../support/outcomes.js'
import { accuracyDocument } from './accuracyDocument.js'
import { addressDocument } from './addressDocument.js'
import { apiDocument } from './apiDocument.js'
import { sourcesDocument } from './sourcesDocument.js'

const docs = join(import.meta.dirname, '../../docs')

const kept = keptOutcomes()
const now = outcomesNow()
if (now.rulesVersion === kept.rulesVersion && JSON.stringify(now) !== JSON.stringify(kept))
  throw new Error('Outcomes or limits changed: add one to rulesVersion in server/web/dataVersion.ts first.')
writeFileSync(outcomesFile, `${JSON.stringify(now, null, 2)}\n`)
writeFileSync(join(docs, 'sources.md'), await sourcesDocument())
writeFileSync(join(docs, 'accuracy.md'), accuracyDocument())
writeFileSync(join(docs, 'api.md'), apiDocument())
writeFileSync(join(docs, 'address.md'), addressDocument())

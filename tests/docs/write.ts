import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { accuracyDocument } from './accuracyDocument.js'
import { addressDocument } from './addressDocument.js'
import { apiDocument } from './apiDocument.js'
import { sourcesDocument } from './sourcesDocument.js'

const docs = join(import.meta.dirname, '../../docs')

writeFileSync(join(docs, 'sources.md'), await sourcesDocument())
writeFileSync(join(docs, 'accuracy.md'), accuracyDocument())
writeFileSync(join(docs, 'api.md'), apiDocument())
writeFileSync(join(docs, 'address.md'), addressDocument())

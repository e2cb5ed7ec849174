import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { sourcesDocument } from './sourcesDocument.js'

writeFileSync(join(import.meta.dirname, '../../docs/sources.md'), await sourcesDocument())

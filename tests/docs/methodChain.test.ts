import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { topicNames } from '../../server/chain/index.js'

const page = readFileSync(join(import.meta.dirname, '../../docs/method-chain.md'), 'utf8')

/** The section that says when each topic comes to what. */
const topicsOf = (text: string): string => text.slice(text.indexOf('## Topics'), text.indexOf('## What each topic'))

it('the page on the method has one row for each topic, in chain order', () => {
  const rows = [...topicsOf(page).matchAll(/^\| `([a-z-]+)` \|/gm)].map(([, name]) => name)
  expect(rows).toEqual(topicNames)
})

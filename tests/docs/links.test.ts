import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../..')

const pages = [
  'README.md',
  'DEVELOPERS.md',
  ...readdirSync(join(root, 'docs')).map((file) => join('docs', file)),
].filter((file) => file.endsWith('.md'))

/** Every file of the program and its tests, by its name alone. */
const names = new Set(
  ['server', 'views', 'static', 'tests'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((file) => basename(file)),
  ),
)

describe.each(pages)('%s', (page) => {
  const text = readFileSync(join(root, page), 'utf8')

  it('links to nothing that is not there', () => {
    const links = [...text.matchAll(/\]\((?!https?:)([^)#\s]+)/g)].map(([, link = '']) => link)
    expect(links.filter((link) => !existsSync(join(root, dirname(page), link)))).toEqual([])
  })

  it('names no file or folder that is not there', () => {
    const files = [...text.matchAll(/`((?:server|tests|static|views|docs)\/[\w./-]+)`/g)].map(([, file = '']) => file)
    expect(files.filter((file) => !existsSync(join(root, file)))).toEqual([])
    const bare = [...text.matchAll(/`(\w+\.(?:ts|js|pug))`/g)].map(([, file = '']) => file)
    expect(bare.filter((file) => !names.has(file))).toEqual([])
  })
})

it('every page of docs/ is linked from another', () => {
  const linked = new Set(
    pages.flatMap((page) =>
      [...readFileSync(join(root, page), 'utf8').matchAll(/\]\((?!https?:)([^)#\s]+)/g)]
        .map(([, link = '']) => join(dirname(page), link))
        .filter((target) => target !== page),
    ),
  )
  expect(pages.filter((page) => page.startsWith('docs/') && !linked.has(page))).toEqual([])
})

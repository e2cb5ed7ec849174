import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import request from 'supertest'
import { describe, expect, it, vi } from 'vitest'
import { examples } from '../../server/web/parts/examples.js'
import { testApp } from './testApp.js'

vi.setConfig({ testTimeout: 60_000 })

const top = join(import.meta.dirname, '../..')

const policy = (header: string): Record<string, string> =>
  Object.fromEntries(
    header.split(';').map((part) => {
      const [name = '', ...values] = part.trim().split(' ')
      return [name, values.join(' ')]
    }),
  )

describe('the content policy', () => {
  it.each(['/', '/jobs', '/nowhere', '/enter', '/static/lampline.css', '/api/mains', '/healthz'])(
    'of %s allows files of this server only: nothing within the page, nothing from elsewhere, no frame',
    async (path) => {
      const { headers } = await request(testApp().app).get(path)
      expect(policy(headers['content-security-policy'] ?? '')).toEqual({
        'default-src': "'none'",
        'script-src': "'self'",
        'script-src-attr': "'none'",
        'style-src': "'self'",
        'style-src-attr': "'none'",
        'img-src': "'self'",
        'connect-src': "'self'",
        'object-src': "'none'",
        'base-uri': "'none'",
        'form-action': "'self'",
        'frame-ancestors': "'none'",
      })
      expect(headers).toMatchObject({
        'x-content-type-options': 'nosniff',
        'referrer-policy': 'same-origin',
        'x-frame-options': 'DENY',
      })
      expect(headers).not.toHaveProperty('x-powered-by')
      expect(headers).not.toHaveProperty('server')
    },
  )

  it.each([
    `/?${(examples[0]?.address ?? '').replace(/^\/?\??/, '')}`,
    '/first-power',
    '/fuse',
    '/records',
    '/shelf/matrix',
  ])('is kept by the page %s: no script, style or handler written into it', async (path) => {
    const { text } = await request(testApp().app).get(path)
    expect(text).toContain('</html>')
    expect(text).not.toMatch(/<style|\sstyle=|\son[a-z]+=|javascript:/i)
    expect(
      [...text.matchAll(/<script([^>]*)>/g)].every(([, attributes]) => attributes?.includes(' src="/static/')),
    ).toBe(true)
  })

  it('needs no eval: no script of ours makes code from text', () => {
    const scripts = readdirSync(join(top, 'static')).filter((name) => name.endsWith('.js'))
    expect(scripts.length).toBeGreaterThan(1)
    for (const script of scripts)
      expect(readFileSync(join(top, 'static', script), 'utf8')).not.toMatch(
        /\beval\(|new Function\b|set(Timeout|Interval)\(\s*['"`]/,
      )
  })
})

import fc from 'fast-check'
import request from 'supertest'
import { describe, expect, it } from 'vitest'
import { utf8 } from '../../server/web/utf8.js'
import { testApp } from './testApp.js'

describe('a page as bytes', () => {
  it('is what the platform makes of the text, whatever stands in it', () => {
    // WHATWG Encoding, 8.1: the encoder of the platform, an independent way to the same bytes
    const encoder = new TextEncoder()
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 3000 }), (text) => {
        expect(utf8(text)).toEqual(Buffer.from(encoder.encode(text)))
      }),
    )
    for (const length of [0, 1, 349_524, 349_525, 349_526, 400_000])
      expect(utf8('€'.repeat(length)).equals(Buffer.from(encoder.encode('€'.repeat(length))))).toBe(true)
  })

  it('stays as it is when the next one is made', () => {
    const first = utf8('first')
    utf8('second')
    expect(first.toString()).toBe('first')
  })

  it('is sent with its length, to those who ask for the head alone too, and compressed where it may be', async () => {
    const { app } = testApp()
    const plain = await request(app).get('/').set('Accept-Encoding', 'identity')
    expect(Number(plain.headers['content-length'])).toBe(Buffer.byteLength(plain.text))
    expect(plain.headers['content-type']).toBe('text/html; charset=utf-8')
    const head = await request(app).head('/').set('Accept-Encoding', 'identity')
    expect(head.headers['content-length']).toBe(plain.headers['content-length'])
    expect(head.text).toBeUndefined()
    const small = await request(app).get('/').set('Accept-Encoding', 'gzip')
    expect(small.headers['content-encoding']).toBe('gzip')
    expect(small.headers['content-length']).toBeUndefined()
    expect(small.text).toBe(plain.text)
  }, 60_000)
})

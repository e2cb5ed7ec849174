import request from 'supertest'
import { expect, it } from 'vitest'
import { testApp } from './testApp.js'

it('sends a page with its length, to those who ask for the head alone too, and compressed where it may be', async () => {
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

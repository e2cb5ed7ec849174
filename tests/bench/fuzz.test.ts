import { expect, it } from 'vitest'
import { testApp } from '../web/testApp.js'
import { faultOf } from './fuzz/answers.js'
import { kinds, routesOf } from './fuzz/routes.js'

it('has requests for every route of the app, and for no other', () => {
  const routes = routesOf(testApp().app)
  expect(routes.length).toBeGreaterThan(100)
  expect(Object.keys(kinds).sort()).toEqual(routes.sort())
})

it.each([
  ['a fault of the server', 'GET', '/', { status: 500, headers: { 'content-type': 'text/html' }, text: '' }, /500/],
  ['a stack trace', 'GET', '/', { status: 404, headers: {}, text: 'Error\n    at x (/app/a.js:1:2)' }, /code/],
  ['a lost number', 'GET', '/', { status: 200, headers: {}, text: '<p>NaN V</p>' }, /NaN/],
  [
    'an error of a call that is a page',
    'GET',
    '/api/x',
    { status: 404, headers: { 'content-type': 'text/html' }, text: '' },
    /type/,
  ],
  [
    'an error without words',
    'GET',
    '/api/x',
    { status: 422, headers: { 'content-type': 'application/json' }, text: '{"error":{}}' },
    /message/,
  ],
])('tells %s from a good answer', (_what, method, path, answer, said) => {
  expect(faultOf(method, path, '', answer)).toMatch(said)
})

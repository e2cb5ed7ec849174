import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { type Request, type RequestHandler, type Response, Router } from 'express'
import type { z } from 'zod'
import { tell } from '../../words/tell.js'
import type { Context } from '../context.js'
import { parse } from '../parse.js'

/** What a call is run with, beside its body. */
export interface Asked extends Context {
  request: Request
  response: Response
  /** what the path names: ":id", ":partId" … */
  named: (name: string) => string
}

/** One call under /api: from this entry come its route and its description. */
export interface Call {
  method: 'get' | 'post' | 'put' | 'patch' | 'delete'
  /** as the router has it: "/api/jobs/:id" */
  path: string
  group:
    | 'Check'
    | 'Mains'
    | 'Fuse'
    | 'First power'
    | 'Examining'
    | 'Shelf'
    | 'Jobs'
    | 'Photos'
    | 'At hand'
    | 'In and out'
    | 'This document'
  summary: string
  /** what is sent, as JSON */
  body?: z.ZodType
  /** names of optional parameters in the address, with what they mean */
  query?: Record<string, string>
  answer: z.ZodType | 'csv' | 'zip' | 'nothing'
  /** of an answer that succeeds; 200 unless given */
  status?: 200 | 201 | 204
  /** true: a call sent again with its Idempotency-Key adds nothing more */
  once?: true
  /** the body is a file instead of a described JSON object: its type, and what reads it; such a file may be larger than a request */
  file?: { type: 'text/csv' | 'application/json' | 'application/zip' | 'multipart/form-data'; read: RequestHandler[] }
  /** the answer is a file of this name */
  attachment?: string
  run: (body: never, asked: Asked) => unknown
}

interface With<Body extends z.ZodType> extends Call {
  body: Body
  run: (body: z.output<Body>, asked: Asked) => unknown
}

interface Without extends Call {
  body?: undefined
  run: (body: undefined, asked: Asked) => unknown
}

/** An entry with the type of its body handed to `run`. */
export function call<Body extends z.ZodType>(entry: With<Body>): Call
export function call(entry: Without): Call
export function call(entry: Call): Call {
  return entry
}

/** The route of a call: reads the body by its schema, runs it, answers. Phrases are told with a decimal point. */
const handler =
  ({ body, status = 200, answer, attachment, run }: Call, context: Context): RequestHandler =>
  async (request, response) => {
    const sent = body ? parse(body, request.body ?? {}) : undefined
    const named = (name: string) => String(request.params[name])
    const result = await run(sent as never, { ...context, request, response, named })
    response.status(status)
    if (answer === 'zip') {
      response.type('application/zip').attachment(attachment ?? '')
      await pipeline(Readable.from(result as AsyncIterable<Uint8Array>), response)
    } else if (attachment)
      response
        .type(answer === 'csv' ? 'text/csv' : 'json')
        .attachment(attachment)
        .send(result)
    else if (answer === 'nothing') response.end()
    else response.json(tell(result))
  }

/** The routes of calls, each under its path. */
export function routesOf(calls: readonly Call[], context: Context): Router {
  const router = Router()
  for (const entry of calls) router[entry.method](entry.path, ...(entry.file?.read ?? []), handler(entry, context))
  return router
}

import { join } from 'node:path'
import { build } from 'esbuild'
import type { RequestHandler } from 'express'
import { root } from '../../../root.js'

let made: Promise<string> | undefined

/** `judge.ts` as one script for browsers, under the name `judge`; put together once, and again after a failure. */
export const judgeScript = (make: () => Promise<string> = put): Promise<string> =>
  (made ??= make().catch((error: unknown) => {
    made = undefined
    throw error
  }))

async function put(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(root, 'server/web/pages/bench/judge.ts')],
    bundle: true,
    write: false,
    minify: true,
    format: 'iife',
    globalName: 'judge',
    // refuses whatever a browser does not have
    platform: 'browser',
    target: 'es2022',
    logLevel: 'silent',
  })
  return outputFiles[0]?.text ?? ''
}

/** Answers with the script. */
export const judgeScriptFile: RequestHandler = async (_request, response) => {
  response
    .type('text/javascript')
    .set('Cache-Control', 'no-cache')
    .send(await judgeScript())
}

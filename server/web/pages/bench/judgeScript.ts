import { join } from 'node:path'
import { build } from 'esbuild'
import type { RequestHandler } from 'express'
import { root } from '../../../root.js'
import { madeOnce } from '../../parts/madeOnce.js'

/** `onPhone.ts` as one script for browsers, under the name `judge`. */
export async function judgeScript(): Promise<string> {
  const { outputFiles } = await build({
    entryPoints: [join(root, 'server/web/pages/bench/onPhone.ts')],
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

/** Answers with the script, which is put together once. */
export function judgeScriptFile(): RequestHandler {
  const script = madeOnce(judgeScript)
  return async (_request, response) => {
    response
      .type('text/javascript')
      .set('Cache-Control', 'no-cache')
      .send(await script())
  }
}

import { z } from 'zod'

/** Addresses only this machine itself can reach. */
export const isLoopback = (host: string): boolean =>
  host === 'localhost' || host === '::1' || /^127(\.\d{1,3}){3}$/.test(host)

const schema = z.object({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: z
    .string()
    .regex(/^\d{1,5}$/, { error: 'PORT must be a whole number from 0 to 65535; 0 picks a free one' })
    .default('8080')
    .transform(Number)
    .pipe(z.number().max(65535, { error: 'PORT must be a whole number from 0 to 65535' })),
  DATA_DIR: z.string().min(1).default('data'),
  DATABASE_URL: z.string().min(1).optional(),
  PASSPHRASE: z.string().min(8, { error: 'PASSPHRASE must be at least 8 characters' }).optional(),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'silent']).default('warn'),
})

export interface Config {
  host: string
  port: number
  dataDir: string
  databaseUrl: string | undefined
  passphrase: string | undefined
  logLevel: string
}

/** Settings from the environment; throws a readable text that names each wrong variable. */
export function readConfig(environment: Record<string, string | undefined>): Config {
  const parsed = schema.safeParse(environment)
  if (!parsed.success) throw new Error(z.prettifyError(parsed.error))
  const { HOST, PORT, DATA_DIR, DATABASE_URL, PASSPHRASE, LOG_LEVEL } = parsed.data
  if (!isLoopback(HOST) && PASSPHRASE === undefined)
    throw new Error(
      `HOST ${HOST} can be reached over a network: set PASSPHRASE (8 characters or more), which every browser is then asked for once.`,
    )
  return {
    host: HOST,
    port: PORT,
    dataDir: DATA_DIR,
    databaseUrl: DATABASE_URL,
    passphrase: PASSPHRASE,
    logLevel: LOG_LEVEL,
  }
}

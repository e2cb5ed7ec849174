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
  ALLOWED_HOSTS: z
    .string()
    .default('')
    .transform((text) => text.split(',').map((name) => name.trim().toLowerCase()))
    .transform((names) => names.filter((name) => name !== ''))
    .pipe(
      z.array(
        z.string().regex(/^([a-z\d_-]+(\.[a-z\d_-]+)*|[\da-f:]*:[\da-f:.]*)$/, {
          error: 'ALLOWED_HOSTS holds names with commas between, without http:// and without a port',
        }),
      ),
    ),
  TRUST_PROXY: z
    .string()
    .regex(/^\d$/, { error: 'TRUST_PROXY must be the number of proxies in front, 0 to 9' })
    .default('0')
    .transform(Number),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'silent']).default('warn'),
})

export interface Config {
  host: string
  port: number
  dataDir: string
  databaseUrl: string | undefined
  passphrase: string | undefined
  /** further names under which this server answers, in small letters */
  allowedHosts: string[]
  /** how many proxies in front may say from where and how a request came */
  trustedProxies: number
  logLevel: string
}

/** Settings from the environment; throws a readable text that names each wrong variable. */
export function readConfig(environment: Record<string, string | undefined>): Config {
  const parsed = schema.safeParse(environment)
  if (!parsed.success) throw new Error(z.prettifyError(parsed.error))
  const { HOST, PORT, DATA_DIR, DATABASE_URL, PASSPHRASE, ALLOWED_HOSTS, TRUST_PROXY, LOG_LEVEL } = parsed.data
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
    allowedHosts: ALLOWED_HOSTS,
    trustedProxies: TRUST_PROXY,
    logLevel: LOG_LEVEL,
  }
}

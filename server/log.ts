import { type DestinationStream, type Logger, pino, stdSerializers } from 'pino'
import type { Config } from './config.js'

/** Every spelling under which a secret of the settings could turn up in a line of JSON. */
function secretsOf({ passphrase, databaseUrl }: Pick<Config, 'passphrase' | 'databaseUrl'>): string[] {
  const password = /^[^:]+:\/\/[^:@/]*:(.+)@/.exec(databaseUrl ?? '')?.[1]
  const decoded = (text: string): string[] => {
    try {
      return [decodeURIComponent(text)]
    } catch {
      return []
    }
  }
  const plain = [passphrase, databaseUrl, password, ...(password === undefined ? [] : decoded(password))]
  return plain
    .filter((secret) => secret !== undefined && secret.length > 3)
    .flatMap((secret) => [JSON.stringify(secret).slice(1, -1), encodeURIComponent(secret as string)])
    .sort((one, other) => other.length - one.length)
}

/** Lines of JSON, from the level of the settings on, in which no secret of the settings ever stands. */
export function createLogger(
  config: Pick<Config, 'logLevel' | 'passphrase' | 'databaseUrl'>,
  destination?: DestinationStream,
): Logger {
  const secrets = secretsOf(config)
  const hidden = (line: string): string => secrets.reduce((text, secret) => text.replaceAll(secret, '[hidden]'), line)
  const options = {
    level: config.logLevel,
    serializers: { error: stdSerializers.err },
    hooks: { streamWrite: hidden },
  }
  return destination ? pino(options, destination) : pino(options)
}

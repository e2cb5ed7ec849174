import { fileURLToPath } from 'node:url'

/** The project's top folder, with a separator at its end: the sources and what is compiled both lie one folder below it. */
export const root: string = fileURLToPath(new URL('..', import.meta.url))

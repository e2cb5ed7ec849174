import { drawingKey } from './drawingKey.js'
import type { Choice } from './fact.js'

/** No inlet and no connector: a cord that cannot be pulled out. */
export const captive: Choice<string> = { value: 'captive', label: 'None: the cord is fixed on' }

/** Choices from names with their nicknames, each once: one connector may be sold for two inlets. */
export const namesOnce = (
  kind: 'inlet' | 'connector',
  rows: readonly { name: string; nicknames: readonly string[] }[],
): Choice<string>[] =>
  rows
    .filter(({ name }, index) => rows.findIndex((row) => row.name === name) === index)
    .map(({ name, nicknames }) => ({
      value: name,
      label: nicknames[0] ? `${name} (${nicknames[0]})` : name,
      drawing: drawingKey(kind, name),
    }))

import type { z } from 'zod'
import { type FieldError, Unprocessable } from './errors.js'

const received = (input: unknown): string => {
  if (input === undefined) return 'nothing'
  const text = JSON.stringify(input) ?? String(input)
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}

const accepted = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'invalid_type':
      return issue.expected === 'number' ? 'must be a number' : `must be ${article(issue.expected)}`
    case 'invalid_value':
      return `must be one of ${issue.values.map((value) => JSON.stringify(value)).join(', ')}`
    case 'too_small':
      return issue.origin === 'number'
        ? `must be ${issue.inclusive ? '' : 'more than '}${issue.minimum}${issue.inclusive ? ' or more' : ''}`
        : issue.minimum === 1 && issue.origin === 'string'
          ? 'must not be empty'
          : `must have at least ${issue.minimum} ${issue.origin === 'string' ? 'characters' : 'entries'}`
    case 'too_big':
      return issue.origin === 'number'
        ? `must be ${issue.inclusive ? '' : 'less than '}${issue.maximum}${issue.inclusive ? ' or less' : ''}`
        : `must have at most ${issue.maximum} ${issue.origin === 'string' ? 'characters' : 'entries'}`
    case 'unrecognized_keys':
      return `has a field that is not known here: ${issue.keys.map((key) => JSON.stringify(key)).join(', ')}`
    default:
      return issue.message
  }
}

const article = (type: string): string => (/^[aeiou]/.test(type) ? `an ${type}` : `a ${type}`)

/** A zod issue as a sentence: what is wrong, what was received, what would be accepted. */
export function fieldErrors(error: z.ZodError): FieldError[] {
  return error.issues.map((issue) => {
    const path = issue.path.map(String).join('.')
    const name = path || 'the request'
    const own = issue.code === 'custom' || issue.code === 'invalid_union'
    const text = own ? issue.message : `${name} ${accepted(issue)}`
    const tail = issue.code === 'unrecognized_keys' || own ? '' : `; received ${received(issue.input)}`
    return { path, message: `${text}${tail}.`.replace(/\.\.$/, '.') }
  })
}

/** Parses what was sent, or throws {@link Unprocessable} with a message for every field that is wrong. */
export function parse<Schema extends z.ZodType>(schema: Schema, input: unknown): z.output<Schema> {
  const parsed = schema.safeParse(input, { reportInput: true })
  if (parsed.success) return parsed.data
  throw new Unprocessable(fieldErrors(parsed.error))
}

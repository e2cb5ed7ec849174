import { join } from 'node:path'
import { compileFile, type compileTemplate } from 'pug'
import { root } from '../root.js'
import type { FormState } from './forms/formState.js'

/** The mixins that print the same whenever they are given the same; those of fields, where the form adds nothing. */
export type Part =
  | 'textField'
  | 'selectField'
  | 'suggestions'
  | 'outputRow'
  | 'needRow'
  | 'outcomeSymbol'
  | 'outcomeMark'
  | 'linkGlyph'

/** What a mixin is given beside its name: of a field, a list, a mark, or the first box of a row. */
interface Given {
  label?: string
  /** the choices, of a row all of them; they are the same only if they are the same object */
  list?: object
  options?: Readonly<Record<string, unknown>>
  /** the choice that was made */
  chosen?: string
  /** the names of a row's boxes */
  rail?: object
}

/** Prints a part, or answers with what was printed before for the same. */
export type PrintedOnce = (part: Part, name: string, given?: Given) => string

/** More of one name are not kept: a page may make its choices anew each time. */
const most = 50

/** Prints parts by `views/part.pug`, each once; `words` are what the mixins look up beside their arguments. */
export function printedOnce(words: object): PrintedOnce {
  let print: compileTemplate | undefined
  const kept = new Map<string, { part: Part; given: Given; html: string }[]>()
  return (part, name, given = {}) => {
    const ofName = kept.get(name) ?? []
    for (const one of ofName) if (one.part === part && areAlike(one.given, given)) return one.html
    print ??= compileFile(join(root, 'views/part.pug'), { compileDebug: false })
    const form: FormState = { values: { [name]: given.chosen ?? '' }, errors: {}, shown: {}, read: {} }
    const html = inOnePiece(print({ ...words, part, name, ...given, form }))
    kept.set(name, [{ part, given, html }, ...ofName.slice(0, most - 1)])
    return html
  }
}

const areAlike = (one: Given, other: Given): boolean =>
  one.label === other.label &&
  one.list === other.list &&
  one.chosen === other.chosen &&
  one.rail === other.rail &&
  optionsAlike(one.options, other.options)

function optionsAlike(one: Given['options'] = {}, other: Given['options'] = {}): boolean {
  for (const key in one) if (one[key] !== other[key]) return false
  for (const key in other) if (!(key in one)) return false
  return true
}

/** The same text, no longer held as the many pieces it was put together from: pages that take it in are made faster. */
const inOnePiece = (text: string): string => Buffer.from(text).toString()

/** True where a form has nothing to say of a field: no fault, nothing read from a plate. */
const isUnremarked = ({ errors, read }: Partial<FormState>, name: string): boolean => !errors?.[name] && !read?.[name]

/** True where a form has nothing for a field, typed or to say of it. */
export const isUntouched = (form: Partial<FormState>, name: string): boolean =>
  isUnremarked(form, name) && !form.values?.[name] && !form.shown?.[name]

/** True where a form has nothing for any of some fields. */
export function areUntouched(form: Partial<FormState>, names: Readonly<Record<string, string>>): boolean {
  for (const key in names) if (!isUntouched(form, names[key] as string)) return false
  return true
}

/** True where a form has nothing for a list of choices but one of them, or none. */
export const isChosen = (form: Partial<FormState>, name: string, choices: readonly { value: string }[]): boolean => {
  const value = form.values?.[name]
  return isUnremarked(form, name) && (!value || choices.some((choice) => choice.value === value))
}

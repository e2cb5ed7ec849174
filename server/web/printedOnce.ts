import { join } from 'node:path'
import { compileFile, type compileTemplate } from 'pug'
import { root } from '../root.js'
import type { FormState } from './forms/formState.js'

/** The mixins that print the same whenever they are given the same; those of fields, where the form has nothing for them. */
export type Part = 'textField' | 'selectField' | 'suggestions' | 'outcomeSymbol' | 'outcomeMark' | 'linkGlyph'

type Options = Readonly<Record<string, unknown>>

/** Prints a part as it was printed before for the same arguments; a list is the same only if it is the same array. */
export type PrintedOnce = (part: Part, name: string, label?: string, list?: object, options?: Options) => string

interface Printed {
  part: Part
  label: string | undefined
  list: object | undefined
  options: Options | undefined
  html: string
}

/** More of one name are not kept: a page may make its choices anew each time. */
const most = 20

const untouched: FormState = { values: {}, errors: {}, shown: {}, read: {} }

/** Prints parts by `views/part.pug`, each once; `words` are what the mixins look up beside their arguments. */
export function printedOnce(words: object): PrintedOnce {
  let print: compileTemplate | undefined
  const kept = new Map<string, Printed[]>()
  return (part, name, label, list, options) => {
    const ofName = kept.get(name) ?? []
    for (const one of ofName)
      if (one.part === part && one.label === label && one.list === list && areAlike(one.options, options))
        return one.html
    print ??= compileFile(join(root, 'views/part.pug'), { compileDebug: false })
    const html = inOnePiece(print({ ...words, part, name, label, list, options, form: untouched }))
    kept.set(name, [{ part, label, list, options, html }, ...ofName.slice(0, most - 1)])
    return html
  }
}

function areAlike(one: Options = {}, other: Options = {}): boolean {
  for (const key in one) if (one[key] !== other[key]) return false
  for (const key in other) if (!(key in one)) return false
  return true
}

/** The same text, no longer held as the many pieces it was put together from: pages that take it in are made faster. */
const inOnePiece = (text: string): string => Buffer.from(text).toString()

/** True where a form has nothing for a field: nothing typed, no fault, nothing read from a plate. */
export const isUntouched = ({ values, errors, shown, read }: Partial<FormState>, name: string): boolean =>
  !values?.[name] && !errors?.[name] && !shown?.[name] && !read?.[name]

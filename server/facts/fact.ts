import type { z } from 'zod'
import type { LabelReading } from '../plate/labelReading.js'
import type { Words } from '../words/phrase.js'

/** The things of the power chain that a person can touch, in the order in which they are plugged together. */
export type Link =
  | 'source'
  | 'socket'
  | 'adapter'
  | 'converter'
  | 'cord'
  | 'inlet'
  | 'fuse'
  | 'supply'
  | 'lead'
  | 'plug'
  | 'jack'
  | 'machine'

/** What has to be switched on to find a fact out. */
export type Power = 'none' | 'low-voltage' | 'mains'

/** A way to find a fact out, as a sentence. */
export interface Way {
  how: string
  power: Power
}

/** Found out with nothing switched on. */
export const look = (how: string): Way => ({ how, power: 'none' })

/** Found out with a meter while something is on. */
export const measure = (how: string, power: Power): Way => ({ how, power })

/** What a plate says: its reading, and what its words tell of how the unit works where they were looked at for it. */
export interface PlateWords extends LabelReading {
  technology?: 'switch-mode' | 'transformer' | null
  regulated?: boolean | null
}

/** One of the answers that a fact may have. */
export interface Choice<Value = unknown> {
  /** null: the thing is there, and this about it is not known */
  value: Value | null
  /** its name in addresses and cells, where that is not the value itself */
  word?: string
  label: string
  /** within a sentence, where that is not the value itself */
  says?: string
  /** key of the drawing that shows it */
  drawing?: string
  /** IEC letters of the sockets that it belongs to */
  sockets?: readonly string[]
}

/** What every fact says of itself, whatever its kind. */
export interface About<Value = unknown> {
  /** the label of its box */
  label: string
  /** the label within a row of its own kind, where that is shorter */
  inRow?: string
  /** what to ask a person, in plain words */
  question: string
  /** the thing it is a fact of */
  link: Link
  /** its name in an address and in forms; within a list `#` stands for the number of the row */
  address: string
  /** its column in the shelf as CSV; of a fact in a list, the words before its figure in the cell of the whole row */
  column?: string
  /** the ways to find it out, what needs no power first */
  findOut: readonly Way[]
  /** the word of the glossary that explains it */
  term?: string
  /** a short remark at its box */
  hint?: string
  /** asked before all others of its thing; the rest stands folded away */
  ahead?: boolean
  /** what a plate says of it; what is entered comes before */
  printed?: (plate: PlateWords) => Value | null | undefined
  /** the same of a fact in a list, from one row of what the plate says */
  printedRow?: (row: RowPrinted) => Value | null
  /** what the plate says in words, where a value alone does not hold it */
  printedText?: (row: RowPrinted) => Words
}

/** How the value of a fact is written and read. */
export type Kind<Value = unknown> =
  | {
      kind: 'number'
      unit: string
      min: number
      max: number
      /** a value with its sign, which is at least this in size */
      apartFromZero?: number
      /** narrower bounds for what is typed in a form */
      typed?: { min?: number; max?: number; whole?: boolean }
    }
  | {
      kind: 'choice'
      choices: readonly Choice<Value>[]
      /** what no answer is called in a list, where it is not "I do not know" */
      none?: string
    }
  | {
      /** one line of text; choices are what is usual, and any other is taken */
      kind: 'text'
      choices?: readonly Choice<string>[]
    }
  | { kind: 'plate' }
  /** names of other facts, with spaces between */
  | { kind: 'keys' }
  /** pieces of a plate's words, one on each line */
  | { kind: 'phrases' }
  | { kind: 'country' }
  /** voltages, each one value or a range */
  | { kind: 'windows'; unit: 'V'; min: number; max: number }
  | { kind: 'numbers'; unit: string; min: number; max: number }

/** One fact: a row from which form, JSON schema, address, cell and question are derived. */
export type Fact<Value = unknown, Schema extends z.ZodType = z.ZodType> = About<Value> &
  Kind<Value> & {
    /** a value that is known */
    value: z.ZodType<Value>
    /** the fact as a part of its group: absent or null where it is not known, unless it is `required` or `stated` */
    schema: Schema
    /** its group or row cannot be without it */
    required?: true
    /** not known is written as null, never left out */
    stated?: true
  }

export type FactOf<KindName extends Kind['kind']> = Extract<Fact, { kind: KindName }>

/** Facts about one thing, by the names they have in JSON. */
export interface Group<Parts extends Record<string, Part>, Schema extends z.ZodType = z.ZodType> {
  kind: 'group'
  parts: Parts
  schema: Schema
}

/** Facts about a thing that may stand several times, a row for each. */
export interface List<Parts extends Record<string, Part>, Schema extends z.ZodType = z.ZodType> {
  kind: 'list'
  parts: Parts
  schema: Schema
  /** what one row is called within a sentence: "output" */
  each: string
  /** how many rows a form and an address have */
  rows: number
  /** its column in the shelf as CSV */
  column: string
  /** what a plate says of it, a row each */
  printed: (plate: PlateWords) => readonly RowPrinted[]
}

/** A row of a list as a plate says it. */
export type RowPrinted = LabelReading['outputs'][number]

// biome-ignore lint/suspicious/noExplicitAny: a part of any value
export type Part = Fact<any> | Group<any> | List<any>

import { check } from './check.js'
import type { Fact, Group, List, Part } from './fact.js'

/** A fact and where it stands. */
export interface Placed {
  /** its path in JSON, without the numbers of rows: "supply.outputs.currentA" */
  key: string
  fact: Fact
  /** the list whose rows it stands in */
  list: List<Record<string, Part>> | null
}

function placed(name: string, part: Part, list: Placed['list'] = null): Placed[] {
  if (part.kind !== 'group' && part.kind !== 'list') return [{ key: name, fact: part, list }]
  return Object.entries((part as Group<Record<string, Part>>).parts).flatMap(([inner, one]) =>
    placed(`${name}.${inner}`, one, part.kind === 'list' ? part : list),
  )
}

/** Every fact of a check, in their order. */
export const facts: readonly Placed[] = Object.entries(check).flatMap(([name, part]) => placed(name, part))

/** One box of a form, which is one parameter of an address. */
export interface Box extends Placed {
  name: string
  /** its label where it stands alone */
  label: string
  /** the number of its row in a list */
  row: number | null
}

/** The name of a fact's box in a row of a list; its own where it stands in none. */
export const boxName = (fact: Fact, row: number | null): string =>
  row === null ? fact.address : fact.address.replace('#', String(row))

const boxesOf = ({ list, ...rest }: Placed): Box[] =>
  list === null
    ? [{ ...rest, list, row: null, name: rest.fact.address, label: rest.fact.label }]
    : Array.from({ length: list.rows }, (_, index) => ({
        ...rest,
        list,
        row: index + 1,
        name: boxName(rest.fact, index + 1),
        label: `${rest.fact.label} of ${list.each} ${index + 1}`,
      }))

/** Every box, in the order in which they stand in an address. */
export const boxes: readonly Box[] = facts.flatMap(boxesOf)

const byName = new Map(boxes.map((box) => [box.name, box]))

/** The box of a name, or undefined where no fact has it. */
export const boxOf = (name: string): Box | undefined => byName.get(name)

/** The label of a parameter's box; the name itself where there is none. */
export const labelOf = (name: string): string => byName.get(name)?.label ?? name

import { plateLimits } from '../tables/plateLimits.js'
import type { Element, Quantity, StatedKind } from './quantity.js'
import { areSettings, both, highest } from './quantity.js'
import type { QuantityStatement, Section, Statement, Statements } from './statements.js'
import type { Token } from './token.js'

/** Where a group of figures stands: named by a word, or not at all. */
export type Side = Section | 'none'

/** One voltage, or list of them, with the figures printed beside it. */
export interface Group {
  side: Side
  volts: QuantityStatement | null
  kind: StatedKind
  /** the kind that stands with the voltage, not with the word for the side */
  ownKind: StatedKind
  /** "SEC", "2次": a winding, whose 0 is an end */
  winding: boolean
  others: QuantityStatement[]
  line: number
  /** whether a new line began after the word that named the side */
  lineAfterWord: boolean
  /** the word that named the side was read through damaged print */
  sideUnsure: boolean
}

interface Segment {
  side: Side
  winding: boolean
  kind: StatedKind
  statements: Statement[]
  line: number
  sideUnsure: boolean
}

/** Puts the statements of a plate under input, output or neither, and the figures to their voltages. */
export function readSides({ list, inverter }: Statements, tokens: Token[]): Group[] {
  tildes(list, tokens)
  const all = segments(list, tokens).flatMap((segment) => settings(abreast(groups(segment, tokens)), tokens))
  return inverter ? inverted(all) : all
}

const isMains = ({ quantity }: QuantityStatement): boolean =>
  quantity.dimension === 'V' && quantity.elements.some(({ value }) => value >= plateLimits.leastMainsV.value)

/** "INVERTER 12V DC 230V AC 300W": without words for the sides, its low direct voltage goes in and its mains voltage comes out. */
function inverted(all: Group[]): Group[] {
  const volts = all.flatMap((group) => (group.volts ? [highest(group.volts.quantity)] : []))
  const least = plateLimits.leastMainsV.value
  const both = volts.some((value) => value >= least) && volts.some((value) => value < least)
  if (!both || all.some(({ side }) => side !== 'none')) return all
  return all.map((group) => {
    if (!group.volts) return group
    return { ...group, side: highest(group.volts.quantity) >= least ? 'output' : 'input' }
  })
}

/** "5V 12V" and "2A 1A" below: as many currents as voltages, in their order. */
function abreast(all: Group[]): Group[] {
  for (let to = 1; to < all.length; to += 1) {
    const { others, line } = all[to]!
    const count = others.length
    const run = all.slice(to + 1 - count, to + 1)
    const isRow =
      count > 1 &&
      run.length === count &&
      others.every(
        ({ quantity, line: at }) => quantity.dimension === 'A' && quantity.elements.length === 1 && at > line,
      ) &&
      run.every(
        (one, at) =>
          one.line === line &&
          one.volts?.quantity.elements.length === 1 &&
          (at === count - 1 || one.others.length === 0),
      ) &&
      all[to - count]?.line !== line
    if (isRow) for (const [at, one] of run.entries()) one.others = [others[at]!]
  }
  return all
}

/** "3V 6V 9V 500mA": the settings of a switched supply, side by side, share the current and the kind behind the last. */
function settings(all: Group[], tokens: readonly Token[]): Group[] {
  const out: Group[] = []
  for (let from = 0; from < all.length; ) {
    const to = settingsEnd(all, from, tokens)
    const run = all.slice(from, to)
    from = to
    const [first, last] = [run[0]!, run[run.length - 1]!]
    const volts = run.map(({ volts }) => volts!)
    if (run.length < 2 || !areSettings(volts.map(({ quantity }) => quantity.elements[0]!.value))) {
      out.push(...run)
      continue
    }
    const quantity: Quantity = {
      ...last.volts!.quantity,
      elements: volts.flatMap(({ quantity }) => quantity.elements),
      joints: volts.slice(1).map(() => 'list'),
      first: first.volts!.quantity.first,
    }
    out.push({
      ...last,
      kind: last.kind ?? first.kind,
      line: first.line,
      lineAfterWord: first.lineAfterWord,
      volts: { ...last.volts!, quantity },
    })
  }
  return out
}

/** Where a run of single voltages ends that nothing but punctuation parts; only the last has further figures. */
function settingsEnd(all: readonly Group[], from: number, tokens: readonly Token[]): number {
  let to = from + 1
  for (; to < all.length; to += 1) {
    const [before, next] = [all[to - 1]!, all[to]!]
    if (!before.volts || !next.volts || before.others.length > 0) break
    const isSingle = (quantity: Quantity): boolean =>
      !quantity.worn && quantity.times === 1 && quantity.elements.length === 1 && quantity.elements[0]!.sign === null
    const [one, other] = [before.volts.quantity, next.volts.quantity]
    if (!isSingle(one) || !isSingle(other) || (before.kind !== null && next.kind !== null && before.kind !== next.kind))
      break
    if (tokens.slice(one.last, other.first).some((token) => token.type !== 'sign')) break
  }
  return to
}

/**
 * "~220V … ~12V": a tilde before mains volts is the sign for a.c.; before low volts it may be "about", unless the plate has
 * the one before its mains volts, too.
 */
function tildes(list: readonly Statement[], tokens: Token[]): void {
  const before = list.filter(
    (statement): statement is QuantityStatement =>
      statement.type === 'quantity' && statement.quantity.dimension === 'V' && statement.quantity.tildeBefore,
  )
  if (!before.some(isMains)) return
  for (const statement of before) {
    statement.prefix = both(statement.prefix, 'ac')
    tokens[statement.quantity.first - 1]!.role = 'kind'
  }
}

/** "120V INPUT / 12V OUTPUT": every word follows its figures and none comes before. */
function wordsFollow(list: readonly Statement[]): boolean {
  let shape = ''
  /** whether each word stands right behind a voltage, the figures after the last being no volts: "12V IN 5V OUT 1A" */
  let joined = true
  let trailing = false
  /** whether there is a voltage among the figures before each word; without one they are a title, "UPS 500VA" */
  let hasVolts = false
  for (const [index, statement] of list.entries()) {
    if (statement.type === 'quantity') {
      if (!shape.endsWith('Q')) {
        trailing = statement.quantity.dimension !== 'V'
        shape += 'Q'
      } else if (statement.quantity.dimension === 'V') joined &&= !trailing
    }
    if (isVoltage(statement)) hasVolts = true
    if (statement.type === 'section') {
      if (statement.colon || (shape.endsWith('Q') && !hasVolts)) return false
      hasVolts = false
      const before = list[index - 1]
      const volts = before?.type === 'quantity' && before.quantity.dimension === 'V' ? before.quantity : null
      // low volts in and mains out is no more likely than a title before words that come first
      const isMainsOut =
        statement.section === 'output' && (volts?.elements[0]?.value ?? 0) >= plateLimits.leastMainsV.value
      joined &&= volts?.last === statement.token && !isMainsOut
      if (!shape.endsWith('S')) shape += 'S'
    }
  }
  if (joined && trailing && shape === 'QSQSQ') return true
  return shape.length > 0 && shape.length % 2 === 0 && /^(?:QS)+$/.test(shape.slice(0, 64)) && shape.length <= 64
}

const isVoltage = (statement: Statement): boolean =>
  statement.type === 'quantity' && statement.quantity.dimension === 'V'

function segments(list: readonly Statement[], tokens: Token[]): Segment[] {
  const following = wordsFollow(list)
  const lastVoltage = list.findLastIndex(isVoltage)
  const out: Segment[] = []
  const open = (side: Side, line: number, winding = false): Segment => {
    const segment: Segment = { side, winding, kind: null, statements: [], line, sideUnsure: false }
    out.push(segment)
    return segment
  }
  let current = open('none', 0)
  let sinceWord: 'nothing' | 'quantity' = 'quantity'
  let last: Section | null = null
  let consumption: { line: number; back: Segment } | null = null
  list.forEach((statement, index) => {
    if (consumption && statement.type === 'line') {
      current = open(consumption.back.side === 'input' ? 'input' : 'none', statement.line + 1)
      consumption = null
    }
    if (statement.type === 'section') {
      const word = tokens[statement.token]!
      word.role = 'side'
      const isUnsure = word.type === 'word' && word.reads !== null
      consumption = null
      if (following) {
        // the figures just read belong to this word
        if (last === null || sinceWord === 'quantity') {
          const own = lastClause(current.statements)
          if (own > 0) {
            const { statements } = current
            current.statements = statements.slice(0, own)
            current = open('none', current.line)
            current.statements = statements.slice(own)
          }
          current.side = statement.section
          current.sideUnsure = isUnsure
          current.winding = statement.secondary
          // "… 12V SECONDARY 2A": figures after the last word are still its own
          if (index < lastVoltage) current = open('none', statement.line)
        } else if (last !== statement.section) current.side = 'none'
      } else if (last === null && current.side === 'none' && closesVoltage(list, index)) {
        current.side = statement.section
        current.sideUnsure = isUnsure
        current.winding = statement.secondary
      } else {
        const clash = last !== null && last !== statement.section && sinceWord === 'nothing' && !statement.colon
        current = open(clash ? 'none' : statement.section, statement.line, statement.secondary)
        current.sideUnsure = isUnsure
        // "AC INPUT", "DC OUT"; in "0-15V D.C. MAINS 240V" the word is that of the output before
        const before = list[index - 1]
        const next = list[index + 1]
        const suits =
          before?.type === 'kind' &&
          !(before.kind === 'dc' && statement.section === 'input' && next?.type === 'quantity' && isMains(next))
        if (suits && before.line === statement.line && tokens[before.token]!.role === undefined) {
          current.kind = before.kind
          tokens[before.token]!.role = 'kind'
        }
      }
      last = statement.section
      sinceWord = 'nothing'
      return
    }
    if (statement.type === 'consumption') {
      tokens[statement.token]!.role = 'label'
      const next = list[index + 1]
      // "Consumption, input: …" opens the input itself
      if (!(next?.type === 'section')) {
        const back: Segment = current
        current = open('input', statement.line)
        consumption = { line: statement.line, back }
      }
      return
    }
    if (statement.type === 'quantity') sinceWord = 'quantity'
    current.statements.push(statement)
  })
  return out
}

/** "9-24V DC IN 1A": the word stands between a voltage, the first of the plate, and its further figures. */
function closesVoltage(list: readonly Statement[], index: number): boolean {
  const [before, after] = [list[index - 1], list[index + 1]]
  return (
    before?.type === 'quantity' &&
    before.quantity.dimension === 'V' &&
    after?.type === 'quantity' &&
    after.prefix === null &&
    after.quantity.dimension !== 'V' &&
    after.line === before.line
  )
}

/** "24V AC 20VA transformer, 230V primary": where the clause with the last voltage begins, if another is before it; else 0. */
function lastClause(statements: readonly Statement[]): number {
  const voltage = statements.findLastIndex(isVoltage)
  const start = statements.slice(0, Math.max(voltage, 0)).findLastIndex(({ type }) => type === 'break')
  return statements.slice(0, Math.max(start, 0)).some(isVoltage) ? start : 0
}

/** "0.5A 5V 1A 12V": every figure comes before its voltage. */
function figuresLead(statements: readonly Statement[]): boolean {
  let shape = ''
  for (const statement of statements) {
    if (statement.type !== 'quantity' || statement.excluded) continue
    if (statement.quantity.dimension === 'V') shape += 'V'
    else if (statement.quantity.dimension === 'A') shape += 'A'
    if (shape.length > 64) return false
  }
  return /^(?:AV){2,}$/.test(shape)
}

function groups(segment: Segment, tokens: Token[]): Group[] {
  const out: Group[] = []
  const leading: QuantityStatement[] = []
  const lead = figuresLead(segment.statements)
  let lineKind: { kind: StatedKind; line: number } | null = null
  let current: Group | null = null
  let figures = 0
  segment.statements.forEach((statement, index) => {
    if (statement.type === 'kind' && tokens[statement.token]!.role === undefined) {
      // "12V 1A DC", "2A (交流)": said of the voltage before
      if (current && current.kind === null && current.line === statement.line) {
        current.kind = statement.kind
        current.ownKind = statement.kind
        tokens[statement.token]!.role = 'kind'
      } else if (!current && figures === 0 && segment.side !== 'none' && segment.kind === null) {
        // "OUTPUT DC" and the figures below
        segment.kind = statement.kind
        tokens[statement.token]!.role = 'kind'
      }
      return
    }
    if (statement.type !== 'quantity') return
    if (statement.excluded || statement.quantity.dimension === 'other') return
    figures += 1
    if (statement.quantity.dimension !== 'V') {
      if (current && !lead) current.others.push(statement)
      else leading.push(statement)
      return
    }
    const before = segment.statements[index - 1]
    if (
      statement.prefix !== null &&
      figures === 1 + leading.length &&
      before?.type === 'kind' &&
      segment.side !== 'none'
    )
      lineKind = { kind: statement.prefix, line: statement.line }
    for (const [place, quantity] of split(statement.quantity, segment.side).entries()) {
      const own = both(statement.prefix, quantity.kind)
      const fromLine = lineKind && lineKind.line === statement.line ? lineKind.kind : null
      const volts: QuantityStatement = { ...statement, quantity, prefix: place === 0 ? statement.prefix : null }
      current = {
        side: segment.side,
        volts,
        kind: segment.kind !== null && own !== null ? both(segment.kind, own) : (own ?? segment.kind ?? fromLine),
        ownKind: own,
        winding: segment.winding,
        others: leading.splice(0),
        line: statement.line,
        lineAfterWord: statement.line > segment.line,
        sideUnsure: segment.sideUnsure,
      }
      out.push(current)
    }
  })
  if (leading.length > 0) {
    out.push({
      side: segment.side,
      volts: null,
      kind: null,
      ownKind: null,
      winding: segment.winding,
      others: leading,
      line: leading[0]!.line,
      lineAfterWord: false,
      sideUnsure: segment.sideUnsure,
    })
  }
  return out
}

/** "220/9V": mains and low voltage in one list are two sides of a transformer. */
function split(quantity: Quantity, side: Side): Quantity[] {
  const { elements, joints } = quantity
  if (side !== 'none' || elements.length < 2 || quantity.worn) return [quantity]
  const isMains = (index: number): boolean => elements[index]!.value >= plateLimits.leastMainsV.value
  const cut = elements.findIndex(
    (_, index) => index > 0 && joints[index - 1] === 'list' && isMains(index - 1) !== isMains(index),
  )
  if (cut < 0) return [quantity]
  const apart = elements.slice(cut).every((_, index) => isMains(cut + index) === isMains(cut))
  const before = elements.slice(0, cut).every((_, index) => isMains(index) === isMains(0))
  if (!apart || !before) return [{ ...quantity, worn: true }]
  const [first, second] = [elements.slice(0, cut), elements.slice(cut)]
  const kindOf = (part: readonly Element[]): StatedKind =>
    part.reduce<StatedKind>((kind, one) => both(kind, one.kind), null)
  return [
    { ...quantity, elements: first, joints: joints.slice(0, cut - 1), kind: kindOf(first) },
    {
      ...quantity,
      elements: second,
      joints: joints.slice(cut),
      kind: quantity.kind === 'conflict' ? kindOf(second) : quantity.kind,
    },
  ]
}

import { componentVoltages, mainsFrequencies, mainsVoltages, plateLimits } from '../tables/plateLimits.js'
import type { LabelInput, LabelRail, PlateOf, PrintedKind, VoltageWindow } from './labelReading.js'
import { areSettings, type Quantity, type StatedKind } from './quantity.js'
import type { Group } from './sides.js'
import type { QuantityStatement } from './statements.js'
import { inputWindows, type RailVoltage, railVoltages } from './voltages.js'

export interface Ratings {
  input: LabelInput | null
  outputs: LabelRail[]
  /** printed power of several outputs together [W] */
  outputsTotalW: number | null
  takes: LabelRail[]
  /** the quantities that found a place, and the fields of the reading that they gave */
  used: UsedQuantity[]
}

export interface UsedQuantity {
  quantity: Quantity
  as: string
  fields: string[]
  /** read through damaged print, or not what any mains has */
  unsure: boolean
}

interface RailGroup {
  rails: LabelRail[]
  group: Group
  /** figures of current and power that name no single rail yet */
  volts: RailVoltage[]
  /** what the fields of each rail begin with: "outputs.0" */
  keys: string[]
}

const printed = (kind: StatedKind): PrintedKind => (kind === 'ac' || kind === 'dc' ? kind : null)
const valuesOf = (quantity: Quantity): number[] => quantity.elements.map(({ value }) => value)
const largest = (quantity: Quantity): number => Math.max(...valuesOf(quantity))

/** Turns the groups of figures into ratings; what does not fit is left out. */
export function readRatings(groups: readonly Group[], of: PlateOf): Ratings {
  return new RatingReader(groups, of).run()
}

class RatingReader {
  readonly #input: LabelInput = {
    kind: null,
    voltages: [],
    frequenciesHz: [],
    currentA: null,
    powerVA: null,
    powerW: null,
  }
  #inputSaid = false
  #railCount = 0
  #inputKinds: PrintedKind[] = []
  #either = false
  readonly #outputs: RailGroup[] = []
  readonly #takes: RailGroup[] = []
  #used: Ratings['used'] = []
  /** an input voltage has a digit that cannot be read */
  #inputWorn = false
  /** what else of the input has a digit that cannot be read: "15.0A … 1?.0A" has no largest */
  readonly #wornFields: string[] = []
  /** the low voltages that stand under a word for output */
  #named: ReadonlySet<string> | undefined
  /** watts of all outputs together */
  readonly #totals: { statement: QuantityStatement; group: Group }[] = []
  /** power and frequency to be placed when everything else is known */
  readonly #late: { statement: QuantityStatement; group: Group; rail: RailGroup | null }[] = []

  constructor(
    readonly groups: readonly Group[],
    readonly of: PlateOf,
  ) {}

  run(): Ratings {
    const homes = this.groups.map((group, index) =>
      group.volts && !this.#isTitle(group, index) ? this.#voltage(group) : null,
    )
    this.groups.forEach((group, index) => {
      const home = homes[index]
      if (home === 'input') this.#toInput(group)
      else if (home) this.#toRails(group, home)
      else this.#loose(group)
    })
    for (const late of this.#late) this.#placeLate(late)
    const outputsTotalW = this.#total()
    this.#settleKind()
    if (this.#inputWorn) this.#forgetWindows()
    this.#denyPower()
    this.#forgetWorn()
    const rails = (list: RailGroup[]): LabelRail[] => list.flatMap((entry) => entry.rails)
    return {
      input: this.#inputSaid ? this.#input : null,
      outputs: rails(this.#outputs),
      outputsTotalW,
      takes: rails(this.#takes),
      used: this.#used,
    }
  }

  /** One input voltage is worn away: the others are not all there is, and a selector would look like a single voltage. */
  #forgetWindows(): void {
    this.#input.voltages = []
    this.#used = this.#used.filter(({ as }) => as !== 'input voltage')
  }

  /** "120V 1A 300W": more watts than the largest voltage and current give are another thing's. */
  #denyPower(): void {
    const { voltages, currentA } = this.#input
    if (voltages.length === 0 || currentA === null) return
    const most = Math.max(...voltages.map(({ max }) => max)) * currentA * plateLimits.powerDenied.value
    for (const key of ['powerW', 'powerVA'] as const) {
      if (!((this.#input[key] ?? 0) > most)) continue
      this.#input[key] = null
      this.#used = this.#used.filter(({ fields }) => !fields.includes(`input.${key}`))
    }
  }

  /** Of several figures one of which is worn the largest is not known, nor are all frequencies. */
  #forgetWorn(): void {
    for (const dimension of this.#wornFields) {
      if (dimension === 'Hz') this.#input.frequenciesHz = []
      else if (dimension === 'A') this.#input.currentA = null
      else if (dimension === 'VA') this.#input.powerVA = null
      else if (dimension === 'W') this.#input.powerW = null
      this.#used = this.#used.filter(({ as }) => as !== `input ${dimension}`)
    }
  }

  #use({ quantity }: QuantityStatement, as: string, fields: string[], group: Group, doubted = false): void {
    this.#used.push({ quantity, as, fields, unsure: quantity.unsure || group.sideUnsure || doubted })
  }

  /** Where a voltage belongs; puts it there. `null` where that cannot be told. */
  #voltage(group: Group): 'input' | RailGroup | null {
    const { quantity } = group.volts!
    const values = valuesOf(quantity)
    const top = Math.max(...values)
    const mains = top >= plateLimits.leastMainsV.value
    const low = top <= plateLimits.mostLowV.value
    if (quantity.worn) {
      if (group.side !== 'output' && ((group.side === 'input' && this.of === 'supply') || this.#seemsMains(group)))
        this.#inputWorn = true
      // below the input's voltages, or after outputs, it may as well be an output
      if (
        group.side === 'input' &&
        this.#input.voltages.length > 0 &&
        (group.lineAfterWord || this.#outputs.length > 0)
      )
        return null
      // the figures beside a worn voltage still belong to its side
      if (group.side === 'input') return this.of === 'supply' || this.#seemsMains(group) ? 'input' : null
      return group.side === 'output' ? this.#addRails(group, []) : null
    }
    switch (group.side) {
      case 'input': {
        const hasMains = this.#inputWorn || this.#input.voltages.some(({ max }) => max >= plateLimits.leastMainsV.value)
        if (low && hasMains) {
          // a low voltage after the mains voltage is an output whose word was not printed or not recognised
          const output = group.kind === 'dc' || group.ownKind === 'dc' || group.lineAfterWord
          // "AC IN 230V" and rails below: that kind is the mains'
          const rails = { ...group, kind: group.ownKind }
          return output ? this.#rails(rails, this.of === 'supply' ? 'outputs' : 'takes') : null
        }
        if (this.of === 'device' && !mains) return this.#rails(group, 'takes')
        // below a low input voltage, another may be a setting or an output: not told
        if (low && this.#input.voltages.length > 0 && group.lineAfterWord) return null
        return this.#window(group)
      }
      case 'output': {
        const frequency = group.others.some((other) => other.quantity.dimension === 'Hz')
        // mains volts after a rail may be an input whose word was not recognised
        if (mains && this.#outputs.length > 0 && this.#input.voltages.length === 0 && group.kind !== 'dc')
          return group.lineAfterWord && (frequency || group.kind === 'ac') ? this.#window(group) : null
        // "… 12V 2A OR 110-120V~", "… 12V 2A SWITCH 110/220V": another setting of the input, or its selector
        const low = this.#outputs
          .flatMap(({ rails }) => rails)
          .every((rail) => Math.abs(rail.voltageV) < plateLimits.leastMainsV.value)
        const isMainsInput = this.#input.voltages.some(({ min }) => min >= plateLimits.leastMainsV.value)
        if (
          mains &&
          isMainsInput &&
          low &&
          this.#outputs.length > 0 &&
          group.kind !== 'dc' &&
          values.length > 1 &&
          Math.min(...values) >= plateLimits.leastMainsV.value
        )
          return this.#window(group)
        // "… 12V 1A, 85 % AT 230V": the mains voltage once more, beside the output's own
        if (mains && this.#outputs.length > 0 && group.others.length === 0 && this.#isInput(top)) return null
        return this.#rails(group, 'outputs')
      }
      default:
        if (this.of === 'device' && low && this.#takes.length > 0 && group.volts!.max) return null
        if (mains) return group.kind === 'dc' ? null : this.#window(group)
        return low ? this.#rails(group, this.of === 'supply' ? 'outputs' : 'takes') : null
    }
  }

  /** "5.1V⎓ 3A … voltage 5.1V, current 3A": the same figures without a word of side, the kind left out, are no second rail. */
  #isSaidAgain(said: Group): boolean {
    const { side, kind } = said
    if (side !== 'none' || kind !== null) return false
    return this.#outputs.some(({ group }) => group.kind !== null && group.volts !== null && sameFigures(group, said))
  }

  /** "3/4,5/6/9V … AT 6V: 500mA": one of the settings listed before is spoken of. */
  #isOfSettings({ volts }: Group): boolean {
    const { elements } = volts!.quantity
    const [first] = elements
    return (
      elements.length === 1 &&
      [...this.#outputs, ...this.#takes].some(
        (entry) =>
          entry.volts.length >= plateLimits.leastSettings.value &&
          entry.group.volts?.quantity.elements.length === entry.volts.length &&
          areSettings(entry.volts.map(({ voltageV }) => voltageV)) &&
          entry.volts.some(({ voltageV }) => voltageV === first!.value),
      )
    )
  }

  #isInput(value: number): boolean {
    return this.#input.voltages.some(({ min, max }) => value >= min && value <= max)
  }

  /** "12V 2A ADAPTER … OUTPUT 12V 2A": low volts without a word, where the outputs have one, name the thing. */
  #isTitle({ side, volts, others }: Group, index: number): boolean {
    if (this.#isNamedFirst(index)) return true
    const isLow = (quantity: Quantity): boolean => largest(quantity) < plateLimits.leastMainsV.value
    if (side !== 'none' || this.of !== 'supply' || !volts || !isLow(volts.quantity)) return false
    this.#named ??= new Set(
      this.groups.flatMap((group) =>
        group.side === 'output' && group.volts && isLow(group.volts.quantity)
          ? [String(valuesOf(group.volts.quantity))]
          : [],
      ),
    )
    return this.#named.has(String(valuesOf(volts.quantity))) || (this.#named.size > 0 && others.length === 0)
  }

  /** "12V/1A … 12V=/1A": the same figures said again in the next group but one or two, with their kind. */
  #isNamedFirst(index: number): boolean {
    const group = this.groups[index]!
    if (group.others.length === 0) return this.#isNamedAlone(index)
    if (group.kind !== null) return false
    return this.groups
      .slice(index + 1, index + 1 + plateLimits.mostTitleReach.value)
      .some((later) => later.kind !== null && later.volts !== null && sameFigures(later, group))
  }

  /** "24V AC TRANSFORMER, 24VAC 40VA": a voltage alone, said again in the next group with its figures. */
  #isNamedAlone(index: number): boolean {
    const [group, next] = [this.groups[index]!, this.groups[index + 1]]
    const isAlike = next?.volts && String(valuesOf(next.volts.quantity)) === String(valuesOf(group.volts!.quantity))
    return (
      (isAlike ?? false) &&
      next!.side === 'none' &&
      group.side === 'none' &&
      next!.others.length > 0 &&
      next!.kind === group.kind
    )
  }

  #seemsMains(group: Group): boolean {
    return group.others.some((other) => other.quantity.dimension === 'Hz')
  }

  #window(group: Group): 'input' | null {
    const windows = inputWindows(group.volts!.quantity)
    const kind = printed(group.kind)
    if (!windows || windows.some(({ min }) => !(min > 0))) return null
    // "100-240VAC / 127-370VDC": the reading has one kind, that of the mains
    if (kind === 'dc' && this.#inputKinds.includes('ac')) return null
    const known = this.#input.voltages
    const [first] = windows
    const isComponent =
      windows.length === 1 && first && first.min === first.max && componentVoltages.valuesV.includes(first.min)
    if (known.length > 0 && isComponent) return null
    // "220-240V, range 162-290V", "100-240V 1.5A/115V": what is nested in another is no further setting
    const span = { min: windows[0]!.min, max: windows.at(-1)!.max }
    const isRange = group.volts!.quantity.joints.every((joint) => joint === 'range')
    if (isRange && known.some((other) => isNested(other, span) && other.min > span.min && other.max < span.max))
      return null
    const added = windows.filter((window) => !known.some((other) => isNested(window, other) || isNested(other, window)))
    known.push(...added)
    this.#inputSaid = true
    this.#inputKinds.push(kind)
    if (group.kind === 'either') this.#either = true
    if (group.kind === 'conflict') this.#either = true
    const said = (window: VoltageWindow): boolean =>
      known.some(({ min, max }) => min === window.min && max === window.max)
    const doubted = kind !== 'dc' && windows.some(isDoubtfulMains)
    if (windows.every(said)) this.#use(group.volts!, 'input voltage', ['input.voltages'], group, doubted)
    return 'input'
  }

  #rails(group: Group, where: 'outputs' | 'takes'): RailGroup | null {
    if (this.#railCount >= plateLimits.mostRails.value) return null
    const { quantity } = group.volts!
    const taps = group.winding || group.kind === 'ac'
    const volts = railVoltages(quantity, taps)
    if (!volts || this.#isSaidAgain(group) || this.#isOfSettings(group)) return null
    if (this.#railCount + volts.length > plateLimits.mostRails.value) return null
    const entry = this.#addRails(group, volts, where)
    const fields = entry.rails.flatMap(({ voltageMaxV }, at) => [
      `${entry.keys[at]}.voltageV`,
      ...(voltageMaxV === null ? [] : [`${entry.keys[at]}.voltageMaxV`]),
    ])
    this.#use(group.volts!, where === 'outputs' ? 'output voltage' : 'voltage taken', fields, group)
    return entry
  }

  #addRails(group: Group, volts: RailVoltage[], where: 'outputs' | 'takes' = 'outputs'): RailGroup {
    const kind = printed(group.kind)
    const rails = volts.map(({ voltageV, voltageMaxV, signed }) => ({
      kind: kind ?? (signed && group.kind === null ? 'dc' : null),
      voltageV,
      voltageMaxV,
      currentA: null,
      powerVA: null,
      powerW: null,
    }))
    const list = where === 'outputs' ? this.#outputs : this.#takes
    const before = list.reduce((sum, { rails }) => sum + rails.length, 0)
    const entry = { rails, volts, group, keys: rails.map((_, at) => `${where}.${before + at}`) }
    this.#railCount += rails.length
    list.push(entry)
    return entry
  }

  #toInput(group: Group): void {
    if (group.volts?.quantity.worn) {
      this.#inputSaid = true
      this.#inputKinds.push(printed(group.kind))
    }
    for (const other of group.others) this.#inputFigure(other, group)
  }

  #inputFigure(statement: QuantityStatement, group: Group) {
    const { quantity } = statement
    if (quantity.worn && quantity.elements.every(({ sign }) => sign === null)) this.#wornFields.push(quantity.dimension)
    if (quantity.worn || (statement.total && quantity.dimension !== 'A')) return
    const value = largest(quantity)
    const { dimension } = quantity
    if (!(value > 0) || quantity.elements.some(({ sign }) => sign === '-' || sign === '±')) return
    const input = this.#input
    if (dimension === 'Hz') {
      input.frequenciesHz = [...new Set([...input.frequenciesHz, ...valuesOf(quantity)])].sort((a, b) => a - b)
    } else if (dimension === 'A') {
      if (!readsAsCurrents(quantity)) return
      input.currentA = Math.max(input.currentA ?? 0, value)
    } else if (dimension === 'VA') input.powerVA = Math.max(input.powerVA ?? 0, value)
    else if (dimension === 'W') input.powerW = Math.max(input.powerW ?? 0, value)
    this.#inputSaid = true
    const field = { Hz: 'frequenciesHz', A: 'currentA', VA: 'powerVA', W: 'powerW' }[dimension as string]!
    const doubted = dimension === 'Hz' && isDoubtfulFrequency(quantity)
    this.#use(statement, `input ${dimension}`, [`input.${field}`], group, doubted)
  }

  #toRails(group: Group, home: RailGroup): void {
    this.#currents(
      group.others.filter(({ quantity }) => quantity.dimension === 'A'),
      home,
    )
    for (const other of group.others) {
      if (other.quantity.dimension !== 'A') this.#late.push({ statement: other, group, rail: home })
    }
  }

  #currents(all: QuantityStatement[], home: RailGroup): void {
    const readable = all.filter(({ quantity }) => !quantity.worn && readsAsCurrents(quantity))
    if (readable.length < all.length || home.rails.length === 0) return
    if (
      this.of === 'device' &&
      readable.length > 1 &&
      readable.every(({ quantity }) => quantity.elements.length === 1)
    ) {
      this.#demand(readable, home)
      return
    }
    const unmarked = readable.filter(({ max }) => !max)
    const chosen = unmarked.length > 0 ? unmarked : readable
    const first = chosen[0]
    const same = chosen.every(
      ({ quantity }) => String(valuesOf(quantity)) === String(first && valuesOf(first.quantity)),
    )
    if (!first || !same || !spread(first.quantity, home.rails)) return
    const fields = home.keys.map((key) => `${key}.currentA`)
    for (const one of chosen) this.#use(one, 'output current', fields, home.group)
  }

  /** What a machine takes at most: of "300mA nominal, 800mA max" the largest. */
  #demand(all: readonly QuantityStatement[], home: RailGroup): void {
    if (home.rails.length === 0) return
    const most = Math.max(...all.map(({ quantity }) => largest(quantity)))
    if (!(most > 0)) return
    for (const rail of home.rails) rail.currentA = most
    const fields = home.keys.map((key) => `${key}.currentA`)
    for (const one of all) this.#use(one, 'output current', fields, home.group)
  }

  /** Figures in a passage without a voltage. */
  #loose(group: Group): void {
    if (group.volts) return
    for (const other of group.others) {
      if (group.side === 'input') {
        if (this.of === 'device' && !this.#hasMainsInput()) this.#late.push({ statement: other, group, rail: null })
        else this.#inputFigure(other, group)
        continue
      }
      if (other.quantity.dimension === 'A') {
        const open = this.#openRails(group)
        if (open) this.#currents([other], open)
        continue
      }
      this.#late.push({ statement: other, group, rail: group.side === 'output' ? this.#onlyGroup() : null })
    }
  }

  #hasMainsInput(): boolean {
    return this.groups.some(
      ({ volts, side }) =>
        volts && side !== 'output' && Math.max(...valuesOf(volts.quantity)) >= plateLimits.leastMainsV.value,
    )
  }

  /** The rails of a plate that has one group of them, still without current. */
  #openRails(group: Group): RailGroup | null {
    const only = this.#onlyGroup()
    if (!only || only.rails.some(({ currentA }) => currentA !== null)) return null
    return group.side === 'output' || (this.of === 'device' && !this.#inputSaid) ? only : null
  }

  #onlyGroup(): RailGroup | null {
    const all = [...this.#outputs, ...this.#takes]
    return all.length === 1 ? (all[0] ?? null) : null
  }

  /**
   * The power of several outputs together: one figure that the largest rail does not exceed and that all at once, where
   * their currents are known, reach.
   */
  #total(): number | null {
    const rails = this.#outputs.flatMap((entry) => entry.rails)
    const [first] = this.#totals
    if (!first || rails.length < 2) return null
    const values = new Set(this.#totals.flatMap(({ statement }) => valuesOf(statement.quantity)))
    const value = largest(first.statement.quantity)
    if (values.size > 1 || !(value > 0)) return null
    const agreement = plateLimits.powerAgreement.value
    const powers = rails.map(
      (rail) => rail.powerW ?? (rail.currentA ?? 0) * Math.abs(rail.voltageMaxV ?? rail.voltageV),
    )
    const sum = this.#totalOutput()
    if (Math.max(...powers) > value * agreement || (sum !== null && value > sum * agreement)) return null
    for (const { statement, group } of this.#totals)
      this.#use(statement, 'total output power', ['outputsTotalW'], group)
    return value
  }

  #placeLate({ statement, group, rail }: { statement: QuantityStatement; group: Group; rail: RailGroup | null }) {
    const { quantity } = statement
    if (quantity.worn) return
    const rails = this.#outputs.reduce((sum, entry) => sum + entry.rails.length, 0)
    if (statement.total === 'all' && quantity.dimension === 'W' && rails > 1) {
      if (group.side !== 'input') this.#totals.push({ statement, group })
      return
    }
    if (quantity.dimension === 'Hz') return this.#frequency(statement, group)
    if (quantity.dimension === 'A') {
      const only = this.#onlyGroup()
      if (only?.rails.every(({ currentA }) => currentA === null)) this.#currents([statement], only)
      return
    }
    const value = largest(quantity)
    if (!(value > 0)) return
    const free = statement.freePower || statement.total !== null || (group.side === 'none' && !rail)
    const home = rail ?? this.#onlyGroup()
    const only = home && home.rails.length === 1 ? home.rails[0]! : null
    const made = this.#outputPower(home)
    const agreement = plateLimits.powerAgreement.value
    const agrees = made !== null && value >= made.low / agreement && value <= made.high * agreement
    if (only && agrees) return this.#railPower(statement, only, home!)
    if (only && !made && !free) return this.#railPower(statement, only, home!)
    if (only && !made && group.side === 'input') return this.#railPower(statement, only, home!)
    // watts that are not those of the output before them: of all outputs together, where that can be
    if (rails > 1 && quantity.dimension === 'W' && group.side !== 'input' && !statement.total && !statement.title)
      this.#totals.push({ statement, group })
    if (!free || statement.total || statement.title) return
    const total = this.#totalOutput()
    // the volts or amperes of an output cannot be read: the power may be its own
    if (this.#outputs.some(({ rails }) => rails.length === 0)) return
    const known = this.#input.powerVA === null && this.#input.powerW === null
    // a supply takes more than it gives: a figure well above volts times amperes is what it takes
    if (
      known &&
      this.#input.voltages.length > 0 &&
      (total === null ? this.#outputs.length === 0 : value > total * plateLimits.powerAgreement.value)
    )
      this.#inputFigure(statement, group)
  }

  #railPower(statement: QuantityStatement, rail: LabelRail, { keys, group }: RailGroup) {
    const value = largest(statement.quantity)
    const key = statement.quantity.dimension === 'VA' ? 'powerVA' : 'powerW'
    if (rail[key] !== null && rail[key] !== value && this.of !== 'device') return
    rail[key] = Math.max(value, rail[key] ?? 0)
    this.#use(statement, 'output power', [`${keys[0]}.${key}`], group)
  }

  /** Volts times amperes of a single rail, at both ends of a range [W]. */
  #outputPower(home: RailGroup | null): { low: number; high: number } | null {
    const rail = home?.rails.length === 1 ? home.rails[0] : undefined
    if (!rail || rail.currentA === null) return null
    const low = Math.abs(rail.voltageV) * rail.currentA
    return { low, high: rail.voltageMaxV === null ? low : rail.voltageMaxV * rail.currentA }
  }

  #totalOutput(): number | null {
    let total = 0
    for (const { rails } of this.#outputs) {
      for (const rail of rails) {
        if (rail.currentA === null) return null
        total += Math.abs(rail.voltageMaxV ?? rail.voltageV) * rail.currentA
      }
    }
    return this.#outputs.length > 0 ? total : null
  }

  /** A frequency away from the input's own figures is the mains' unless an alternating output may be meant. */
  #frequency(statement: QuantityStatement, group: Group) {
    const fromMains = this.#input.voltages.length > 0 && !this.#inputKinds.includes('dc')
    const mayBeOutput = group.volts !== null && group.kind === 'ac' && group.side !== 'input'
    if (this.#input.frequenciesHz.length > 0 || mayBeOutput) return
    if (fromMains || (this.of === 'supply' && group.volts === null && this.#outputs.length === 0))
      this.#inputFigure(statement, group)
  }

  /** A printed frequency says alternating current; contradicting words say nothing. */
  #settleKind(): void {
    const said = new Set(this.#inputKinds.filter((kind) => kind !== null))
    if (this.#either || said.size > 1) return
    const [kind] = said
    // direct current has no frequency: the word or the figure is another thing's
    if (kind === 'dc' && this.#input.frequenciesHz.length > 0) return
    this.#input.kind = kind ?? (this.#input.frequenciesHz.length > 0 ? 'ac' : null)
  }
}

/** Gives each rail its current: one for all, or as many as there are rails; false where they do not fit. */
function spread(quantity: Quantity, rails: LabelRail[]): boolean {
  const figures = valuesOf(quantity)
  const { joints } = quantity
  if (figures.length === 1 || joints.every((joint) => joint === 'range')) {
    const most = largest(quantity)
    if (!(most > 0) || (figures.length > 1 && rails.length > 1)) return false
    for (const rail of rails) rail.currentA = most
    return true
  }
  if (figures.length !== rails.length || !joints.every((joint) => joint === 'list')) return false
  for (const [index, rail] of rails.entries()) rail.currentA = figures[index] ?? null
  return true
}

/** A single voltage that no mains has, or a narrow range that reaches below all of them: "155V", "80-128V". */
function isDoubtfulMains({ min, max }: VoltageWindow): boolean {
  if (max < plateLimits.leastMainsV.value) return false
  const { valuesV } = mainsVoltages
  if (min === max) return !valuesV.includes(min)
  const isWide = max >= min * plateLimits.leastWideRange.value
  return !valuesV.some((value) => value >= min && value <= max) || (!isWide && min < plateLimits.leastRangeV.value)
}

/** A frequency that no mains has, "58Hz"; the ends of a range round one are no frequencies of their own, "47-63Hz". */
function isDoubtfulFrequency({ elements, joints }: Quantity): boolean {
  const { valuesHz } = mainsFrequencies
  const values = elements.map(({ value }) => value)
  const [low, high] = [Math.min(...values), Math.max(...values)]
  const isRange = joints.length > 0 && (joints.every((joint) => joint === 'range') || (low < 50 && high > 60))
  if (isRange) return !valuesHz.some((value) => value >= low && value <= high)
  return values.some((value) => !valuesHz.includes(value))
}

/** Whether two groups have the same volts and amperes. */
function sameFigures(one: Group, other: Group): boolean {
  if (one.volts?.quantity.elements[0]?.value !== other.volts?.quantity.elements[0]?.value) return false
  const volts = ({ volts }: Group): string => String(volts ? valuesOf(volts.quantity) : [])
  const amperes = ({ others }: Group): string =>
    others.flatMap(({ quantity }) => (quantity.dimension === 'A' ? valuesOf(quantity) : [])).join()
  return volts(one) === volts(other) && amperes(one) === amperes(other)
}

/** Whether one window lies within another or equals it. */
const isNested = (inner: VoltageWindow, outer: VoltageWindow): boolean =>
  inner.min >= outer.min && inner.max <= outer.max

/**
 * "6A/3A" and "1.2/0.6A" fall, the first belonging to the lower voltage; "0.2-0.4A" is a range. A rising pair of whole
 * numbers with a stroke is a fraction, "1/2A", and is not read.
 */
function readsAsCurrents({ elements, joints }: Quantity): boolean {
  const values = elements.map(({ value }) => value)
  if (values.length !== 2 || joints[0] === 'range') return true
  return !(values[0]! < values[1]! && values.every(Number.isInteger) && values[1]! <= 16)
}

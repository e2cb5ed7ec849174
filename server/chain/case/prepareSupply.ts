import { given } from '../../facts/given.js'
import type { LabelRail, LabelReading } from '../../plate/labelReading.js'
import { openPhrases } from '../../plate/openPhrases.js'
import { hazardsIn } from '../../plate/plateHazards.js'
import { printedSelector } from '../../plate/printedSelector.js'
import { says, saysSetsItself } from '../../plate/sayings.js'
import { type DcPlugRow, dcPlugsBySize, dcPlugsNamed } from '../../tables/dcPlugs.js'
import { extraLowVoltageMostV } from '../../tables/thresholds.js'
import { knownReading } from './knownReading.js'
import { supplyContradictions } from './plateAgainstEntry.js'
import { mayBePositions, plateSays } from './plateSays.js'
import { isPlugSize, plugClaims } from './plugClaims.js'
import type { DcPlug, Device, Output, Readings, Supply, VoltageWindow } from './request.js'
import type { PreparedPlug, PreparedSupply, Rail } from './situation.js'

/** Reads a plate's text; `server/plate` has the one that is used. */
export type ReadPlate = (text: string, of: 'supply' | 'device') => LabelReading

/**
 * What is known of a supply: what its plate says, with the fields that were filled in by hand in front of it.
 * Made once per supply; nothing later reads text again.
 *
 * @param readings  which doubtful figures a person confirmed, and which unread phrases do not matter
 */
export function prepareSupply(supply: Supply, read: ReadPlate, readings?: Readings): PreparedSupply {
  return prepareUnit(supply, 'supply', read, readings)
}

/**
 * The mains side of a machine with its supply inside, judged as a supply is: by its plate, and what was entered of its mains side. What
 * else its plate says in words stays with the machine.
 *
 * @param isolated  whether its chassis and sockets are separate from the mains, as it is entered of any supply
 */
export function prepareMainsSide(
  { label, mains }: Device,
  read: ReadPlate,
  readings?: Readings,
  isolated: Supply['isolated'] = null,
): PreparedSupply {
  const { motor: _motor, pictureTube: _tube, ...entered } = mains ?? {}
  const prepared = prepareUnit({ label, ...entered, isolated }, 'device', read, readings)
  return { ...prepared, reading: null, openPhrases: [] }
}

function prepareUnit(unit: Supply, of: 'supply' | 'device', read: ReadPlate, readings?: Readings): PreparedSupply {
  const reading = readLabel(unit.label, of, read)
  const { known, doubts } = knownReading(reading, of, readings?.confirmed)
  const prepared = prepareBy(unit, known, of)
  const proposed = doubts.length > 0 ? { situation: prepareBy(unit, reading, of), doubts } : null
  return {
    ...prepared,
    reading,
    openPhrases: openPhrases(reading, readings?.dismissed ?? [], prepared.protectionClass),
    proposed,
  }
}

function prepareBy(supply: Supply, reading: LabelReading | null, of: 'supply' | 'device'): PreparedSupply {
  const input = supply.input
  const printed = reading?.input ?? null
  // a mains voltage entered by hand corrects a plate that was read as one for a car
  const entered = input?.voltages ?? []
  const technology = supply.technology
  const windows = once((entered.length > 0 ? entered : (printed?.voltages ?? [])).map(upright))
  const works = plateSays(supply.label, windows)
  const printedRails = (reading?.outputs ?? []).map(fromLabel)
  const prepared: PreparedSupply = {
    called: of === 'supply' ? 'supply' : 'machine',
    facts: supply,
    reading,
    openPhrases: [],
    input: {
      kind:
        entered.some(({ max }) => max > extraLowVoltageMostV.value) && printed?.kind === 'dc'
          ? null
          : (printed?.kind ?? null),
      windows,
      frequenciesHz: input?.frequenciesHz?.length ? input.frequenciesHz : (printed?.frequenciesHz ?? []),
      currentA: input?.currentA ?? printed?.currentA ?? null,
      earthLeakA: input?.earthLeakA ?? null,
      powerVA: input?.powerVA ?? printed?.powerVA ?? null,
      powerW: input?.powerW ?? printed?.powerW ?? null,
      selectorV: input?.selectorV ?? null,
      positions: selectorOf(supply.label, printedRails),
      threePhase: says(supply.label, 'three-phase'),
      setsItself: saysSetsItself(supply.label),
    },
    technology: technology == null || technology === 'unknown' ? works.technology : technology,
    regulated: supply.regulated ?? works.regulated,
    protectionClass: supply.protectionClass ?? reading?.protectionClass ?? null,
    classTwoDrawn: says(supply.label, 'double square'),
    classZero: supply.protectionClass == null && says(supply.label, 'class 0'),
    inlet: given(supply.inlet),
    rails: supply.outputs?.length ? supply.outputs.flatMap(asRails) : printedRails,
    railsMayBePositions: supply.outputs?.length
      ? supply.outputs.some((output) => asRails(output).length > 1)
      : mayBePositions(supply.label, printedRails),
    chopped: says(supply.label, 'electronic transformer'),
    outputsTotalW: supply.outputsTotalW ?? reading?.outputsTotalW ?? null,
    plug: preparePlug(supply.plug, reading),
    lead: supply.lead ?? null,
    fuse: { fitted: given(supply.fuse), prescribed: reading?.fuse ?? null },
    measured: supply.measured ?? {},
    contradictions: [],
    proposed: null,
  }
  return { ...prepared, contradictions: supplyContradictions(prepared, reading, works, printedRails) }
}

/** The positions of its selector; a word that names none may speak of that of the output where that has several voltages. */
function selectorOf(label: string | null | undefined, rails: readonly Rail[]): readonly VoltageWindow[] | null {
  const positions = printedSelector(label)
  return positions?.length === 0 && mayBePositions(label, rails) ? null : positions
}

/** The same window printed twice is no selector. */
const once = (windows: readonly VoltageWindow[]): VoltageWindow[] =>
  windows.filter(
    ({ min, max }, index) => windows.findIndex((other) => other.min === min && other.max === max) === index,
  )

export const readLabel = (
  text: string | null | undefined,
  of: 'supply' | 'device',
  read: ReadPlate,
): LabelReading | null => (text?.trim() ? read(text, of) : null)

export const upright = ({ min, max }: { min: number; max: number }) => ({
  min: Math.min(min, max),
  max: Math.max(min, max),
})

/** An entered output: as its switch stands, or one rail for each setting where that is not known or is none of them. */
function asRails({ currentA = null, powerW = null, settings, setV, ...output }: Output): Rail[] {
  const sign = Math.sign(output.voltageV)
  const at = setV == null ? settings : settings && !settings.includes(setV) ? [...settings, setV] : [setV]
  const voltages = at?.map((settingV) => sign * settingV) ?? [output.voltageV]
  return voltages.map((voltageV) => ({ ...output, voltageV, voltageMaxV: null, currentA, powerW }))
}

/** A printed rail; VA of an output count as its watts, which is exact for the heating value of its current. */
export const fromLabel = ({ kind, voltageV, voltageMaxV, currentA, powerVA, powerW }: LabelRail): Rail => ({
  kind,
  voltageV,
  voltageMaxV,
  currentA,
  powerW: powerW ?? powerVA,
})

/** A plug or jack with the sizes its name stands for, and what its plate prints, where the fields leave them open. */
export function preparePlug(plug: DcPlug | null | undefined, reading: LabelReading | null): PreparedPlug {
  const printed = reading?.plug ?? null
  const name = given(plug?.name) ?? (printed?.name || null)
  const named = name ? dcPlugsNamed(name) : []
  const outerMm = plug?.outerMm ?? same(named, 'outerMm') ?? printed?.outerMm ?? null
  const innerMm = plug?.innerMm ?? same(named, 'innerMm') ?? printed?.innerMm ?? null
  return {
    outerMm,
    innerMm,
    polarity: plug?.polarity ?? reading?.polarity ?? null,
    name,
    contradicted: plugClaims(name, printed).filter(
      ({ sizes }) => !sizes.some((size) => isPlugSize(size, outerMm, innerMm)),
    ),
    hazards: plug?.name ? hazardsIn(plug.name) : [],
    rows: named.length > 0 ? named : outerMm === null || innerMm === null ? [] : dcPlugsBySize(outerMm, innerMm),
  }
}

/** What rows of one name agree on; null where they do not, or there are none. */
const same = (rows: readonly DcPlugRow[], key: 'outerMm' | 'innerMm'): number | null =>
  new Set(rows.map((row) => row[key])).size === 1 ? (rows[0]?.[key] ?? null) : null

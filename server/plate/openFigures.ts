import { foldWord } from './fold.js'
import type { LabelReading } from './labelReading.js'

/** Figures with a unit that decides, and no part of a code. */
const figures =
  /(?<![\p{L}\d.,\-/?_±])(\d+(?:[.,]\d+)?|[\d?_■]*[?_■][\d?_■]*)\s?(K|M)?(VOLTS?|AMPS?|AMPERES?|WATTS?|VA|V|A|W|HZ|SECONDS?|SECS?|MINUTES?|MINS?|В|А|МА|ВТ|ВА|ГЦ|МИН|СЕК|伏|安|瓦|秒|分)(?![\p{L}\d]|-\p{L})/gu

/** Marks of a short or intermittent duty, and a part of something that no word explains [%]. */
const dutyMark = /(?<![\p{L}\d.\-/])(?:S[2-9]|S10|KB\s?\d+|(?:AB|DB)\s?\d+\s?%|ED)(?![\p{L}\d\-/])/u
const percent = /\d\s?%/u
const tolerance = /[±+-]\s?\d+(?:[.,]\d+)?\s?%/u
/** What a plate gives in percent without changing what it promises. */
const harmlessPercent =
  /EFF|EFIC|REND|WIRKUNGSGRAD|HUMID|FEUCHT|R\.?H\b|TOL|RIPPLE|REGULATION|效率|能效|湿度|効率|효율|습도|ВЛАЖН|КПД/u

/** Whether an unread piece has a mark of duty, or a part in percent that may be one. */
export function hasDutyMark(piece: string): boolean {
  const upper = foldWord(piece)
  return dutyMark.test(upper) || (percent.test(upper) && !tolerance.test(upper) && !harmlessPercent.test(upper))
}

/** How near a figure must be to one that was read to be the same [1]. */
const same = 0.02

/** A range of volts: bounds between which an output can be set. */
const range = /(?<![\p{L}\d.,/])(\d+(?:[.,]\d+)?)\s?V?\s?[-–~…÷]\s?(\d+(?:[.,]\d+)?)\s?(?:VOLTS?|V|В)(?![\p{L}\d])/gu
/** How far the bounds of an output may lie from its voltage and still be its tolerance [1]. */
const withinTolerance = 0.1

/** Whether an unread piece has bounds to which an output may be set, beyond a tolerance of what was read. */
export const hasOpenRange = (piece: string, { input, outputs }: LabelReading): boolean =>
  outputs.length > 0 &&
  [...foldWord(piece).matchAll(range)].some(([, ...ends]) =>
    ends
      .map((digits) => Number((digits ?? '').replace(',', '.')))
      .some(
        (value) =>
          !(input?.voltages ?? []).some(({ min, max }) => value >= min * (1 - same) && value <= max * (1 + same)) &&
          !outputs.some(({ voltageV }) => Math.abs(value - Math.abs(voltageV)) <= withinTolerance * Math.abs(voltageV)),
      ),
  )

/**
 * Whether an unread piece has a figure that what was read does not explain: volts, amperes or hertz that stand nowhere in the reading, watts
 * that are less than the outputs give together or more than a machine takes, a time.
 *
 * @param of  which figures are asked for
 */
export function hasOpenFigure(piece: string, reading: LabelReading, of: 'any' | 'V' = 'any'): boolean {
  return [...foldWord(piece).matchAll(figures)].some(([, digits = '', scale, unit = '']) => {
    if (of === 'V' && !isVolt.test(unit)) return false
    const plain = Number(digits.replace(',', '.'))
    if (Number.isNaN(plain)) return true
    // "ripple 50 mV", "capacity 2.6 kW"
    if ((scale === 'M' && !/^A/.test(unit)) || (scale === 'K' && /^W/.test(unit))) return false
    const value = plain * (scale === 'K' ? 1000 : scale === 'M' || unit === 'МА' ? 0.001 : 1)
    return !isExplained(value, unit, reading)
  })
}

const isVolt = /^(?:VOLTS?|V|В|伏)$/u
const only =
  /(?<!\p{L})(?:ONLY|NUR|SEULEMENT|UNIQUEMENT|SOLO|SOLAMENTE|SOMENTE|APENAS|ALLEEN|UITSLUITEND|ENDAST|KUN|BARE|VAIN|TYLKO|POUZE|JEN|CSAK|ТОЛЬКО|ТІЛЬКИ|SADECE|YALNIZ|NUMAI|DOAR|SAMO|ΜΌΝΟ|ΜΟΝΟ)(?!\p{L})|专用|專用|専用|仅|僅|のみ|전용|만/u

/** "120V ONLY" on a plate whose input was read as wider: whether a piece holds a plate to less than was read. */
export function isForOtherVolts(piece: string, { input }: LabelReading): boolean {
  const upper = foldWord(piece)
  if (!only.test(upper)) return false
  const volts = [...upper.matchAll(figures)].filter(([, , , unit = '']) => isVolt.test(unit))
  const isAll = (value: number): boolean =>
    (input?.voltages ?? []).every(({ min, max }) => near(value, min) && near(value, max))
  return input !== null && volts.some(([, digits = '']) => !isAll(Number(digits.replace(',', '.'))))
}

const near = (value: number, other: number): boolean => Math.abs(value - other) <= same * Math.abs(other)

/** What a supply takes with nothing connected is printed beside its efficiency; more than this is something else [W]. */
const noLoadMostW = 0.5

function isExplained(value: number, unit: string, { input, outputs, takes, outputsTotalW }: LabelReading): boolean {
  const rails = [...outputs, ...takes]
  const any = (known: readonly (number | null | undefined)[]): boolean =>
    known.some((one) => one != null && near(value, one))
  if (isVolt.test(unit))
    return (
      (input?.voltages ?? []).some(({ min, max }) => value >= min * (1 - same) && value <= max * (1 + same)) ||
      any(rails.flatMap(({ voltageV, voltageMaxV }) => [Math.abs(voltageV), voltageMaxV]))
    )
  if (/^(?:AMP|A$|А$|МА$|安)/u.test(unit)) return any([input?.currentA, ...rails.map(({ currentA }) => currentA)])
  if (/^(?:HZ|ГЦ)$/u.test(unit)) return any(input?.frequenciesHz ?? [])
  if (/^(?:W|VA|ВТ|ВА|瓦)/u.test(unit)) {
    if (value <= noLoadMostW) return true
    const powers = rails.map(
      ({ voltageV, currentA, powerW, powerVA }) => powerW ?? powerVA ?? (currentA ?? Number.NaN) * Math.abs(voltageV),
    )
    const total = powers.reduce((sum, power) => sum + power, 0)
    return (
      any([input?.powerW, input?.powerVA, outputsTotalW, ...powers]) ||
      (outputs.length > 0 && value >= total * (1 - same)) ||
      (takes.length > 0 && value <= total * (1 + same))
    )
  }
  return false
}

import { foldWord } from './fold.js'
import type { LabelInput, LabelRail } from './labelReading.js'

/** How much more may come out than goes in before one of both was misread: rounding, and peaks that are printed as ratings [1]. */
const most = 1.2
/** The same where the input's power is worked out from its current, which plates give at any voltage of a range [1]. */
const mostByCurrent = 1.5
/** Watts above volts × amperes by more than rounding [1]. */
const rounding = 1.1

interface Read {
  input: LabelInput | null
  outputs: readonly LabelRail[]
  takes: readonly LabelRail[]
}

const powerOf = ({ voltageV, currentA, powerW, powerVA }: LabelRail): number =>
  powerW ?? powerVA ?? Math.abs(voltageV) * (currentA ?? 0)

/**
 * Figures of a supply that cannot both be true, as one output would give more than the input takes: "14 VA" in, "12 V 3 A" out.
 *
 * @returns their keys in the reading
 */
export function deniedByPower({ input, outputs }: Read): string[] {
  if (!input || outputs.length === 0) return []
  const gives = Math.max(...outputs.map(powerOf))
  const takes = input.powerVA ?? input.powerW
  const highest = Math.max(0, ...input.voltages.map(({ max }) => max))
  const byCurrent = (input.currentA ?? 0) * highest
  const keys = [
    ...(takes !== null && gives > takes * most ? ['input.powerVA', 'input.powerW'] : []),
    ...(byCurrent > 0 && gives > byCurrent * mostByCurrent ? ['input.currentA'] : []),
  ]
  if (keys.length === 0) return []
  return [...keys, ...outputs.flatMap((_, at) => [`outputs.${at}.currentA`, `outputs.${at}.powerW`])]
}

const watts = /(?<![\p{L}\d.,-])(\d+(?:[.,]\d+)?)\s?W(?:ATTS?)?(?![\p{L}\d])/gu
const several = /\d\s?M?A\s*[X×*]\s*[2-9](?!\d)|(?<![\d.,])[2-9]\s*[X×*]\s*\d+(?:[.,]\d+)?\s?M?A(?!\p{L})/u
const resting =
  /(?<!\d)(\d{1,6}(?:[.,]\d{1,6})?)\s?(M?)A\s*[(,]?\s*(?:IN |AT |IM |EN |IN DER )?(?:STAND-?\s?BY|IDLE|QUIESCENT|SLEEP|NO SIGNAL|BEREITSCHAFT|RUHESTROM|VEILLE|REPOS|REPOSO|RIPOSO|ESPERA|RUST|VILA|HVILE|CZUWANI|DYŻUR|ОЖИДАНИ|ДЕЖУРН|待機|待机|대기)/gu

/**
 * Demands of a machine that other words of its plate deny: watts that are more than volts times amperes, "1 A × 3", a current in standby.
 *
 * @param text  of the plate
 * @returns their keys in the reading
 */
export function deniedDemands({ takes }: Read, text: string): string[] {
  const upper = foldWord(text)
  const largest = takes.reduce((sum, rail) => sum + powerOf(rail), 0)
  const isMore = [...upper.matchAll(watts)].some(
    ([, value = '']) => Number(value.replace(',', '.')) > largest * rounding,
  )
  const rests = [...upper.matchAll(resting)].map(
    ([, value = '', scale]) => Number(value.replace(',', '.')) * (scale ? 0.001 : 1),
  )
  return takes.flatMap(({ currentA }, at) =>
    currentA !== null && (isMore || several.test(upper) || rests.includes(currentA)) ? [`takes.${at}.currentA`] : [],
  )
}

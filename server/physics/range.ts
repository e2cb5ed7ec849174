/** Quantities under their names, so that the message can say which of them is out of range. */
type Named = Readonly<Record<string, number>>

function refuse(quantities: Named, isInRange: (value: number) => boolean, range: string): void {
  for (const name in quantities)
    if (!isInRange(quantities[name] as number))
      throw new RangeError(`${name} must be ${range}, got ${quantities[name]}`)
}

/** @throws RangeError for 0 or less, infinity and NaN */
export const mustBePositive = (quantities: Named): void =>
  refuse(quantities, (value) => value > 0 && value < Number.POSITIVE_INFINITY, 'more than 0 and finite')

/** @throws RangeError for less than 0, infinity and NaN */
export const mustNotBeNegative = (quantities: Named): void =>
  refuse(quantities, (value) => value >= 0 && value < Number.POSITIVE_INFINITY, '0 or more and finite')

/** For voltages with a sign. @throws RangeError for 0, infinities and NaN */
export const mustNotBeZero = (quantities: Named): void =>
  refuse(quantities, (value) => value !== 0 && Number.isFinite(value), 'other than 0 and finite')

/** A part of a whole. @throws RangeError for 0 or less, more than 1 and NaN */
export const mustBeShare = (quantities: Named): void =>
  refuse(quantities, (value) => value > 0 && value <= 1, 'more than 0 and at most 1')

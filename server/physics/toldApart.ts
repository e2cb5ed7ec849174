import { mustBePositive } from './range.js'

/**
 * How well an examination tells apart the causes that remain: the share of pairs of causes, each drawn by its weight, that it puts into
 * different findings.
 *
 *   D = 1 − (Σ w² + r²) / (Σ w + r)²
 *
 * @param told  w, the weight of each cause that it confirms or excludes by itself [1], more than 0; empty where it tells of none
 * @param rest  r, the weight of all that it does not tell of together [1], more than 0: there is always something that nobody listed
 * @returns [1], from 0, where it tells of nothing, towards 1
 * @throws RangeError outside those ranges, NaN included
 * @source Gini's index of diversity (textbook)
 */
export function toldApart(told: readonly number[], rest: number): number {
  mustBePositive({ rest })
  for (const weight of told) mustBePositive({ weight })
  const all = [...told, rest]
  const sum = all.reduce((total, weight) => total + weight, 0)
  return 1 - all.reduce((total, weight) => total + weight ** 2, 0) / sum ** 2
}

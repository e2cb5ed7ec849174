/**
 * The least a check takes of each quantity, in calls and on the page alike. Nothing on a bench is smaller; what is comes from
 * a slip of the pen, and quotients of such numbers leave the range of numbers.
 */
export const leastTaken = {
  voltageV: 0.1,
  currentA: 1e-6,
  /** watts and volt-amperes */
  power: 0.001,
  frequencyHz: 10,
  areaMm2: 0.001,
  lengthM: 0.001,
  diameterMm: 0.01,
} as const

import { frozen } from './frozen.js'

/** IEC letters of mains sockets. */
export const socketLetters = frozen([
  'A',
  'B',
  'C',
  'D',
  'E',
  'F',
  'G',
  'H',
  'I',
  'J',
  'K',
  'L',
  'M',
  'N',
  'O',
] as const)

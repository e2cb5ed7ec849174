import { svg } from './face.js'

const sign = (x: number, plus: boolean): string =>
  `<circle cx="${x}" cy="20" r="9"/><path d="M${x - 5} 20h10${plus ? `M${x} 15v10` : ''}"/>`

/** Which contact is plus, as plates draw it: the ring is the sleeve, the dot the centre. */
const polarity = (centrePlus: boolean): string =>
  svg(
    120,
    40,
    sign(12, !centrePlus),
    sign(108, centrePlus),
    '<path d="M21 20h21M70.4 29A14 14 0 1 1 70.4 11M62 20h37"/><circle cx="60" cy="20" r="5" fill="#000"/>',
  )

/** Symbols that are printed on plates, by the keys that facts name them with. IEC 60417 5019, 5172, 5180, 5926. */
export const symbols: Readonly<Record<string, string>> = {
  'centre-positive': polarity(true),
  'centre-negative': polarity(false),
  'class-i': svg(48, 48, '<circle cx="24" cy="24" r="20"/><path d="M24 9v15M12 24h24M16 30h16M20 36h8"/>'),
  'class-ii': svg(48, 48, '<path d="M4 4h40v40H4ZM13 13h22v22H13Z"/>'),
  'class-iii': svg(48, 48, '<path d="M24 3L45 24L24 45L3 24ZM17 17v14M24 17v14M31 17v14"/>'),
}

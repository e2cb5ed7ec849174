import QRCode from 'qrcode'

/** Light modules left free around the code, as ISO/IEC 18004 asks. */
const quietZone = 4

export interface Qr {
  /** modules from edge to edge, the quiet zone included */
  size: number
  /** the dark modules as the path of a drawing in which a module is 1 × 1 */
  path: string
}

/**
 * A QR code of a text, error correction level M (about 15 % may be unreadable).
 *
 * @throws Error where the text is longer than a code holds
 * @source ISO/IEC 18004, as the package works it out
 */
export function qr(text: string): Qr {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: 'M' })
  const rows = Array.from({ length: modules.size }, (_, row) =>
    Array.from({ length: modules.size }, (_, column) => (modules.get(row, column) ? '1' : '0')).join(''),
  )
  // one rectangle for each run of dark modules in a row
  const runs = rows.flatMap((row, y) =>
    [...row.matchAll(/1+/g)].map(
      (run) => `M${run.index + quietZone} ${y + quietZone}h${run[0].length}v1h-${run[0].length}z`,
    ),
  )
  return { size: modules.size + 2 * quietZone, path: runs.join('') }
}

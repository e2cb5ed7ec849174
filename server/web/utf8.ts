const roomBytes = 1 << 20

/** Where texts are written before their length is known; what is written leaves it before the next comes. */
const room = Buffer.allocUnsafeSlow(roomBytes)

/** The bytes of a text in UTF-8. `Buffer.from` sets three bytes for each letter aside first, anew for each page. */
export function utf8(text: string): Buffer {
  if (text.length * 3 > roomBytes) return Buffer.from(text)
  return Buffer.from(room.subarray(0, room.write(text)))
}

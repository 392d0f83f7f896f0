/** Bytes that are written in letters. */

/** Base 64 (RFC 4648, section 4); spaces and line ends are passed over. */
export function bytesOf(letters: string): Uint8Array {
  const bytes = new Uint8Array(Math.ceil((letters.length * 3) / 4))
  let count = 0
  let [held, bits] = [0, 0]
  for (let at = 0; at < letters.length; at++) {
    const six = SIX_BITS[letters.charCodeAt(at)] ?? NONE
    if (six === NONE) continue
    held = ((held << 6) | six) & 0xffff
    bits += 6
    if (bits < 8) continue
    bits -= 8
    bytes[count++] = held >> bits
  }
  return bytes.slice(0, count)
}

const NONE = 255
const SIX_BITS = new Uint8Array(128).fill(NONE)
for (const [at, letter] of [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'].entries())
  SIX_BITS[letter.charCodeAt(0)] = at

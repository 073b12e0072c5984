/** Alphabet of an IfcGloballyUniqueId. @source ISO 16739-1:2024, IfcGloballyUniqueId */
const alphabet = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz_$'

/**
 * The 22 characters of a globally unique id that always comes out the same for the same name: the first 128 bits of its
 * SHA-256, marked as a UUID of version 8 (RFC 9562), two bits in the first character and six in each other.
 * @param sha256  hexadecimal SHA-256 of a text in UTF-8
 */
export function globalId(name: string, sha256: (content: string) => string): string {
  const octets = (sha256(name).match(/../g) ?? []).slice(0, 16).map((pair) => Number.parseInt(pair, 16))
  octets[6] = (octets[6]! & 0x0f) | 0x80
  octets[8] = (octets[8]! & 0x3f) | 0x80
  let bits = octets.reduce((sum, octet) => sum * 256n + BigInt(octet), 0n)
  let id = ''
  for (let i = 0; i < 22; i++) {
    id = alphabet[Number(bits % 64n)]! + id
    bits /= 64n
  }
  return id
}

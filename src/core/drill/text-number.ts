/**
 * A number of a text whose characters are one byte each: FNV-1a, 32 bits.
 * @source G. Fowler, L. Noll, K.-P. Vo; draft-eastlake-fnv: offset basis 2166136261, prime 16777619; "foobar" is 0xbf9cf968
 * @example textNumber('foobar')  // 3214735720
 */
export function textNumber(text: string): number {
  let hash = 2166136261
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 16777619) >>> 0
  return hash
}

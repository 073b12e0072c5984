type AllOf<U> = (U extends unknown ? (part: U) => void : never) extends (whole: infer W) => void ? W : never

/** The printers of every part as one; a kind that two parts print throws, as one of the two would never be heard. */
export function together<P extends readonly object[]>(...parts: P): AllOf<P[number]> {
  const kinds = parts.flatMap((part) => Object.keys(part))
  const twice = kinds.filter((kind, i) => kinds.indexOf(kind) !== i)
  if (twice.length > 0) throw new Error(`printed by two parts: ${twice.join(', ')}`)
  return Object.assign({}, ...parts) as AllOf<P[number]>
}

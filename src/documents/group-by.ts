/** `items` in groups of equal key, groups and items in the order in which they come. */
export function groupBy<T>(
  items: readonly T[],
  keyOf: (item: T) => string | number,
): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string | number, [T, ...T[]]>()
  for (const item of items) {
    const group = groups.get(keyOf(item))
    if (group === undefined) groups.set(keyOf(item), [item])
    else group.push(item)
  }
  return [...groups.values()]
}

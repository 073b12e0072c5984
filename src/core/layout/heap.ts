/** A binary heap: `pop` gives what comes before all others. */
export class Heap<T> {
  private readonly items: T[] = []

  constructor(private readonly isBefore: (a: T, b: T) => boolean) {}

  push(item: T): void {
    const { items } = this
    let i = items.push(item) - 1
    while (i > 0) {
      const parent = (i - 1) >> 1
      if (!this.isBefore(items[i]!, items[parent]!)) break
      this.swap(i, parent)
      i = parent
    }
  }

  pop(): T | null {
    const { items } = this
    const top = items[0]
    if (top === undefined) return null
    const last = items.pop()!
    if (items.length === 0) return top
    items[0] = last
    for (let i = 0; ; ) {
      const left = 2 * i + 1
      if (left >= items.length) break
      const child = left + 1 < items.length && this.isBefore(items[left + 1]!, items[left]!) ? left + 1 : left
      if (!this.isBefore(items[child]!, items[i]!)) break
      this.swap(i, child)
      i = child
    }
    return top
  }

  private swap(a: number, b: number): void {
    const { items } = this
    const item = items[a]!
    items[a] = items[b]!
    items[b] = item
  }
}

import { err, ok, type Result } from '../core/result.ts'

/** `1-4, 7`: whole numbers in rising order, neighbours drawn together. Empty for none. */
export function printNumbers(numbers: readonly number[]): string {
  const rising = [...new Set(numbers)].sort((a, b) => a - b)
  const parts: string[] = []
  for (let i = 0; i < rising.length; ) {
    let end = i
    while (rising[end + 1] === rising[end]! + 1) end++
    parts.push(end === i ? `${rising[i]}` : `${rising[i]}-${rising[end]}`)
    i = end + 1
  }
  return parts.join(', ')
}

/** The numbers that `printNumbers` writes, each of 1 to `last`; or the first part that is none of them. */
export function parseNumbers(text: string, last: number): Result<readonly number[], string> {
  const numbers = new Set<number>()
  const parts = text.replace(/\s*[-–]\s*/g, '-').split(/[,;\s]+/)
  for (const part of parts.filter((one) => one !== '')) {
    const found = /^(\d+)(?:-(\d+))?$/.exec(part)
    const from = Number(found?.[1])
    const to = Number(found?.[2] ?? found?.[1])
    if (found === null || from < 1 || to < from || to > last) return err(part)
    for (let n = from; n <= to; n++) numbers.add(n)
  }
  return ok([...numbers].sort((a, b) => a - b))
}

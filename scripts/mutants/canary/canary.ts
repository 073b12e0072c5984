/** A module with ten mutants, whose fates are known: see check-canary.ts. */
const step = 4

export const stepOf = (): number => step

export const isFast = (speed: number): boolean => speed > 50

export const nobodyAsks = (length: number): number => length + 1

export const alike = (length: number): number => Math.max(length, length)

export function countDown(from: number): number {
  let left = from
  for (; left !== 0; left--);
  return left
}

import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'

/** Whether a version as `1.2.0` is later than another; never of one that is not written in numbers. */
export function isLaterEdition(version: HardwareSheet['version'], than: HardwareSheet['version']): boolean {
  const [one, other] = [version, than].map((text) => text.split('.').map(Number)) as [number[], number[]]
  if ([...one, ...other].some(Number.isNaN)) return false
  const at = Array.from({ length: Math.max(one.length, other.length) }, (_, i) => (one[i] ?? 0) - (other[i] ?? 0))
  return (at.find((difference) => difference !== 0) ?? 0) > 0
}

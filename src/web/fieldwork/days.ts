/** ISO date of a moment where this device is. A moment without a zone is in local time. */
export function dayOf(moment: string): string {
  const at = new Date(moment)
  const two = (n: number): string => String(n).padStart(2, '0')
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
}

export const today = (): string => dayOf(new Date().toISOString())

/** Whether `zone` is the name of a time zone, as `America/Denver`. */
export function isZone(zone: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone })
    return true
  } catch (cause) {
    if (cause instanceof RangeError) return false
    throw cause
  }
}

/**
 * ISO date of a moment where the work is. One in UTC falls on the day that it is then in `zone`; one that was written
 * with an offset of its own, or without any, keeps its day.
 * @param zone  IANA name, as `America/Denver`
 */
export function dayInZone(zone: string): (moment: string) => string {
  const parts = new Intl.DateTimeFormat('en', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' })
  return (moment) => {
    if (!moment.endsWith('Z')) return moment.slice(0, 10)
    const part = new Map(parts.formatToParts(new Date(moment)).map(({ type, value }) => [type, value]))
    return `${part.get('year')}-${part.get('month')}-${part.get('day')}`
  }
}

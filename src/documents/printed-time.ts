/** `2016-05-12 10:05 -06:00`: an ISO 8601 time as people write it, with its zone; seconds only where they count. */
export function timeText(iso: string): string {
  const [, date = iso, time = '', seconds = '', zone = ''] =
    /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(:\d\d(?:\.\d+)?)?(Z|[+-]\d\d:\d\d)?$/.exec(iso) ?? []
  if (time === '') return date
  const shown = /^:00(\.0+)?$/.test(seconds) ? '' : seconds.replace(/\.\d+$/, '')
  const offset = zone === 'Z' ? ' UTC' : zone === '' ? '' : ` ${zone}`
  return `${date} ${time}${shown}${offset}`
}

/** The instant of an ISO 8601 time, milliseconds since 1970 UTC; without a zone it counts as UTC. */
export function instantOf(iso: string): number {
  const instant = Date.parse(/(Z|[+-]\d\d:\d\d)$/.test(iso) || !iso.includes('T') ? iso : `${iso}Z`)
  if (Number.isNaN(instant)) throw new RangeError(`no ISO 8601 time: ${iso}`)
  return instant
}

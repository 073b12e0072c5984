import { hasServer } from '../has-server.ts'
import { language } from '../language.ts'
import { d } from './messages.ts'
import type { DeviceStatus, RunSource } from './run-source.ts'
import { useStatus } from './use-status.ts'

/** On the road of each page, what is on this device only; where all is, that is said once, below. */
export function RoadState({ source }: { readonly source: RunSource }) {
  const [status] = useStatus(source)
  return hasServer && status !== null ? <OnlyHere status={status} /> : null
}

type Unsent = Pick<DeviceStatus, 'unsent' | 'unsentPhotos' | 'unsentSince'>

export function OnlyHere({ status }: { readonly status: Unsent }) {
  if (status.unsent === 0 && status.unsentPhotos === 0) return null
  return (
    <span class="road-state">
      {status.unsent > 0 && <b>{d.status.onlyHere(status.unsent, sinceWords(status))}</b>}
      {status.unsentPhotos > 0 && <b>{d.status.photosOnlyHere(status.unsentPhotos)}</b>}
    </span>
  )
}

/** Since when: the time alone where that was today. */
export function sinceWords({ unsentSince }: Pick<DeviceStatus, 'unsentSince'>): string {
  const since = new Date(unsentSince ?? Date.now())
  const time: Intl.DateTimeFormatOptions = { hour: '2-digit', minute: '2-digit' }
  const today = new Date()
  if (since.toDateString() === today.toDateString()) return since.toLocaleString(language(), time)
  const isThisYear = since.getFullYear() === today.getFullYear()
  const day: Intl.DateTimeFormatOptions = { day: 'numeric', month: 'short', ...(isThisYear ? {} : { year: 'numeric' }) }
  return since.toLocaleString(language(), { ...time, ...day })
}

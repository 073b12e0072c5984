import { d } from './messages.ts'
import type { RunSource } from './run-source.ts'
import { useStatus } from './use-status.ts'

/** On the road of each page, what is on this device only. */
export function RoadState({ source }: { readonly source: RunSource }) {
  const [status] = useStatus(source)
  if (status === null || (status.unsent === 0 && status.unsentPhotos === 0)) return null
  return (
    <span class="road-state">
      {status.unsent > 0 && <b>{d.status.unsent(status.unsent)}</b>}
      {status.unsentPhotos > 0 && <b>{d.status.photos(status.unsentPhotos)}</b>}
    </span>
  )
}

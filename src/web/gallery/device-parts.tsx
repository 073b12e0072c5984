import { OnlyHere } from '../data/road-state.tsx'
import type { DeviceStatus, RunSource } from '../data/run-source.ts'
import { DeviceFacts } from '../data/status-line.tsx'
import { m } from '../messages.ts'
import { RunFaceView } from '../parts/run-face.tsx'
import { galleryRuns } from './gallery-runs.ts'

const allSent: DeviceStatus = {
  ...{ persisted: true, quota: 6e10, used: 4.1e8, unsent: 0, unsentPhotos: 0, unsentSince: null },
  ...{ freeable: { photos: 0, bytes: 0 }, refused: [], held: [], isSyncing: false, trouble: null },
  lastSync: '2026-05-12T16:05:00.000Z',
}

const onlyHere: DeviceStatus = { ...allSent, unsent: 12, unsentPhotos: 3, unsentSince: '2026-05-12T15:40:00.000Z' }

/** What the device says of its entries: all with the server, on their way, only here, and what hinders them. */
const statuses = (): readonly DeviceStatus[] => [
  allSent,
  { ...onlyHere, isSyncing: true },
  { ...onlyHere, lastSync: null, persisted: false },
  { ...onlyHere, trouble: { kind: 'not let in', message: m.broken.kept, problems: [] } },
  { ...onlyHere, refused: [{ id: 'gallery', kind: 'reading', reason: '…' }] },
]

export const DeviceParts = ({ source }: { readonly source: RunSource }) => (
  <>
    {statuses().map((status, i) => (
      <div key={i} class="gallery-device">
        <DeviceFacts source={source} status={status} />
      </div>
    ))}
    <p class="road gallery-road">
      <OnlyHere status={onlyHere} />
    </p>
  </>
)

/** The face of a run on the road, as the strip is folded, with where the walk is. */
export const Faces = () => (
  <>
    {galleryRuns
      .flatMap(({ judged }) => judged ?? [])
      .map(({ face }, i) => (
        <div key={i} class="road gallery-road">
          <RunFaceView face={face} here={i / 4} />
        </div>
      ))}
  </>
)

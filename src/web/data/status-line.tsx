import { useState } from 'preact/hooks'
import type { Saying } from '../../words/saying.ts'
import { hasServer } from '../has-server.ts'
import { printIn } from '../messages.ts'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { megabytes } from '../parts/megabytes.ts'
import { useTrouble } from '../parts/use-trouble.ts'
import { bringOverPath } from '../route.ts'
import { d } from './messages.ts'
import { sinceWords } from './road-state.tsx'
import type { DeviceStatus, PhotoSum, RunSource } from './run-source.ts'
import './status-line.css'
import { useStatus } from './use-status.ts'
import { useUpdate } from './use-update.ts'

// Wanted seldom: files in and out, and what was held of them.
const filesPane = partOf(() => import('../transfer/files-pane.tsx'))

/** What is only on this device, whether it is safe there, and the way to send it; also that a new version waits. */
export function StatusLine({ source }: { readonly source: RunSource }) {
  const [status, trouble] = useStatus(source)
  const why = useTrouble(trouble?.message ?? '')
  return (
    <aside class="device" aria-label={d.status.label}>
      <UpdateNote />
      {!isSecureContext && (
        <p class="device-trouble" role="status">
          {hasServer ? d.trouble.plainLine : d.trouble.plainCopy}
        </p>
      )}
      {isMereTab() && (
        <p class="device-trouble" role="status">
          {d.trouble.mereTab}
        </p>
      )}
      {trouble !== null && (
        <p class="trouble" role="alert">
          {why}
        </p>
      )}
      {status !== null && (hasServer ? <DeviceFacts {...{ source, status }} /> : <KeptHere {...{ source, status }} />)}
    </aside>
  )
}

/** A tab of a browser whose installed pages keep their data apart from it; only such browsers say which of the two it is. */
const isMereTab = (): boolean => (navigator as { readonly standalone?: boolean }).standalone === false

const notPersisted = (): string => (hasServer ? d.status.notPersisted : d.status.saveSoon)

interface FactsProps {
  readonly source: RunSource
  readonly status: DeviceStatus
}

/** What of this device's entries the server has, and what is to be done about the others. */
export function DeviceFacts({ source, status }: FactsProps) {
  const { unsent, unsentPhotos, refused, lastSync } = status
  const isAllSent = unsent === 0 && unsentPhotos === 0
  return (
    <>
      <p role="status" class="device-state" data-unsent={unsent} data-unsent-photos={unsentPhotos}>
        {isAllSent && lastSync !== null && isSecureContext && <span>{d.status.saved}</span>}
        {unsent > 0 && <b>{d.status.unsent(unsent, sinceWords(status))}</b>}
        {unsentPhotos > 0 && <b>{d.status.photos(unsentPhotos)}</b>}
        {refused.length > 0 && <b>{d.status.refused(refused.length)}</b>}
        {status.isSyncing && <span>{d.status.syncing}</span>}
      </p>
      {!isAllSent && status.persisted === false && <p class="device-trouble">{notPersisted()}</p>}
      {status.trouble !== null && <p class="device-trouble">{status.trouble.message}</p>}
      {status.trouble?.kind === 'unreachable' && !isAllSent && (
        // The server may be at another address by now, and this page is still opened from the old one.
        <a href={bringOverPath}>{d.status.moved}</a>
      )}
      {status.trouble?.kind === 'not let in' && (
        // A page of the server's own, so the browser has to open it anew.
        <a class="button" href="/let-in" target="_self">
          {d.status.letIn}
        </a>
      )}
      <button type="button" class="button small" onClick={() => void source.syncNow()}>
        {d.status.sync}
      </button>
      <Details source={source} status={status} />
    </>
  )
}

/** Of a copy without a server: how much there is to hand on as a file. */
function KeptHere({ source, status }: FactsProps) {
  const { unsent, unsentPhotos, persisted } = status
  const isKeeping = unsent > 0 || unsentPhotos > 0
  return (
    <>
      <p role="status" class="device-state" data-unsent={unsent} data-unsent-photos={unsentPhotos}>
        <span>{d.status.noServer}</span>
        {isKeeping && <b>{d.status.kept(unsent, unsentPhotos)}</b>}
      </p>
      {isKeeping && persisted === false && <p class="device-trouble">{notPersisted()}</p>}
      <Details source={source} status={status} />
    </>
  )
}

/** Drawn when somebody opens it: times and numbers in the words of the place take a while the first time. */
function Details({ source, status }: FactsProps) {
  const { refused, lastSync, persisted, quota, used } = status
  const [isOpen, setOpen] = useState(false)
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{d.status.more}</summary>
      {isOpen && (
        <>
          <ul>
            {refused.map((one) => (
              <RefusedEntry key={one.id} {...one} />
            ))}
            {hasServer && <li>{lastSync === null ? d.status.never : d.status.last(printIn(null).moment(lastSync))}</li>}
            {persisted !== null && <li>{persisted ? d.status.persisted : notPersisted()}</li>}
            {quota !== null && used !== null && <li>{d.status.room(megabytes(used), megabytes(quota))}</li>}
          </ul>
          <FreeRoom source={source} freeable={status.freeable} />
          <LaterPart part={filesPane} title={d.status.label}>
            {({ FilesPane }) => <FilesPane source={source} held={status.held} />}
          </LaterPart>
        </>
      )}
    </details>
  )
}

function RefusedEntry({ kind, reason }: DeviceStatus['refused'][number]) {
  const why = useTrouble(reason)
  return <li>{d.status.refusedOne(kind, why)}</li>
}

/** Lets go of pictures that the server has; nothing goes unless somebody presses it. */
function FreeRoom({ source, freeable }: { readonly source: RunSource; readonly freeable: PhotoSum }) {
  const [said, setSaid] = useState<Saying | string>('')
  const saidWords = useTrouble(said)
  const free = async (): Promise<void> => {
    const answer = await source.freePhotos()
    setSaid(answer.ok ? d.status.freed(answer.value.photos, megabytes(answer.value.bytes)) : answer.error.message)
  }
  return (
    <div class="device-room">
      {freeable.photos > 0 && (
        <button type="button" class="button small" onClick={() => void free()}>
          {d.status.free(freeable.photos, megabytes(freeable.bytes))}
        </button>
      )}
      <p role="status">{saidWords}</p>
    </div>
  )
}

function UpdateNote() {
  const { state, takeOver } = useUpdate()
  if (state === 'none') return null
  const words = { ready: d.update.ready, held: d.update.held, 'took over': d.update.tookOver }[state]
  return (
    <div class="device-update">
      <p role="status">{words}</p>
      {state !== 'took over' && (
        <button type="button" class="button" onClick={() => void takeOver()}>
          {d.update.take}
        </button>
      )}
    </div>
  )
}

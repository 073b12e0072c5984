import { useState } from 'preact/hooks'
import { say, troubleWords } from '../messages.ts'
import { d } from './messages.ts'
import type { DeviceStatus, PhotoSum, RunSource, Trouble } from './run-source.ts'
import './status-line.css'
import { rescuePath } from '../route.ts'
import { useStatus } from './use-status.ts'
import { useUpdate } from './use-update.ts'

/** What is only on this device, whether it is safe there, and the way to send it; also that a new version waits. */
export function StatusLine({ source }: { readonly source: RunSource }) {
  const [status, trouble] = useStatus(source)
  return (
    <aside class="device" aria-label={d.status.label}>
      <UpdateNote />
      {!isSecureContext && (
        <p class="device-trouble" role="status">
          {d.trouble.plainLine}
        </p>
      )}
      {trouble !== null && (
        <p class="trouble" role="alert">
          {troubleWords(trouble.message)}
        </p>
      )}
      {status !== null && <Facts source={source} status={status} />}
    </aside>
  )
}

interface FactsProps {
  readonly source: RunSource
  readonly status: DeviceStatus
}

function Facts({ source, status }: FactsProps) {
  const { unsent, unsentPhotos, refused, lastSync } = status
  const isAllSent = unsent === 0 && unsentPhotos === 0
  return (
    <>
      <p role="status" class="device-state" data-unsent={unsent} data-unsent-photos={unsentPhotos}>
        {isAllSent && lastSync !== null && isSecureContext && <span>{d.status.saved}</span>}
        {unsent > 0 && <b>{d.status.unsent(unsent)}</b>}
        {unsentPhotos > 0 && <b>{d.status.photos(unsentPhotos)}</b>}
        {refused.length > 0 && <b>{d.status.refused(refused.length)}</b>}
        {status.isSyncing && <span>{d.status.syncing}</span>}
      </p>
      {status.trouble !== null && <p class="device-trouble">{status.trouble.message}</p>}
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
            {refused.map(({ id, kind, reason }) => (
              <li key={id}>{d.status.refusedOne(kind, troubleWords(reason))}</li>
            ))}
            <li>{lastSync === null ? d.status.never : d.status.last(new Date(lastSync).toLocaleString())}</li>
            {persisted !== null && <li>{persisted ? d.status.persisted : d.status.notPersisted}</li>}
            {quota !== null && used !== null && <li>{d.status.room(megabytes(used), megabytes(quota))}</li>}
          </ul>
          <FreeRoom source={source} freeable={status.freeable} />
          <Transfer source={source} />
        </>
      )}
    </details>
  )
}

/** Lets go of pictures that the server has; nothing goes unless somebody presses it. */
function FreeRoom({ source, freeable }: { readonly source: RunSource; readonly freeable: PhotoSum }) {
  const [said, setSaid] = useState('')
  const free = async (): Promise<void> => {
    const answer = await source.freePhotos()
    setSaid(
      answer.ok
        ? d.status.freed(answer.value.photos, megabytes(answer.value.bytes))
        : troubleWords(answer.error.message),
    )
  }
  return (
    <div class="device-room">
      {freeable.photos > 0 && (
        <button type="button" class="button small" onClick={() => void free()}>
          {d.status.free(freeable.photos, megabytes(freeable.bytes))}
        </button>
      )}
      <p role="status">{said}</p>
    </div>
  )
}

/** The way out and in without a server. */
function Transfer({ source }: { readonly source: RunSource }) {
  const [said, setSaid] = useState('')
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const save = async (): Promise<void> => {
    const answer = await source.exportDevice()
    setTrouble(answer.ok ? null : answer.error)
    if (answer.ok) download(answer.value, `lapwise-${new Date().toISOString().slice(0, 10)}.json`)
  }
  const take = async (file: File): Promise<void> => {
    const answer = await source.importDevice(file.name, await file.text())
    setTrouble(answer.ok ? null : answer.error)
    setSaid(answer.ok ? d.status.imported(answer.value.entries, answer.value.photos, answer.value.already) : '')
  }
  return (
    <div class="device-transfer">
      <button type="button" class="button small" onClick={() => void save()}>
        {d.status.export}
      </button>
      <label>
        <span>{d.status.import}</span>
        <input
          type="file"
          accept=".json,application/json"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0]
            if (file !== undefined) void take(file)
            currentTarget.value = ''
          }}
        />
      </label>
      <a href={rescuePath} target="_top">
        {d.status.rescue}
      </a>
      <p role="status">{said}</p>
      {trouble !== null && (
        <div class="trouble" role="alert">
          <p>
            <b>{d.status.failed}</b> {troubleWords(trouble.message)}
          </p>
          <ul>
            {trouble.problems.map(({ place, expected, found }) => (
              <li key={`${place} ${say(expected)}`}>
                {d.status.problem(place, say(expected), found === null ? '' : say(found))}
              </li>
            ))}
          </ul>
        </div>
      )}
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

const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)} MB`

function download(content: Blob, file: string): void {
  const address = URL.createObjectURL(content)
  const link = document.createElement('a')
  link.href = address
  link.download = file
  link.click()
  // The browser has taken the content over by then: our judgement.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

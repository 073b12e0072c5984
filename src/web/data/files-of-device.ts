import { err, ok } from '../../core/result.ts'
import { newId } from './device.ts'
import type { DeviceStore } from './device-store.ts'
import type { HeldRow } from './device-tables.ts'
import { later } from './later.ts'
import { d } from './messages.ts'
import type { PageEnd } from './page-end.ts'
import type { Answer, Imported, RunSource } from './run-source.ts'
import { fromStore } from './store-trouble.ts'

type Files = Pick<RunSource, 'handOver' | 'weighFile' | 'takeInFile' | 'heldFile' | 'takeInHeld' | 'dropHeld'>

interface Means {
  /** A photo that is not on this device; null where nobody has it. */
  photoElsewhere(sha256: string): Answer<Blob | null>
  /** Told after something was taken in. */
  taken(): void
}

/** What goes from this device to another as a file, what comes in as one, and what of that is held. */
export function filesOfDevice(store: DeviceStore, page: PageEnd, { photoElsewhere, taken }: Means): Files {
  const files: Files = {
    async handOver(run) {
      const [transfer, device] = await Promise.all([later(() => import('./device-transfer.ts')), store.device(newId())])
      if (!transfer.ok) return transfer
      return device.ok ? transfer.value.handOver(store, device.value, run, photoElsewhere) : fromStore(device.error)
    },

    async weighFile(file) {
      const transfer = await later(() => import('./take-in-file.ts'))
      if (!transfer.ok) return transfer
      const weighed = await transfer.value.weighFile(store, file)
      // One of a newer program is held by being looked at.
      if (!weighed.ok) page.changed({ runs: [], isOwn: true })
      return weighed
    },

    takeInFile: takeIn,

    async heldFile(id) {
      const [transfer, row] = await Promise.all([later(() => import('./held-files.ts')), heldRow(id)])
      if (!transfer.ok) return transfer
      return row.ok ? transfer.value.heldFile(store, row.value) : row
    },

    async takeInHeld(id) {
      const [row, file] = [await heldRow(id), await files.heldFile(id)]
      if (!row.ok) return row
      if (!file.ok) return file
      const imported = await takeIn(file.value)
      // What still does not fit is held once, as it was.
      return imported.ok && imported.value.left.length === 0 ? dropped(row.value, imported.value) : imported
    },

    async dropHeld(id) {
      const row = await heldRow(id)
      return row.ok ? dropped(row.value, undefined) : row
    },
  }
  return files

  async function takeIn(file: File): Answer<Imported> {
    const transfer = await later(() => import('./take-in-file.ts'))
    if (!transfer.ok) return transfer
    const imported = await transfer.value.takeInFile(store, file)
    const runs = await store.entries('run')
    page.changed({ runs: runs.ok ? runs.value.map(({ run }) => run) : [], isOwn: false })
    taken()
    return imported
  }

  async function heldRow(id: string): Answer<HeldRow> {
    const held = await store.held()
    if (!held.ok) return fromStore(held.error)
    const row = held.value.find((one) => one.id === id)
    return row === undefined ? err({ kind: 'refused', message: d.trouble.notHeld, problems: [] }) : ok(row)
  }

  async function dropped<T>({ id, pieces }: HeldRow, then: T): Answer<T> {
    const done = await store.dropHeld(id, pieces)
    page.changed({ runs: [], isOwn: true })
    return done.ok ? ok(then) : fromStore(done.error)
  }
}

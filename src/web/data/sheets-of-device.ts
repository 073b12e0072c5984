import { ok } from '../../core/result.ts'
import { hasServer } from '../has-server.ts'
import type { DeviceStore } from './device-store.ts'
import { documentsPart } from './documents-part.ts'
import type { heldSummaries } from './held-summaries.ts'
import { later } from './later.ts'
import type { PageEnd } from './page-end.ts'
import type { RunSource } from './run-source.ts'
import { fetchSheetDocument } from './server-peer.ts'
import { fromStore, orTrouble } from './store-trouble.ts'

type Sheets = Pick<RunSource, 'ownSheets' | 'addSheet' | 'runsBySheet' | 'sheetDocument' | 'dropSheet'>

interface Means extends Pick<ReturnType<typeof heldSummaries>, 'summaries'> {
  /** Told after a sheet was put on the shelf. */
  added(): void
}

/** The hardware sheets that are this device's own, and what rests on them. */
export const sheetsOfDevice = (store: DeviceStore, page: PageEnd, { summaries, added: told }: Means): Sheets => ({
  async ownSheets() {
    const sheets = await later(() => import('./own-sheets.ts'))
    return sheets.ok ? sheets.value.ownSheets(store) : sheets
  },

  async addSheet(file, sheet) {
    const sheets = await later(() => import('./own-sheets.ts'))
    if (!sheets.ok) return sheets
    const added = await sheets.value.addSheet(store, file, sheet)
    if (added.ok) page.changed({ runs: [], isOwn: true, isOfShelf: true })
    if (added.ok) told()
    return added
  },

  async runsBySheet(id) {
    const [model, entries, summarised] = await Promise.all([
      later(() => import('./runs-by-sheet.ts')),
      store.everything(),
      summaries(),
    ])
    if (!model.ok) return model
    if (!entries.ok) return fromStore(entries.error)
    return summarised.ok ? ok(model.value.runsBySheet(id, entries.value, summarised.value.runs)) : summarised
  },

  async sheetDocument(wish) {
    const made = hasServer ? await fetchSheetDocument(wish) : null
    if (made !== null && (made.ok || made.error.kind !== 'unreachable')) return made
    const maker = await documentsPart()
    return maker.ok ? maker.value.sheetDocumentHere(wish) : maker
  },

  async dropSheet(id, version) {
    const done = orTrouble(await store.dropSheet(id, version))
    if (done.ok) page.changed({ runs: [], isOwn: true, isOfShelf: true })
    return done
  },
})

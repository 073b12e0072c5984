import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Draft } from '../form/draft.ts'
import { goTo, sheetPath } from '../route.ts'
import { idFor } from './copy-sheet.ts'
import { beginSheet, begunSheets } from './sheet-drafts.ts'

/**
 * Begins a sheet that nobody has yet under an id that its name gives, and opens its form.
 * @param sheets  whose ids are taken, beside those of sheets that were begun
 */
export function beginNamed(name: string, sheets: readonly HardwareSheet[], draftOf: (id: string) => Draft): void {
  const id = idFor(name, [...sheets.map((one) => one.id), ...Object.keys(begunSheets())])
  const draft = draftOf(id)
  beginSheet(id, { of: null, from: draft, draft })
  goTo(sheetPath(id, 'edit'))
}

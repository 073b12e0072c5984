import { useMemo, useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { shippedBaseOf } from '../../operations/newer-shipped.ts'
import { nextEdition } from '../../operations/next-edition.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import type { Draft } from '../form/draft.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { Differences } from './differences.tsx'
import { LostConfirmations } from './lost-confirmations.tsx'
import { readDraft } from './read-draft.ts'
import { TouchedRuns } from './touched-runs.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly id: string
  /** The edition on the shelf; null for a sheet that is new. */
  readonly saved: HardwareSheet | null
  readonly draft: Draft
  /** As it was begun. */
  readonly from: Draft
  readonly sheets: readonly HardwareSheet[]
  readonly change: (next: (draft: Draft) => Draft) => void
  readonly drop: () => void
}

/** What an edition would change and which runs hold the sheet, before it is saved; and the way to save it, or to drop it. */
export function SaveEdition({ source, id, saved, draft, from, sheets, change, drop }: Props) {
  const w = words().save
  const first = saved === null || draft.version !== saved.version ? String(draft.version ?? '1') : nextEdition(saved)
  const [version, setVersion] = useState(first)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [isSaving, setSaving] = useState(false)
  const [isSure, setSure] = useState(false)
  // A newer edition that it was begun from is noted in it already.
  const read = useMemo(
    () => readDraft({ basedOn: (saved && shippedBaseOf(saved)) ?? undefined, ...draft, version }, from),
    [saved, draft, from, version],
  )
  const save = async (): Promise<void> => {
    if (isSaving || !read.ok) return
    setSaving(true)
    // As it is stored, so that it is known again once the shelf has it: until then it is what is shown.
    change(() => read.value as unknown as Draft)
    const answer = await source.addSheet(id, read.value)
    if (answer.ok) return
    setSaving(false)
    setTrouble(answer.error)
  }
  return (
    <section class="shelf-save" aria-labelledby="save-edition">
      <h2 id="save-edition">{w.title}</h2>
      <p>{saved === null ? w.isNew : w.begun(saved.version)}</p>
      {read.ok && saved !== null && <Differences one={saved} other={read.value} sheets={sheets} />}
      {read.ok && saved !== null && <LostConfirmations one={saved} other={read.value} />}
      <TouchedRuns source={source} id={id} edition={read.ok ? read.value : null} />
      <label>
        <span>{w.version}</span>
        <input maxLength={60} value={version} onInput={({ currentTarget }) => setVersion(currentTarget.value)} />
      </label>
      {!read.ok && <p class="trouble">{w.wrong(read.error.length)}</p>}
      {trouble !== null && <TroubleNote title={w.notSaved} trouble={trouble} />}
      <div class="form-buttons">
        <button type="button" class="button main" disabled={!read.ok || isSaving} onClick={() => void save()}>
          {w.save}
        </button>
        <button type="button" class="button" onClick={() => (isSure ? drop() : setSure(true))}>
          {isSure ? w.sureDrop : w.drop}
        </button>
      </div>
    </section>
  )
}

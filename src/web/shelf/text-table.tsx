import { useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Language } from '../../core/language.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { takeTexts, writeTexts } from '../../formats/sheet/text-table.ts'
import { download } from '../parts/download.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { words } from './words.ts'

interface Props {
  readonly sheet: HardwareSheet
  readonly to: Language
  readonly take: (sheet: HardwareSheet) => void
}

/** The texts leave as a table for who translates them, and come back. */
export function TextTable({ sheet, to, take }: Props) {
  const w = words().texts
  const [said, setSaid] = useState('')
  const [failed, setFailed] = useState<{ readonly file: string; readonly problems: readonly InputProblem[] } | null>(
    null,
  )
  const read = async (file: File): Promise<void> => {
    const taken = takeTexts(file.name, await file.text(), sheet)
    setFailed(taken.ok ? null : { file: file.name, problems: taken.error })
    setSaid(taken.ok ? w.taken(taken.value.translated, taken.value.changed, taken.value.gone) : '')
    if (taken.ok) take(taken.value.sheet)
  }
  return (
    <div class="shelf-table">
      <button
        type="button"
        class="button"
        onClick={() =>
          download(new Blob([writeTexts(sheet, to)], { type: 'text/csv' }), `${sheet.id}-${sheet.version}-${to}.csv`)
        }
      >
        {w.save}
      </button>
      <label>
        <span>{w.take}</span>
        <input
          type="file"
          accept=".csv,text/csv"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0]
            if (file !== undefined) void read(file)
            currentTarget.value = ''
          }}
        />
      </label>
      <p role="status">{said}</p>
      {failed !== null && (
        <TroubleNote title={w.notTaken(failed.file)} trouble={{ message: '', problems: failed.problems }} />
      )}
    </div>
  )
}

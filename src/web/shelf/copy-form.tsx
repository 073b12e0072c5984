import { useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Draft } from '../form/draft.ts'
import { beginNamed } from './begin-named.ts'
import { copiedSheet } from './copy-sheet.ts'
import { words } from './words.ts'

interface Props {
  readonly sheet: HardwareSheet
  readonly editions: readonly HardwareSheet[]
}

/** Begins a sheet of one's own as a copy of this one, under another name. */
export function CopyForm({ sheet, editions }: Props) {
  const w = words().form.copy
  const [name, setName] = useState('')
  const [isAsked, setAsked] = useState(false)
  const begin = (): void => {
    setAsked(true)
    if (name.trim() === '') return
    beginNamed(name, editions, (id) => copiedSheet(sheet, id, name.trim()) as unknown as Draft)
  }
  return (
    <form
      class="shelf-save"
      onSubmit={(event) => {
        event.preventDefault()
        begin()
      }}
    >
      <p class="hint">{w.how}</p>
      <label>
        <span>{w.name}</span>
        <input
          maxLength={200}
          value={name}
          aria-invalid={isAsked && name.trim() === ''}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      {isAsked && name.trim() === '' && (
        <p class="field-wrong" role="alert">
          {w.missing}
        </p>
      )}
      <button type="submit" class="button main">
        {w.make}
      </button>
    </form>
  )
}

import { useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { language } from '../language.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { beginNamed } from './begin-named.ts'
import { newSheet } from './new-sheet.ts'
import { words } from './words.ts'

const kinds = ['terminal', 'trailing anchor', 'buried end', 'bridge end', 'longitudinal'] as const

/** Begins a sheet that states nothing yet. */
export const NewSheetForm = ({ sheets }: { readonly sheets: readonly HardwareSheet[] }) => (
  <FoldByItself level={2} title={words().form.fresh.title} beside={null} opensFirst={false}>
    {() => <Form sheets={sheets} />}
  </FoldByItself>
)

function Form({ sheets }: { readonly sheets: readonly HardwareSheet[] }) {
  const w = words()
  const [name, setName] = useState('')
  const [kind, setKind] = useState<HardwareSheet['kind']>('terminal')
  const [isAsked, setAsked] = useState(false)
  const isMissing = name.trim() === ''
  const begin = (): void => {
    setAsked(true)
    if (isMissing) return
    beginNamed(name, sheets, (id) => newSheet(kind, id, name.trim(), language()))
  }
  return (
    <form
      class="shelf-save"
      onSubmit={(event) => {
        event.preventDefault()
        begin()
      }}
    >
      <p class="hint">{w.form.fresh.how}</p>
      <label>
        <span>{w.form.fresh.kind}</span>
        <select value={kind} onChange={({ currentTarget }) => setKind(currentTarget.value as HardwareSheet['kind'])}>
          {kinds.map((one) => (
            <option key={one} value={one}>
              {w.kinds[one]}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{w.form.copy.name}</span>
        <input
          maxLength={200}
          value={name}
          aria-invalid={isAsked && isMissing}
          onInput={({ currentTarget }) => setName(currentTarget.value)}
        />
      </label>
      {isAsked && isMissing && (
        <p class="field-wrong" role="alert">
          {w.form.copy.missing}
        </p>
      )}
      <button type="submit" class="button main">
        {w.form.fresh.begin}
      </button>
    </form>
  )
}

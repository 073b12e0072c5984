import { useState } from 'preact/hooks'
import type { Instrument } from '../../core/measurement/instruments.ts'
import type { QuantityKind } from '../../core/units/quantity-kinds.ts'
import type { Visit } from '../data/device.ts'
import { m, say } from '../messages.ts'

interface Props {
  readonly visit: Visit
  /** What kind of quantity is measured, with which instrument, and those to choose from; null where nothing is. */
  readonly measuring: {
    readonly kind: QuantityKind
    readonly with: Instrument
    readonly instruments: readonly Instrument[]
  } | null
  readonly change: (visit: Visit) => void
}

/** Who reads, with what and from which surface: asked once a visit, then one line that can be opened. */
export function VisitFields({ visit, measuring, change }: Props) {
  const [isOpen, setOpen] = useState(visit.by.trim() === '')
  const said = [visit.by, ...(measuring === null ? [] : [say(measuring.with.name)]), visit.where].filter(
    (one) => one !== '',
  )
  return (
    <details class="visit" open={isOpen} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        <span class="label">{m.entry.visit}</span> {said.join(', ')}
      </summary>
      <div class="fields">
        <label>
          <span>{m.entry.by}</span>
          <input
            data-by
            value={visit.by}
            autocomplete="name"
            maxLength={200}
            onInput={({ currentTarget }) => change({ ...visit, by: currentTarget.value })}
          />
        </label>
        {measuring !== null && (
          <label>
            <span>{m.entry.instrument}</span>
            <select
              value={measuring.with.id}
              onChange={({ currentTarget }) =>
                change({ ...visit, instruments: { ...visit.instruments, [measuring.kind]: currentTarget.value } })
              }
            >
              {measuring.instruments.map(({ id, name }) => (
                <option key={id} value={id}>
                  {say(name)}
                </option>
              ))}
            </select>
          </label>
        )}
        <label>
          <span>{m.entry.where}</span>
          <input
            value={visit.where}
            list="surfaces"
            maxLength={200}
            onInput={({ currentTarget }) => change({ ...visit, where: currentTarget.value })}
          />
          <datalist id="surfaces">
            {m.entry.surfaces.map((surface) => (
              <option key={surface} value={surface} />
            ))}
          </datalist>
        </label>
      </div>
    </details>
  )
}

import { useState } from 'preact/hooks'
import type { Instrument } from '../../core/measurement/instruments.ts'
import type { Visit } from '../data/device.ts'
import { m, say } from '../messages.ts'

interface Props {
  readonly visit: Visit
  /** Those to choose from; none where nothing is measured. */
  readonly instruments: readonly Instrument[]
  readonly change: (visit: Visit) => void
}

/** Who reads, with what and from which surface: asked once a visit, then one line that can be opened. */
export function VisitFields({ visit, instruments, change }: Props) {
  const [isOpen, setOpen] = useState(visit.by.trim() === '')
  const instrument = instruments.find(({ id }) => id === visit.instrument)?.name
  const said = [visit.by, ...(instrument === undefined ? [] : [say(instrument)]), visit.where].filter(
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
        {instruments.length > 0 && (
          <label>
            <span>{m.entry.instrument}</span>
            <select
              value={visit.instrument}
              onChange={({ currentTarget }) => change({ ...visit, instrument: currentTarget.value })}
            >
              {instruments.map(({ id, name }) => (
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

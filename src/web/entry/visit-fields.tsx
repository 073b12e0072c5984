import type { Instrument } from '../../core/measurement/instruments.ts'
import type { Visit } from '../data/device.ts'
import { m } from '../messages.ts'

interface Props {
  readonly visit: Visit
  /** Those to choose from; none where nothing is measured. */
  readonly instruments: readonly Instrument[]
  readonly change: (visit: Visit) => void
}

/** Who reads, with what and where: asked once, kept until changed. */
export const VisitFields = ({ visit, instruments, change }: Props) => (
  <div class="fields visit">
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
              {name}
            </option>
          ))}
        </select>
      </label>
    )}
    <label>
      <span>{m.entry.where}</span>
      <input
        value={visit.where}
        maxLength={200}
        onInput={({ currentTarget }) => change({ ...visit, where: currentTarget.value })}
      />
    </label>
  </div>
)

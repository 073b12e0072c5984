import { useState } from 'preact/hooks'
import type { Instrument } from '../../core/measurement/instruments.ts'
import type { InstrumentUse, Visit } from '../data/device.ts'
import type { Preferences } from '../fieldwork/preferences.ts'
import { asWritten, m, say } from '../messages.ts'
import { type Complaint, ComplaintNote } from './complaint.tsx'

interface Props {
  readonly visit: Visit
  /** With which instrument is measured, and those to choose from; null where nothing is. */
  readonly measuring: {
    readonly with: Instrument
    readonly instruments: readonly Instrument[]
  } | null
  /** Which use of an instrument is remembered. */
  readonly use: InstrumentUse
  readonly complaint: Complaint | null
  readonly change: (visit: Visit) => void
  readonly settings: Preferences
  readonly set: (changes: Partial<Preferences>) => void
}

/** Who reads, with what and from which surface: asked once a visit, then one line that can be opened. */
export function VisitFields({ visit, measuring, use, complaint, change, settings, set }: Props) {
  const [isOpen, setOpen] = useState(visit.by.trim() === '')
  // Who has to say who they are finds the field.
  const isShown = isOpen || complaint?.at === 'by'
  const said = [
    asWritten(visit.by),
    ...(measuring === null ? [] : [say(measuring.with.name)]),
    asWritten(visit.where),
  ].filter((one) => one !== '')
  return (
    <details class="visit" open={isShown} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        <span class="label">{m.entry.visit}</span> {said.join(', ')}
      </summary>
      <div class="fields">
        <div>
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
          <ComplaintNote complaint={complaint} at="by" />
        </div>
        {measuring !== null && (
          <label>
            <span>{m.entry.instrument}</span>
            <select
              value={measuring.with.id}
              onChange={({ currentTarget }) =>
                change({ ...visit, instruments: { ...visit.instruments, [use]: currentTarget.value } })
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
      <Setting name="goesOn" words={m.entry.goesOn} {...{ settings, set }} />
      {'wakeLock' in navigator && <Setting name="staysAwake" words={m.entry.staysAwake} {...{ settings, set }} />}
      {hasTouch() && <Setting name="hasDeviceKeyboard" words={m.entry.keyboard} {...{ settings, set }} />}
    </details>
  )
}

/** Whether it is worked by fingers: then the keypad of the page is there instead of the device's own. */
export const hasTouch = (): boolean => matchMedia('(pointer: coarse)').matches

interface SettingProps extends Pick<Props, 'settings' | 'set'> {
  readonly name: 'goesOn' | 'staysAwake' | 'hasDeviceKeyboard'
  readonly words: string
}

const Setting = ({ name, words, settings, set }: SettingProps) => (
  <label class="check">
    <input
      type="checkbox"
      checked={settings[name]}
      onChange={({ currentTarget }) => set({ [name]: currentTarget.checked })}
    />
    {words}
  </label>
)

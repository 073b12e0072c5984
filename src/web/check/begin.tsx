import type { ComponentChildren } from 'preact'
import { useRef, useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { DevicePosition } from '../../formats/device-position.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { countedRun, type SeenRun } from '../../operations/counted-run.ts'
import { shippedShelf } from '../../operations/sheet-shelf.ts'
import { newId, rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { devicePosition } from '../fieldwork/device-position.ts'
import { setPreferences } from '../fieldwork/preferences.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath } from '../route.ts'
import { nameOf } from './unit-card.tsx'

type Seen = Omit<SeenRun, 'name' | 'side' | 'letting' | 'datumStation' | 'position' | 'sheets'>

interface Props {
  readonly source: RunSource
  readonly seen: Seen
  readonly setUnits: (units: SeenRun['units']) => void
}

/** The few facts that need not be said, and the way to the first requirement. */
export function Begin({ source, seen, setUnits }: Props) {
  const w = m.check
  const [side, setSide] = useState<SeenRun['side']>(null)
  const [letting, setLetting] = useState('')
  const [station, setStation] = useState('')
  const [position, setPosition] = useState<DevicePosition | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  /** The same run keeps its id, so that trying again cannot make a second one. */
  const id = useRef(newId())
  const begin = async (): Promise<void> => {
    const name = `${nameOfEnd(seen.first === 'not looked at' ? seen.second : seen.first)}, ${new Date().toISOString().slice(0, 10)}`
    const run = countedRun({
      ...{ ...seen, name, side, position, sheets: notShipped(seen) },
      ...{ letting: letting === '' ? null : letting, datumStation: station.trim() === '' ? null : station.trim() },
    })
    const answer = await source.addRun(id.current, name, runToValue(run), rememberedVisit().by || m.runs.authorNotSaid)
    if (answer.ok) goTo(panePath(id.current, 'walk'))
    else setTrouble(answer.error)
  }
  return (
    <>
      <details class="check-facts">
        <summary>{w.facts}</summary>
        <Choice
          words={w.side}
          value={side ?? ''}
          choose={(value) => setSide(value === '' ? null : (value as 'right' | 'left'))}
        >
          <option value="">{w.notSaid}</option>
          <option value="right">{w.right}</option>
          <option value="left">{w.leftSide}</option>
        </Choice>
        <label>
          <span>{w.station}</span>
          <input value={station} onInput={({ currentTarget: { value } }) => setStation(value)} />
        </label>
        <TakePosition position={position} take={setPosition} />
        <label>
          <span>{w.letting}</span>
          <input type="date" value={letting} onInput={({ currentTarget: { value } }) => setLetting(value)} />
        </label>
        <Choice
          words={w.units}
          value={seen.units}
          choose={(value) => {
            const units = value as SeenRun['units']
            setPreferences({ units })
            setUnits(units)
          }}
        >
          <option value="us">{w.us}</option>
          <option value="metric">{w.metric}</option>
        </Choice>
      </details>
      {trouble !== null && <TroubleNote title={w.notBegun} trouble={trouble} />}
      {[seen.first, seen.second].includes('not looked at') && <p class="hint">{w.provesNothing}</p>}
      <button type="button" class="button main check-main" onClick={() => void begin()}>
        {w.begin}
      </button>
    </>
  )
}

/** The sheets of what was seen that a run cannot take from those that ship: it brings them. */
const notShipped = ({ system, first, second }: Seen): readonly HardwareSheet[] => {
  const inUse = [system, first, second].filter((one) => typeof one === 'object')
  return [...new Set(inUse)].filter((sheet) => shippedShelf.get(sheet.id) !== sheet)
}

const nameOfEnd = (end: SeenRun['first']): string => (typeof end === 'string' ? m.check.unknownEnd : nameOf(end))

interface ChoiceProps {
  readonly words: string
  readonly value: string
  readonly choose: (value: string) => void
  readonly children: ComponentChildren
}

const Choice = ({ words, value, choose, children }: ChoiceProps) => (
  <label>
    <span>{words}</span>
    <select value={value} onChange={({ currentTarget }) => choose(currentTarget.value)}>
      {children}
    </select>
  </label>
)

interface PositionProps {
  readonly position: DevicePosition | null
  readonly take: (position: DevicePosition | null) => void
}

/** Where the device says it is: asked for by a touch alone, and shown with how far that may be off. */
function TakePosition({ position, take }: PositionProps) {
  const [state, setState] = useState<'idle' | 'asking' | 'not known'>('idle')
  const ask = async (): Promise<void> => {
    setState('asking')
    const found = await devicePosition()
    setState(found === null ? 'not known' : 'idle')
    if (found !== null) take(found)
  }
  const w = m.check.position
  return (
    <div class="check-position">
      <button type="button" class="button" disabled={state === 'asking'} onClick={() => void ask()}>
        {w.take}
      </button>
      {position !== null && (
        <button type="button" class="button" onClick={() => take(null)}>
          {w.drop}
        </button>
      )}
      <p role="status">
        {state === 'asking' && w.asking}
        {state === 'not known' && w.notKnown}
        {state !== 'asking' &&
          position !== null &&
          m.photo.position(position.latitude.toFixed(5), position.longitude.toFixed(5), Math.ceil(position.accuracy))}
      </p>
    </div>
  )
}

import { useMemo, useRef, useState } from 'preact/hooks'
import type { EndSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { RunEnd } from '../../core/layout/layout.ts'
import { runToValue } from '../../formats/run/write-run.ts'
import { countedRun, panelsBySheet, postsBySheets, type SeenRun } from '../../operations/counted-run.ts'
import { newId, rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { m, printIn } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath } from '../route.ts'
import { Back } from './back.tsx'
import { nameOf } from './unit-card.tsx'

interface Props {
  readonly source: RunSource
  readonly first: SeenRun['first']
  readonly second: SeenRun['second']
  readonly system: LongitudinalSheet
  readonly opposingReaches: boolean | null
  readonly back: () => void
}

const endOf = (end: SeenRun['first']): RunEnd =>
  typeof end === 'object'
    ? { kind: 'unit', sheet: end, atInches: null }
    : { kind: 'unknown', because: end, atInches: null, posts: 0, panels: 0 }

const ownPanels = (end: SeenRun['first']): readonly number[] => (typeof end === 'object' ? panelsBySheet(end) : [])

/** Counts that begin as the sheets have them, and the few facts that need not be said. */
export function CountPieces({ source, first, second, system, opposingReaches, back }: Props) {
  const hardware = useMemo(() => ({ system, first: endOf(first), second: endOf(second) }), [system, first, second])
  const [standard = 150] = system.panels.standard.map(({ inches }) => inches)
  const isOneEnd = [first, second].includes('not looked at')
  const between = !isOneEnd ? 4 : [first, second].includes('no sheet fits') ? 2 : 0
  const start = useMemo(
    () => [...ownPanels(first), ...Array.from({ length: between }, () => standard), ...ownPanels(second).toReversed()],
    [first, second, between, standard],
  )
  const [panels, setPanels] = useState<readonly number[]>(start)
  /** Null while it follows from the panels. */
  const [counted, setCounted] = useState<number | null>(null)
  const posts = counted ?? postsBySheets(hardware, panels)
  const at = panels.length - ownPanels(second).length
  const w = m.check
  const more = (): void => setPanels([...panels.slice(0, at), standard, ...panels.slice(at)])
  const fewer = (): void => setPanels(panels.filter((_, i) => i !== (at > 0 ? at - 1 : 0)))
  return (
    <>
      <Back back={back} />
      <h1>{w.count}</h1>
      <p>{w.countHow}</p>
      <Stepper name={w.panels} value={panels.length} least={1} less={fewer} more={more} />
      <PanelLengths panels={panels} system={system} change={setPanels} />
      <Stepper
        name={w.posts}
        value={posts}
        least={2}
        less={() => setCounted(posts - 1)}
        more={() => setCounted(posts + 1)}
      />
      <Begin source={source} seen={{ system, first, second, opposingReaches, counted: { panels, posts } }} />
    </>
  )
}

interface StepperProps {
  readonly name: string
  readonly value: number
  readonly least: number
  readonly less: () => void
  readonly more: () => void
}

const Stepper = ({ name, value, least, less, more }: StepperProps) => (
  <fieldset class="check-stepper">
    <legend class="unseen">{name}</legend>
    <span aria-hidden="true">{name}</span>
    <button type="button" class="button" aria-label={m.check.less(name)} disabled={value <= least} onClick={less}>
      −
    </button>
    <output>{value}</output>
    <button type="button" class="button" aria-label={m.check.more(name)} onClick={more}>
      +
    </button>
  </fieldset>
)

interface LengthsProps {
  readonly panels: readonly number[]
  readonly system: LongitudinalSheet
  readonly change: (panels: readonly number[]) => void
}

/** Each panel's length; a touch goes on to the next one that there is. */
function PanelLengths({ panels, system, change }: LengthsProps) {
  const { standard, converting, endOnly } = system.panels
  const lengths = [...standard, ...converting, ...endOnly].map(({ inches }) => inches).sort((a, b) => a - b)
  const next = (inches: number): number => lengths.find((one) => one > inches) ?? lengths[0]!
  return (
    <div>
      <p class="hint">{m.check.lengthsHow}</p>
      <ol class="plain check-lengths">
        {panels.map((inches, i) => (
          <li key={i}>
            <button
              type="button"
              class="button"
              onClick={() => change(panels.map((one, k) => (k === i ? next(one) : one)))}
            >
              {m.check.panel(i + 1, printIn(null).feetInches(inches))}
            </button>
          </li>
        ))}
      </ol>
    </div>
  )
}

type Seen = Pick<SeenRun, 'system' | 'first' | 'second' | 'opposingReaches' | 'counted'>

function Begin({ source, seen }: { readonly source: RunSource; readonly seen: Seen }) {
  const w = m.check
  const [side, setSide] = useState<SeenRun['side']>(null)
  const [letting, setLetting] = useState('')
  const [station, setStation] = useState('')
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  /** The same run keeps its id, so that trying again cannot make a second one. */
  const id = useRef(newId())
  const begin = async (): Promise<void> => {
    const name = `${nameOfEnd(seen.first === 'not looked at' ? seen.second : seen.first)}, ${new Date().toISOString().slice(0, 10)}`
    const run = countedRun({
      ...{ ...seen, name, units: 'us', side, sheets: [] },
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
        <label>
          <span>{w.side}</span>
          <select
            value={side ?? ''}
            onChange={({ currentTarget: { value } }) => setSide(value === '' ? null : (value as 'right' | 'left'))}
          >
            <option value="">{w.notSaid}</option>
            <option value="right">{w.right}</option>
            <option value="left">{w.leftSide}</option>
          </select>
        </label>
        <label>
          <span>{w.station}</span>
          <input value={station} onInput={({ currentTarget: { value } }) => setStation(value)} />
        </label>
        <label>
          <span>{w.letting}</span>
          <input type="date" value={letting} onInput={({ currentTarget: { value } }) => setLetting(value)} />
        </label>
      </details>
      {trouble !== null && <TroubleNote title={w.notBegun} trouble={trouble} />}
      {[seen.first, seen.second].includes('not looked at') && <p class="hint">{w.provesNothing}</p>}
      <button type="button" class="button main check-main" onClick={() => void begin()}>
        {w.begin}
      </button>
    </>
  )
}

const nameOfEnd = (end: EndSheet | string): string => (typeof end === 'string' ? m.check.unknownEnd : nameOf(end))

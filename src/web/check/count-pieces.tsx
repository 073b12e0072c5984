import { useMemo, useState } from 'preact/hooks'
import type { LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { RunEnd } from '../../core/layout/layout.ts'
import { mostPanelsOf, panelsBySheet, postsBySheets, type SeenRun } from '../../operations/counted-run.ts'
import { asSeen, countedSpaces, type SeenSpace } from '../../operations/counted-spaces.ts'
import type { RunSource } from '../data/run-source.ts'
import { preferences } from '../fieldwork/preferences.ts'
import { m, printIn } from '../messages.ts'
import { Back } from './back.tsx'
import { Begin } from './begin.tsx'
import { CountSpaces } from './count-spaces.tsx'
import { type AtHand, endsJoining } from './shelf.ts'

interface Props {
  readonly source: RunSource
  readonly atHand: AtHand
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

/** The panels that an end is taken to have, from its outermost inward. */
function ownPanels(end: SeenRun['first'], unknown: readonly number[]): readonly number[] {
  if (typeof end === 'object') return panelsBySheet(end)
  return end === 'no sheet fits' ? unknown : []
}

/** Counts that begin as the sheets have them, and the few facts that need not be said. */
export function CountPieces({ source, atHand, first, second, system, opposingReaches, back }: Props) {
  const hardware = useMemo(() => ({ system, first: endOf(first), second: endOf(second) }), [system, first, second])
  const [standard = 150] = system.panels.standard.map(({ inches }) => inches)
  const isWhole = ![first, second].includes('not looked at')
  const isUnknown = [first, second].includes('no sheet fits')
  const [unknownPanels, setUnknownPanels] = useState(() =>
    isWhole ? mostPanelsOf(endsJoining(system, atHand.ends)) : 2,
  )
  const [panels, setPanels] = useState<readonly number[]>(() => {
    const unknown = Array.from({ length: unknownPanels }, () => standard)
    const between = Array.from({ length: isWhole ? 4 : 0 }, () => standard)
    return [...ownPanels(first, unknown), ...between, ...ownPanels(second, unknown).toReversed()]
  })
  /** Null while it follows from the panels. */
  const [counted, setCounted] = useState<number | null>(null)
  const posts = counted ?? postsBySheets(hardware, panels)
  const [units, setUnits] = useState(() => preferences().units)
  const inSecond = ownPanels(second, panels.slice(0, unknownPanels)).length
  const at = Math.max(0, panels.length - inSecond)
  const spaces = useMemo(
    () => (isWhole && !isUnknown ? countedSpaces(hardware, { panels, posts }) : []),
    [isWhole, isUnknown, hardware, panels, posts],
  )
  // What was seen between posts that are now counted otherwise holds no longer.
  const [seenOf, setSeenOf] = useState<{ readonly of: typeof spaces; readonly seen: ReadonlyMap<number, SeenSpace> }>({
    ...{ of: spaces, seen: new Map() },
  })
  const spacesSeen = seenOf.of === spaces ? seenOf.seen : new Map<number, SeenSpace>()
  const setSpacesSeen = (seen: ReadonlyMap<number, SeenSpace>): void => setSeenOf({ of: spaces, seen })
  const isPlain = [...spacesSeen.values()].every((way) => way === 'full')
  const placed = isPlain ? null : asSeen(hardware, { panels, posts }, spacesSeen, m.check.leftOut)
  const pieces = {
    counted: { panels, posts: placed?.posts ?? posts },
    ...{ reduced: placed?.reduced ?? [], obstructions: placed?.obstructions ?? [] },
  }
  const w = m.check
  const more = (): void => setPanels([...panels.slice(0, at), standard, ...panels.slice(at)])
  const fewer = (): void => setPanels(panels.filter((_, i) => i !== (at > 0 ? at - 1 : 0)))
  return (
    <>
      <Back back={back} />
      <h1>{w.count}</h1>
      <p>{w.countHow}</p>
      <Stepper name={w.panels} value={panels.length} least={1} less={fewer} more={more} />
      <PanelLengths panels={panels} system={system} units={units} change={setPanels} />
      {isWhole && isUnknown && (
        <>
          <Stepper
            name={w.unknownPanels}
            value={unknownPanels}
            least={1}
            less={() => setUnknownPanels(unknownPanels - 1)}
            more={() => setUnknownPanels(unknownPanels + 1)}
          />
          <p class="hint">{w.unknownPanelsHow}</p>
        </>
      )}
      <Stepper
        name={w.posts}
        value={posts}
        least={2}
        less={() => setCounted(posts - 1)}
        more={() => setCounted(posts + 1)}
      />
      <CountSpaces spaces={spaces} seen={spacesSeen} change={setSpacesSeen} />
      <Begin
        source={source}
        seen={{ system, first, second, opposingReaches, units, unknownPanels, ...pieces }}
        setUnits={setUnits}
      />
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
  readonly units: SeenRun['units']
  readonly change: (panels: readonly number[]) => void
}

/** Each panel's length; a touch goes on to the next one that there is. */
function PanelLengths({ panels, system, units, change }: LengthsProps) {
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
              {m.check.panel(i + 1, printIn(units).feetInches(inches))}
            </button>
          </li>
        ))}
      </ol>
    </div>
  )
}

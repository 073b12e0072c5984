import '../style/check.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { isEndSafe } from '../../core/hardware/crashworthy-end.ts'
import type { LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { SeenRun } from '../../operations/counted-run.ts'
import { undescribedSystem } from '../../sheets/undescribed-system.ts'
import type { RunSource } from '../data/run-source.ts'
import { useShelf } from '../data/use-shelf.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { shelfPath } from '../route.ts'
import { CountPieces } from './count-pieces.tsx'
import { type End, PickSystem, PickUnit } from './pick-hardware.tsx'
import { OpposingTraffic, PickScope, type Scope } from './pick-scope.tsx'
import { type AtHand, atHandOn, endsJoining, joinedBy } from './shelf.ts'

/** What was said so far; what is missing is asked next. */
interface Said {
  /** The end that somebody stands at. */
  readonly end?: End
  readonly system?: LongitudinalSheet
  readonly scope?: Scope
  /** The end at the other side. */
  readonly other?: End
  readonly opposingReaches?: boolean | null
}

/** From what stands in front of somebody to its first requirement. */
export function CheckView({ source }: { readonly source: RunSource }) {
  const [steps, setSteps] = useState<readonly Said[]>([{}])
  const said = steps.at(-1)!
  const also = (more: Said): void => setSteps([...steps, { ...said, ...more }])
  const back = (): void => setSteps(steps.slice(0, -1))
  const { own, shelf, again } = useShelf(source)
  const atHand = useMemo(() => atHandOn(shelf), [shelf])
  useEffect(() => {
    document.title = `${m.check.title} | ${m.page.name}`
  }, [])
  return (
    <section class="sheet checking">
      <Next source={source} atHand={atHand} said={said} also={also} back={back} />
      {own.state === 'failed' && <TroubleNote title={m.check.noOwnSheets} trouble={own.trouble} again={again} />}
      {said.end === undefined && (
        <p class="hint">
          {m.check.isMissing} <a href={shelfPath}>{m.check.toShelf}</a>
        </p>
      )}
    </section>
  )
}

interface NextProps {
  readonly source: RunSource
  readonly atHand: AtHand
  readonly said: Said
  readonly also: (more: Said) => void
  readonly back: () => void
}

function Next({ source, atHand, said, also, back }: NextProps) {
  const { end, system, scope, other } = said
  if (end === undefined)
    return (
      <PickUnit
        title={m.check.whichEnd}
        {...{ atHand, sheets: atHand.ends, back: null }}
        pick={(one) => also(withSystem(one, atHand))}
      />
    )
  if (system === undefined) return <PickSystem atHand={atHand} pick={(one) => also(withScope(one))} back={back} />
  if (scope === undefined)
    return (
      <PickScope
        end={end}
        back={back}
        pick={(one) => also({ scope: one, ...(one.isWhole ? {} : { other: 'not looked at' }) })}
      />
    )
  if (other === undefined) {
    const pick = (one: End): void => also({ other: one })
    const sheets = endsJoining(system, atHand.ends)
    return <PickUnit title={m.check.whichSecond} {...{ atHand, sheets, back, pick }} />
  }
  const [first, second] = scope.traffic === 'comes to it' ? [end, other] : [other, end]
  if (said.opposingReaches === undefined && hangsOnTraffic(second))
    return <OpposingTraffic answer={(reaches) => also({ opposingReaches: reaches })} back={back} />
  const { opposingReaches = null } = said
  return <CountPieces {...{ source, atHand, first, second, system, opposingReaches, back }} />
}

/** An end that joins one system says which it is. */
function withSystem(end: End, { systems }: AtHand): Said {
  const [system, ...others] = typeof end === 'object' ? joinedBy(end, systems) : []
  return system === undefined || others.length > 0 ? { end } : { end, system }
}

/** Of a barrier that no sheet describes all is unknown, to wherever its other end is. */
const withScope = (system: LongitudinalSheet): Said =>
  system === undescribedSystem
    ? { system, scope: { isWhole: false, traffic: 'comes to it' }, other: 'not looked at' }
    : { system }

/** Whether it depends on opposing traffic that the end is right where traffic leaves by it. */
const hangsOnTraffic = (second: SeenRun['second']): boolean =>
  typeof second === 'object' && isEndSafe(second, { end: 'departure', opposingReaches: null }) === null

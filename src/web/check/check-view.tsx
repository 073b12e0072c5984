import '../style/check.css'
import { useEffect, useState } from 'preact/hooks'
import { isEndSafe } from '../../core/hardware/crashworthy-end.ts'
import type { LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { SeenRun } from '../../operations/counted-run.ts'
import { undescribedSystem } from '../../sheets/undescribed-system.ts'
import type { RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { CountPieces } from './count-pieces.tsx'
import { type End, PickSystem, PickUnit } from './pick-hardware.tsx'
import { OpposingTraffic, PickScope, type Scope } from './pick-scope.tsx'
import { ends, endsJoining, joinedBy } from './shelf.ts'

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
  useEffect(() => {
    document.title = `${m.check.title} | ${m.page.name}`
  }, [])
  return (
    <section class="sheet checking">
      <Next source={source} said={said} also={also} back={back} />
    </section>
  )
}

interface NextProps {
  readonly source: RunSource
  readonly said: Said
  readonly also: (more: Said) => void
  readonly back: () => void
}

function Next({ source, said, also, back }: NextProps) {
  const { end, system, scope, other } = said
  if (end === undefined)
    return <PickUnit title={m.check.whichEnd} sheets={ends} back={null} pick={(one) => also(withSystem(one))} />
  if (system === undefined) return <PickSystem pick={(one) => also(withScope(one))} back={back} />
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
    return <PickUnit title={m.check.whichSecond} sheets={endsJoining(system)} back={back} pick={pick} />
  }
  const [first, second] = scope.traffic === 'comes to it' ? [end, other] : [other, end]
  if (said.opposingReaches === undefined && hangsOnTraffic(second))
    return <OpposingTraffic answer={(reaches) => also({ opposingReaches: reaches })} back={back} />
  const { opposingReaches = null } = said
  return <CountPieces {...{ source, first, second, system, opposingReaches, back }} />
}

/** An end that joins one system says which it is. */
function withSystem(end: End): Said {
  const [system, ...others] = typeof end === 'object' ? joinedBy(end) : []
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

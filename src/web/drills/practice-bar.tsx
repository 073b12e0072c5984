import '../style/drills.css'
import { useEffect, useState } from 'preact/hooks'
import type { DrillRow } from '../data/drill-row.ts'
import { practiceSource } from '../data/practice-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { debriefPath, drillsPath, goTo } from '../route.ts'
import { words } from './words.ts'

/** On every page of practice: that it is practice, which drill, how long it may go on, and the way to its end. */
export function PracticeBar({ run }: { readonly run: string | null }) {
  const w = words()
  const [drills] = useLoaded(`drill ${run}`, () => practiceSource().drills())
  const row = drills.state === 'loaded' ? drills.value.find((one) => one.run === run) : undefined
  const left = useMinutesLeft(row)
  useEffect(() => {
    if (run !== null && left !== null && left <= 0) goTo(debriefPath(run))
  }, [run, left])
  return (
    <aside class="practice-bar" aria-label={w.bar}>
      <a href={drillsPath}>
        <b>{w.bar}</b>
      </a>
      {row !== undefined && <span>{row.number ?? w.ownRun}</span>}
      {left !== null && <span role="timer">{left > 0 ? w.left(left) : w.over}</span>}
      {row !== undefined && (
        <a class="button" href={debriefPath(row.run)}>
          {row.result === null ? w.end : w.result}
        </a>
      )}
    </aside>
  )
}

/** Whole minutes, begun ones with them; null where there is no limit or it ended. */
function useMinutesLeft(row: DrillRow | undefined): number | null {
  const [now, setNow] = useState(Date.now)
  const isTimed = row !== undefined && row.minutes !== null && row.endedAt === null
  useEffect(() => {
    if (!isTimed) return
    const timer = setInterval(() => setNow(Date.now()), 1000)
    return () => clearInterval(timer)
  }, [isTimed])
  return isTimed ? Math.ceil((Date.parse(row.beganAt) + row.minutes! * 60_000 - now) / 60_000) : null
}

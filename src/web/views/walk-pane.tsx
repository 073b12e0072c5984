import type { ComponentChildren } from 'preact'
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import { currentReadings } from '../../core/verdicts/judge-requirements.ts'
import type { NearMark } from '../../documents/day-report.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import type { KeptRun, RunSource } from '../data/run-source.ts'
import { BegunElsewhere } from '../entry/begun.tsx'
import { ClosedGround } from '../entry/closed-ground.tsx'
import type { Drafts } from '../entry/drafts.ts'
import { entryPart } from '../entry/entry-part.ts'
import { nothingSaved, type Saved } from '../entry/saved.ts'
import { useKeptAwake } from '../fieldwork/keep-awake.ts'
import { preferences } from '../fieldwork/preferences.ts'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { m } from '../messages.ts'
import { LaterPart } from '../parts/later-part.tsx'
import { whenShown } from '../parts/when-shown.ts'
import { type Route, requirementPath } from '../route.ts'
import { NextUnread } from './next-unread.tsx'
import { nextUnread } from './walk-groups.ts'
import { WalkList } from './walk-list.tsx'
import { walkPlace } from './walk-place.ts'

interface Props {
  readonly source: RunSource
  readonly kept: KeptRun
  readonly judged: JudgedRun
  readonly side: SideEntries
  readonly sideAgain: () => Promise<void>
  readonly punch: readonly PunchItem[]
  /** How many findings stand. */
  readonly standing: number
  readonly nearMarks: readonly NearMark[]
  readonly route: Extract<Route, { view: 'run' }>
  readonly drafts: Drafts
  readonly took: (readings: readonly Reading[]) => void
  /** Tells the place of the list that is at the top of the screen. */
  readonly near: (place: string) => void
  /** What stands beside the list while nothing is open. */
  readonly children: ComponentChildren
}

/** How long it is said what was saved, and undoing offered; from the history it can be undone at any time. */
const savedShown = 10_000

/** Every requirement in walking order, and the one that is open. */
export function WalkPane(props: Props) {
  const { source, kept, judged, side, sideAgain, punch, standing, nearMarks, route, drafts, took, near, children } =
    props
  const [saved, setSaved] = useState<Saved>(nothingSaved)
  // The entry keeps it awake itself.
  useKeptAwake(route.open === null && preferences().staysAwake)
  const { requirements, judgement } = judged
  const verdictOf = useMemo(
    () => new Map(judgement.verdicts.map(({ requirement, verdict }) => [requirement, verdict])),
    [judgement],
  )
  const at = requirements.findIndex(({ id }) => id === route.open)
  const unsaved = drafts.failed.filter(({ of }) => of !== (route.reading ?? route.open))
  // Who walks opens one next.
  useEffect(() => {
    void whenShown().then(entryPart.fetch)
  }, [])
  useEffect(() => {
    if (saved === nothingSaved) return
    const timer = setTimeout(() => setSaved(nothingSaved), savedShown)
    return () => clearTimeout(timer)
  }, [saved])

  const next = useMemo(() => {
    const answered = [...currentReadings(judged.readings).values()].filter(
      // What was undone says so too, as a correction, and is to be read again.
      ({ answer, corrects }) => answer.kind === 'cannot see' && corrects === null,
    )
    const after = route.open ?? walkPlace(route.run).last
    const nextOf = (some: typeof requirements) =>
      nextUnread(some, verdictOf, new Set(answered.map(({ of }) => of)), after)
    // Of standing work nobody can see what was covered: it comes last.
    const seen = judged.run.work === 'standing' ? nextOf(requirements.filter(({ hold }) => !hold)) : null
    return seen ?? nextOf(requirements)
  }, [judged.readings, judged.run.work, requirements, verdictOf, route.run, route.open])
  const list = useMemo(
    () => (
      <WalkList
        requirements={requirements}
        units={judged.run.units}
        verdictOf={verdictOf}
        run={route.run}
        open={route.open}
        next={next?.id ?? null}
        near={near}
      />
    ),
    [requirements, judged.run.units, verdictOf, route.run, route.open, next, near, m],
  )
  const openPlace = requirements[at]?.place
  const open = route.reading ?? route.open
  const told = unsaved.map(({ of, requirement }) => (
    <p key={of} class="trouble" role="alert">
      {m.entry.notSaved} <a href={requirementPath(route.run, requirement, of === requirement ? null : of)}>{of}</a>
    </p>
  ))
  return (
    <section class="sheet walk" aria-label={m.walk.title}>
      {route.open === null && (
        <div class="walk-notes">
          <p class="saved" role="status">
            {saved.words}
          </p>
          {told}
          <BegunElsewhere begun={drafts.begun} judged={judged} run={route.run} drop={drafts.drop} />
          <ClosedGround
            source={source}
            kept={kept}
            judged={judged}
            took={(readings, words) => {
              took(readings)
              // There is nothing to undo: before it, nobody had looked either. Each is corrected where it can be seen.
              setSaved({ words: m.entry.saved(words), since: performance.now(), undoable: null })
            }}
          />
        </div>
      )}
      <div class="walk-left">
        {list}
        {route.open === null && <NextUnread run={route.run} units={judged.run.units} next={next} standing={standing} />}
      </div>
      <div class="walk-entry">
        {route.open !== null && told}
        {open === null ? (
          <>
            <p class="pick">{m.walk.pick}</p>
            {children}
          </>
        ) : at === -1 ? (
          <p class="pick">{m.entry.noSuch}</p>
        ) : (
          <LaterPart part={entryPart} title={m.trouble.site}>
            {({ EntryPanel }) => (
              <EntryPanel
                key={open}
                source={source}
                kept={kept}
                judged={judged}
                side={side}
                sideAgain={sideAgain}
                punch={punch}
                nearMarks={nearMarks.filter(({ post }) => openPlace?.kind === 'post' && post === openPlace.number)}
                at={at}
                of={open}
                drafts={drafts}
                saved={saved}
                took={(saved, reading) => {
                  took([reading])
                  setSaved(saved)
                }}
                touched={() => setSaved(nothingSaved)}
              />
            )}
          </LaterPart>
        )}
        {route.open !== null && (
          <BegunElsewhere
            begun={drafts.begun.filter(({ of }) => of !== (route.reading ?? route.open))}
            judged={judged}
            run={route.run}
            drop={drafts.drop}
          />
        )}
      </div>
    </section>
  )
}

import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import { seenVersion } from '../../core/record/version.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import type { NearMark } from '../../documents/day-report.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { nextId, now, rememberedVisit } from '../data/device.ts'
import type { KeptRun, RunSource } from '../data/run-source.ts'
import { BegunElsewhere } from '../entry/begun.tsx'
import { ClosedGround } from '../entry/closed-ground.tsx'
import type { Drafts } from '../entry/drafts.ts'
import { EntryPanel } from '../entry/entry-panel.tsx'
import { placeWords } from '../entry/reading-words.ts'
import { undoing } from '../entry/undo.ts'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { m, say } from '../messages.ts'
import { useFrameByFrame } from '../parts/use-after-frame.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { type Route, requirementPath } from '../route.ts'

interface Props {
  readonly source: RunSource
  readonly kept: KeptRun
  readonly judged: JudgedRun
  readonly side: SideEntries
  readonly sideAgain: () => Promise<void>
  readonly punch: readonly PunchItem[]
  readonly nearMarks: readonly NearMark[]
  readonly route: Extract<Route, { view: 'run' }>
  readonly drafts: Drafts
  readonly took: (readings: readonly Reading[]) => void
  /** Tells the place of the list that is at the top of the screen. */
  readonly near: (place: string) => void
}

/** How long undoing is offered beside what was saved; from the history it can be undone at any time. */
const undoOffer = 10_000

interface Saved {
  readonly words: string
  /** Null once undoing is no longer offered. */
  readonly undoable: readonly Reading[] | null
}

const nothingSaved: Saved = { words: '', undoable: null }

/** Every requirement in walking order, and the one that is open. */
export function WalkPane(props: Props) {
  const { source, kept, judged, side, sideAgain, punch, nearMarks, route, drafts, took, near } = props
  const [saved, setSaved] = useState<Saved>(nothingSaved)
  const { requirements, judgement } = judged
  const wordOf = useMemo(
    () => new Map(judgement.verdicts.map(({ requirement, verdict }) => [requirement, verdict])),
    [judgement],
  )
  const at = requirements.findIndex(({ id }) => id === route.open)
  const unsaved = drafts.failed.filter(({ of }) => of !== (route.reading ?? route.open))
  useEffect(() => {
    if (saved.undoable === null) return
    const timer = setTimeout(() => setSaved((before) => ({ ...before, undoable: null })), undoOffer)
    return () => clearTimeout(timer)
  }, [saved.undoable])

  const undo = async (undone: readonly Reading[]): Promise<void> => {
    const by = rememberedVisit().by.trim()
    const seen = kept.readings.map(({ id }) => id)
    const corrections = undone.map((reading) => ({
      ...undoing(reading, judged.readings, nextId(kept.id, seen), now(), by === '' ? reading.by : by),
      ...seenVersion(kept.run.version),
    }))
    const answered = await source.append(kept.id, corrections)
    const taken = answered.ok ? corrections.filter((_, i) => answered.value[i]?.outcome !== 'rejected') : []
    took(taken)
    setSaved({ words: taken.length === undone.length ? m.entry.undone : m.entry.notUndone, undoable: null })
  }
  const list = useMemo(
    () => (
      <RequirementList
        requirements={requirements}
        units={judged.run.units}
        wordOf={wordOf}
        run={route.run}
        open={route.open}
        near={near}
      />
    ),
    [requirements, judged.run.units, wordOf, route.run, route.open, near, m],
  )
  const openPlace = requirements[at]?.place
  return (
    <section class="sheet walk" aria-label={m.walk.title}>
      {list}
      <div class="walk-entry">
        <div class={saved.undoable === null ? 'saved-bar' : 'saved-bar offering'}>
          <p class="saved" role="status">
            {saved.words}
          </p>
          {saved.undoable !== null && (
            <button type="button" class="button" onClick={() => void undo(saved.undoable ?? [])}>
              {m.entry.undo}
            </button>
          )}
        </div>
        {unsaved.map(({ of, requirement }) => (
          <p key={of} class="trouble" role="alert">
            {m.entry.notSaved}{' '}
            <a href={requirementPath(route.run, requirement, of === requirement ? null : of)}>{of}</a>
          </p>
        ))}
        <BegunElsewhere
          begun={drafts.begun.filter(({ of }) => of !== (route.reading ?? route.open))}
          judged={judged}
          run={route.run}
          drop={drafts.drop}
        />
        {route.open === null && (
          <ClosedGround
            source={source}
            kept={kept}
            judged={judged}
            took={(readings, words) => {
              took(readings)
              // There is nothing to undo: before it, nobody had looked either. Each is corrected where it can be seen.
              setSaved({ words: m.entry.saved(words), undoable: null })
            }}
          />
        )}
        {route.open === null ? (
          <p class="pick">{m.walk.pick}</p>
        ) : at === -1 ? (
          <p class="pick">{m.entry.noSuch}</p>
        ) : (
          <EntryPanel
            key={route.reading ?? route.open}
            source={source}
            kept={kept}
            judged={judged}
            side={side}
            sideAgain={sideAgain}
            punch={punch}
            nearMarks={nearMarks.filter(({ post }) => openPlace?.kind === 'post' && post === openPlace.number)}
            at={at}
            of={route.reading ?? route.open}
            drafts={drafts}
            took={(readings, words) => {
              took(readings)
              setSaved({ words: m.entry.saved(words), undoable: readings })
            }}
            undo={(readings) => void undo(readings)}
            touched={() => setSaved((before) => (before.words === '' ? before : { ...before, words: '' }))}
          />
        )}
      </div>
    </section>
  )
}

interface ListProps {
  readonly requirements: readonly Requirement[]
  readonly units: 'us' | 'metric'
  readonly wordOf: ReadonlyMap<string, VerdictWord>
  readonly run: string
  readonly open: string | null
  readonly near: (place: string) => void
}

/** Places of the list that are drawn in one frame: about what a phone shows. */
const drawnAtOnce = 6

function RequirementList({ requirements, units, wordOf, run, open, near }: ListProps) {
  const list = useRef<HTMLElement>(null)
  const groups = useMemo(() => groupByPlace(requirements), [requirements])
  const drawn = useFrameByFrame(groups.length, drawnAtOnce)
  const isOpen = open !== null
  useEffect(() => {
    const box = list.current
    const current = box?.querySelector('[aria-current]')
    if (box === null || current === null || current === undefined) return
    const [outer, inner] = [box.getBoundingClientRect(), current.getBoundingClientRect()]
    if (inner.top < outer.top || inner.bottom > outer.bottom) box.scrollTop += inner.top - outer.top - outer.height / 3
  }, [open, drawn])
  useEffect(() => {
    const box = list.current
    // What is open is where the walk is; watching the list would cost each key a look at every group.
    if (box === null || isOpen) return
    // A band below the strip: the group that enters it is where the walk is.
    const watcher = new IntersectionObserver(
      (entries) => {
        const place = entries.find(({ isIntersecting }) => isIntersecting)?.target.getAttribute('data-at')
        if (place !== null && place !== undefined) near(place)
      },
      { rootMargin: '-30% 0px -60% 0px' },
    )
    for (const group of box.querySelectorAll('[data-at]')) watcher.observe(group)
    return () => watcher.disconnect()
  }, [groups, near, drawn, isOpen])
  return (
    <nav ref={list} class="walk-list" aria-label={m.walk.requirements} aria-busy={drawn < groups.length}>
      {groups.slice(0, drawn).map((group) => (
        <PlaceGroup
          key={group.title + String(group.hold)}
          group={group}
          words={group.members.map(({ id }) => wordOf.get(id)).join()}
          units={units}
          run={run}
          open={group.members.some(({ id }) => id === open) ? open : null}
        />
      ))}
    </nav>
  )
}

interface GroupProps {
  readonly group: Group
  /** Words of the verdicts, in the order of the members. */
  readonly words: string
  readonly units: ListProps['units']
  readonly run: string
  readonly open: string | null
}

/** Drawn anew only when something in it is another: of a long run a reading changes one of a hundred. */
const PlaceGroup = ({ group, words, units, run, open }: GroupProps) =>
  useMemo(() => {
    const { title, hold, members } = group
    const each = words.split(',') as VerdictWord[]
    return (
      <section class={hold ? 'group hold' : 'group'} data-at={hold ? undefined : members[0]!.id.split('/')[0]}>
        <h2>{title}</h2>
        <ul class="plain">
          {members.map(({ id, must, place }, i) => (
            <li key={id}>
              <a class="row-link" href={requirementPath(run, id)} aria-current={id === open ? 'true' : undefined}>
                <VerdictMark word={each[i]!} />
                <span class="must">{hold ? `${placeWords(place)}: ${say(must, units)}` : say(must, units)}</span>
              </a>
            </li>
          ))}
        </ul>
      </section>
    )
  }, [group, words, units, run, open, m])

interface Group {
  readonly title: string
  readonly hold: boolean
  readonly members: Requirement[]
}

/** Hold points in one group, then one group for each stretch of requirements at the same place. */
function groupByPlace(requirements: readonly Requirement[]): readonly Group[] {
  const groups: Group[] = []
  for (const requirement of requirements) {
    const title = requirement.hold ? m.walk.holds : placeWords(requirement.place)
    const last = groups.at(-1)
    if (last?.title === title) last.members.push(requirement)
    else groups.push({ title, hold: requirement.hold, members: [requirement] })
  }
  return groups
}

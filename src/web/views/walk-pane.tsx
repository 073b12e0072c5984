import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { KeptRun, RunSource } from '../data/run-source.ts'
import type { Drafts } from '../entry/drafts.ts'
import { EntryPanel } from '../entry/entry-panel.tsx'
import { m } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { type Route, requirementPath } from '../route.ts'

interface Props {
  readonly source: RunSource
  readonly kept: KeptRun
  readonly judged: JudgedRun
  readonly route: Extract<Route, { view: 'run' }>
  readonly drafts: Drafts
  readonly took: (reading: Reading) => void
}

/** Every requirement in walking order, and the one that is open. */
export function WalkPane({ source, kept, judged, route, drafts, took }: Props) {
  const [saved, setSaved] = useState('')
  const { requirements, judgement } = judged
  const wordOf = useMemo(
    () => new Map(judgement.verdicts.map(({ requirement, verdict }) => [requirement, verdict])),
    [judgement],
  )
  const at = requirements.findIndex(({ id }) => id === route.open)
  const unsaved = drafts.failed.filter(({ of }) => of !== (route.reading ?? route.open))
  return (
    <section class="sheet walk" aria-label={m.walk.title}>
      <RequirementList requirements={requirements} wordOf={wordOf} run={route.run} open={route.open} />
      <div class="walk-entry">
        <p class="saved" role="status">
          {saved}
        </p>
        {unsaved.map(({ of, requirement }) => (
          <p key={of} class="trouble" role="alert">
            {m.entry.notSaved}{' '}
            <a href={requirementPath(route.run, requirement, of === requirement ? null : of)}>{of}</a>
          </p>
        ))}
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
            at={at}
            of={route.reading ?? route.open}
            drafts={drafts}
            took={(reading, words) => {
              took(reading)
              setSaved(m.entry.saved(words))
            }}
            touched={() => setSaved('')}
          />
        )}
      </div>
    </section>
  )
}

interface ListProps {
  readonly requirements: readonly Requirement[]
  readonly wordOf: ReadonlyMap<string, VerdictWord>
  readonly run: string
  readonly open: string | null
}

function RequirementList({ requirements, wordOf, run, open }: ListProps) {
  const list = useRef<HTMLElement>(null)
  const groups = useMemo(() => groupByPlace(requirements), [requirements])
  useEffect(() => {
    const box = list.current
    const current = box?.querySelector('[aria-current]')
    if (box === null || current === null || current === undefined) return
    const [outer, inner] = [box.getBoundingClientRect(), current.getBoundingClientRect()]
    if (inner.top < outer.top || inner.bottom > outer.bottom) box.scrollTop += inner.top - outer.top - outer.height / 3
  }, [open])
  return (
    <nav ref={list} class="walk-list" aria-label={m.walk.requirements}>
      {groups.map(({ title, hold, members }) => (
        <section key={title + String(hold)} class={hold ? 'group hold' : 'group'}>
          <h2>{title}</h2>
          <ul class="plain">
            {members.map(({ id, must, place }) => (
              <li key={id}>
                <a class="row-link" href={requirementPath(run, id)} aria-current={id === open ? 'true' : undefined}>
                  <VerdictMark word={wordOf.get(id)!} />
                  <span class="must">{hold ? `${place.name}: ${must}` : must}</span>
                </a>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </nav>
  )
}

interface Group {
  readonly title: string
  readonly hold: boolean
  readonly members: Requirement[]
}

/** Hold points in one group, then one group for each stretch of requirements at the same place. */
function groupByPlace(requirements: readonly Requirement[]): readonly Group[] {
  const groups: Group[] = []
  for (const requirement of requirements) {
    const title = requirement.hold ? m.walk.holds : requirement.place.name
    const last = groups.at(-1)
    if (last?.title === title) last.members.push(requirement)
    else groups.push({ title, hold: requirement.hold, members: [requirement] })
  }
  return groups
}

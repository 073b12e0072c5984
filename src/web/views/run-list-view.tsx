import { useEffect, useMemo, useState } from 'preact/hooks'
import type { SummarisedRun } from '../../operations/summarise-run.ts'
import type { RunSource } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { runsPath } from '../route.ts'
import { AddRun } from './add-run.tsx'
import { chooseRuns, firstOf, type ListWish, printWish, readWish } from './choose-runs.ts'
import { ListWishFields } from './list-wish-fields.tsx'
import { projectName } from './project-name.ts'
import { RunRow } from './run-row.tsx'

/** Runs that are drawn at first, and more each time that somebody asks for them: a few screens. */
const rowsAtOnce = 40

export function RunListView({ source }: { readonly source: RunSource }) {
  const [loaded, again] = useLoaded('runs', source.runs)
  useEffect(
    () =>
      source.onChange(({ runs, isOwn }) => {
        if (!isOwn && runs.length > 0) again()
      }),
    [source, again],
  )
  useEffect(() => {
    document.title = `${m.runs.title} | ${m.page.name}`
  }, [])
  return (
    <section class="sheet">
      <h1>{m.runs.title}</h1>
      {loaded.state === 'loading' && (
        <p role="status" class="loading">
          {m.page.loading}
        </p>
      )}
      {loaded.state === 'failed' && <TroubleNote title={m.trouble.runs} trouble={loaded.trouble} again={again} />}
      {loaded.state === 'loaded' &&
        (loaded.value.length === 0 ? (
          <p>{m.runs.none}</p>
        ) : (
          <RunList source={source} runs={loaded.value} again={again} />
        ))}
      <AddRun source={source} />
    </section>
  )
}

interface Props {
  readonly source: RunSource
  readonly runs: readonly SummarisedRun[]
  readonly again: () => void
}

function RunList({ source, runs, again }: Props) {
  const [wish, setWish] = useState(() => readWish(location.search))
  const [most, setMost] = useState(rowsAtOnce)
  const groups = useMemo(() => chooseRuns(runs, wish), [runs, wish])
  const projects = useMemo(() => [...new Set(runs.map(({ project }) => project))].sort(), [runs])
  const found = groups.reduce((sum, group) => sum + group.runs.length, 0)
  const change = (changes: Partial<ListWish>): void => {
    const next = { ...wish, ...changes }
    // Who comes back from a run finds the list as it was left.
    history.replaceState(history.state, '', `${runsPath}${printWish(next)}`)
    setMost(rowsAtOnce)
    setWish(next)
  }
  return (
    <>
      <ListWishFields wish={wish} projects={projects} change={change} />
      <p role="status" class="hint">
        {m.runs.found(found, runs.length)}
      </p>
      {found === 0 && <p>{wish.archived ? m.runs.noneArchived : m.runs.noneFound}</p>}
      {firstOf(groups, most).map(({ project, runs }) => (
        <section key={project} class="run-group" aria-label={projectName(project)}>
          {projects.length > 1 && <h2>{projectName(project)}</h2>}
          <ul class="plain runs">
            {runs.map((run) => (
              <RunRow key={run.id} source={source} run={run} again={again} />
            ))}
          </ul>
        </section>
      ))}
      {found > most && (
        <button type="button" class="button" onClick={() => setMost(most + rowsAtOnce)}>
          {m.runs.more(Math.min(rowsAtOnce, found - most), found - most)}
        </button>
      )}
    </>
  )
}

import { useEffect, useState } from 'preact/hooks'
import type { RunList } from '../data/choose-runs.ts'
import { type ListWish, printWish, readWish } from '../data/list-wish.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { hasServer } from '../has-server.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { addressHere, bringOverPath, runsPath } from '../route.ts'
import { AddRun } from './add-run.tsx'
import { ListWishFields } from './list-wish-fields.tsx'
import { projectName } from './project-name.ts'
import { RunRow } from './run-row.tsx'

/** Runs that are drawn at first, and more each time that somebody asks for them: a few screens. */
const rowsAtOnce = 40

export function RunListView({ source }: { readonly source: RunSource }) {
  const [wish, setWish] = useState(() => readWish(addressHere().search))
  const [most, setMost] = useState(rowsAtOnce)
  const [loaded, again] = useLoaded('runs', () => source.runs(wish, most))
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
  const change = (changes: Partial<ListWish>): void => {
    const next = { ...wish, ...changes }
    // Who comes back from a run finds the list as it was left.
    history.replaceState(history.state, '', `${runsPath}${printWish(next)}`)
    setMost(rowsAtOnce)
    setWish(next)
    again()
  }
  const showMore = (): void => {
    setMost(most + rowsAtOnce)
    again()
  }
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
        (loaded.value.all === 0 ? (
          <>
            <p>{m.runs.none}</p>
            {hasServer ? (
              <p>
                <a href={bringOverPath}>{m.stores.bring}</a>
              </p>
            ) : (
              <AddDemo source={source} again={again} />
            )}
          </>
        ) : (
          <>
            <ListWishFields wish={wish} projects={loaded.value.projects} change={change} />
            <Found source={source} list={loaded.value} wish={wish} again={again} />
            <More list={loaded.value} show={showMore} />
          </>
        ))}
      <AddRun source={source} />
    </section>
  )
}

/** A server comes with the demo run; a copy without one makes it when somebody wants to look around. */
function AddDemo({ source, again }: { readonly source: RunSource; readonly again: () => void }) {
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const add = async (): Promise<void> => {
    const added = await source.addDemo()
    if (added.ok) again()
    else setTrouble(added.error)
  }
  return (
    <>
      <p>
        <button type="button" class="button" onClick={() => void add()}>
          {m.runs.lookAround}
        </button>
      </p>
      {trouble !== null && <TroubleNote title={m.runs.notAdded(m.runs.lookAround)} trouble={trouble} />}
    </>
  )
}

interface FoundProps {
  readonly source: RunSource
  readonly list: RunList
  readonly wish: ListWish
  readonly again: () => void
}

function Found({ source, list: { groups, found, all, projects }, wish, again }: FoundProps) {
  return (
    <>
      <p role="status" class="hint">
        {m.runs.found(found, all)}
      </p>
      {found === 0 && <p>{wish.archived ? m.runs.noneArchived : m.runs.noneFound}</p>}
      {groups.map(({ project, runs }) => (
        <section key={project} class="run-group" aria-label={projectName(project)}>
          {projects.length > 1 && <h2>{projectName(project)}</h2>}
          <ul class="plain runs">
            {runs.map((run) => (
              <RunRow key={run.id} source={source} run={run} again={again} />
            ))}
          </ul>
        </section>
      ))}
    </>
  )
}

function More({ list: { groups, found }, show }: { readonly list: RunList; readonly show: () => void }) {
  const left = found - groups.reduce((sum, { runs }) => sum + runs.length, 0)
  if (left === 0) return null
  return (
    <button type="button" class="button" onClick={show}>
      {m.runs.more(Math.min(rowsAtOnce, left), left)}
    </button>
  )
}

import { useEffect, useMemo, useState } from 'preact/hooks'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { sheetDifferences } from '../../operations/sheet-differences.ts'
import { nextId, now, recall, remember } from '../data/device.ts'
import type { KeptRun, RunSource } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { useShelf } from '../data/use-shelf.ts'
import { momentWords } from '../entry/reading-words.ts'
import type { Draft } from '../form/draft.ts'
import { language } from '../language.ts'
import { asWritten, m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { VersionReasons } from '../parts/version-reasons.tsx'
import { panePath, type Route } from '../route.ts'
import { anewDraft } from './anew-draft.ts'
import { draftOfRun } from './run-draft.ts'
import { RunForm } from './run-form.tsx'
import { SaveVersion } from './save-version.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly route: Extract<Route, { view: 'edit' }>
}

/** What is asked of a run, to be changed; what is saved is its next version. */
export function EditView({ source, route }: Props) {
  const [loaded, again] = useLoaded(route.run, () => source.run(route.run))
  if (loaded.state === 'loading')
    return (
      <p role="status" class="loading">
        {m.page.loading}
      </p>
    )
  if (loaded.state === 'failed') return <TroubleNote title={m.trouble.run} trouble={loaded.trouble} again={again} />
  const { kept, drawn } = loaded.value
  if (!drawn.ok || kept.run.version === undefined)
    return (
      <TroubleNote title={words().edit.unpinned} trouble={{ message: '', problems: drawn.ok ? [] : drawn.error }} />
    )
  return <Edit source={source} route={route} kept={kept} judged={drawn.value.judged} />
}

interface EditProps extends Props {
  readonly kept: KeptRun
  readonly judged: JudgedRun
}

/** An edit that was begun on this device and not saved. */
interface Begun {
  readonly version: string
  readonly at: string
  readonly draft: Draft
}

const keyOf = (run: string): string => `edit/${run}`

function Edit({ source, route, kept, judged }: EditProps) {
  const { edit } = words()
  const first = useMemo(() => draftOfRun(kept.run), [kept])
  const anew = useMemo(
    () => (route.from === null ? null : anewDraft(first, judged.model.layout, route.from, route.isBlocked)),
    [first, judged, route],
  )
  const [draft, setDraft] = useState(anew?.draft ?? first)
  const [begun, setBegun] = useState(() => {
    const one = recall(keyOf(route.run)) as Begun | null
    return one?.version === kept.version ? one : null
  })
  const [because, setBecause] = useState('')
  /** The same version keeps its id, so that trying again cannot make a second one. */
  const [id] = useState(() => nextId(kept.id, [...kept.versions.keys()]))
  const { own, shelf, again } = useShelf(source)
  const edited = useMemo(() => {
    const others = new Set(sheetDifferences(kept.run, shelf).map(({ sheet }) => sheet))
    const otherOnShelf = kept.run.sheets.filter(({ id }) => others.has(id))
    return { layout: judged.model.layout, otherOnShelf, required: judged }
  }, [kept, judged, shelf])
  useEffect(() => {
    document.title = `${asWritten(kept.run.name)}: ${edit.title} | ${m.page.name}`
  }, [kept, language()])
  const change = (next: (draft: Draft) => Draft): void => {
    setBegun(null)
    setDraft((before) => {
      const after = next(before)
      remember(keyOf(route.run), { version: kept.version, at: now(), draft: after } satisfies Begun)
      return after
    })
  }
  const drop = (): void => {
    remember(keyOf(route.run), null)
    setBegun(null)
  }
  const { earlier } = kept.run.version!
  return (
    <>
      <header class="sheet run-form-head">
        <a class="back" href={panePath(route.run, 'layout')}>
          {edit.back}
        </a>
        <h1>{asWritten(kept.run.name)}</h1>
        <p class="hint">{edit.how}</p>
        {earlier.length > 0 && <p class="hint">{edit.version(earlier.length + 1)}</p>}
        <VersionReasons earlier={earlier} />
        {kept.run.counted !== undefined && <p>{edit.counted}</p>}
        {anew !== null && <p role="status">{anew.said}</p>}
        {begun !== null && (
          <p class="form-swept" role="status">
            {edit.begun(momentWords(begun.at))}
            <button
              type="button"
              class="button small"
              onClick={() => {
                setDraft(begun.draft)
                setBegun(null)
              }}
            >
              {edit.goOn}
            </button>
            <button type="button" class="button small" onClick={drop}>
              {edit.discard}
            </button>
          </p>
        )}
        {own.state === 'failed' && <TroubleNote title={m.check.noOwnSheets} trouble={own.trouble} again={again} />}
      </header>
      <RunForm source={source} title={edit.form} {...{ shelf, draft, change, edited }} waitsFor={null}>
        {(offered, chosen, isCurrent) => (
          <SaveVersion
            source={source}
            kept={kept}
            judged={judged}
            isChanged={draft !== first}
            offered={offered}
            {...{ chosen, isCurrent, id, because }}
            giveReason={setBecause}
            saved={drop}
          />
        )}
      </RunForm>
    </>
  )
}

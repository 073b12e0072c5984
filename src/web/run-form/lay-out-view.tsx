import { useEffect, useRef, useState } from 'preact/hooks'
import { runToValue } from '../../formats/run/write-run.ts'
import { pinnedTo } from '../../operations/pin-run.ts'
import { requiredFor } from '../../operations/require-by.ts'
import { newId, recall, remember, rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { useShelf } from '../data/use-shelf.ts'
import { type Draft, textOf, valueAt } from '../form/draft.ts'
import { type Swept, SweptNote } from '../form/swept.tsx'
import { language } from '../language.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath, runsPath } from '../route.ts'
import type { Offered } from './layouts-beside.tsx'
import { decidedRun, emptyDraft } from './run-draft.ts'
import { RunForm } from './run-form.tsx'
import { words } from './words.ts'

const key = 'laying-out'

/** A run from nothing: its hardware, what it shields, and a layout chosen by its picture. */
export function LayOutView({ source }: { readonly source: RunSource }) {
  const [isBegun] = useState(() => begunDraft() !== null)
  const [draft, setDraft] = useState(() => begunDraft() ?? freshDraft())
  const [swept, setSwept] = useState<Swept | null>(null)
  const { own, shelf, again } = useShelf(source)
  const { layOut } = words()
  const first = useRef(draft)
  useEffect(() => {
    if (draft !== first.current) remember(key, draft)
  }, [draft])
  useEffect(() => {
    document.title = `${layOut.title} | ${m.page.name}`
  }, [language()])
  const hasNeed = (valueAt(draft, 'need') ?? null) !== null
  const isNeedOpen = hasNeed && textOf(valueAt(draft, 'need.to')) === ''
  return (
    <>
      <header class="sheet run-form-head">
        <a class="back" href={runsPath}>
          {m.run.back}
        </a>
        <h1>{layOut.title}</h1>
        <p class="hint">{layOut.how}</p>
        {swept === null && isBegun && (
          <p>
            {layOut.begun}{' '}
            <button
              type="button"
              class="button small"
              onClick={() => {
                setSwept({ said: layOut.fresh, before: draft })
                setDraft(freshDraft())
              }}
            >
              {layOut.again}
            </button>
          </p>
        )}
        <SweptNote
          swept={swept}
          back={(before) => {
            setDraft(before)
            setSwept(null)
          }}
        />
        {own.state === 'failed' && <TroubleNote title={m.check.noOwnSheets} trouble={own.trouble} again={again} />}
      </header>
      <RunForm
        source={source}
        title={layOut.form}
        shelf={shelf}
        draft={draft}
        change={setDraft}
        edited={null}
        waitsFor={isNeedOpen ? layOut.needed : null}
      >
        {(offered, chosen, isCurrent) => (
          <Make source={source} offered={offered} chosen={chosen} isCurrent={isCurrent} />
        )}
      </RunForm>
    </>
  )
}

function begunDraft(): Draft | null {
  const kept = recall(key) as Draft | null
  return kept?.format === 'lapwise-run/1' ? kept : null
}

const freshDraft = (): Draft => emptyDraft(words().layOut.name(new Date().toISOString().slice(0, 10)), 'us')

interface MakeProps {
  readonly source: RunSource
  readonly offered: Offered
  readonly chosen: number
  readonly isCurrent: boolean
}

function Make({ source, offered: { run, request, layouts }, chosen, isCurrent }: MakeProps) {
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const [isMaking, setMaking] = useState(false)
  /** The same run keeps its id, so that trying again cannot make a second one. */
  const made = useRef({ id: newId(), text: '' })
  const make = async (): Promise<void> => {
    if (isMaking || !isCurrent) return
    const layout = layouts[chosen]!
    const required = requiredFor(decidedRun(run, layout, chosen === 0), { request, layout })
    const pinned = runToValue(pinnedTo(required, { id: '-', earlier: [] }))
    const text = JSON.stringify(pinned)
    if (made.current.text !== text) made.current = { id: newId(), text }
    setMaking(true)
    const { id } = made.current
    const answer = await source.addRun(id, run.name, pinned, rememberedVisit().by || m.runs.authorNotSaid)
    setMaking(false)
    if (!answer.ok) return setTrouble(answer.error)
    remember(key, null)
    goTo(panePath(id, 'layout'))
  }
  return (
    <section class="sheet run-form-save">
      {trouble !== null && <TroubleNote title={words().layOut.notMade} trouble={trouble} />}
      <button type="button" class="button main" aria-disabled={isMaking || !isCurrent} onClick={() => void make()}>
        {words().layOut.make}
      </button>
    </section>
  )
}

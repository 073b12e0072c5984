import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { limitsText } from '../../core/hardware/dimension-text.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { instrumentsOf, type JudgedRun } from '../../operations/judge-readings.ts'
import { newId, now, rememberedVisit, rememberVisit, type Visit } from '../data/device.ts'
import type { KeptRun, RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath, requirementPath } from '../route.ts'
import { AnswerFields } from './answer-fields.tsx'
import { ComputedFrom, readingsFor } from './computed-from.tsx'
import { type Draft, type DraftProblem, draftAnswer, emptyDraft } from './draft.ts'
import type { Drafts } from './drafts.ts'
import { History } from './history.tsx'
import { LiveVerdict } from './live-verdict.tsx'
import { answerWords, measurableWords } from './reading-words.ts'
import { RequirementFacts } from './requirement-facts.tsx'
import { VisitFields } from './visit-fields.tsx'

interface Props {
  readonly source: RunSource
  readonly kept: KeptRun
  readonly judged: JudgedRun
  /** Place of the requirement in walking order. */
  readonly at: number
  /** What is read: the requirement itself, or a value it is computed from. */
  readonly of: string
  readonly drafts: Drafts
  readonly took: (reading: Reading, words: string) => void
  readonly touched: () => void
}

/** One requirement: what must be true, the reading that is being entered, and its verdict as it is typed. */
export function EntryPanel({ source, kept, judged, at, of, drafts, took, touched }: Props) {
  const requirement = judged.requirements[at]!
  const { units } = judged.run
  const kind = of === requirement.id ? requirement.look.kind : 'measure'
  const [draft, setDraft] = useState<Draft>(() => drafts.get(of) ?? emptyDraft)
  const instruments = useMemo(() => instrumentsOf(judged.run), [judged.run])
  const [visit, setVisit] = useState<Visit>(() => {
    const remembered = rememberedVisit()
    const isKnown = instruments.some(({ id }) => id === remembered.instrument)
    return isKnown ? remembered : { ...remembered, instrument: instruments[0]!.id }
  })
  const [complaint, setComplaint] = useState<string | null>(null)
  const [isSaving, setSaving] = useState(false)
  const panel = useRef<HTMLFormElement>(null)
  const latest = useRef(draft)
  latest.current = draft
  useFocusOnArrival(panel, draft.mode)

  const answer = draftAnswer(draft, kind, units === 'us' ? 'in' : 'mm')
  const failure = drafts.failed.find((one) => one.of === of)
  const steps = useMemo(() => neighbours(judged, kept.id, at, of), [judged, kept.id, at, of])

  const reading: Reading | null = answer.ok
    ? {
        id: 'not yet saved',
        of,
        answer: answer.value,
        instrument: answer.value.kind === 'length' ? visit.instrument : null,
        uncertainty: null,
        by: visit.by.trim(),
        at: '',
        where: visit.where.trim() === '' ? null : visit.where.trim(),
        photos: [],
        corrects: draft.corrects,
        rechecks:
          judged.judgement.findings.find(({ requirements }) => requirements.includes(requirement.id))?.id ?? null,
      }
    : null

  const change = (changes: Partial<Draft>): void => {
    const next = { ...draft, ...changes }
    setDraft(next)
    drafts.set(of, next)
    drafts.settle(of, 'failure')
    setComplaint(null)
    touched()
  }

  const save = async (next: string | null): Promise<void> => {
    if (isSaving) return
    const missing = reading === null ? (answer.ok ? null : answer.error) : null
    if (reading === null || reading.by === '') {
      setComplaint(missing === null ? m.entry.byMissing : complaintWords(missing))
      if (missing === null) panel.current?.querySelector<HTMLElement>('[data-by]')?.focus()
      else panel.current?.querySelector<HTMLElement>('[data-first]')?.focus()
      return
    }
    const sent = drafts.toSend(reading, newId, now)
    setSaving(true)
    setComplaint(null)
    const answered = await source.append(kept, [sent])
    setSaving(false)
    const taken = answered.ok ? answered.value[0] : undefined
    if (taken === undefined || taken.outcome === 'rejected') {
      const trouble = !answered.ok
        ? answered.error
        : { message: m.entry.rejected(taken?.reason ?? ''), problems: taken?.problems ?? [] }
      drafts.fail({ of, requirement: requirement.id, trouble })
      return
    }
    // What was typed while the answer was awaited stays.
    const isDone = latest.current === draft
    drafts.settle(of, isDone ? 'all' : 'failure')
    if (isDone) setDraft(emptyDraft)
    const place = of === requirement.id ? requirement.place.name : measurableWords(of)
    took(sent, `${place}, ${answerWords(sent.answer, requirement)}`)
    if (next !== null && isDone && panel.current !== null) goTo(next)
  }

  const canAnswer = kind !== 'record'
  const limits = requirement.look.kind === 'measure' ? limitsText(requirement.look.limits) : null
  return (
    <form
      ref={panel}
      class="entry"
      aria-labelledby="must"
      onSubmit={(event) => {
        event.preventDefault()
        void save(steps.next)
      }}
    >
      <div class="entry-steps">
        <a class="button small close" href={panePath(kept.id, 'walk')}>
          {m.entry.close}
        </a>
        <span class="step-count">{m.entry.place(at + 1, judged.requirements.length)}</span>
        <nav aria-label={m.walk.nearby}>
          <StepLink to={steps.previous} words={m.entry.previous} />
          <StepLink to={steps.next} words={m.entry.next} />
        </nav>
      </div>
      <div class="entry-body">
        <div class="entry-main">
          <p class="entry-place">
            {requirement.place.name}
            {requirement.hold && <span class="tag strong">{m.entry.hold}</span>}
          </p>
          <h2 id="must">{requirement.must}</h2>
          {limits !== null && !requirement.must.includes(limits) && (
            <p class="limits">
              <span class="label">{m.entry.limits}</span> <b>{limits}</b>
            </p>
          )}
          <ComputedFrom judged={judged} requirement={requirement} of={of} run={kept.id} />
          {of !== requirement.id && <p class="entry-of">{measurableWords(of)}</p>}
          <AnswerFields look={requirement.look} kind={kind} units={units} draft={draft} change={change}>
            <LiveVerdict judged={judged} requirement={requirement} reading={reading} />
          </AnswerFields>
          {draft.corrects !== null && (
            <Correcting judged={judged} draft={draft} at={at} stop={() => change({ corrects: null })} />
          )}
          <VisitFields
            visit={visit}
            instruments={kind === 'measure' ? instruments : []}
            change={(next) => {
              setVisit(next)
              rememberVisit(next)
              setComplaint(null)
            }}
          />
          {complaint !== null && (
            <p class="trouble" role="alert">
              {complaint}
            </p>
          )}
          {failure !== undefined && (
            <TroubleNote title={m.entry.notSaved} trouble={failure.trouble} again={() => void save(null)} />
          )}
          <div class="entry-save">
            <button type="button" class="button" disabled={isSaving} onClick={() => void save(null)}>
              {m.entry.save}
            </button>
            <button type="submit" class="button main" disabled={isSaving}>
              {isSaving ? m.entry.saving : m.entry.saveNext}
            </button>
          </div>
          {!canAnswer && <p class="hint">{m.entry.record}</p>}
        </div>
        <div class="entry-facts">
          <RequirementFacts judged={judged} requirement={requirement} />
          <History
            judged={judged}
            requirement={requirement}
            of={of}
            correct={(id) => {
              change({ corrects: id })
              panel.current?.querySelector<HTMLElement>('[data-first]')?.focus()
            }}
          />
        </div>
      </div>
    </form>
  )
}

const StepLink = ({ to, words }: { readonly to: string | null; readonly words: string }) =>
  to === null ? (
    <span class="button small off">{words}</span>
  ) : (
    <a class="button small" href={to}>
      {words}
    </a>
  )

function Correcting(props: { judged: JudgedRun; draft: Draft; at: number; stop: () => void }) {
  const { judged, draft, at, stop } = props
  const old = judged.readings.find(({ id }) => id === draft.corrects)
  if (old === undefined) return null
  return (
    <p class="correcting">
      {m.entry.correcting(answerWords(old.answer, judged.requirements[at]!))}{' '}
      <button type="button" class="button small" onClick={stop}>
        {m.entry.correctStop}
      </button>
    </p>
  )
}

function complaintWords(problem: DraftProblem): string {
  switch (problem.kind) {
    case 'nothing given':
    case 'no length':
      return m.entry.answerMissing
    case 'no reason given':
      return m.entry.becauseMissing
  }
}

interface Neighbours {
  readonly previous: string | null
  readonly next: string | null
}

/** Before and after in walking order; among the values that a requirement is computed from, first those. */
function neighbours({ requirements }: JudgedRun, run: string, at: number, of: string): Neighbours {
  const requirement = requirements[at]!
  const own = of === requirement.id ? [] : readingsFor(requirement)
  const place = own.indexOf(of)
  const ownPath = (i: number): string | null => {
    const id = own[i]
    return id === undefined ? null : requirementPath(run, requirement.id, id)
  }
  const pathOf = (i: number): string | null => {
    const id = requirements[i]?.id
    return id === undefined ? null : requirementPath(run, id)
  }
  if (place === -1) return { previous: pathOf(at - 1), next: pathOf(at + 1) }
  return { previous: place === 0 ? pathOf(at) : ownPath(place - 1), next: ownPath(place + 1) ?? pathOf(at + 1) }
}

/** Brings the entry into view, and its first field under the hands of whoever came here or chose other fields. */
function useFocusOnArrival(panel: { readonly current: HTMLFormElement | null }, mode: Draft['mode']): void {
  const shownMode = useRef<Draft['mode'] | null>(null)
  useEffect(() => {
    const form = panel.current
    if (form === null) return
    const hasArrived = shownMode.current === null
    const isMoved = hasArrived ? history.state !== null : shownMode.current !== mode
    shownMode.current = mode
    if (isMoved) form.querySelector<HTMLElement>('[data-first]')?.focus({ preventScroll: true })
    if (!hasArrived) return
    const { top } = form.getBoundingClientRect()
    if (top < 0 || top > window.innerHeight / 2) form.scrollIntoView({ block: 'start' })
  }, [panel, mode])
}

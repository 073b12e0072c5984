import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import { instrumentsReading } from '../../core/measurement/instruments.ts'
import { isOffset } from '../../core/measurement/offset-side.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { seenVersion } from '../../core/record/version.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { isLengthUnit, kindOf } from '../../core/units/quantity-kinds.ts'
import type { NearMark } from '../../documents/day-report.ts'
import { instrumentsOf } from '../../operations/instruments-of.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { newId, nextId, now, rememberedVisit, rememberVisit, type Visit } from '../data/device.ts'
import type { KeptRun, RunSource } from '../data/run-source.ts'
import { Photos } from '../fieldwork/photos.tsx'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { m, say } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath, seenPath } from '../route.ts'
import { AnewLinks } from './anew-links.tsx'
import { AnswerFields } from './answer-fields.tsx'
import { BegunHere } from './begun.tsx'
import { ComputedFrom } from './computed-from.tsx'
import { type Draft, type DraftProblem, draftAnswer, emptyDraft } from './draft.ts'
import type { Drafts } from './drafts.ts'
import { History } from './history.tsx'
import { draftOf, lastAnswer } from './last-answer.ts'
import { LiveVerdict } from './live-verdict.tsx'
import { answerWords, limitsWords, measurableWords, placeWords, readWords } from './reading-words.ts'
import { OldAndNew } from './recheck.tsx'
import { RequirementFacts } from './requirement-facts.tsx'
import { SameFor, type Span } from './same-for.tsx'
import { placesBetween, samePlaces } from './same-places.ts'
import { type Steps, stepHandlers, stepsFrom } from './steps.ts'
import { useSaving } from './use-saving.ts'
import { VisitFields } from './visit-fields.tsx'

interface Props {
  readonly source: RunSource
  readonly kept: KeptRun
  readonly judged: JudgedRun
  readonly side: SideEntries
  readonly sideAgain: () => Promise<void>
  readonly punch: readonly PunchItem[]
  /** Marks on the ground near the place that is open. */
  readonly nearMarks: readonly NearMark[]
  /** Place of the requirement in walking order. */
  readonly at: number
  /** What is read: the requirement itself, or a value it is computed from. */
  readonly of: string
  readonly drafts: Drafts
  readonly took: (readings: readonly Reading[], words: string) => void
  readonly undo: (readings: readonly Reading[]) => void
  readonly touched: () => void
}

/** One requirement: what must be true, the reading that is being entered, and its verdict as it is typed. */
export function EntryPanel(props: Props) {
  const { source, kept, judged, side, sideAgain, punch, nearMarks, at, of, drafts, took, undo, touched } = props
  const requirement = judged.requirements[at]!
  const { units } = judged.run
  const isDirect = of === requirement.id
  const kind = isDirect ? requirement.look.kind : 'measure'
  const [draft, setDraft] = useState<Draft>(() => drafts.get(of) ?? emptyDraft)
  const [span, setSpan] = useState<Span | null>(null)
  // What another value is computed from is a length.
  const limitsUnit = isDirect && requirement.look.kind === 'measure' ? requirement.look.limits.unit : 'in'
  const unit = isLengthUnit(limitsUnit) ? (units === 'us' ? 'in' : 'mm') : limitsUnit
  const measures = kindOf(unit)
  const instruments = useMemo(() => instrumentsReading(instrumentsOf(judged.run), measures), [judged.run, measures])
  const [visit, setVisit] = useState<Visit>(rememberedVisit)
  const instrument = instruments.find(({ id }) => id === visit.instruments[measures]) ?? instruments[0]!
  const [complaint, setComplaint] = useState<string | null>(null)
  const [isSaving, setSaving] = useState(false)
  const append = useSaving(source, kept.id, drafts, requirement.id)
  const panel = useRef<HTMLFormElement>(null)
  const latest = useRef(draft)
  latest.current = draft
  useFocusOnArrival(panel, draft.mode)

  const isSided = isOffset(of)
  const answer = draftAnswer(draft, kind, unit, isSided)
  const failure = drafts.failed.find((one) => one.of === of)
  const steps = useMemo(() => stepsFrom(judged, kept.id, at, of), [judged, kept.id, at, of])
  const item = useMemo(
    () =>
      punch.find(
        ({ readings, state }) => state !== 'closed' && readings.some((one) => one.requirement === requirement.id),
      ),
    [punch, requirement],
  )
  const places = useMemo(
    () => (isDirect && kind !== 'record' ? samePlaces(requirement, judged.requirements) : []),
    [requirement, judged.requirements, isDirect, kind],
  )
  const last = useMemo(() => {
    if (!isDirect) return null
    const found = lastAnswer(requirement, byId(judged.requirements), judged.readings)
    return found === null ? null : { words: answerWords(found, requirement, units), draft: draftOf(found) }
  }, [judged, requirement, isDirect])
  const photos = useMemo(() => side.photos.filter(({ body }) => body.of === of), [side.photos, of])
  const findingOf = (id: string): string | null =>
    punch.find(({ state, readings }) => state !== 'closed' && readings.some((one) => one.requirement === id))?.id ??
    null

  const reading: Reading | null = answer.ok
    ? {
        id: 'not yet saved',
        of,
        answer: answer.value,
        instrument: answer.value.kind === 'measured' ? instrument.id : null,
        uncertainty: null,
        by: visit.by.trim(),
        at: '',
        where: visit.where.trim() === '' ? null : visit.where.trim(),
        photos: photos.map(({ body }) => body.sha256),
        corrects: draft.corrects,
        rechecks: findingOf(requirement.id),
        together: span?.together ?? null,
        ...(draft.note.trim() === '' ? {} : { note: draft.note.trim() }),
        ...seenVersion(kept.run.version),
      }
    : null

  const change = (changes: Partial<Draft>): void => {
    const next = { ...latest.current, ...changes }
    latest.current = next
    setDraft(next)
    drafts.set(of, requirement.id, next)
    drafts.settle(of, 'failure')
    setComplaint(null)
    touched()
  }

  const save = async (next: string | null): Promise<void> => {
    if (isSaving) return
    const missing = reading === null ? (answer.ok ? null : answer.error) : null
    if (reading === null || reading.by === '') {
      setComplaint(missing === null ? m.entry.byMissing : complaintWords(missing))
      const asked = missing === null ? '[data-by]' : missing.kind === 'no side given' ? '[data-side]' : '[data-first]'
      const field = panel.current?.querySelector<HTMLElement>(asked)
      field?.closest('details')?.setAttribute('open', '')
      field?.focus()
      return
    }
    const members = span === null ? [requirement] : placesBetween(places, span.from, span.to)
    const unsent =
      span === null
        ? [reading]
        : members.map(({ id }) => ({
            ...reading,
            of: id,
            corrects: id === of ? reading.corrects : null,
            rechecks: findingOf(id),
            photos: id === of ? reading.photos : [],
          }))
    setSaving(true)
    setComplaint(null)
    const seen = kept.readings.map(({ id }) => id)
    const taken = await append(unsent.map((one) => drafts.toSend(one, () => nextId(kept.id, seen), now)))
    setSaving(false)
    const isWhole = taken.length === unsent.length
    // What was typed while the answer was awaited stays.
    const isDone = isWhole && latest.current === draft
    for (const one of taken) if (one.of !== of) drafts.settle(one.of, 'all')
    if (isWhole) drafts.settle(of, isDone ? 'all' : 'failure')
    if (isDone) {
      setDraft(emptyDraft)
      setSpan(null)
    }
    const first = taken[0]
    if (first === undefined) return
    const place = isDirect ? placeWords(requirement.place) : measurableWords(of, judged.model.layout)
    const words = answerWords(first.answer, requirement, units)
    took(taken, span === null ? `${place}, ${words}` : m.entry.savedSame(taken.length, words))
    if (next !== null && isDone && panel.current !== null) goTo(next)
  }

  const limits = requirement.look.kind === 'measure' ? limitsWords(requirement.look.limits, units) : null
  const must = say(requirement.must, units)
  // What does not change as somebody types is drawn once.
  const facts = useMemo(
    () => (
      <>
        <RequirementFacts judged={judged} requirement={requirement} />
        <History
          judged={judged}
          requirement={requirement}
          of={of}
          rivals={kept.rivals}
          correct={(id) => {
            change({ corrects: id })
            panel.current?.querySelector<HTMLElement>('[data-first]')?.focus()
          }}
          undo={(reading) => undo([reading])}
        />
      </>
    ),
    [judged, requirement, of, kept, m],
  )
  const photoPart = useMemo(
    () => (
      <Photos
        source={source}
        run={kept.id}
        of={of}
        isHold={requirement.hold}
        photos={photos}
        by={visit.by.trim()}
        again={sideAgain}
      />
    ),
    [source, kept.id, of, requirement, photos, visit.by, sideAgain, m],
  )
  const samePart = useMemo(
    () =>
      places.length > 1 ? (
        <SameFor places={places} here={requirement} span={span} change={setSpan} newName={newId} />
      ) : null,
    [places, requirement, span, m],
  )
  const visitPart = useMemo(
    () => (
      <VisitFields
        visit={visit}
        measuring={kind === 'measure' ? { kind: measures, with: instrument, instruments } : null}
        change={(next) => {
          setVisit(next)
          rememberVisit(next)
          setComplaint(null)
        }}
      />
    ),
    [visit, instrument, instruments, measures, kind, m],
  )
  const computedPart = useMemo(
    () => <ComputedFrom judged={judged} requirement={requirement} of={of} run={kept.id} />,
    [judged, requirement, of, kept.id, m],
  )
  return (
    <form
      ref={panel}
      class="entry"
      aria-labelledby="must"
      {...stepHandlers(steps, goTo)}
      onSubmit={(event) => {
        event.preventDefault()
        void save(steps.next)
      }}
    >
      <div class="entry-steps">
        <a class="button small close" href={panePath(kept.id, 'walk')}>
          {m.entry.close}
        </a>
        <p class="entry-place">
          {placeWords(requirement.place)}
          {requirement.hold && <span class="tag strong">{m.entry.hold}</span>}
        </p>
        <span class="step-count">{m.entry.place(at + 1, judged.requirements.length)}</span>
      </div>
      <div class="entry-body">
        <div class="entry-main">
          <h2 id="must">{must}</h2>
          {limits !== null && !('limits' in requirement.must) && (
            <p class="limits">
              <span class="label">{m.entry.limits}</span> <b>{limits}</b>
            </p>
          )}
          {nearMarks.map(({ markNumber, mark, ticket, apart }) => (
            <p key={markNumber} class="warning">
              {m.day.nearMark(mark, ticket, Math.abs(Math.round(apart)))}
            </p>
          ))}
          {item !== undefined && (
            <div class="recheck">
              <p>
                <b>{m.findings.rechecking}</b>
              </p>
              <OldAndNew item={item} requirement={requirement} units={units} />
            </div>
          )}
          {computedPart}
          {!isDirect && <p class="entry-of">{measurableWords(of, judged.model.layout)}</p>}
          <BegunHere
            units={units}
            begun={drafts.begun.find((one) => one.of === of)}
            version={kept.version}
            requirement={requirement}
            takeUp={(begun) => {
              drafts.takeUp(begun)
              latest.current = begun.draft
              setDraft(begun.draft)
            }}
            drop={drafts.drop}
          />
          <AnswerFields
            look={requirement.look}
            kind={kind}
            maySetAside={isDirect && requirement.maySetAside}
            isSided={isSided}
            unit={unit}
            units={units}
            draft={draft}
            change={change}
            last={last}
          >
            <LiveVerdict judged={judged} requirement={requirement} reading={reading} />
          </AnswerFields>
          {draft.corrects === null && samePart}
          {draft.corrects !== null && (
            <Correcting judged={judged} draft={draft} at={at} stop={() => change({ corrects: null })} />
          )}
          {visitPart}
          {kind !== 'record' && photoPart}
          <p>
            <a href={seenPath(kept.id, requirement.place.id)}>{m.seen.here}</a>
          </p>
          <AnewLinks run={kept.run} id={kept.id} place={requirement.place} />
          {complaint !== null && (
            <p class="trouble" role="alert">
              {complaint}
            </p>
          )}
          {failure !== undefined && (
            <TroubleNote title={m.entry.notSaved} trouble={failure.trouble} again={() => void save(null)} />
          )}
          {kind === 'record' && <p class="hint">{m.entry.record}</p>}
        </div>
        <div class="entry-facts">{facts}</div>
      </div>
      <SaveBar steps={steps} isSaving={isSaving} save={() => void save(null)} />
    </form>
  )
}

const byId = (requirements: readonly Requirement[]): ReadonlyMap<string, Requirement> =>
  new Map(requirements.map((requirement) => [requirement.id, requirement]))

/** What the thumb reaches: back, save, save and go on, on. */
const SaveBar = (props: { readonly steps: Steps; readonly isSaving: boolean; readonly save: () => void }) => (
  <div class="entry-save">
    <StepLink to={props.steps.previous} words={m.entry.previous} sign="‹" keys="Alt+PageUp" />
    <button type="button" class="button" disabled={props.isSaving} onClick={props.save}>
      {m.entry.save}
    </button>
    <button type="submit" class="button main" disabled={props.isSaving}>
      {props.isSaving ? m.entry.saving : m.entry.saveNext}
    </button>
    <StepLink to={props.steps.next} words={m.entry.next} sign="›" keys="Alt+PageDown" />
  </div>
)

const StepLink = (props: { to: string | null; words: string; sign: string; keys: string }) =>
  props.to === null ? (
    <span class="button step off" aria-hidden="true">
      {props.sign}
    </span>
  ) : (
    <a class="button step" href={props.to} aria-label={props.words} aria-keyshortcuts={props.keys} title={props.words}>
      {props.sign}
    </a>
  )

function Correcting(props: { judged: JudgedRun; draft: Draft; at: number; stop: () => void }) {
  const { judged, draft, at, stop } = props
  const old = judged.readings.find(({ id }) => id === draft.corrects)
  if (old === undefined) return null
  return (
    <p class="correcting">
      {m.entry.correcting(readWords(old, judged.requirements[at]!, judged.run.units))}{' '}
      <button type="button" class="button small" onClick={stop}>
        {m.entry.correctStop}
      </button>
    </p>
  )
}

function complaintWords(problem: DraftProblem): string {
  switch (problem.kind) {
    case 'nothing given':
    case 'no value':
    case 'another quantity':
      return m.entry.answerMissing
    case 'no reason given':
      return m.entry.becauseMissing
    case 'no side given':
      return m.entry.sideMissing
    case 'offset below zero':
      return m.entry.sideInstead
  }
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

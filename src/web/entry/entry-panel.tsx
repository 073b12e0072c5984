import { useMemo, useRef, useState } from 'preact/hooks'
import { isOffset } from '../../core/measurement/offset-side.ts'
import type { Reading } from '../../core/measurement/reading.ts'
import { seenVersion } from '../../core/record/version.ts'
import { isLengthUnit } from '../../core/units/quantity-kinds.ts'
import type { NearMark } from '../../documents/day-report.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { sheetsInUse } from '../../operations/sheets-in-use.ts'
import { nextId, now } from '../data/device.ts'
import type { KeptRun, RunSource } from '../data/run-source.ts'
import { useKeptAwake } from '../fieldwork/keep-awake.ts'
import { photosPart } from '../fieldwork/photos-part.ts'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { m } from '../messages.ts'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, isPracticePage, requirementPath, seenPath } from '../route.ts'
import { AnewLinks } from './anew-links.tsx'
import { AnswerFields } from './answer-fields.tsx'
import { Asked } from './asked.tsx'
import { BegunHere } from './begun.tsx'
import { type Complaint, complaintOf, fieldOf } from './complaint.tsx'
import { ComputedFrom } from './computed-from.tsx'
import { type Draft, draftAnswer, emptyDraft, isEmpty } from './draft.ts'
import type { Drafts } from './drafts.ts'
import { EntryHead } from './entry-head.tsx'
import { useFocusOnArrival } from './focus-on-arrival.ts'
import { History } from './history.tsx'
import { likeReading, reopened } from './like-places.ts'
import { LiveVerdict, useVerdict } from './live-verdict.tsx'
import { QuietRow } from './quiet-row.tsx'
import { answerWords, measurableWords, placeWords } from './reading-words.ts'
import { RecordRow } from './record-row.tsx'
import { RequirementFacts } from './requirement-facts.tsx'
import { SaveBar } from './save-bar.tsx'
import type { Saved } from './saved.ts'
import { stepByKey, stepsFrom } from './steps.ts'
import { takingBack } from './undo.ts'
import { useGoingOn } from './use-going-on.ts'
import { useSaving } from './use-saving.ts'
import { useVisit } from './use-visit.tsx'
import { hasTouch } from './visit-fields.tsx'

const sight = partOf(() => import('../drills/sight.tsx'))

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
  /** What was saved last, here or elsewhere. */
  readonly saved: Saved
  readonly took: (saved: Saved, reading: Reading) => void
  readonly touched: () => void
}

/** How long a visit may last within which an answer is offered again, milliseconds: a day's work, our judgement. */
const visitLength = 12 * 3_600_000

/** Within which time a second press belongs to the first, milliseconds. */
const twicePressed = 600

/**
 * One requirement: what must be true, the reading that is being entered, and its verdict as it is typed. What is needed
 * for that fits on the screen of a phone; all else lies below it.
 */
export function EntryPanel(props: Props) {
  const { source, kept, judged, side, sideAgain, punch, nearMarks, at, of, drafts, saved, took, touched } = props
  const requirement = judged.requirements[at]!
  const { units } = judged.run
  const isDirect = of === requirement.id
  const kind = isDirect ? requirement.look.kind : 'measure'
  const [draft, setDraft] = useState<Draft>(() => drafts.get(of) ?? emptyDraft)
  // What another value is computed from is a length.
  const limitsUnit = isDirect && requirement.look.kind === 'measure' ? requirement.look.limits.unit : 'in'
  const unit = isLengthUnit(limitsUnit) ? (units === 'us' ? 'in' : 'mm') : limitsUnit
  const [complaint, setComplaint] = useState<Complaint | null>(null)
  const visit = useVisit({
    ...{ judged, requirement, isDirect, isMeasured: kind === 'measure', unit, complaint },
    changed: () => setComplaint(null),
  })
  const { by, instrument, settings } = visit
  const [isSaving, setSaving] = useState(false)
  const append = useSaving(source, kept.id, drafts, requirement.id)
  const panel = useRef<HTMLFormElement>(null)
  const latest = useRef(draft)
  latest.current = draft
  useFocusOnArrival(panel, draft.mode)
  useKeptAwake(settings.staysAwake)

  const isSided = isOffset(of)
  const answer = draftAnswer(draft, kind, unit, isSided)
  const failure = drafts.failed.find((one) => one.of === of)
  const steps = useMemo(() => stepsFrom(judged, kept.id, at, of), [judged, kept.id, at, of])
  const item = useMemo(
    () =>
      punch.find(
        ({ readings, state }) => state !== 'closed' && readings.some((one) => one.requirement === requirement.id),
      ) ?? null,
    [punch, requirement],
  )
  const like = useMemo(
    () =>
      isDirect
        ? likeReading(requirement, judged.requirements, judged.readings, by, Date.parse(now()) - visitLength)
        : null,
    [judged, requirement, isDirect, by],
  )
  const photos = useMemo(() => side.photos.filter(({ body }) => body.of === of), [side.photos, of])
  const sheet = useMemo(
    () => sheetsInUse(judged.model).find(({ id }) => id === requirement.sheet) ?? null,
    [judged.model, requirement],
  )
  const corrected = judged.readings.find(({ id }) => id === draft.corrects) ?? null
  const reading: Reading | null = answer.ok
    ? {
        id: 'not yet saved',
        of,
        answer: answer.value,
        instrument: answer.value.kind === 'measured' ? instrument.id : null,
        uncertainty: null,
        by,
        at: '',
        where: visit.where === '' ? null : visit.where,
        photos: photos.map(({ body }) => body.sha256),
        corrects: draft.corrects,
        rechecks: item?.id ?? null,
        together: null,
        ...(draft.note.trim() === '' ? {} : { note: draft.note.trim() }),
        ...seenVersion(kept.run.version),
      }
    : null
  const decided = useVerdict(judged, requirement, reading)
  // Only a first look that meets saves itself: never what fails, is measured, rechecks, corrects or is soon covered.
  const mayGoOn =
    reading !== null &&
    reading.answer.kind !== 'measured' &&
    decided.verdict === 'meets' &&
    by !== '' &&
    item === null &&
    corrected === null &&
    !requirement.hold &&
    settings.goesOn
  const going = useGoingOn(mayGoOn, () => void save(steps.next))

  const put = (next: Draft): void => {
    latest.current = next
    setDraft(next)
    drafts.set(of, requirement.id, next)
    drafts.settle(of, 'failure')
    setComplaint(null)
    going.stop()
    touched()
  }
  const change = (changes: Partial<Draft>): void => put({ ...latest.current, ...changes })

  const complain = (next: Complaint): void => {
    setComplaint(next)
    const field = panel.current?.querySelector<HTMLElement>(fieldOf[next.at])
    field?.closest('details')?.setAttribute('open', '')
    field?.focus()
  }
  /** Keeps a reading of this place; then what was entered is done, unless something was typed meanwhile. */
  const keep = async (unsent: Reading, next: string | null): Promise<void> => {
    setSaving(true)
    setComplaint(null)
    const seen = kept.readings.map(({ id }) => id)
    const [taken] = await append([drafts.toSend(unsent, () => nextId(kept.id, seen), now)])
    setSaving(false)
    if (taken === undefined) return
    const isDone = latest.current === draft
    drafts.settle(of, isDone ? 'all' : 'failure')
    if (isDone) setDraft(emptyDraft)
    const place = isDirect ? placeWords(requirement.place, units) : measurableWords(of, judged.model.layout)
    const words = m.entry.saved(`${place}, ${answerWords(taken.answer, requirement, units)}`)
    took({ words, since: performance.now(), undoable: { reading: taken, requirement: requirement.id } }, taken)
    if (next !== null && isDone && panel.current !== null) goTo(next)
  }
  const save = async (next: string | null): Promise<void> => {
    if (isSaving) return
    going.stop()
    if (!answer.ok) return complain(complaintOf(answer.error))
    if (reading === null || by === '') return complain(complaintOf(null))
    await keep(reading, next)
  }
  const takeBack = async (wrong: Reading): Promise<void> => {
    if (isSaving) return
    if (by === '') return complain(complaintOf(null))
    const unsent = { ...takingBack(wrong, judged.readings, by, m.entry.slip), ...seenVersion(kept.run.version) }
    await keep({ ...unsent, id: 'not yet saved', at: '' }, null)
  }
  const reopen = (wrong: Reading, where: string): void => {
    const entered = reopened(wrong)
    if (wrong.of === of) {
      put(entered)
      panel.current?.scrollIntoView({ block: 'start' })
      panel.current?.querySelector<HTMLElement>('[data-first]')?.focus({ preventScroll: true })
      return
    }
    drafts.set(wrong.of, where, entered)
    touched()
    goTo(requirementPath(kept.id, where, wrong.of === where ? null : wrong.of))
  }

  // What does not change as somebody types is drawn once.
  const facts = useMemo(
    () => (
      <>
        <RequirementFacts judged={judged} requirement={requirement} sheet={sheet} />
        <History
          judged={judged}
          requirement={requirement}
          of={of}
          rivals={kept.rivals}
          reopen={(wrong) => reopen(wrong, requirement.id)}
        />
      </>
    ),
    [judged, requirement, sheet, of, kept, drafts, m],
  )
  const photoPart = useMemo(
    () => (
      <LaterPart part={photosPart} title={m.trouble.site}>
        {({ Photos }) => (
          <Photos
            source={source}
            run={kept.id}
            of={of}
            isHold={requirement.hold}
            photos={photos}
            strokes={side.strokes}
            by={by}
            again={sideAgain}
          />
        )}
      </LaterPart>
    ),
    [source, kept.id, of, requirement, photos, side.strokes, by, sideAgain, m],
  )
  const computedPart = useMemo(
    () => <ComputedFrom judged={judged} requirement={requirement} of={of} run={kept.id} />,
    [judged, requirement, of, kept.id, m],
  )
  const begunPart = (
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
  )
  const { undoable, since } = saved
  const undo = (): void => {
    // Whoever pressed twice to save wants nothing undone.
    if (undoable !== null && performance.now() - since > twicePressed) reopen(undoable.reading, undoable.requirement)
  }
  return (
    <form
      ref={panel}
      class="entry"
      aria-labelledby="must"
      onKeyDown={stepByKey(steps, goTo)}
      onSubmit={(event) => {
        event.preventDefault()
        void save(steps.next)
      }}
    >
      <EntryHead judged={judged} run={kept.id} at={at} />
      <div class="entry-body">
        <div class="entry-main">
          <div class="entry-screen">
            <Asked
              {...{ judged, requirement, of, nearMarks, item, corrected }}
              takeBack={(wrong) => void takeBack(wrong)}
              stop={() => put(emptyDraft)}
            />
            {isPracticePage() && (
              <LaterPart part={sight} title={m.trouble.site}>
                {({ Sight }) => <Sight {...{ source, run: kept.id, judged, requirement, of, sheet, instrument }} />}
              </LaterPart>
            )}
            <AnswerFields
              requirement={requirement}
              kind={kind}
              sheet={sheet}
              isSided={isSided}
              unit={unit}
              units={units}
              hasDeviceKeyboard={settings.hasDeviceKeyboard || !hasTouch()}
              draft={draft}
              complaint={complaint}
              change={change}
              touched={going.touch}
              verdict={
                <LiveVerdict
                  judged={judged}
                  requirement={requirement}
                  decided={decided}
                  isNew={reading !== null}
                  instrument={instrument}
                  instead={isEmpty(draft) && drafts.begun.some((one) => one.of === of) ? begunPart : null}
                />
              }
            />
            {failure !== undefined && (
              <TroubleNote title={m.entry.notSaved} trouble={failure.trouble} again={() => void save(null)} />
            )}
            {kind === 'record' ? (
              <RecordRow requirement={requirement} draft={draft} change={change} />
            ) : (
              <QuietRow
                requirement={requirement}
                maySetAside={isDirect && requirement.maySetAside}
                units={units}
                draft={draft}
                like={corrected === null ? like : null}
                change={change}
                touched={going.touch}
              />
            )}
          </div>
          {!isEmpty(draft) && begunPart}
          {computedPart}
          {visit.fields}
          {kind !== 'record' && photoPart}
          <p>
            <a href={seenPath(kept.id, requirement.place.id)}>{m.seen.here}</a>
          </p>
          {!isPracticePage() && <AnewLinks run={kept.run} id={kept.id} place={requirement.place} />}
        </div>
        <div class="entry-facts" id="facts">
          {facts}
        </div>
      </div>
      <SaveBar
        steps={steps}
        isSaving={isSaving}
        save={() => void save(null)}
        saved={saved.words}
        undo={undoable !== null && isEmpty(draft) ? undo : null}
        takeBack={going.isGoing ? () => change({ choice: null, yes: null }) : null}
      />
    </form>
  )
}

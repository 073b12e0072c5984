import { useRef, useState } from 'preact/hooks'
import { seenKinds } from '../../core/hardware/hardware-sheet.ts'
import { severities, severityOfSeen } from '../../core/hardware/severity.ts'
import { sheetOf } from '../../core/layout/sheet-of.ts'
import { seenVersion } from '../../core/record/version.ts'
import { placesById } from '../../core/verdicts/free-findings.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { type BegunSeen, type SeenDraft, seenBesides } from '../data/begun.ts'
import { now, rememberedVisit, rememberVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { BegunNote } from '../entry/begun.tsx'
import { placeWords } from '../entry/reading-words.ts'
import { photosPart } from '../fieldwork/photos-part.ts'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { m, say } from '../messages.ts'
import { LaterPart } from '../parts/later-part.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'

export const nothingSeen = (at: string): SeenDraft => ({ what: null, of: at, severity: null, note: '', photos: [] })

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly side: SideEntries
  readonly run: string
  /** What it begins with. */
  readonly first: SeenDraft
  readonly again: () => Promise<void>
  readonly done: () => void
}

/** What was seen that no requirement asks for, as it is entered; at each key it goes to the disk of this device. */
export function SeenForm({ source, judged, side, run, first, again, done }: Props) {
  const places = placesById(judged.model)
  const [draft, setDraft] = useState<SeenDraft>(places.has(first.of) ? first : { ...first, of: 'run' })
  const latest = useRef(draft)
  const { what, of, severity, note, photos } = draft
  const change = (changes: Partial<SeenDraft>): void => {
    latest.current = { ...latest.current, ...changes }
    setDraft(latest.current)
    const version = judged.run.version?.id ?? ''
    void source.keepBegun({ run, of: seenBesides, version, at: now(), seen: latest.current })
  }
  const end = (): void => {
    void source.dropBegun(run, seenBesides)
    done()
  }
  const sheet = sheetOf(judged.model, places.get(of)!.unit)
  const isSeverityAsked = what !== null && severityOfSeen(sheet, what) === 'notStated'
  const [by, setBy] = useState(rememberedVisit().by)
  const [complaint, setComplaint] = useState<string | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const save = async (): Promise<void> => {
    if (what === null) return setComplaint(m.seen.whatMissing)
    if (by.trim() === '') return setComplaint(m.entry.byMissing)
    rememberVisit({ ...rememberedVisit(), by })
    const body = {
      ...(isSeverityAsked && severity !== null ? { severity } : {}),
      ...{ what, of, note: note.trim() === '' ? null : note.trim(), photos: [...photos] },
      ...seenVersion(judged.run.version),
    }
    const answer = await source.appendEntry(run, 'free-finding', body, by.trim(), null)
    if (!answer.ok) return setTrouble(answer.error)
    await again()
    end()
  }
  return (
    <form
      class="seen-form"
      onSubmit={(event) => {
        event.preventDefault()
        void save()
      }}
    >
      <fieldset class="choices choices-many">
        <legend>{m.seen.what}</legend>
        {seenKinds.map((kind) => (
          <label key={kind} class="choice">
            <input
              type="radio"
              name="seen"
              value={kind}
              checked={what === kind}
              onChange={() => change({ what: kind })}
            />
            <span>{say({ kind: 'seen', what: kind })}</span>
          </label>
        ))}
      </fieldset>
      {isSeverityAsked && (
        <fieldset class="choices choices-many">
          <legend>{m.seen.howBad}</legend>
          {[...severities, null].map((one) => (
            <label key={one} class="choice">
              <input
                type="radio"
                name="severity"
                checked={severity === one}
                onChange={() => change({ severity: one })}
              />
              <span>{one === null ? m.seen.badNotSaid : say({ kind: 'how bad', severity: one })}</span>
            </label>
          ))}
        </fieldset>
      )}
      <div class="fields">
        <label>
          <span>{m.seen.where}</span>
          <select value={of} onChange={({ currentTarget }) => change({ of: currentTarget.value })}>
            {[...places.values()].map(({ place }) => (
              <option key={place.id} value={place.id}>
                {placeWords(place, judged.run.units)}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{m.entry.by}</span>
          <input
            value={by}
            autocomplete="name"
            maxLength={200}
            onInput={({ currentTarget }) => setBy(currentTarget.value)}
          />
        </label>
      </div>
      <label class="because">
        <span>{m.entry.note}</span>
        <textarea
          rows={2}
          maxLength={4000}
          value={note}
          onInput={({ currentTarget }) => change({ note: currentTarget.value })}
        />
      </label>
      <LaterPart part={photosPart} title={m.trouble.site}>
        {({ Photos }) => (
          <Photos
            source={source}
            run={run}
            of={null}
            isHold={false}
            strokes={side.strokes}
            photos={side.photos.filter(({ body }) => body.of === null && photos.includes(body.sha256))}
            by={by.trim()}
            kept={(sha256) => change({ photos: [...latest.current.photos, sha256] })}
            again={again}
          />
        )}
      </LaterPart>
      {complaint !== null && (
        <p class="trouble" role="alert">
          {complaint}
        </p>
      )}
      {trouble !== null && <TroubleNote title={m.entry.notSaved} trouble={trouble} />}
      <div class="form-buttons">
        <button type="button" class="button" onClick={end}>
          {m.seen.leave}
        </button>
        <button type="submit" class="button main">
          {m.seen.save}
        </button>
      </div>
    </form>
  )
}

interface BegunProps {
  readonly begun: BegunSeen
  readonly judged: JudgedRun
  readonly goOn: () => void
  readonly drop: () => void
}

/** What was begun and not saved when the page was closed: taken up or dropped by hand; of another version dropped only. */
export function BegunSeenNote({ begun: { at, version, seen }, judged, goOn, drop }: BegunProps) {
  const isOfThis = version === (judged.run.version?.id ?? '')
  const place = placesById(judged.model).get(seen.of)?.place
  const words = [
    ...(seen.what === null ? [] : [say({ kind: 'seen', what: seen.what })]),
    ...(place === undefined ? [] : [placeWords(place, judged.run.units)]),
    ...(seen.note === '' ? [] : [seen.note]),
    ...(seen.photos.length === 0 ? [] : [m.run.withCount(m.photo.title, seen.photos.length)]),
  ]
  return <BegunNote at={at} words={words.join(', ')} isOfThis={isOfThis} goOn={goOn} drop={drop} />
}

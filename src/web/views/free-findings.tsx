import { useState } from 'preact/hooks'
import { type SeenKind, type Severity, seenKinds } from '../../core/hardware/hardware-sheet.ts'
import { severities, severityOf, severityOfSeen } from '../../core/hardware/severity.ts'
import { sheetOf } from '../../core/layout/sheet-of.ts'
import { seenVersion } from '../../core/record/version.ts'
import { type PlacedFreeFinding, placesById, standingOf } from '../../core/verdicts/free-findings.ts'
import type { FreeFindingEndBody } from '../../formats/entry/entry-kinds.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { rememberedVisit, rememberVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { momentWords, placeWords } from '../entry/reading-words.ts'
import { useWhoReads } from '../entry/who-reads.tsx'
import { PhotoImage } from '../fieldwork/photo-image.tsx'
import { Photos } from '../fieldwork/photos.tsx'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { m, say } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { Assigned } from './assigned.tsx'

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly side: SideEntries
  readonly run: string
  /** Id of the place at which something was seen; null as long as nothing is to be noted. */
  readonly seenAt: string | null
  /** Reads everything anew after something was noted or closed. */
  readonly again: () => Promise<void>
}

/** What was seen that no requirement asks for: the form for it, what stands, and what was closed. */
export function FreeFindings({ source, judged, side, run, seenAt, again }: Props) {
  const [isNoting, setNoting] = useState(seenAt !== null)
  const { freeFindings } = judged.judgement
  const item = (one: PlacedFreeFinding) => (
    <FreeFindingItem key={one.finding.id} {...{ source, side, run, again, one }} />
  )
  const standing = standingOf(freeFindings)
  const closed = freeFindings.filter(({ finding }) => finding.closed !== null)
  return (
    <section class="free-findings" aria-label={m.seen.title}>
      <h2>{m.run.withCount(m.seen.title, standing.length)}</h2>
      {isNoting ? (
        <SeenForm {...{ source, judged, side, run, again }} at={seenAt ?? 'run'} done={() => setNoting(false)} />
      ) : (
        <button type="button" class="button" onClick={() => setNoting(true)}>
          {m.seen.begin}
        </button>
      )}
      <ol class="findings">{standing.map(item)}</ol>
      {closed.length > 0 && (
        <>
          <h3>{m.run.withCount(m.seen.closed, closed.length)}</h3>
          <ol class="findings">{closed.map(item)}</ol>
        </>
      )}
    </section>
  )
}

interface FormProps extends Omit<Props, 'seenAt'> {
  readonly at: string
  readonly done: () => void
}

function SeenForm({ source, judged, side, run, at, again, done }: FormProps) {
  const places = placesById(judged.model)
  const [what, setWhat] = useState<SeenKind | null>(null)
  const [of, setOf] = useState(places.has(at) ? at : 'run')
  const [severity, setSeverity] = useState<Severity | null>(null)
  const sheet = sheetOf(judged.model, places.get(of)!.unit)
  const isSeverityAsked = what !== null && severityOfSeen(sheet, what) === 'notStated'
  const [note, setNote] = useState('')
  const [shots, setShots] = useState<readonly string[]>([])
  const [by, setBy] = useState(rememberedVisit().by)
  const [complaint, setComplaint] = useState<string | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const save = async (): Promise<void> => {
    if (what === null) return setComplaint(m.seen.whatMissing)
    if (by.trim() === '') return setComplaint(m.entry.byMissing)
    rememberVisit({ ...rememberedVisit(), by })
    const body = {
      ...(isSeverityAsked && severity !== null ? { severity } : {}),
      ...{ what, of, note: note.trim() === '' ? null : note.trim(), photos: [...shots] },
      ...seenVersion(judged.run.version),
    }
    const answer = await source.appendEntry(run, 'free-finding', body, by.trim(), null)
    if (!answer.ok) return setTrouble(answer.error)
    await again()
    done()
  }
  return (
    <form
      class="seen-form"
      onSubmit={(event) => {
        event.preventDefault()
        void save()
      }}
    >
      <fieldset class="choices">
        <legend>{m.seen.what}</legend>
        {seenKinds.map((kind) => (
          <label key={kind} class="choice">
            <input type="radio" name="seen" value={kind} checked={what === kind} onChange={() => setWhat(kind)} />
            <span>{say({ kind: 'seen', what: kind })}</span>
          </label>
        ))}
      </fieldset>
      {isSeverityAsked && (
        <fieldset class="choices">
          <legend>{m.seen.howBad}</legend>
          {[...severities, null].map((one) => (
            <label key={one} class="choice">
              <input type="radio" name="severity" checked={severity === one} onChange={() => setSeverity(one)} />
              <span>{one === null ? m.seen.badNotSaid : say({ kind: 'how bad', severity: one })}</span>
            </label>
          ))}
        </fieldset>
      )}
      <div class="fields">
        <label>
          <span>{m.seen.where}</span>
          <select value={of} onChange={({ currentTarget }) => setOf(currentTarget.value)}>
            {[...places.values()].map(({ place }) => (
              <option key={place.id} value={place.id}>
                {placeWords(place)}
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
          onInput={({ currentTarget }) => setNote(currentTarget.value)}
        />
      </label>
      <Photos
        source={source}
        run={run}
        of={null}
        isHold={false}
        photos={side.photos.filter(({ body }) => body.of === null && shots.includes(body.sha256))}
        by={by.trim()}
        kept={(sha256) => setShots((before) => [...before, sha256])}
        again={again}
      />
      {complaint !== null && (
        <p class="trouble" role="alert">
          {complaint}
        </p>
      )}
      {trouble !== null && <TroubleNote title={m.entry.notSaved} trouble={trouble} />}
      <div class="form-buttons">
        <button type="button" class="button" onClick={done}>
          {m.seen.leave}
        </button>
        <button type="submit" class="button main">
          {m.seen.save}
        </button>
      </div>
    </form>
  )
}

interface ItemProps extends Omit<Props, 'seenAt' | 'judged'> {
  readonly one: PlacedFreeFinding
}

function FreeFindingItem({ source, side, run, again, one }: ItemProps) {
  const { finding, place, severity } = one
  const { closed } = finding
  const [note, setNote] = useState('')
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const { name, field } = useWhoReads()
  const close = async (as: FreeFindingEndBody['as']): Promise<void> => {
    const by = name()
    if (by === null) return
    const said = note.trim() === '' ? null : note.trim()
    const body = { finding: finding.id, as, note: said, photos: [] }
    const answer = await source.appendEntry(run, 'free-finding-end', body, by, null)
    if (!answer.ok) return setTrouble(answer.error)
    await again()
  }
  const shots = [...finding.photos, ...(closed?.photos ?? [])]
  return (
    <li class={closed === null ? 'finding' : 'finding finding-closed'}>
      <h3>
        {say({ kind: 'seen', what: finding.what })}
        <span class="finding-place">{place === null ? m.seen.placeGone : placeWords(place)}</span>
      </h3>
      <p class="severity" data-severity={severityOf(severity)}>
        {say({ kind: 'severity', rated: severity })}
      </p>
      {finding.note !== null && <p class="note">{finding.note}</p>}
      {shots.length > 0 && (
        <ul class="photo-list plain">
          {shots.map((sha256, i) => (
            <li key={sha256}>
              <PhotoImage source={source} sha256={sha256} words={m.photo.nth(i + 1, shots.length)} />
            </li>
          ))}
        </ul>
      )}
      <p class="hint">
        {momentWords(finding.at)}, {finding.by}
      </p>
      {closed === null ? (
        <>
          <Assigned source={source} side={side} run={run} finding={finding.id} again={again} />
          <label class="because">
            <span>{m.seen.closeNote}</span>
            <input value={note} maxLength={4000} onInput={({ currentTarget }) => setNote(currentTarget.value)} />
          </label>
          {field}
          <div class="form-buttons">
            <button type="button" class="button" onClick={() => void close('put right')}>
              {m.seen.as['put right']}
            </button>
            <button type="button" class="button" onClick={() => void close('not so')}>
              {m.seen.as['not so']}
            </button>
          </div>
        </>
      ) : (
        <p>
          <b>{m.seen.closedAs[closed.as]}</b> {momentWords(closed.at)}, {closed.by}
          {closed.note !== null && `: ${closed.note}`}
        </p>
      )}
      {trouble !== null && <TroubleNote title={m.entry.notSaved} trouble={trouble} />}
    </li>
  )
}

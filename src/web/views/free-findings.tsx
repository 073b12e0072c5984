import { useEffect, useState } from 'preact/hooks'
import { severityOf } from '../../core/hardware/severity.ts'
import { type PlacedFreeFinding, standingOf } from '../../core/verdicts/free-findings.ts'
import type { FreeFindingEndBody } from '../../formats/entry/entry-kinds.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { type BegunSeen, type SeenDraft, seenBesides } from '../data/begun.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { momentWords, placeWords } from '../entry/reading-words.ts'
import { useWhoReads } from '../entry/who-reads.tsx'
import { PhotoImage } from '../fieldwork/photo-image.tsx'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { asWritten, m, say } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { Assigned } from './assigned.tsx'
import { BegunSeenNote, nothingSeen, SeenForm } from './seen-form.tsx'

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
  const [draft, setDraft] = useState<SeenDraft | null>(seenAt === null ? null : nothingSeen(seenAt))
  // Nothing is entered over what lies on the disk: it is taken up or dropped first.
  const [begun, setBegun] = useState<BegunSeen | null | 'not yet known'>('not yet known')
  useEffect(() => {
    void source.begun(run).then((answer) => {
      setBegun((answer.ok ? answer.value.find((one) => 'seen' in one) : null) ?? null)
    })
  }, [source, run])
  const { freeFindings } = judged.judgement
  const item = (one: PlacedFreeFinding) => (
    <FreeFindingItem key={one.finding.id} {...{ source, judged, side, run, again, one }} />
  )
  const standing = standingOf(freeFindings)
  const closed = freeFindings.filter(({ finding }) => finding.closed !== null)
  return (
    <section class="free-findings" aria-label={m.seen.title}>
      <h2>{m.run.withCount(m.seen.title, standing.length)}</h2>
      {begun !== null && begun !== 'not yet known' ? (
        <BegunSeenNote
          begun={begun}
          judged={judged}
          goOn={() => {
            setDraft(begun.seen)
            setBegun(null)
          }}
          drop={() => {
            void source.dropBegun(run, seenBesides)
            setBegun(null)
          }}
        />
      ) : draft !== null && begun === null ? (
        <SeenForm {...{ source, judged, side, run, again }} first={draft} done={() => setDraft(null)} />
      ) : (
        <button type="button" class="button" onClick={() => setDraft(nothingSeen('run'))}>
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

interface ItemProps extends Omit<Props, 'seenAt'> {
  readonly one: PlacedFreeFinding
}

function FreeFindingItem({ source, judged, side, run, again, one }: ItemProps) {
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
        <span class="finding-place">{place === null ? m.seen.placeGone : placeWords(place, judged.run.units)}</span>
      </h3>
      <p class="severity" data-severity={severityOf(severity)}>
        {say({ kind: 'severity', rated: severity })}
      </p>
      {finding.note !== null && <p class="note">{asWritten(finding.note)}</p>}
      {shots.length > 0 && (
        <ul class="photo-list plain">
          {shots.map((sha256, i) => (
            <li key={sha256}>
              <PhotoImage
                source={source}
                sha256={sha256}
                words={m.photo.nth(i + 1, shots.length)}
                strokes={side.strokes}
              />
            </li>
          ))}
        </ul>
      )}
      <p class="hint">
        {momentWords(finding.at)}, {asWritten(finding.by)}
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
          <b>{m.seen.closedAs[closed.as]}</b> {momentWords(closed.at)}, {asWritten(closed.by)}
          {closed.note !== null && `: ${asWritten(closed.note)}`}
        </p>
      )}
      {trouble !== null && <TroubleNote title={m.entry.notSaved} trouble={trouble} />}
    </li>
  )
}

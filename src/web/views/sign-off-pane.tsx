import { useEffect, useMemo, useState } from 'preact/hooks'
import { standingOf } from '../../core/verdicts/free-findings.ts'
import type { Strokes } from '../../formats/entry/signature.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { firstRecordText, hashRule, recordText } from '../../operations/record-hash.ts'
import { photoHashes, photosNamed } from '../../operations/record-photos.ts'
import { holdsWithoutPhoto, signedVersions } from '../../operations/sign-off.ts'
import { rememberedVisit } from '../data/device.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { sha256Of } from '../data/sha256.ts'
import { momentWords, placeWords, unprovenWords } from '../entry/reading-words.ts'
import { Signature, SignaturePad } from '../fieldwork/signature-pad.tsx'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { asWritten, m, say } from '../messages.ts'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { AcceptanceMark, VerdictMark } from '../parts/verdict-sign.tsx'
import { panePath, requirementPath } from '../route.ts'

const documentsHere = partOf(() => import('../transfer/documents-here.tsx'))

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly punch: readonly PunchItem[]
  readonly side: SideEntries
  readonly sideAgain: () => Promise<void>
  readonly run: string
}

/** What a signature would stand under, the signature, and every one that was given. */
export function SignOffPane({ source, judged, punch, side, sideAgain, run }: Props) {
  const photos = useMemo(() => photosNamed(judged.log, judged.freeFindings, side.photos), [judged, side.photos])
  const hash = useHash(
    useMemo(
      () =>
        side.isLoaded && judged.run.version !== undefined
          ? recordText(judged, photoHashes(photos, new Map()), side.strokes)
          : null,
      [judged, side.isLoaded, photos, side.strokes],
    ),
  )
  const first = useHash(useMemo(() => firstRecordText(judged), [judged]))
  const missing = useMemo(() => {
    const photographed = new Set(side.photos.flatMap(({ body }) => (body.of === null ? [] : [body.of])))
    return holdsWithoutPhoto(judged, photographed)
  }, [judged, side.photos])
  const versions = useMemo(
    () => signedVersions(side.signatures, judged, { 1: first, 2: hash }),
    [side.signatures, judged, hash, first],
  )
  return (
    <section class="sheet">
      <h2>{m.sign.title}</h2>
      <p class="record-verdict">
        <AcceptanceMark acceptance={judged.judgement.acceptance} />
      </p>
      <p>{m.sign.how}</p>
      <p>
        <a href={panePath(run, 'findings')}>
          {m.sign.findings(standingIn(punch) + standingOf(judged.judgement.freeFindings).length)}
        </a>{' '}
        <a href={panePath(run, 'not-proven')}>
          {m.run.withCount(m.run.pane['not-proven'], judged.judgement.unproven.length)}
        </a>{' '}
        {judged.unconfirmed.length > 0 && m.sign.unconfirmed(judged.unconfirmed.length)}
      </p>
      {side.trouble !== null && (
        <TroubleNote title={m.trouble.side} trouble={side.trouble} again={() => void sideAgain()} />
      )}
      {missing.length > 0 ? (
        <div class="trouble" role="status">
          <p>
            <b>{m.sign.blocked(missing.length)}</b> {m.sign.blockedHow}
          </p>
          <ul class="plain">
            {missing.map(({ id, place, must }) => (
              <li key={id}>
                <a class="row-link" href={requirementPath(run, id)}>
                  {placeWords(place, judged.run.units)}: {say(must, judged.run.units)}
                </a>
              </li>
            ))}
          </ul>
        </div>
      ) : (
        hash !== null && (
          <SignForm source={source} judged={judged} hash={hash} photos={photos} run={run} signed={sideAgain} />
        )
      )}
      <Unproven judged={judged} />
      <p class="hash">
        <span class="label">{m.sign.hash}</span> <code>{hash ?? m.page.loading}</code>
      </p>
      <h2>{m.run.withCount(m.sign.versions, versions.length)}</h2>
      {versions.length === 0 && <p>{m.sign.noVersions}</p>}
      <ol class="versions plain">
        {versions.map(({ version, signed, readingsSince, isCurrent }) => (
          <li key={signed.id} class="version">
            <h3>
              {m.sign.version(version)}
              <span class={isCurrent ? 'tag strong' : 'tag'}>
                {isCurrent
                  ? m.sign.isCurrent
                  : readingsSince === null
                    ? m.sign.sinceUnknown
                    : m.sign.since(readingsSince)}
              </span>
            </h3>
            <p>
              <b>{asWritten(signed.body.name)}</b>, {asWritten(signed.body.role)}, {momentWords(signed.capturedAt)}
            </p>
            <p>
              <AcceptanceMark acceptance={signed.body.acceptance} /> {m.sign.unprovenThen(signed.body.unproven.length)}
            </p>
            <Signature signature={signed.body.signature} name={asWritten(signed.body.name)} />
            {signed.body.signature.kind === 'typed' && <p class="hint">{m.sign.typed}</p>}
            {signed.body.statement !== null && <p>{asWritten(signed.body.statement)}</p>}
            <p class="hash">
              <span class="label">{m.sign.hash}</span> <code>{signed.body.recordHash}</code>
            </p>
          </li>
        ))}
      </ol>
      <h2>{m.sign.summary}</h2>
      <p>{m.sign.summaryHow}</p>
      <LaterPart part={documentsHere} title={m.record.failed}>
        {({ DocumentsHere }) => <DocumentsHere source={source} id={run} run={judged.run} kinds={['summary']} />}
      </LaterPart>
    </section>
  )
}

const standingIn = (punch: readonly PunchItem[]): number => punch.filter(({ state }) => state !== 'closed').length

/** All that is not proven: its number stands above the form, and each of it opens here. */
function Unproven({ judged }: Pick<Props, 'judged'>) {
  const { unproven, verdicts } = judged.judgement
  const [isOpen, setOpen] = useState(false)
  const verdictOf = new Map(verdicts.map(({ requirement, verdict }) => [requirement, verdict]))
  const mustOf = new Map(judged.requirements.map(({ id, must }) => [id, must]))
  if (unproven.length === 0) return <p>{m.unproven.none}</p>
  return (
    <details class="unproven" onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{m.run.withCount(m.run.pane['not-proven'], unproven.length)}</summary>
      {isOpen && (
        <ul>
          {unproven.map(({ requirement, place, because }) => {
            const verdict = verdictOf.get(requirement)!
            return (
              <li key={requirement}>
                <VerdictMark word={verdict} /> {placeWords(place, judged.run.units)}:{' '}
                {say(mustOf.get(requirement)!, judged.run.units)} <i>{unprovenWords(because, judged.run.units)}</i>
              </li>
            )
          })}
        </ul>
      )}
    </details>
  )
}

interface FormProps {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly hash: string
  readonly photos: readonly string[]
  readonly run: string
  readonly signed: () => Promise<void>
}

function SignForm({ source, judged, hash, photos, run, signed }: FormProps) {
  const [name, setName] = useState(rememberedVisit().by)
  const [role, setRole] = useState('')
  const [statement, setStatement] = useState('')
  const [strokes, setStrokes] = useState<Strokes>([])
  const [types, setTypes] = useState(false)
  const [complaint, setComplaint] = useState<string | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const sign = async (): Promise<void> => {
    if (name.trim() === '' || role.trim() === '') return setComplaint(m.sign.nameMissing)
    if (!types && strokes.length === 0) return setComplaint(m.sign.strokesMissing)
    const { acceptance, unproven } = judged.judgement
    const answer = await source.appendEntry(
      run,
      'sign-off',
      {
        name: name.trim(),
        role: role.trim(),
        signature: types ? { kind: 'typed' } : { kind: 'drawn', strokes },
        recordHash: hash,
        hashRule,
        version: judged.run.version!.id,
        readings: judged.log.map(({ id }) => id),
        photos: [...photos],
        ...namedFindings(judged),
        acceptance,
        unproven: unproven.map(({ requirement }) => requirement),
        statement: statement.trim() === '' ? null : statement.trim(),
      },
      name.trim(),
      null,
    )
    if (!answer.ok) return setTrouble(answer.error)
    setStrokes([])
    setTypes(false)
    setComplaint(null)
    setTrouble(null)
    await signed()
  }
  return (
    <form
      class="sign-form"
      onSubmit={(event) => {
        event.preventDefault()
        void sign()
      }}
    >
      <div class="fields">
        <label>
          <span>{m.sign.name}</span>
          <input
            value={name}
            autocomplete="name"
            maxLength={200}
            onInput={({ currentTarget }) => setName(currentTarget.value)}
          />
        </label>
        <label>
          <span>{m.sign.role}</span>
          <input
            value={role}
            autocomplete="organization-title"
            maxLength={200}
            onInput={({ currentTarget }) => setRole(currentTarget.value)}
          />
        </label>
      </div>
      <label class="because">
        <span>{m.sign.statement}</span>
        <textarea
          rows={2}
          maxLength={2000}
          value={statement}
          onInput={({ currentTarget }) => setStatement(currentTarget.value)}
        />
      </label>
      <label class="check">
        <input type="checkbox" checked={types} onChange={({ currentTarget }) => setTypes(currentTarget.checked)} />
        {m.sign.typeInstead}
      </label>
      {types ? (
        <Signature signature={{ kind: 'typed' }} name={name.trim()} />
      ) : (
        <div>
          <p class="label">{m.sign.drawHere}</p>
          <SignaturePad strokes={strokes} change={setStrokes} />
          <button type="button" class="button small" disabled={strokes.length === 0} onClick={() => setStrokes([])}>
            {m.sign.clear}
          </button>
        </div>
      )}
      {complaint !== null && (
        <p class="trouble" role="alert">
          {complaint}
        </p>
      )}
      {trouble !== null && <TroubleNote title={m.sign.notSigned} trouble={trouble} />}
      <button type="submit" class="button main">
        {m.sign.sign}
      </button>
    </form>
  )
}

/** The free findings that the record takes in; nothing where there are none. */
function namedFindings({ freeFindings }: JudgedRun): { readonly findings?: string[] } {
  if (freeFindings.length === 0) return {}
  return { findings: freeFindings.flatMap(({ id, closed }) => (closed === null ? [id] : [id, closed.id])) }
}

/** The hash of that text; null while it is being made, or where there is no text. */
function useHash(text: string | null): string | null {
  const [hash, setHash] = useState<string | null>(null)
  useEffect(() => {
    let isWanted = true
    setHash(null)
    if (text !== null)
      void sha256Of(new TextEncoder().encode(text).buffer).then((made) => {
        if (isWanted) setHash(made)
      })
    return () => {
      isWanted = false
    }
  }, [text])
  return hash
}

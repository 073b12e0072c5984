import { useMemo, useState } from 'preact/hooks'
import { runToValue } from '../../formats/run/write-run.ts'
import { type EditEffects, editEffects } from '../../operations/edit-run.ts'
import { entriesInForce } from '../../operations/entries-in-force.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { KeptRun, RunSource, Trouble } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { askedWords } from '../entry/asked-words.ts'
import { placeWords, readWords } from '../entry/reading-words.ts'
import { useWhoReads } from '../entry/who-reads.tsx'
import { asWritten, say } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { goTo, panePath } from '../route.ts'
import type { Offered } from './layouts-beside.tsx'
import { decidedRun } from './run-draft.ts'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly kept: KeptRun
  readonly judged: JudgedRun
  readonly isChanged: boolean
  readonly offered: Offered
  readonly chosen: number
  readonly isCurrent: boolean
  /** Id that the version will have, and why it is made, as somebody writes it. */
  readonly id: string
  readonly because: string
  readonly giveReason: (because: string) => void
  readonly saved: () => void
}

/** What becomes of the run and its readings when the edit is saved, and the way to save it. */
export function SaveVersion(props: Props) {
  const { source, kept, judged, isChanged, offered, chosen, isCurrent, id, because } = props
  const { save } = words()
  const [isMissing, setMissing] = useState(false)
  const [isSaving, setSaving] = useState(false)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  const { name, field } = useWhoReads()
  const [loaded] = useLoaded(`photos ${kept.id}`, () => source.entries(kept.id, 'photo'))
  const [loadedTickets] = useLoaded(`tickets ${kept.id}`, () => source.entries(kept.id, 'locate-ticket'))
  const photos = useMemo(
    () => (loaded.state === 'loaded' ? entriesInForce(loaded.value).map(({ body }) => body.of) : []),
    [loaded],
  )
  const tickets = useMemo(
    () => (loadedTickets.state === 'loaded' ? entriesInForce(loadedTickets.value).map(({ body }) => body) : []),
    [loadedTickets],
  )
  const isAsIs = chosen === offered.asIs
  const effectsFor = (reason: string | null): EditEffects => {
    const { request, layouts, run } = offered
    const layout = layouts[chosen]!
    const asked = { run: decidedRun(run, layout, isAsIs), request, layout }
    const { freeFindings } = judged.judgement
    return editEffects({ ...judged, photos, freeFindings, tickets }, kept.versions, asked, {
      version: id,
      because: reason,
    })
  }
  const effects = useMemo(() => effectsFor(null), [judged, kept, offered, chosen, photos, tickets])
  if (!isChanged && isAsIs)
    return (
      <section class="sheet run-form-save">
        <p class="hint">{save.same}</p>
      </section>
    )
  const keep = async (): Promise<void> => {
    const [by, reason] = [name(), because.trim()]
    setMissing(reason === '')
    if (isSaving || !isCurrent || by === null || reason === '') return
    setSaving(true)
    const body = runToValue(effectsFor(reason).run)
    const answer = await source.saveVersion(kept.id, kept.version, id, body, by)
    setSaving(false)
    if (!answer.ok) return setTrouble(answer.error)
    props.saved()
    goTo(panePath(kept.id, 'layout'))
  }
  return (
    <section class="sheet run-form-save" aria-labelledby="save-title">
      <h2 id="save-title">{save.title}</h2>
      <Effects effects={effects} judged={judged} />
      <label>
        <span>{save.because}</span>
        <textarea
          value={because}
          rows={2}
          maxLength={500}
          aria-invalid={isMissing && because.trim() === ''}
          aria-describedby={isMissing ? 'because-missing' : undefined}
          onInput={({ currentTarget }) => props.giveReason(currentTarget.value)}
        />
      </label>
      {isMissing && because.trim() === '' && (
        <p class="field-wrong" id="because-missing" role="alert">
          {save.becauseMissing}
        </p>
      )}
      {field}
      {trouble !== null && <TroubleNote title={save.notSaved} trouble={trouble} />}
      <button type="button" class="button main" aria-disabled={isSaving || !isCurrent} onClick={() => void keep()}>
        {save.save}
      </button>
    </section>
  )
}

/** How many readings are listed by themselves. */
const mostListed = 12

function Effects({ effects, judged }: { readonly effects: EditEffects; readonly judged: JudgedRun }) {
  const { save } = words()
  const { staying, asked, photosAsked, findingsLeft, ticketsLeft, otherLimits, isOnlyNamed, kept, gone, added } =
    effects
  const nameOf = askedWords(judged)
  const requirementOf = (id: string) => judged.requirements.find((one) => one.id === id) ?? null
  if (isOnlyNamed) return <p>{save.onlyNamed(staying)}</p>
  return (
    <>
      <ul>
        <li>{save.places(kept.length, gone.length, added.length)}</li>
        {(staying > 0 || asked.length > 0) && <li>{save.staying(staying)}</li>}
        {photosAsked > 0 && <li>{save.photos(photosAsked)}</li>}
        {findingsLeft.length > 0 && (
          <li>
            {save.findings(findingsLeft.length)}
            <ul>
              {findingsLeft.map(({ finding, place }) => (
                <li key={finding.id}>
                  {placeWords(place!, judged.run.units)}: {say({ kind: 'seen', what: finding.what })}
                  {finding.note !== null && `, ${asWritten(finding.note)}`}
                </li>
              ))}
            </ul>
          </li>
        )}
        {ticketsLeft.length > 0 && (
          <li>{save.tickets(ticketsLeft.map(({ number }) => asWritten(number)).join(', '))}</li>
        )}
        {otherLimits.length > 0 && <li>{save.limits(otherLimits.length)}</li>}
        {asked.length > 0 && <li>{save.signed}</li>}
      </ul>
      {asked.length > 0 && (
        <div class="run-form-asked-earlier">
          <p>
            <b>{save.asked(asked.length)}</b>
          </p>
          <ul>
            {asked.slice(0, mostListed).map(({ reading }) => (
              <li key={reading.id}>
                {nameOf(reading.of, null)}: {readWords(reading, requirementOf(reading.of), judged.run.units)}
              </li>
            ))}
            {asked.length > mostListed && <li>{save.more(asked.length - mostListed)}</li>}
          </ul>
        </div>
      )}
    </>
  )
}

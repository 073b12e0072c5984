import type { JudgedRun } from '../../operations/judge-readings.ts'
import { placeWords, unprovenWords } from '../entry/reading-words.ts'
import { m, say } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { requirementPath } from '../route.ts'

/** What the record does not prove: what nobody read, what is too close, and limits without a document. */
export function UnprovenPane({ judged, run }: { readonly judged: JudgedRun; readonly run: string }) {
  const { unproven, verdicts } = judged.judgement
  const verdictOf = new Map(verdicts.map(({ requirement, verdict }) => [requirement, verdict]))
  const mustOf = new Map(judged.requirements.map(({ id, must }) => [id, must]))
  return (
    <section class="sheet">
      <h2>{m.run.withCount(m.unproven.title, unproven.length)}</h2>
      {unproven.length === 0 && <p>{m.unproven.none}</p>}
      <ul class="plain">
        {unproven.map(({ requirement, place, because }) => {
          const verdict = verdictOf.get(requirement)!
          return (
            <li key={requirement}>
              <a class="row-link" href={requirementPath(run, requirement)}>
                <VerdictMark word={verdict} />
                <span>
                  <b>{placeWords(place)}.</b> {say(mustOf.get(requirement)!, judged.run.units)}{' '}
                  <i>{unprovenWords(because, judged.run.units)}</i>
                </span>
              </a>
            </li>
          )
        })}
      </ul>
      <h2>{m.run.withCount(m.unproven.unconfirmed, judged.unconfirmed.length)}</h2>
      <p>{judged.unconfirmed.length === 0 ? m.unproven.noneUnconfirmed : m.unproven.unconfirmedHow}</p>
      <ul class="plain">
        {judged.unconfirmed.map(({ id, place, must }) => (
          <li key={id}>
            <a class="row-link" href={requirementPath(run, id)}>
              <span>
                <b>{placeWords(place)}.</b> {say(must, judged.run.units)}
              </span>
            </a>
          </li>
        ))}
      </ul>
      {judged.unusual.length > 0 && (
        <>
          <h2>{m.run.withCount(m.unproven.unusual, judged.unusual.length)}</h2>
          <p>{m.unproven.unusualHow}</p>
          <ul class="plain">
            {judged.unusual.map((one) => (
              <li key={one.place}>{say({ kind: 'unusual', ...one }, judged.run.units)}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

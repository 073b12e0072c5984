import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { requirementPath } from '../route.ts'

/** What fails, with what to do about it, in walking order. */
export function FindingsPane({ judged, run }: { readonly judged: JudgedRun; readonly run: string }) {
  const { findings } = judged.judgement
  const mustOf = new Map(judged.requirements.map(({ id, must, place }) => [id, `${place.name}: ${must}`]))
  return (
    <section class="sheet">
      <h2>{m.run.withCount(m.findings.title, findings.length)}</h2>
      {findings.length === 0 && <p>{m.findings.none}</p>}
      <ol class="findings">
        {findings.map(({ id, place, what, remedy, requirements }) => (
          <li key={id} class="finding">
            <h3>
              <VerdictMark word="fails" /> {place.name}
            </h3>
            <p>{what}</p>
            <p class="remedy">
              <b>{m.findings.remedy}:</b> {remedy}
            </p>
            <p>{m.findings.read}:</p>
            <ul class="plain">
              {requirements.map((requirement) => (
                <li key={requirement}>
                  <a class="row-link" href={requirementPath(run, requirement)}>
                    {mustOf.get(requirement)}
                  </a>
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </section>
  )
}

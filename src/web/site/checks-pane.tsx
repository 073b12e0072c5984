import type { FitCheck } from '../../core/fit/fit-check.ts'
import type { Saying } from '../../words/saying.ts'
import { say } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { Unconfirmed } from './unconfirmed.tsx'
import { words } from './words.ts'

interface Props {
  readonly checks: readonly FitCheck[]
  readonly units: 'us' | 'metric'
}

/** Every check of the hardware against the site: what fails first, then what is unread; what meets stands folded. */
export function ChecksPane({ checks, units }: Props) {
  const { checks: s } = words()
  const having = (verdict: FitCheck['verdict']): readonly FitCheck[] =>
    checks.filter((check) => check.verdict === verdict)
  const meeting = having('meets')
  return (
    <section class="sheet site-checks" aria-labelledby="site-checks-title">
      <h2 id="site-checks-title">{s.title}</h2>
      <p class="hint">{s.how}</p>
      <CheckList checks={[...having('fails'), ...having('unread')]} units={units} />
      {meeting.length > 0 && (
        <details class="form-section">
          <summary>
            <VerdictMark word="meets" />
            <span>{s.meet(meeting.length)}</span>
          </summary>
          <CheckList checks={meeting} units={units} />
        </details>
      )}
    </section>
  )
}

const CheckList = ({ checks, units }: Props) =>
  checks.length === 0 ? null : (
    <ul>
      {checks.map((check) => (
        <li key={JSON.stringify(check.what)} class="site-check">
          <VerdictMark word={check.verdict} />
          <h3>{say(check.what, units)}</h3>
          <dl>
            {factsOf(check).map(([label, value]) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{say(value, units)}</dd>
              </div>
            ))}
            <div>
              <dt>{words().checks.source}</dt>
              <dd>
                {say(check.source)}
                <Unconfirmed confirmation={check.confirmation} />
              </dd>
            </div>
          </dl>
        </li>
      ))}
    </ul>
  )

function factsOf({ limit, value, smallestChange }: FitCheck): readonly (readonly [string, Saying])[] {
  const { checks: s } = words()
  return [[s.limit, limit], [s.value, value], ...(smallestChange === null ? [] : [[s.change, smallestChange] as const])]
}

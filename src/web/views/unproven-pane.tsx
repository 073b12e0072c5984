import { severityRank, worstSeverity } from '../../core/hardware/severity.ts'
import { contentOf } from '../../core/hardware/sheet-text.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { unprovenWords } from '../entry/reading-words.ts'
import { m, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { requirementPath } from '../route.ts'
import { groupByPlace, type PlaceGroup, worstOf } from './walk-groups.ts'

interface Props {
  readonly judged: JudgedRun
  readonly run: string
}

/** What the record does not prove: what nobody read, what is too close, and limits without a document. */
export function UnprovenPane({ judged, run }: Props) {
  const { unproven } = judged.judgement
  return (
    <section class="sheet">
      <h2>{m.run.withCount(m.unproven.title, unproven.length)}</h2>
      {unproven.length === 0 ? <p>{m.unproven.none}</p> : <Unproven judged={judged} run={run} />}
      <h2>{m.run.withCount(m.unproven.unconfirmed, judged.unconfirmed.length)}</h2>
      <p>{judged.unconfirmed.length === 0 ? m.unproven.noneUnconfirmed : m.unproven.unconfirmedHow}</p>
      <Unconfirmed judged={judged} run={run} />
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

/** What is not proven stands open as long as it is no more than this. */
const fewEnough = 40

/** Place by place, those first where what is not proven could do the worst. */
function Unproven({ judged, run }: Props) {
  const { unproven, verdicts } = judged.judgement
  const verdictOf = new Map(verdicts.map(({ requirement, verdict }) => [requirement, verdict]))
  const becauseOf = new Map(unproven.map(({ requirement, because }) => [requirement, because]))
  const rank = ({ members }: PlaceGroup): number => severityRank(worstSeverity(members.map(({ severity }) => severity)))
  const groups = groupByPlace(judged.requirements.filter(({ id }) => becauseOf.has(id)))
  const row = ({ id, place, must }: Requirement, isPlaced: boolean) => (
    <li key={id}>
      <a class="row-link" href={requirementPath(run, id)}>
        <VerdictMark word={verdictOf.get(id)!} />
        <span>
          {isPlaced && `${say(place, judged.run.units)}: `}
          {say(must, judged.run.units)} <i>{unprovenWords(becauseOf.get(id)!, judged.run.units)}</i>
        </span>
      </a>
    </li>
  )
  return (
    <div>
      {groups
        .toSorted((a, b) => rank(a) - rank(b))
        .map((group) => {
          const { id, place, members } = group
          const { worst, count, applying } = worstOf(members.map((one) => verdictOf.get(one.id)!))
          return (
            <FoldByItself
              key={id}
              level={3}
              title={place === null ? m.walk.holds : say(place, judged.run.units)}
              beside={<VerdictMark word={worst} count={count} of={applying} />}
              // What no walk settles is found nowhere else.
              opensFirst={unproven.length <= fewEnough || members.some(({ look }) => look.kind === 'record')}
            >
              {() => <ul class="plain">{members.map((one) => row(one, place === null))}</ul>}
            </FoldByItself>
          )
        })}
    </div>
  )
}

/** Each limit that nobody confirmed once, and the places that are judged by it. */
function Unconfirmed({ judged, run }: Props) {
  const byMust = new Map<string, Requirement[]>()
  for (const one of judged.unconfirmed) {
    const alike = byMust.get(contentOf(one.must))
    if (alike === undefined) byMust.set(contentOf(one.must), [one])
    else alike.push(one)
  }
  return (
    <div>
      {[...byMust].map(([content, alike]) => (
        <FoldByItself
          key={content}
          level={3}
          title={say(alike[0]!.must, judged.run.units)}
          beside={<b class="count">{alike.length}</b>}
          opensFirst={false}
        >
          {() => (
            <ul class="plain">
              {alike.map(({ id, place }) => (
                <li key={id}>
                  <a class="row-link" href={requirementPath(run, id)}>
                    {say(place, judged.run.units)}
                  </a>
                </li>
              ))}
            </ul>
          )}
        </FoldByItself>
      ))}
    </div>
  )
}

import { useMemo } from 'preact/hooks'
import { remedyOf } from '../../core/verdicts/saying.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import { placeWords } from '../entry/reading-words.ts'
import { OldAndNew } from '../entry/recheck.tsx'
import { m, say } from '../messages.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { requirementPath } from '../route.ts'

interface Props {
  readonly judged: JudgedRun
  readonly punch: readonly PunchItem[]
  readonly run: string
}

/** The punch list: what fails, what was read again without naming its finding, and what a recheck closed. */
export function FindingsPane({ judged, punch, run }: Props) {
  const of = (state: PunchItem['state']): readonly PunchItem[] => punch.filter((item) => item.state === state)
  const list = (items: readonly PunchItem[]) => (
    <ol class="findings">
      {items.map((item) => (
        <PunchEntry key={item.id} judged={judged} item={item} run={run} />
      ))}
    </ol>
  )
  const [open, unnamed, closed] = [of('open'), of('not rechecked'), of('closed')]
  return (
    <section class="sheet">
      <h2>{m.run.withCount(m.findings.title, open.length)}</h2>
      <p class="hint">{m.findings.how}</p>
      {open.length === 0 && <p>{m.findings.none}</p>}
      {list(open)}
      {unnamed.length > 0 && (
        <>
          <h2>{m.run.withCount(m.findings.notRechecked, unnamed.length)}</h2>
          <p>{m.findings.notRecheckedHow}</p>
          {list(unnamed)}
        </>
      )}
      {closed.length > 0 && (
        <>
          <h2>{m.run.withCount(m.findings.closed, closed.length)}</h2>
          {list(closed)}
        </>
      )}
    </section>
  )
}

function PunchEntry({ judged, item, run }: Omit<Props, 'punch'> & { readonly item: PunchItem }) {
  const requirements = useMemo(
    () => item.readings.flatMap(({ requirement }) => judged.requirements.find(({ id }) => id === requirement) ?? []),
    [judged, item],
  )
  const word = item.state === 'open' ? 'fails' : item.state === 'closed' ? 'meets' : 'too close'
  return (
    <li class={`finding finding-${item.state.replaceAll(' ', '-')}`}>
      <h3>
        {item.state === 'not rechecked' ? <b>{m.findings.state[item.state]}</b> : <VerdictMark word={word} />}{' '}
        {placeWords(item.place)}
      </h3>
      <p class="severity" data-severity={item.severity}>
        {say({ kind: 'severity', severity: item.severity })}
      </p>
      {item.finding !== null && (
        <>
          <p>{say(item.finding.what, judged.run.units)}</p>
          <p class="remedy">
            <b>{m.findings.remedy}:</b> {say(remedyOf(item.finding), judged.run.units)}
          </p>
        </>
      )}
      <p>{item.state === 'closed' ? m.findings.proof : m.findings.read}:</p>
      <ul class="plain">
        {requirements.map((requirement) => (
          <li key={requirement.id}>
            <a class="row-link" href={requirementPath(run, requirement.id)}>
              {placeWords(requirement.place)}: {say(requirement.must, judged.run.units)}
            </a>
            <OldAndNew item={item} requirement={requirement} />
          </li>
        ))}
      </ul>
    </li>
  )
}

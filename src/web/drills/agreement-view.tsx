import { useMemo } from 'preact/hooks'
import { topicNamed } from '../../core/record/thing-read.ts'
import { type AgreementOn, inspectorAgreement, width } from '../../operations/inspector-agreement.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { asWritten, say } from '../messages.ts'
import { percent } from './percent.ts'
import { words } from './words.ts'

/** How far two people or more who read one run by themselves agree; nothing where only one read it. */
export function AgreementView({ judged }: { readonly judged: JudgedRun }) {
  const w = words().agreement
  const agreement = useMemo(() => inspectorAgreement(judged), [judged])
  if (agreement === null || agreement.all.same.of === 0) return null
  const { people, all, byTopic } = agreement
  return (
    <section class="agreement">
      <h3>{w.title}</h3>
      <p>{w.who(people.map(asWritten).join(', '))}</p>
      <p class="hint">{w.how}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{w.what}</th>
            <th scope="col">{w.same}</th>
            <th scope="col">{w.kappa}</th>
            <th scope="col">{w.alpha}</th>
          </tr>
        </thead>
        <tbody>
          <Row name={w.all} on={all} />
          {byTopic.map(({ topic, ...on }) => (
            <Row key={topic} name={say(topicNamed(topic, judged.run.sheets))} on={on} />
          ))}
        </tbody>
      </table>
      {all.leastForWidth !== null && <p class="hint">{w.least(all.leastForWidth, percent(width))}</p>}
    </section>
  )
}

function Row({ name, on }: { readonly name: string; readonly on: AgreementOn }) {
  const w = words()
  const { times, of, low, high } = on.same
  const beyond = (value: number | null): string => (value === null ? w.agreement.notTold : value.toFixed(2))
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{w.debrief.of(times, of, percent(low), percent(high))}</td>
      <td>{beyond(on.kappa)}</td>
      <td>{beyond(on.alpha)}</td>
    </tr>
  )
}

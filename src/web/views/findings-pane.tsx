import { useMemo } from 'preact/hooks'
import { severityOf } from '../../core/hardware/severity.ts'
import { contentOf } from '../../core/hardware/sheet-text.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { remedyOf, whatMustBe, whatWasFound } from '../../core/verdicts/saying.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { PunchItem } from '../../operations/punch-list.ts'
import type { RunSource } from '../data/run-source.ts'
import { placeWords } from '../entry/reading-words.ts'
import { OldAndNew } from '../entry/recheck.tsx'
import type { SideEntries } from '../fieldwork/use-side-entries.ts'
import { m, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { requirementPath } from '../route.ts'
import { Assigned } from './assigned.tsx'
import { FreeFindings } from './free-findings.tsx'

interface Props {
  readonly judged: JudgedRun
  readonly source: RunSource
  readonly side: SideEntries
  readonly punch: readonly PunchItem[]
  readonly run: string
  readonly seenAt: string | null
  readonly again: () => Promise<void>
}

/** Findings that all stand open; of more, the worst, which comes first. */
const fewEnough = 8

/** The punch list: what fails, what was read again without naming its finding, and what a recheck closed. */
export function FindingsPane(props: Props) {
  const { source, judged, side, punch, run, seenAt, again } = props
  const of = (state: PunchItem['state']): readonly PunchItem[] => punch.filter((item) => item.state === state)
  const list = (items: readonly PunchItem[], opens: number) => (
    <ol class="findings">
      {items.map((item, i) => (
        <PunchEntry key={item.id} {...{ source, judged, side, item, run, again }} opensFirst={i < opens} />
      ))}
    </ol>
  )
  const [open, unnamed, closed] = [of('open'), of('not rechecked'), of('closed')]
  const besides = <FreeFindings {...{ source, judged, side, run, seenAt, again }} />
  return (
    <section class="sheet">
      {seenAt !== null && besides}
      <h2>{m.run.withCount(m.findings.title, open.length)}</h2>
      <p class="hint">{m.findings.how}</p>
      {open.length === 0 && <p>{m.findings.none}</p>}
      {list(open, open.length > fewEnough ? 1 : fewEnough)}
      {seenAt === null && besides}
      {unnamed.length > 0 && (
        <>
          <h2>{m.run.withCount(m.findings.notRechecked, unnamed.length)}</h2>
          <p>{m.findings.notRecheckedHow}</p>
          {list(unnamed, fewEnough)}
        </>
      )}
      {closed.length > 0 && (
        <>
          <h2>{m.run.withCount(m.findings.closed, closed.length)}</h2>
          {list(closed, fewEnough)}
        </>
      )}
    </section>
  )
}

interface EntryProps extends Omit<Props, 'punch' | 'seenAt'> {
  readonly item: PunchItem
  readonly opensFirst: boolean
}

function PunchEntry({ source, judged, side, item, run, again, opensFirst }: EntryProps) {
  const requirements = useMemo(
    () => item.readings.flatMap(({ requirement }) => judged.requirements.find(({ id }) => id === requirement) ?? []),
    [judged, item],
  )
  const words = requirements.map((one) => readAgainWords(one, item, judged.run.units))
  const word = item.state === 'open' ? 'fails' : item.state === 'closed' ? 'meets' : 'too close'
  return (
    <li class={`finding finding-${item.state.replaceAll(' ', '-')}`}>
      <FoldByItself
        level={3}
        title={placeWords(item.place, judged.run.units)}
        beside={
          <span class="beside">
            {item.state === 'not rechecked' ? <b>{m.findings.state[item.state]}</b> : <VerdictMark word={word} />}
            <span class="severity" data-severity={severityOf(item.severity)}>
              {say({ kind: 'severity', rated: item.severity })}
            </span>
          </span>
        }
        opensFirst={opensFirst}
      >
        {() => (
          <div class="finding-told">
            {item.finding !== null && (
              <dl class="found">
                {(
                  [
                    [m.findings.found, whatWasFound(item.finding.what)],
                    [m.findings.mustBe, whatMustBe(item.finding.what)],
                    [m.findings.remedy, remedyOf(item.finding)],
                  ] as const
                ).map(([label, said]) => (
                  <div key={label}>
                    <dt>{label}</dt>
                    <dd>{say(said, judged.run.units)}</dd>
                  </div>
                ))}
              </dl>
            )}
            {item.state === 'closed' ? (
              <p>{m.findings.proof}:</p>
            ) : (
              words.some((one) => one !== m.findings.readHere && one !== m.findings.setAsideHere) && (
                <p>{m.findings.read}:</p>
              )
            )}
            <ul class={requirements.length > 1 ? 'plain ways' : 'plain'}>
              {requirements.map((requirement, i) => (
                <li key={requirement.id}>
                  <a class={requirements.length > 1 ? undefined : 'button'} href={requirementPath(run, requirement.id)}>
                    {words[i]}
                  </a>
                  {item.state !== 'open' && (
                    <OldAndNew item={item} requirement={requirement} units={judged.run.units} />
                  )}
                </li>
              ))}
            </ul>
            {item.state !== 'closed' && <Assigned {...{ source, side, run, again }} finding={item.id} />}
          </div>
        )}
      </FoldByItself>
    </li>
  )
}

/** What is read again: the requirement where the finding does not say it, its place where that is another one. */
function readAgainWords(requirement: Requirement, { finding, place }: PunchItem, units: 'us' | 'metric'): string {
  const isHere = requirement.place.id === place.id
  const isSaid = finding?.what.parts.some(
    (part) => part.kind === 'against a rule' && contentOf(part.must) === contentOf(requirement.must),
  )
  if (requirement.maySetAside && requirement.look.kind === 'record') return m.findings.setAsideHere
  if (isSaid) return isHere ? m.findings.readHere : placeWords(requirement.place, units)
  const must = say(requirement.must, units)
  return isHere ? must : `${placeWords(requirement.place, units)}: ${must}`
}

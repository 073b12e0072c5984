import { useMemo, useState } from 'preact/hooks'
import { randomFrom } from '../../core/drill/random.ts'
import type { SaidOfFinding } from '../../core/drill/score.ts'
import type { Severity } from '../../core/hardware/hardware-sheet.ts'
import { contentOf } from '../../core/hardware/sheet-text.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { Finding } from '../../core/verdicts/verdict.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { DrillRow } from '../data/drill-row.ts'
import { placeWords } from '../entry/reading-words.ts'
import { say } from '../messages.ts'
import { practicePath } from '../route.ts'
import { words } from './words.ts'

const severities: readonly Severity[] = ['lets it fail', 'weakens it', 'upkeep']

interface Props {
  readonly run: string
  readonly judged: JudgedRun
  readonly reveal: (said: DrillRow['said']) => void
}

/** What a trainee says of each finding before anything is revealed. */
export function BeforeReveal({ run, judged, reveal }: Props) {
  const w = words().debrief
  const { findings } = judged.judgement
  const [said, setSaid] = useState<Readonly<Record<string, SaidOfFinding>>>({})
  const saidOf = (finding: Finding): SaidOfFinding => said[finding.id] ?? { severity: null, remedy: null }
  const byRequirement = (): DrillRow['said'] =>
    Object.fromEntries(findings.flatMap((one) => one.requirements.map((id) => [id, saidOf(one)])))
  return (
    <section class="sheet debrief">
      <h1>{w.before}</h1>
      <p>{w.beforeHow(findings.length)}</p>
      <ol class="debrief-findings">
        {findings.map((finding) => (
          <li key={finding.id}>
            <SayOf
              judged={judged}
              finding={finding}
              said={saidOf(finding)}
              change={(next) => setSaid({ ...said, [finding.id]: next })}
            />
          </li>
        ))}
      </ol>
      <p class="debrief-acts">
        <button type="button" class="button main" onClick={() => reveal(byRequirement())}>
          {w.reveal}
        </button>
        <a class="button" href={practicePath(run)}>
          {w.back}
        </a>
      </p>
    </section>
  )
}

interface SayProps {
  readonly judged: JudgedRun
  readonly finding: Finding
  readonly said: SaidOfFinding
  readonly change: (said: SaidOfFinding) => void
}

function SayOf({ judged, finding, said, change }: SayProps) {
  const w = words().debrief
  const { units } = judged.run
  const requirement = judged.requirements.find(({ id }) => id === finding.requirements[0])!
  const remedies = useMemo(() => remediesFor(requirement, judged.requirements), [requirement, judged.requirements])
  return (
    <fieldset>
      <legend>
        {placeWords(requirement.place, units)}: {say(requirement.must, units)}
      </legend>
      <label>
        <span>{w.severity}</span>
        <select
          value={said.severity ?? ''}
          onChange={({ currentTarget: { value } }) =>
            change({ ...said, severity: value === '' ? null : (value as Severity) })
          }
        >
          <option value="">{w.open}</option>
          {severities.map((severity) => (
            <option key={severity} value={severity}>
              {say({ kind: 'how bad', severity })}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{w.remedy}</span>
        <select
          value={said.remedy ?? ''}
          onChange={({ currentTarget: { value } }) => change({ ...said, remedy: value === '' ? null : value })}
        >
          <option value="">{w.open}</option>
          {remedies.map(({ topic, remedy }) => (
            <option key={topic} value={topic}>
              {say(remedy, units)}
            </option>
          ))}
        </select>
      </label>
    </fieldset>
  )
}

/** How many remedies stand to choose from, the right one with them. */
const choices = 4

/** The remedy of the requirement among those of others of its run, in an order that is the same each time. */
function remediesFor(requirement: Requirement, all: readonly Requirement[]): readonly Requirement[] {
  const own = contentOf(requirement.remedy)
  const others = new Map<string, Requirement>()
  for (const one of all)
    if (one.look.kind !== 'record' && one.topic !== requirement.topic && contentOf(one.remedy) !== own)
      others.set(one.topic, one)
  const random = randomFrom(requirement.place.number, requirement.topic.length)
  return random.shuffled([requirement, ...random.shuffled([...others.values()]).slice(0, choices - 1)])
}

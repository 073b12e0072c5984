import type { Drill } from '../../core/drill/make-drill.ts'
import { trueAnswer } from '../../core/drill/read-as-built.ts'
import type { DrillScore, FaultScore } from '../../core/drill/score.ts'
import type { MeasuredAnswer } from '../../core/measurement/reading.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { sheetsInUse } from '../../operations/sheets-in-use.ts'
import type { DrillRow } from '../data/drill-row.ts'
import { answerWords, placeWords } from '../entry/reading-words.ts'
import { RequirementFacts } from '../entry/requirement-facts.tsx'
import { say } from '../messages.ts'
import { drillsPath } from '../route.ts'
import { percent } from './percent.ts'
import { words } from './words.ts'

interface Props {
  readonly row: DrillRow
  readonly judged: JudgedRun
  readonly drill: Drill
  readonly score: DrillScore
}

/** What was hidden, fault by fault, with rule, source, figure and remedy; what was called wrong and is right; the score. */
export function Revealed({ row, judged, drill, score }: Props) {
  const w = words().debrief
  const byId = new Map(judged.requirements.map((one) => [one.id, one]))
  return (
    <section class="sheet debrief">
      <h1>{w.title}</h1>
      <Figures row={row} score={score} />
      <p class="hint">{w.licence}</p>
      <h2>{w.findings}</h2>
      <ol class="debrief-faults">
        {score.faults.map((one) => (
          <li key={one.fault.requirement} data-outcome={one.outcome}>
            <FaultTold one={one} requirement={byId.get(one.fault.requirement)!} judged={judged} drill={drill} />
          </li>
        ))}
      </ol>
      <h2>{w.alarms}</h2>
      {score.falseAlarms.length === 0 ? (
        <p>{w.noAlarms}</p>
      ) : (
        <ul class="debrief-faults">
          {score.falseAlarms.map((id) => (
            <li key={id}>
              <Told requirement={byId.get(id)!} judged={judged} drill={drill} />
            </li>
          ))}
        </ul>
      )}
      <p>
        <a class="button main" href={drillsPath}>
          {w.again}
        </a>
      </p>
    </section>
  )
}

function Figures({ row, score }: Pick<Props, 'row' | 'score'>) {
  const w = words().debrief
  const { detection } = score
  const seconds = Math.round((Date.parse(row.endedAt ?? row.beganAt) - Date.parse(row.beganAt)) / 1000)
  const figure = (value: number): string => value.toFixed(1)
  return (
    <>
      <h2>{w.score}</h2>
      <dl class="debrief-score">
        <Figure name={w.inAll}>
          {words().came(
            score.faults.filter(({ outcome }) => outcome === 'found').length,
            score.faults.length,
            score.falseAlarms.length,
          )}
        </Figure>
        <Figure name={w.time}>{w.minutes(Math.floor(seconds / 60), seconds % 60)}</Figure>
        {detection !== null && (
          <>
            <Figure name={w.hits}>
              {w.of(
                ...([detection.hits.times, detection.hits.of] as const),
                ...([percent(detection.hits.low), percent(detection.hits.high)] as const),
              )}
            </Figure>
            <Figure name={w.falseAlarms}>
              {w.of(
                ...([detection.falseAlarms.times, detection.falseAlarms.of] as const),
                ...([percent(detection.falseAlarms.low), percent(detection.falseAlarms.high)] as const),
              )}
            </Figure>
            <Figure name={w.sensitivity}>
              {w.from(
                figure(detection.sensitivity),
                figure(detection.sensitivityLow),
                figure(detection.sensitivityHigh),
              )}
            </Figure>
            <Figure name={w.criterion}>{figure(detection.criterion)}</Figure>
          </>
        )}
      </dl>
      {detection !== null && <p class="hint">{w.sensitivityHow}</p>}
    </>
  )
}

const Figure = ({ name, children }: { readonly name: string; readonly children: string }) => (
  <div>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </div>
)

interface FaultProps {
  readonly one: FaultScore
  readonly requirement: Requirement
  readonly judged: JudgedRun
  readonly drill: Drill
}

function FaultTold({ one, ...told }: FaultProps) {
  const w = words().debrief
  const said = ([w.severityWord, w.remedyWord] as const).flatMap((name, i) => {
    const isRight = i === 0 ? one.severity : one.remedy
    return isRight === null ? [] : [isRight ? w.right(name) : w.wrong(name)]
  })
  return (
    <>
      <p class="debrief-outcome">
        <b>{w.outcome[one.outcome]}</b> <span>{words().sizes[one.fault.size]}</span>
        {said.map((text) => (
          <span key={text}>{text}</span>
        ))}
      </p>
      <Told {...told} />
    </>
  )
}

/** A place, what is asked there, what is true there, and all that its requirement says. */
function Told({ requirement, judged, drill }: Omit<FaultProps, 'one'>) {
  const w = words().debrief
  const { units } = judged.run
  const truth = trueAnswer(drill.site, requirement)
  const sheet = sheetsInUse(judged.model).find(({ id }) => id === requirement.sheet) ?? null
  return (
    <>
      <h3>{placeWords(requirement.place, units)}</h3>
      <p>{say(requirement.must, units)}</p>
      {truth !== null && (
        <p>
          {w.stood(
            answerWords(
              truth.kind === 'measured' ? ({ ...truth, resolution: null } satisfies MeasuredAnswer) : truth,
              requirement,
              units,
            ),
          )}
        </p>
      )}
      <details>
        <summary>{w.whole}</summary>
        <RequirementFacts judged={judged} requirement={requirement} sheet={sheet} />
      </details>
    </>
  )
}

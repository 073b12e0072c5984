import '../style/drills.css'
import { useEffect, useMemo } from 'preact/hooks'
import { type SaidOfFinding, scoreDrill } from '../../core/drill/score.ts'
import { instrumentsOf } from '../../operations/instruments-of.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { now } from '../data/device.ts'
import type { DrillResult, DrillRow } from '../data/drill-row.ts'
import type { RunSource } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { drillsPath } from '../route.ts'
import { BeforeReveal } from './before-reveal.tsx'
import { drillOf } from './drill-of.ts'
import { Revealed } from './revealed.tsx'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly run: string
}

/** The end of a drill: what its trainee says of each finding, then what was hidden. */
export function DebriefView({ source, run }: Props) {
  const w = words()
  const [opened] = useLoaded(run, () => source.run(run))
  const [drills, again] = useLoaded(`drills ${run}`, () => source.drills())
  useEffect(() => {
    document.title = `${w.debrief.title} | ${m.page.name}`
  }, [w])
  const trouble = [opened, drills].find((one) => one.state === 'failed')
  if (trouble?.state === 'failed')
    return (
      <section class="sheet">
        <h1>{w.debrief.title}</h1>
        <TroubleNote title={m.trouble.run} trouble={trouble.trouble} again={again} />
        <p>
          <a href={drillsPath}>{w.title}</a>
        </p>
      </section>
    )
  if (opened.state !== 'loaded' || drills.state !== 'loaded' || !opened.value.drawn.ok)
    return (
      <section class="sheet">
        <p role="status" class="loading">
          {m.page.loading}
        </p>
      </section>
    )
  const row = drills.value.find((one) => one.run === run)
  if (row === undefined)
    return (
      <section class="sheet">
        <h1>{m.page.nothingHere}</h1>
        <p>
          <a href={drillsPath}>{w.title}</a>
        </p>
      </section>
    )
  const { judged } = opened.value.drawn.value
  const reveal = (said: DrillRow['said']): void => {
    const ended = { ...row, said, endedAt: now() }
    void source.keepDrill({ ...ended, result: resultOf(ended, judged) }).then(again)
  }
  return row.endedAt === null ? (
    <BeforeReveal run={run} judged={judged} reveal={reveal} />
  ) : (
    <Debriefed row={row} judged={judged} />
  )
}

function Debriefed({ row, judged }: { readonly row: DrillRow; readonly judged: JudgedRun }) {
  const score = useMemo(() => scoreOf(row, judged), [row, judged])
  return <Revealed row={row} judged={judged} drill={drillOf(row, judged)} score={score} />
}

function scoreOf(row: DrillRow, judged: JudgedRun) {
  const said = new Map<string, SaidOfFinding>(Object.entries(row.said))
  return scoreDrill(drillOf(row, judged), judged.judgement.verdicts, said, instrumentsOf(judged.run))
}

function resultOf(row: DrillRow, judged: JudgedRun): DrillResult {
  const { faults, falseAlarms, sound } = scoreOf(row, judged)
  const isFound = ({ outcome }: (typeof faults)[number]): boolean => outcome === 'found'
  const kinds = [...new Set(faults.map(({ fault }) => fault.kind))].map((kind) => {
    const ofKind = faults.filter(({ fault }) => fault.kind === kind)
    return { kind, there: ofKind.length, found: ofKind.filter(isFound).length }
  })
  return {
    ...{ found: faults.filter(isFound).length, faults: faults.length, kinds },
    ...{ falseAlarms: falseAlarms.length, sound },
    verdicts: Object.fromEntries(
      judged.judgement.verdicts.flatMap(({ requirement, verdict, readings }) =>
        readings.length > 0 && (verdict === 'meets' || verdict === 'fails' || verdict === 'too close')
          ? [[requirement, verdict]]
          : [],
      ),
    ),
  }
}

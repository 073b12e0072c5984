import type { JudgedRun } from '../../operations/judge-readings.ts'
import type { RunSource } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { ScenePane } from '../scene/scene-pane.tsx'
import { drillOf } from './drill-of.ts'

interface Props {
  readonly source: RunSource
  readonly judged: JudgedRun
  readonly run: string
}

/** The scene of a practice run, which stands as its drill built it. */
export function DrillScenePane({ source, judged, run }: Props) {
  const [drills] = useLoaded(run, () => source.drills())
  const row = drills.state === 'loaded' ? drills.value.find((one) => one.run === run) : undefined
  return row === undefined ? null : <ScenePane judged={judged} run={run} built={drillOf(row, judged).site.asBuilt} />
}

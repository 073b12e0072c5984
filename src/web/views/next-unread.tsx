import type { Requirement } from '../../core/requirements/requirement.ts'
import { m, say } from '../messages.ts'
import { panePath, requirementPath } from '../route.ts'

interface Props {
  readonly run: string
  readonly units: 'us' | 'metric'
  /** Null when nothing is left that could be read. */
  readonly next: Pick<Requirement, 'id' | 'place'> | null
  /** How many findings stand. */
  readonly standing: number
}

/** What to do next, in the reach of the thumb: to read on; or, once all is read, to see to the findings, or to sign. */
export function NextUnread({ run, units, next, standing }: Props) {
  const [path, words] =
    next !== null
      ? [requirementPath(run, next.id), m.walk.next(say(next.place, units))]
      : standing > 0
        ? [panePath(run, 'findings'), m.run.withCount(m.run.pane.findings, standing)]
        : [panePath(run, 'sign-off'), m.run.pane['sign-off']]
  return (
    <div class="next-bar">
      {next === null && <p>{m.walk.nothingUnread}</p>}
      <a class="button main" href={path}>
        {words}
      </a>
    </div>
  )
}

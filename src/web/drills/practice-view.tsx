import type { RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import type { Route } from '../route.ts'
import { DrillsView } from './drills-view.tsx'

const lessonView = partOf(() => import('./lesson-view.tsx'))
const classView = partOf(() => import('./class-view.tsx'))
const debriefView = partOf(() => import('./debrief-view.tsx'))

interface Props {
  readonly source: RunSource
  readonly route: Extract<Route, { view: 'drills' | 'debrief' }>
}

/** Practice, but for the walk of a practice run, which is that of any run. */
export function PracticeView({ source, route }: Props) {
  if (route.view === 'debrief')
    return (
      <LaterPart part={debriefView} title={m.trouble.run}>
        {({ DebriefView }) => <DebriefView key={route.run} source={source} run={route.run} />}
      </LaterPart>
    )
  switch (route.part) {
    case 'drills':
      return <DrillsView source={source} />
    case 'lesson':
      return (
        <LaterPart part={lessonView} title={m.trouble.site}>
          {({ LessonView }) => <LessonView />}
        </LaterPart>
      )
    case 'class':
      return (
        <LaterPart part={classView} title={m.trouble.site}>
          {({ ClassView }) => <ClassView />}
        </LaterPart>
      )
  }
}

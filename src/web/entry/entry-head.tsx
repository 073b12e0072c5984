import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m } from '../messages.ts'
import { parseRoute, wayBack } from '../route.ts'
import { placeWords } from './reading-words.ts'

interface Props {
  readonly judged: JudgedRun
  readonly run: string
  /** Place of the requirement in walking order. */
  readonly at: number
}

/** The way back to where one came from, the place, and how far along the walk it is. */
export function EntryHead({
  judged: {
    requirements,
    run: { units },
  },
  run,
  at,
}: Props) {
  const { place, hold } = requirements[at]!
  const back = wayBack(run)
  const to = parseRoute(back, '')
  return (
    <div class="entry-steps">
      <a class="button small close" href={back}>
        {to.view === 'run' && to.pane !== 'walk' ? m.run.pane[to.pane] : m.entry.close}
      </a>
      <p class="entry-place">
        {placeWords(place, units)}
        {hold && <span class="tag strong">{m.entry.hold}</span>}
      </p>
      <span class="step-count">{m.entry.place(at + 1, requirements.length)}</span>
    </div>
  )
}

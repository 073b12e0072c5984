import { useMemo } from 'preact/hooks'
import type { Layout, LayoutRequest } from '../../core/layout/layout.ts'
import type { Refusal } from '../../core/layout/refusal.ts'
import { writeSvg } from '../../drawing/svg/write-svg.ts'
import { stripDrawing } from '../../drawing/views/strip.ts'
import type { RunFile } from '../../formats/run/run-file.ts'
import type { EditChoices } from '../../operations/edit-run.ts'
import { explainLayout } from '../../operations/explain-layout.ts'
import { requiredFor } from '../../operations/require-by.ts'
import { stripInput } from '../../operations/strip-input.ts'
import { m, printIn, say } from '../messages.ts'
import { LayoutMiniature } from './layout-miniature.tsx'
import { railsText } from './rail-text.ts'
import { words } from './words.ts'

/** What was laid out for a run as it is written. */
export interface Offered extends EditChoices {
  readonly run: RunFile
  readonly request: LayoutRequest
  readonly more: boolean
  readonly refused: readonly Refusal[]
}

interface Props {
  readonly offered: Offered
  readonly chosen: number
  readonly choose: (index: number) => void
}

/** The layout drawn to scale, those that can be chosen instead, and why it is so. */
export function LayoutsBeside({ offered, chosen, choose }: Props) {
  const { run, request, layouts, more, refused } = offered
  const { beside } = words()
  const layout = layouts[chosen]
  if (layout === undefined)
    return (
      <>
        <p role="alert">
          <b>{beside.none}</b>
        </p>
        <details>
          <summary>{beside.refused}</summary>
          <Reasons reasons={refused.map((one) => say(one, run.units))} />
        </details>
      </>
    )
  return (
    <>
      <Strip run={run} request={request} layout={layout} />
      {run.counted === undefined && (
        <fieldset class="layout-choices">
          <legend>{beside.count(layouts.length, more)}</legend>
          {layouts.map((one, i) => (
            <Choice key={i} offered={offered} index={i} layout={one} isChosen={i === chosen} choose={choose} />
          ))}
        </fieldset>
      )}
      <details>
        <summary>{beside.why}</summary>
        <Reasons reasons={explainLayout(layout, request).map((one) => say(one, run.units))} />
        {refused.length > 0 && (
          <>
            <h3>{beside.refused}</h3>
            <Reasons reasons={refused.map((one) => say(one, run.units))} />
          </>
        )}
      </details>
    </>
  )
}

function Strip({ run, request, layout }: Pick<Offered, 'run' | 'request'> & { readonly layout: Layout }) {
  const print = printIn(run.units)
  const svg = useMemo(
    () => writeSvg(stripDrawing(stripInput(requiredFor(run, { request, layout }), print))),
    [run, request, layout, m],
  )
  return (
    <section
      class="strip-frame"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by key too
      tabIndex={0}
      aria-label={words().beside.strip}
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  )
}

interface ChoiceProps {
  readonly offered: Offered
  readonly index: number
  readonly layout: Layout
  readonly isChosen: boolean
  readonly choose: (index: number) => void
}

function Choice({ offered: { run, layouts, asIs }, index, layout, isChosen, choose }: ChoiceProps) {
  const { beside } = words()
  const { feetInches } = printIn(run.units)
  const { posts, panels, postOneAtInches: origin, score } = layout
  const end = (one: Layout): number => one.postOneAtInches + one.panels.at(-1)!.toInches
  const begin = (one: Layout): number => one.postOneAtInches + Math.min(0, one.panels[0]!.fromInches)
  return (
    <label class={isChosen ? 'layout-choice chosen' : 'layout-choice'}>
      <LayoutMiniature layout={layout} from={Math.min(...layouts.map(begin))} to={Math.max(...layouts.map(end))} />
      <span class="check">
        <input type="radio" name="layout" checked={isChosen} onChange={() => choose(index)} />
        <span>
          <b>
            {beside.pieces(
              panels.length,
              railsText(
                panels.map(({ inches }) => inches),
                run.units,
              ),
            )}
          </b>
          {index === asIs && <span class="tag">{beside.asIs}</span>}
          <br />
          {[
            beside.odd(score.oddPanels),
            `${beside.posts(posts.length)}, ${beside.changed(score.changedPosts)}`,
            beside.rail(feetInches(score.railInches)),
            beside.from(feetInches(origin)),
            beside.to(feetInches(end(layout))),
          ].join(' · ')}
        </span>
      </span>
    </label>
  )
}

const Reasons = ({ reasons }: { readonly reasons: readonly string[] }) => (
  <ul>
    {reasons.map((reason) => (
      <li key={reason}>{reason}</li>
    ))}
  </ul>
)

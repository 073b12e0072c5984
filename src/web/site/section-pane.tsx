import { useMemo, useState } from 'preact/hooks'
import type { Need } from '../../core/need/need.ts'
import type { Site } from '../../core/site/site.ts'
import type { SitePage } from '../../drawing/views/plan/site-view.ts'
import { stationWords } from '../../drawing/views/plan/site-words.ts'
import { planFrame } from '../../drawing/views/plan.ts'
import { sectionDrawing } from '../../drawing/views/section.ts'
import { planInput } from '../../operations/write-site-drawings.ts'
import { m, printIn } from '../messages.ts'
import { Picture } from '../parts/picture.tsx'
import { words } from './words.ts'

interface Props {
  readonly site: Site
  readonly need: Need | null
  readonly page: SitePage
}

/** The cross section at a station that is chosen on a slider; first that of the middle of the first hazard. */
export function SectionPane({ site, need, page }: Props) {
  const { section } = words()
  const [chosen, choose] = useState<number | null>(null)
  const view = useMemo(() => planInput(site, need, page, printIn(site.units)), [site, need, page, m])
  const { from, to } = useMemo(() => planFrame(view).range, [view])
  const [first] = site.hazards
  const station = Math.min(Math.max(chosen ?? (first!.from + first!.to) / 2, from), to)
  const drawing = useMemo(() => sectionDrawing(view, station), [view, station])
  const step = site.units === 'us' ? 0.3048 : 0.25
  return (
    <section class="sheet site-section-pane" aria-labelledby="site-section-title">
      <h2 id="site-section-title">{section.title}</h2>
      <div class="site-station">
        <label for="site-station">
          <span>{section.station}</span>
        </label>
        <output for="site-station">{stationWords(site, station)}</output>
        <input
          id="site-station"
          type="range"
          min={0}
          max={Math.round((to - from) / step)}
          step={1}
          value={Math.round((station - from) / step)}
          aria-valuetext={stationWords(site, station)}
          onInput={({ currentTarget }) => choose(from + Number(currentTarget.value) * step)}
        />
      </div>
      <Picture drawing={drawing} class="section" />
    </section>
  )
}

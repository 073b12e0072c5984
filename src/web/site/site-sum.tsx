import type { DirectionReport } from '../../operations/compute-need.ts'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { longText } from './long-text.ts'
import type { SiteResults } from './solve-site.ts'
import { words } from './words.ts'

/** The need in one line, which stays in sight while numbers are changed. */
export function SiteSum({ results }: { readonly results: SiteResults | null }) {
  const { sum } = words()
  if (results === null)
    return (
      <div class="site-sum" role="status" aria-label={sum.title}>
        <p>
          <b>{sum.notComputed}</b>
        </p>
      </div>
    )
  const { report, checks } = results
  const need = (direction: DirectionReport | null): string =>
    direction === null ? sum.none : longText(direction.lengthOfNeed, report.unit)
  const installed =
    report.installed === null
      ? report.run === null
        ? sum.notChosen
        : sum.noLayout
      : longText(report.installed.length, report.unit)
  const cells = [
    ['approach', sum.approach, need(report.approach)],
    ['departure', sum.departure, need(report.departure)],
    ['installed', sum.installed, installed],
  ] as const
  return (
    <div class="site-sum" role="status" aria-label={sum.title}>
      <dl>
        {cells.map(([id, label, value]) => (
          <div key={id} data-sum={id}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div data-sum="checks">
          <dt class="site-sum-label">{sum.checks}</dt>
          <dd>
            {(['fails', 'unread', 'meets'] as const).map((word) => (
              <VerdictMark key={word} word={word} count={checks.filter(({ verdict }) => verdict === word).length} />
            ))}
          </dd>
        </div>
      </dl>
    </div>
  )
}

import { contentOf } from '../../core/hardware/sheet-text.ts'
import type { Need } from '../../core/need/need.ts'
import type { TableValue } from '../../core/need/tables/table.ts'
import type { Site } from '../../core/site/site.ts'
import { stationWords } from '../../drawing/views/plan/site-words.ts'
import type { FoundDirection } from '../../formats/run/made-of.ts'
import type { DirectionReport, Installed } from '../../operations/compute-need.ts'
import { printIn, say } from '../messages.ts'
import { ProblemList } from '../parts/trouble-note.tsx'
import { longText } from './long-text.ts'
import type { SiteResults } from './solve-site.ts'
import { Unconfirmed } from './unconfirmed.tsx'
import { words } from './words.ts'

interface Props {
  readonly site: Site
  readonly need: Need
  readonly results: SiteResults
}

/** Where the barrier begins and ends, what governs, and by which numbers of which tables. */
export function NeedPane({ site, need, results }: Props) {
  const { report, layoutProblems } = results
  const { need: s } = words()
  return (
    <section class="sheet site-need" aria-labelledby="site-need-title">
      <h2 id="site-need-title">{s.title}</h2>
      <div class="site-directions">
        <Direction
          title={s.approach}
          report={report.approach}
          unit={report.unit}
          station={stationWords(site, need.approach.station)}
        />
        {report.departure === null || need.departure === null ? (
          <div>
            <h3>{s.departure}</h3>
            <p>{s.noDeparture}</p>
          </div>
        ) : (
          <Direction
            title={s.departure}
            report={report.departure}
            unit={report.unit}
            station={stationWords(site, need.departure.station)}
          />
        )}
        <div>
          <h3>{s.installed}</h3>
          {report.installed !== null && <InstalledRail installed={report.installed} unit={report.unit} />}
          {report.run === null && <p>{words().actions.cannotChoose}</p>}
          {layoutProblems.length > 0 && (
            <>
              <p>{words().actions.cannotLayOut}</p>
              <ProblemList problems={layoutProblems} />
            </>
          )}
        </div>
      </div>
      {report.unusual.length > 0 && (
        <>
          <h3>{s.unusual}</h3>
          <ul class="site-notes">
            {report.unusual.map((one) => (
              <li key={one.place}>{say({ kind: 'unusual', ...one })}</li>
            ))}
          </ul>
        </>
      )}
      <Sources values={[...report.approach.sources, ...(report.departure?.sources ?? [])]} />
    </section>
  )
}

interface DirectionProps {
  readonly title: string
  readonly report: FoundDirection & Pick<DirectionReport, 'notes'>
  readonly unit: 'ft' | 'm'
  /** Null where nobody can tell it. */
  readonly station: string | null
}

/** Where the barrier ends for one direction of traffic. */
export function Direction({ title, report, unit, station }: DirectionProps) {
  const { need: s } = words()
  const { governs, notes } = report
  const long = (length: number): string => longText(length, unit)
  const extent =
    governs.lateralExtent === null
      ? null
      : [long(governs.lateralExtent), governs.extentBy === null ? null : s.extentBy[governs.extentBy]]
  const facts = [
    [s.lateral, long(report.lateralAtEnd)],
    ...(station === null ? [] : [[s.station, station] as const]),
    [s.governs, governs.hazard === null ? s.nothing : s.governsBy(governs.hazard, s.rule[governs.rule])],
    ...(extent === null ? [] : [[s.extent, extent.filter((word) => word !== null).join(' ')] as const]),
    [s.runout, long(report.runoutLength)],
    [s.clearZone, long(report.clearZone)],
  ] as const
  return (
    <div>
      <h3>{title}</h3>
      <dl class="site-facts">
        <div>
          <dt>{s.length}</dt>
          <dd class="site-facts-most">{long(report.lengthOfNeed)}</dd>
        </div>
        {facts.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      {notes.length > 0 && (
        <>
          <h4>{s.notes}</h4>
          <ul class="site-notes">
            {notes.map((note) => (
              <li key={contentOf(note)}>{say(note)}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}

function InstalledRail({ installed, unit }: { readonly installed: Installed; readonly unit: 'ft' | 'm' }) {
  const { need: s } = words()
  const { plainPanels } = installed
  const alike = (inches: number): number => plainPanels.filter((one) => one === inches).length
  const facts = [
    [s.counts, installed.counts === null ? s.notCounted : longText(installed.counts, unit)],
    [
      s.plain,
      [
        longText(installed.plainRail, unit),
        ...[...new Set(plainPanels)].map((inches) =>
          s.panels(alike(inches), printIn(unit === 'ft' ? 'us' : 'metric').feetInches(inches)),
        ),
      ].join('; '),
    ],
    [s.posts, String(installed.posts)],
  ] as const
  return (
    <dl class="site-facts">
      <div>
        <dt>{s.installedLength}</dt>
        <dd class="site-facts-most">{longText(installed.length, unit)}</dd>
      </div>
      {facts.map(([label, value]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}

function Sources({ values }: { readonly values: readonly TableValue[] }) {
  const { need: s } = words()
  const once = [...new Map(values.map((value) => [contentOf([value.value, value.source]), value])).values()]
  return (
    <>
      <h3>{s.sources}</h3>
      {once.length === 0 && <p>{s.noSources}</p>}
      <ul class="site-sources">
        {once.map((value) => (
          <li key={contentOf([value.value, value.source])}>
            <b>
              {s.what[value.what]} {tableText(value)}
            </b>{' '}
            {say(value.source)}
            <Unconfirmed confirmation={value.confirmation} />
            {value.remark !== undefined && <span class="hint"> ({say(value.remark)})</span>}
          </li>
        ))}
      </ul>
    </>
  )
}

function tableText({ value, unit }: TableValue): string {
  if (unit === 'a:1') return `${value}:1`
  return unit === 'factor' ? words().need.factor(String(value)) : longText(value, unit)
}

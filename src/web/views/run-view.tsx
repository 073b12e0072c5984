import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Reading } from '../../core/measurement/reading.ts'
import { standingOf } from '../../core/verdicts/free-findings.ts'
import type { NearMark } from '../../documents/day-report.ts'
import { verdictOrder } from '../../drawing/verdict-signs.ts'
import { countVerdicts } from '../../operations/count-verdicts.ts'
import { entriesInForce } from '../../operations/entries-in-force.ts'
import { type JudgedRun, judgeKnown } from '../../operations/judge-readings.ts'
import { postsNearMarks } from '../../operations/locate-warnings.ts'
import { placedTickets } from '../../operations/placed-tickets.ts'
import { punchList } from '../../operations/punch-list.ts'
import type { DrawnRun, KeptRun, RunSource } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { useDrafts } from '../entry/drafts.ts'
import { useSideEntries } from '../fieldwork/use-side-entries.ts'
import { asWritten, m } from '../messages.ts'
import { DoubtHelp } from '../parts/doubt-help.tsx'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { ProgressBar } from '../parts/progress-bar.tsx'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { useFrameByFrame } from '../parts/use-after-frame.ts'
import { AcceptanceMark, VerdictMark } from '../parts/verdict-sign.tsx'
import { listPath, type Pane, panePath, panes, practicePanes, type Route } from '../route.ts'
import { AskedEarlierFold } from './asked-earlier.tsx'
import { ShelfNote } from './shelf-note.tsx'
import { StripView } from './strip-view.tsx'
import { WalkPane } from './walk-pane.tsx'

// What is not the walk is fetched when it is first shown.
const findingsPane = partOf(() => import('./findings-pane.tsx'))
const unprovenPane = partOf(() => import('./unproven-pane.tsx'))
const readingsPane = partOf(() => import('./readings-pane.tsx'))
const dayPane = partOf(() => import('./day-pane.tsx'))
const signOffPane = partOf(() => import('./sign-off-pane.tsx'))
const recordPane = partOf(() => import('./record-pane.tsx'))
const practiseOn = partOf(() => import('../drills/practise-on.tsx'))
const layoutPane = partOf(() => import('./layout-pane.tsx'))
const scenePane = partOf(() => import('../scene/scene-pane.tsx'))
const drillScenePane = partOf(() => import('../drills/drill-scene-pane.tsx'))

type RunRoute = Extract<Route, { view: 'run' }>

interface Props {
  readonly source: RunSource
  readonly route: RunRoute
}

export function RunView({ source, route }: Props) {
  const [loaded, again] = useLoaded(route.run, () => source.run(route.run))
  switch (loaded.state) {
    case 'loading':
      return (
        <section class="sheet">
          <p role="status" class="loading">
            {m.page.loading}
          </p>
        </section>
      )
    case 'failed':
      return (
        <section class="sheet">
          <h1>{m.trouble.run}</h1>
          <TroubleNote title={m.trouble.run} trouble={loaded.trouble} again={again} />
          <p>
            <a href={listPath()}>{m.run.back}</a>
          </p>
        </section>
      )
    case 'loaded': {
      const { kept, drawn } = loaded.value
      if (drawn.ok) return <OpenRun source={source} route={route} kept={kept} drawn={drawn.value} />
      return (
        <section class="sheet">
          <h1>{asWritten(kept.run.name)}</h1>
          <TroubleNote title={m.trouble.layOut} trouble={{ message: '', problems: drawn.error }} />
        </section>
      )
    }
  }
}

interface OpenProps extends Props {
  readonly kept: KeptRun
  readonly drawn: DrawnRun
}

/** The run as it was opened last, and as it is with the readings taken since. */
interface Log {
  readonly opened: DrawnRun
  readonly kept: KeptRun
  readonly judged: JudgedRun
}

/** One and the same, so that nothing is drawn anew once it is known that there are none. */
const noMarks: readonly NearMark[] = []

const logOf = (kept: KeptRun, opened: DrawnRun): Log => ({ opened, kept, judged: opened.judged })

/** The run with everything computed from its file and its readings, anew after each reading. */
function OpenRun({ source, route, ...first }: OpenProps) {
  const [{ opened, kept, judged }, setLog] = useState(() => logOf(first.kept, first.drawn))
  const [near, setNear] = useState<string | null>(null)
  // Title, strip and pane follow each other by a frame, so that the page answers between them.
  const built = useFrameByFrame(3, 1)
  const isBuilt = built === 3
  const [side, sideAgain] = useSideEntries(source, route.run, isBuilt)
  const drafts = useDrafts(source, route.run, kept.version)
  const { model, versions } = judged
  const punch = useMemo(() => punchList(judged), [judged])
  const free = standingOf(judged.judgement.freeFindings)
  const standing = punch.filter(({ state }) => state !== 'closed').length + free.length
  const nearMarks = useMemo(() => {
    const tickets = placedTickets({ model, versions }, entriesInForce(side.tickets))
    return tickets.length === 0 ? noMarks : postsNearMarks(model.layout.posts, tickets)
  }, [model, versions, side.tickets])
  useEffect(() => {
    document.title = `${asWritten(kept.run.name)}: ${m.run.pane[route.pane]} | ${m.page.name}`
  }, [kept.run, route.pane, m])
  const again = useCallback(async (): Promise<void> => {
    const [answer] = await Promise.all([source.run(route.run), sideAgain()])
    if (answer.ok && answer.value.drawn.ok) setLog(logOf(answer.value.kept, answer.value.drawn.value))
  }, [source, route.run, sideAgain])
  // What another tab recorded, or another device sent, appears without being asked for.
  useEffect(
    () =>
      source.onChange(({ runs, isOwn }) => {
        if (isOwn || !runs.includes(route.run)) return
        void again()
      }),
    [source, route.run, again],
  )
  const took = useCallback((readings: readonly Reading[]): void => {
    setLog(({ opened, kept, judged }) => {
      const ids = new Set(kept.readings.map(({ id }) => id))
      const all = [...kept.readings, ...readings.filter(({ id }) => !ids.has(id))]
      return {
        opened,
        kept: { ...kept, readings: all },
        judged: judgeKnown(judged, all, kept.versions, kept.firstAsked, kept.freeFindings),
      }
    })
  }, [])
  const parts = { source, judged, punch, side, sideAgain, run: route.run }
  return (
    <div class={isBuilt ? 'run' : 'run building'} data-pane={route.pane}>
      <TitleBlock judged={judged} />
      {built > 1 && (
        <>
          <StripView
            judged={judged}
            opened={opened}
            route={route}
            near={route.pane === 'walk' ? near : null}
            nearMarks={nearMarks}
          />
          <PaneLinks judged={judged} standing={standing} route={route} />
        </>
      )}
      {isBuilt && route.pane === 'walk' && (
        <WalkPane
          {...parts}
          kept={kept}
          route={route}
          nearMarks={nearMarks}
          drafts={drafts}
          took={took}
          near={setNear}
          standing={standing}
        >
          <AskedEarlierFold source={source} judged={judged} photos={side.photos} strokes={side.strokes} />
        </WalkPane>
      )}
      {isBuilt && route.pane === 'findings' && (
        <LaterPart part={findingsPane} title={m.run.pane.findings}>
          {({ FindingsPane }) => <FindingsPane {...parts} seenAt={route.seenAt} again={again} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'not-proven' && (
        <LaterPart part={unprovenPane} title={m.run.pane['not-proven']}>
          {({ UnprovenPane }) => <UnprovenPane judged={judged} run={route.run} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'readings' && (
        <LaterPart part={readingsPane} title={m.run.pane.readings}>
          {({ ReadingsPane }) => <ReadingsPane judged={judged} run={route.run} drafts={drafts} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'day' && (
        <LaterPart part={dayPane} title={m.run.pane.day}>
          {({ DayPane }) => <DayPane {...parts} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'sign-off' && (
        <LaterPart part={signOffPane} title={m.run.pane['sign-off']}>
          {({ SignOffPane }) => <SignOffPane {...parts} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'record' && (
        <LaterPart part={recordPane} title={m.run.pane.record}>
          {({ RecordPane }) => <RecordPane source={source} judged={judged} run={route.run} />}
        </LaterPart>
      )}
      {isBuilt && (route.pane === 'record' || route.pane === 'readings') && (
        <AskedEarlierFold source={source} judged={judged} photos={side.photos} strokes={side.strokes} />
      )}
      {isBuilt && (route.pane === 'record' || route.pane === 'layout') && <ShelfNote judged={judged} />}
      {isBuilt && route.pane === 'layout' && (
        <LaterPart part={layoutPane} title={m.run.pane.layout}>
          {({ LayoutPane }) => <LayoutPane judged={judged} run={route.run} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'layout' && (
        <LaterPart part={practiseOn} title={m.trouble.site}>
          {({ PractiseOn }) => <PractiseOn run={judged.run} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'scene' && !route.isPractice && (
        <LaterPart part={scenePane} title={m.run.pane.scene}>
          {({ ScenePane }) => <ScenePane judged={judged} run={route.run} built={null} />}
        </LaterPart>
      )}
      {isBuilt && route.pane === 'scene' && route.isPractice && (
        <LaterPart part={drillScenePane} title={m.run.pane.scene}>
          {({ DrillScenePane }) => <DrillScenePane source={source} judged={judged} run={route.run} />}
        </LaterPart>
      )}
    </div>
  )
}

function TitleBlock({ judged }: { readonly judged: JudgedRun }) {
  const { name, road, work, letting, decisionRule } = judged.run
  const counts = countVerdicts(judged.judgement.verdicts)
  const workWords = [
    work === null ? m.run.notSaid : m.run.workWords[work],
    ...(letting === null ? [] : [m.run.let(letting)]),
  ]
  const cells = [
    [m.run.route, road.route === null ? m.run.notSaid : asWritten(road.route)],
    [m.run.datum, road.datumStation === null ? m.run.notSaid : asWritten(road.datumStation)],
    [m.run.work, workWords.join(', ')],
  ] as const
  return (
    <section class="road title-block">
      <div class="title-name">
        <a class="back" href={listPath()}>
          <span>{m.run.back}</span>
        </a>
        <h1>{asWritten(name)}</h1>
      </div>
      <div class="title-verdict" role="status">
        <AcceptanceMark acceptance={judged.judgement.acceptance} />
      </div>
      <dl class="title-cells">
        {cells.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div>
          <dt>{m.run.rule}</dt>
          <dd>
            {decisionRule.kind === 'simple' ? (
              m.run.simple
            ) : (
              <DoubtHelp title={m.run.guardBand(decisionRule.multiple)} />
            )}
          </dd>
        </div>
      </dl>
      <ul class="title-counts" aria-label={m.run.counts}>
        {verdictOrder.map((word) => (
          <li key={word}>
            <VerdictMark word={word} count={counts[word]} />
          </li>
        ))}
      </ul>
      <ProgressBar counts={counts} />
    </section>
  )
}

interface LinksProps {
  readonly judged: JudgedRun
  readonly standing: number
  readonly route: RunRoute
}

function PaneLinks({ judged, standing, route }: LinksProps) {
  const { unproven } = judged.judgement
  const words = (pane: Pane): string => {
    const name = m.run.pane[pane]
    if (pane === 'findings') return m.run.withCount(name, standing)
    return pane === 'not-proven' ? m.run.withCount(name, unproven.length) : name
  }
  // In one row on a phone: the one that is shown is in sight, and so is that there are more beside it.
  const row = useRef<HTMLElement>(null)
  useEffect(() => {
    const [box, current] = [row.current, row.current?.querySelector<HTMLElement>('[aria-current]')]
    if (box && current) box.scrollLeft = current.offsetLeft + current.offsetWidth / 2 - box.clientWidth / 2
  }, [route.pane, m])
  return (
    <nav ref={row} class="panes" aria-label={m.run.panes}>
      {(route.isPractice ? practicePanes : panes).map((pane) => (
        <a key={pane} href={panePath(route.run, pane)} aria-current={pane === route.pane ? 'page' : undefined}>
          {words(pane)}
        </a>
      ))}
    </nav>
  )
}

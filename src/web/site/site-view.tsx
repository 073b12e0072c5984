import { useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Site } from '../../core/site/site.ts'
import '../style/site.css'
import type { RunSource } from '../data/run-source.ts'
import { useShelf } from '../data/use-shelf.ts'
import { Attention } from '../form/attention.tsx'
import { type Draft, textOf, unitsOf, valueAt } from '../form/draft.ts'
import { fieldsOf } from '../form/form-section.ts'
import { FormView } from '../form/form-view.tsx'
import { placeProblems } from '../form/place-problems.ts'
import { type Swept, SweptNote } from '../form/swept.tsx'
import { useEachFrame } from '../form/use-each-frame.ts'
import { language } from '../language.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { useFrameByFrame } from '../parts/use-after-frame.ts'
import { useMedia, wide } from '../parts/use-media.ts'
import { runsPath } from '../route.ts'
import { ChecksPane } from './checks-pane.tsx'
import { withNamedSheets } from './form-hardware.ts'
import { sectionsOf } from './form-sections.ts'
import { keepDraft, keptDraft } from './kept-draft.ts'
import { NeedPane } from './need-pane.tsx'
import { PlanPane } from './plan-pane.tsx'
import { SectionPane } from './section-pane.tsx'
import { SiteActions } from './site-actions.tsx'
import { SiteSum } from './site-sum.tsx'
import { type SolvedSite, solveSite } from './solve-site.ts'
import { words } from './words.ts'

type Change = (draft: Draft) => Draft

/** What the page of a site is built of, in the order of building. */
const stages = ['head', 'site', 'sum', 'plan', 'picture', 'form', 'need', 'section', 'checks'] as const

const unsolved: SolvedSite = { site: null, need: null, results: null, problems: [] }

/** A site whose numbers are changed by hand or on its plan, with everything that follows from them. */
export function SiteView({ source }: { readonly source: RunSource }) {
  const [draft, setDraft] = useState(keptDraft)
  const [swept, setSwept] = useState<Swept | null>(null)
  const isWide = useMedia(wide)
  const settled = useEachFrame(draft)
  const { own, shelf, again } = useShelf(source)
  const asked = useMemo(() => withNamedSheets(shelf, settled), [shelf, settled])
  // Frame by frame, so that the page answers while it is built.
  const built = useFrameByFrame(stages.length, 1)
  const has = (stage: (typeof stages)[number]): boolean => built > stages.indexOf(stage)
  const isSolved = has('site')
  const solved = useMemo(() => (isSolved ? solveSite(asked) : unsolved), [asked, isSolved])
  const results = has('sum') ? (solved.results?.() ?? null) : null
  const drawn = useRef<{ readonly site: Site; readonly draft: Draft } | null>(null)
  if (solved.site !== null) drawn.current = { site: solved.site, draft: settled }
  const sections = useMemo(() => sectionsOf(draft, shelf), [draft, shelf, language()])
  const fields = fieldsOf(sections)
  const problems = placeProblems(
    solved.problems,
    fields.map(({ place }) => place),
  )
  useEffect(() => keepDraft(settled), [settled])
  useEffect(() => {
    document.title = `${words().title} | ${m.page.name}`
  }, [language()])

  const sweep = (change: Change, said: (before: Draft, after: Draft) => string): void => {
    const after = change(draft)
    setDraft(after)
    setSwept({ before: draft, said: said(draft, after) })
  }
  const page = isWide ? 'web' : 'phone'
  const shown = drawn.current
  return (
    <div class={built < stages.length ? 'site building' : 'site'}>
      <header class="sheet site-head">
        <div class="site-title">
          <a class="back" href={runsPath}>
            {m.run.back}
          </a>
          <h1>{words().title}</h1>
        </div>
        <p class="hint">{words().how}</p>
        <SiteActions source={source} draft={asked} results={has('sum') ? results : 'to come'} sweep={sweep} />
        {own.state === 'failed' && <TroubleNote title={m.check.noOwnSheets} trouble={own.trouble} again={again} />}
        <SweptNote
          swept={swept}
          back={(before) => {
            setDraft(before)
            setSwept(null)
          }}
        />
      </header>
      {has('sum') && <SiteSum results={results} />}
      <div class="site-pictures">
        {solved.problems.length > 0 && (
          <Attention
            problems={problems}
            fields={fields}
            meanwhile={solved.site === null ? words().attention.stale : words().attention.refused}
          />
        )}
        {has('plan') && shown !== null && (
          <PlanPane
            draft={shown.draft}
            site={shown.site}
            need={solved.need}
            page={page}
            isDrawn={has('picture')}
            change={setDraft}
          />
        )}
      </div>
      {has('form') && (
        <FormView
          id="site-form"
          title={words().form.title}
          sections={sections}
          problems={problems}
          isWide={isWide}
          change={setDraft}
          sweep={sweep}
          saidOfUnits={saidOfUnits}
        />
      )}
      <div class="site-results">
        {has('need') && solved.site !== null && solved.need !== null && results !== null && (
          <NeedPane site={solved.site} need={solved.need} results={results} />
        )}
        {has('section') && shown !== null && <SectionPane site={shown.site} need={solved.need} page={page} />}
        {has('checks') && results !== null && <ChecksPane checks={results.checks} units={unitsOf(draft)} />}
      </div>
    </div>
  )
}

function saidOfUnits(before: Draft, after: Draft): string {
  const { actions, units } = words()
  const speed = (draft: Draft): string => `${textOf(valueAt(draft, 'road.speed'))} ${units.speed[unitsOf(draft)]}`
  const said = actions.units(unitsOf(after) === 'us' ? units.feet : units.metres)
  return `${said} ${actions.speed(speed(before), speed(after))}`
}

import '../style/run-form.css'
import { useMemo, useState } from 'preact/hooks'
import type { InputProblem } from '../../formats/input-problem.ts'
import { lawfulInstead } from '../../operations/place-of-refusal.ts'
import type { RequiredRun } from '../../operations/require-by.ts'
import type { Shelf } from '../../operations/sheet-shelf.ts'
import type { RunSource } from '../data/run-source.ts'
import { Attention } from '../form/attention.tsx'
import { type Draft, textOf, unitsOf, valueAt, withValue } from '../form/draft.ts'
import { fieldsOf } from '../form/form-section.ts'
import { FormView } from '../form/form-view.tsx'
import { placeProblems } from '../form/place-problems.ts'
import { type Swept, SweptNote } from '../form/swept.tsx'
import { useEachFrame } from '../form/use-each-frame.ts'
import { withSheetsOf } from '../form/with-sheets-of.ts'
import { language } from '../language.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { useMedia, wide } from '../parts/use-media.ts'
import { LayoutsBeside, type Offered } from './layouts-beside.tsx'
import { firstChoice, offerOf, refusalsAsProblems, runOf } from './offer.ts'
import { railText } from './rail-text.ts'
import { type Edited, runSections } from './run-sections.ts'
import { useLayouts } from './use-layouts.ts'
import { useProjects } from './use-projects.ts'
import { words } from './words.ts'

interface Props {
  readonly source: RunSource
  readonly title: string
  readonly shelf: Shelf
  readonly draft: Draft
  readonly change: (change: (draft: Draft) => Draft) => void
  readonly edited: (Edited & { readonly required: RequiredRun }) | null
  /** Null where the draft can be laid out; else what is missing before it can. */
  readonly waitsFor: string | null
  /** What is done with the layout that is chosen; not while it is that of an earlier draft. */
  readonly children: (offered: Offered, chosen: number, isCurrent: boolean) => preact.ComponentChildren
}

/** What is asked of a run as a form, and beside it the layouts that follow from it. */
export function RunForm({ source, title, shelf, draft, change, edited, waitsFor, children }: Props) {
  const [swept, setSwept] = useState<Swept | null>(null)
  /** The layout that somebody chose, and for what: it holds as long as nothing is asked otherwise. */
  const [choice, setChoice] = useState<{ readonly of: Draft; readonly index: number } | null>(null)
  const isWide = useMedia(wide)
  const projects = useProjects(source)
  const settled = useEachFrame(draft)
  const asked = useMemo(() => withSheetsOf(shelf, settled), [shelf, settled])
  const read = useMemo(() => runOf(asked), [asked])
  const isReady = read.ok && waitsFor === null
  const tried = useLayouts(source, isReady ? asked : null)
  const offered = useMemo(() => offerOf(tried, edited?.required ?? null), [tried, edited])
  const isCurrent = isReady && tried?.draft === asked
  const sections = useMemo(
    () => runSections(draft, edited, { shelf, projects }),
    [draft, edited, shelf, projects, language()],
  )
  const fields = fieldsOf(sections)
  const problems = placeProblems(
    problemsOf({ read, isCurrent, tried, offered, waitsFor }),
    fields.map(({ place }) => place),
  )
  const chosen =
    offered === null ? 0 : choice?.of === tried?.draft && choice !== null ? choice.index : firstChoice(offered)
  const sweep = (sweeping: (draft: Draft) => Draft, said: (before: Draft, after: Draft) => string): void => {
    setSwept({ before: draft, said: said(draft, sweeping(draft)) })
    change(sweeping)
  }
  const { beside, layOut } = words()
  const shared = { problems, isWide, change, sweep, saidOfUnits }
  // On a phone the first layout follows what it needs; whatever else can be asked comes after it.
  const isInTwo = edited === null
  const handy = sections.filter(({ isHandiest }) => isHandiest)
  const others = sections.filter(({ isHandiest }) => !isHandiest)
  return (
    <div class="run-form">
      <div class="run-form-asked">
        <SweptNote
          swept={swept}
          back={(before) => {
            setSwept(null)
            change(() => before)
          }}
        />
        <FormView id="asked" title={title} sections={isInTwo ? handy : sections} {...shared} />
      </div>
      <div class="run-form-beside">
        <section class="sheet" aria-labelledby="beside-title" aria-busy={isReady && !isCurrent}>
          <h2 id="beside-title">{beside.title}</h2>
          {waitsFor !== null && <p>{waitsFor}</p>}
          {(problems.at.size > 0 || problems.rest.length > 0) && (
            <Attention problems={problems} fields={fields} meanwhile={read.ok ? '' : beside.stale} />
          )}
          {isReady && !isCurrent && (
            <p role="status" class="loading">
              {beside.working}
            </p>
          )}
          {isReady && tried !== null && !tried.answer.ok && (
            <TroubleNote title={beside.notLaid} trouble={tried.answer.error} />
          )}
          {isReady && offered !== null && (
            <>
              {isCurrent && offered.layouts.length === 0 && <Instead offered={offered} draft={draft} change={change} />}
              <LayoutsBeside
                offered={offered}
                chosen={chosen}
                choose={(index) => setChoice({ of: tried!.draft, index })}
              />
            </>
          )}
        </section>
        {isReady && offered !== null && offered.layouts.length > 0 && children(offered, chosen, isCurrent)}
      </div>
      {isInTwo && (
        <div class="run-form-more">
          <FormView id="more" title={layOut.more} sections={others} {...shared} />
        </div>
      )}
    </div>
  )
}

interface Found {
  readonly read: ReturnType<typeof runOf>
  readonly isCurrent: boolean
  readonly tried: ReturnType<typeof useLayouts>
  readonly offered: Offered | null
  readonly waitsFor: string | null
}

function problemsOf({ read, isCurrent, tried, offered, waitsFor }: Found): readonly InputProblem[] {
  if (!read.ok) return waitsFor === null ? read.error : read.error.filter(({ place }) => !place.startsWith('need'))
  if (!isCurrent || tried === null || !tried.answer.ok) return []
  const laid = tried.answer.value
  if (!laid.ok) return laid.error
  return offered === null ? [] : refusalsAsProblems(offered)
}

/** Values with which a reason for refusing every layout would not stand. */
function Instead({ offered, draft, change }: { readonly offered: Offered } & Pick<Props, 'draft' | 'change'>) {
  const ways = offered.refused.flatMap((refusal) => {
    const way = lawfulInstead(refusal, offered.run)
    return way === null ? [] : way.inches.map((inches) => ({ place: way.place, inches }))
  })
  const shown = [...new Map(ways.map((way) => [`${way.place} ${way.inches}`, way])).values()]
  return shown.length === 0 ? null : (
    <p class="run-form-instead">
      {shown.map(({ place, inches }) => (
        <button
          key={`${place} ${inches}`}
          type="button"
          class="button"
          onClick={() => change((into) => withValue(into, place, inches))}
        >
          {words().beside.instead(railText(inches, unitsOf(draft)))}
        </button>
      ))}
    </p>
  )
}

function saidOfUnits(before: Draft, after: Draft): string {
  const { units } = words()
  const speed = (draft: Draft): string => `${textOf(valueAt(draft, 'road.speed'))} ${units.speed[unitsOf(draft)]}`
  const said = units.done(unitsOf(after) === 'us' ? units.feet : units.metres)
  const isSpeedSaid = (valueAt(before, 'road.speed') ?? null) !== null
  return isSpeedSaid ? `${said} ${units.speedNow(speed(before), speed(after))}` : said
}

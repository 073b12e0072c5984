import { useMemo, useState } from 'preact/hooks'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { plainText } from '../data/plain-text.ts'
import type { Drafts } from '../entry/drafts.ts'
import { reopened } from '../entry/like-places.ts'
import { dayWords, measurableWords, momentWords, readWords } from '../entry/reading-words.ts'
import { asWritten, m, say } from '../messages.ts'
import { Fold } from '../parts/fold.tsx'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { goTo, requirementPath } from '../route.ts'
import { type Visit, type VisitRow, visitsOf } from './visits.ts'
import { foundBy } from './walk-groups.ts'

const agreement = partOf(() => import('../drills/agreement-view.tsx'))

interface Props {
  readonly judged: JudgedRun
  readonly run: string
  readonly drafts: Drafts
}

/** Every reading by visit, the latest first: searched, opened where it was taken, and corrected or taken back from there. */
export function ReadingsPane({ judged, run, drafts }: Props) {
  const [search, setSearch] = useState('')
  const [folds, setFolds] = useState<ReadonlyMap<string, boolean>>(new Map())
  const visits = useMemo(() => visitsOf(judged), [judged])
  const found = useMemo(() => foundIn(visits, search, judged), [visits, search, judged, m])
  return (
    <section class="sheet visits" aria-labelledby="visits-title">
      <h2 id="visits-title">{m.run.pane.readings}</h2>
      {visits.length === 0 ? (
        <p>{m.visits.none}</p>
      ) : (
        <search class="walk-wish">
          <input
            type="search"
            aria-label={m.visits.search}
            placeholder={m.visits.search}
            value={search}
            onInput={({ currentTarget }) => {
              setFolds(new Map())
              setSearch(currentTarget.value)
            }}
          />
        </search>
      )}
      {visits.length > 0 && found.length === 0 && <p role="status">{m.visits.noneFound}</p>}
      {found.map(({ by, day, rows }, i) => {
        const key = `${day} ${by}`
        return (
          <Fold
            key={key}
            level={3}
            title={`${dayWords(day)}, ${asWritten(by)}`}
            beside={<span class="tag">{m.visits.count(rows.length)}</span>}
            isOpen={folds.get(key) ?? (i === 0 || search.trim() !== '')}
            fold={(isOpen) => setFolds((before) => new Map(before).set(key, isOpen))}
          >
            {() => (
              <ul class="plain">
                {rows.map((row) => (
                  <Row key={row.reading.id} row={row} judged={judged} run={run} drafts={drafts} />
                ))}
              </ul>
            )}
          </Fold>
        )
      })}
      {visits.length > 1 && (
        <LaterPart part={agreement} title={m.run.pane.readings}>
          {({ AgreementView }) => <AgreementView judged={judged} />}
        </LaterPart>
      )}
    </section>
  )
}

/** The visits with what of them is searched, those with nothing left out. */
function foundIn(visits: readonly Visit[], search: string, judged: JudgedRun): readonly Visit[] {
  const isFound = foundBy(search)
  if (isFound === null) return visits
  return visits.flatMap((visit) => {
    const rows = visit.rows.filter((row) => isFound(plainText(textOf(row, judged))))
    return rows.length === 0 ? [] : [{ ...visit, rows }]
  })
}

/** All that the row shows. */
const textOf = (row: VisitRow, judged: JudgedRun): string => {
  const { by, at, note = '' } = row.reading
  return [placeOf(row, judged), ...askedAndRead(row, judged), by, momentWords(at), note].join(' ')
}

function placeOf({ reading: { of }, requirement }: VisitRow, judged: JudgedRun): string {
  return of === requirement.id ? say(requirement.place, judged.run.units) : measurableWords(of, judged.model.layout)
}

const askedAndRead = ({ reading, requirement }: VisitRow, { run: { units } }: JudgedRun): readonly [string, string] => [
  say(requirement.must, units),
  readWords(reading, reading.of === requirement.id ? requirement : null, units),
]

function Row({ row, judged, run, drafts }: Props & { readonly row: VisitRow }) {
  const { reading, requirement, verdict, isCorrected } = row
  const path = requirementPath(run, requirement.id, reading.of === requirement.id ? null : reading.of)
  const [asked, read] = askedAndRead(row, judged)
  const correct = (): void => {
    drafts.set(reading.of, requirement.id, reopened(reading))
    goTo(path)
  }
  return (
    <li class={isCorrected ? 'past-reading struck' : 'past-reading'}>
      <a class="row-link" href={path}>
        {verdict !== null && <VerdictMark word={verdict} />}
        <span>
          {placeOf(row, judged)}: <b>{read}</b>
          <br />
          <span class="hint">{asked}</span>
        </span>
      </a>
      {reading.note !== undefined && <p class="note">{asWritten(reading.note)}</p>}
      <p class="past-acts">
        <span class="hint">{momentWords(reading.at)}</span>
        {isCorrected ? (
          <span class="tag">{m.entry.corrected}</span>
        ) : (
          <button
            type="button"
            class="button bare"
            aria-label={m.visits.correct(placeOf(row, judged), read)}
            onClick={correct}
          >
            {m.entry.correct}
          </button>
        )}
      </p>
    </li>
  )
}

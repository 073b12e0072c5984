import '../style/drills.css'
import { useEffect, useState } from 'preact/hooks'
import { type NumberedDrill, readDrillNumber } from '../../core/drill/drill-number.ts'
import { kindsOf } from '../../operations/class-results.ts'
import { practiceRuns } from '../../operations/practice-runs.ts'
import type { DrillRow } from '../data/drill-row.ts'
import type { RunSource, Trouble } from '../data/run-source.ts'
import { useLoaded } from '../data/use-loaded.ts'
import { momentWords } from '../entry/reading-words.ts'
import { m } from '../messages.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { debriefPath, drillsPartPath, practicePath } from '../route.ts'
import { beginDrill, firstDrill } from './begin-drill.ts'
import { ChooseDrill } from './choose-drill.tsx'
import { Kinds } from './kinds.tsx'
import { ResultsFile } from './results-file.tsx'
import { words } from './words.ts'

/** Practice on this device: the first drill, the next one, one of one's own choice, and those that were begun. */
export function DrillsView({ source }: { readonly source: RunSource }) {
  const w = words()
  const [drills, again] = useLoaded('drills', () => source.drills())
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  useEffect(() => {
    document.title = `${w.title} | ${m.page.name}`
  }, [w])
  const begin = (drill: NumberedDrill, minutes: number | null): void => {
    void beginDrill(source, drill, minutes).then(setTrouble)
  }
  const rows = drills.state === 'loaded' ? drills.value : []
  const records = kindsOf(rows.flatMap(({ result }) => result?.kinds ?? []))
  return (
    <section class="sheet drills">
      <h1>{w.title}</h1>
      <p>{w.how}</p>
      <p class="hint">{w.apart}</p>
      {trouble !== null && <TroubleNote title={w.notBegun} trouble={trouble} />}
      {drills.state === 'loading' && (
        <p role="status" class="loading">
          {m.page.loading}
        </p>
      )}
      {drills.state === 'failed' && <TroubleNote title={w.begun} trouble={drills.trouble} again={again} />}
      {drills.state === 'loaded' && (
        <div class="drill-cards">
          {rows.length === 0 ? (
            <BigDrill words={w.first} begin={() => begin(firstDrill(), null)} />
          ) : (
            <BigDrill
              words={w.next}
              begin={() =>
                void import('./next-drill.ts').then(({ weightedDrill }) => begin(weightedDrill(records), null))
              }
            />
          )}
        </div>
      )}
      <ByNumber begin={begin} />
      <details class="group drill-choose">
        <summary>
          <h2>{w.choose}</h2>
        </summary>
        <ChooseDrill begin={begin} />
      </details>
      <p class="ways">
        <a href={drillsPartPath('lesson')}>{w.lesson.link}</a>
        <a href={drillsPartPath('class')}>{w.class.title}</a>
      </p>
      {rows.length > 0 && <Begun rows={rows} />}
      {records.length > 0 && <Kinds records={records} />}
      {rows.some(({ result }) => result !== null) && <ResultsFile rows={rows} />}
      {rows.length > 0 && <Drop source={source} again={again} />}
    </section>
  )
}

interface BigProps {
  readonly words: { readonly name: string; readonly what: string; readonly begin: string }
  readonly begin: () => void
}

const BigDrill = ({ words: { name, what, begin: press }, begin }: BigProps) => (
  <div class="drill-big">
    <h2>{name}</h2>
    <p>{what}</p>
    <button type="button" class="button main" onClick={begin}>
      {press}
    </button>
  </div>
)

function ByNumber({ begin }: { readonly begin: (drill: NumberedDrill, minutes: null) => void }) {
  const w = words()
  const [text, setText] = useState('')
  const [wrong, setWrong] = useState<string | null>(null)
  const read = (): void => {
    const drill = readDrillNumber(text)
    if (!drill.ok) setWrong(drill.error.kind === 'of another edition' ? w.otherEdition : w.notNumber)
    else if (practiceRuns[drill.value.site] === undefined) setWrong(w.notHere)
    else begin(drill.value, null)
  }
  return (
    <form
      class="drill-number"
      onSubmit={(event) => {
        event.preventDefault()
        read()
      }}
    >
      <h2>{w.byNumber}</h2>
      <label>
        <span>{w.number}</span>
        <input
          inputMode="numeric"
          autocomplete="off"
          value={text}
          aria-describedby="drill-number-how"
          aria-invalid={wrong !== null}
          onInput={({ currentTarget: { value } }) => {
            setText(value)
            setWrong(null)
          }}
        />
      </label>
      <button type="submit" class="button">
        {w.begin}
      </button>
      <p
        id="drill-number-how"
        class={wrong === null ? 'hint' : 'complaint'}
        role={wrong === null ? undefined : 'alert'}
      >
        {wrong ?? w.numberHow}
      </p>
    </form>
  )
}

function Begun({ rows }: { readonly rows: readonly DrillRow[] }) {
  const w = words()
  return (
    <>
      <h2>{w.begun}</h2>
      <ul class="drill-list">
        {rows.toReversed().map(({ run, number, beganAt, minutes, result }) => (
          <li key={run}>
            <span>
              <b>{number === null ? w.ownRun : w.numberOf(number)}</b> {minutes !== null && w.exam}{' '}
              <span class="hint">{momentWords(beganAt)}</span>
            </span>
            {result !== null && <span>{w.came(result.found, result.faults, result.falseAlarms)}</span>}
            <a class="button" href={result === null ? practicePath(run) : debriefPath(run)}>
              {result === null ? w.goOn : w.see}
            </a>
          </li>
        ))}
      </ul>
    </>
  )
}

function Drop({ source, again }: { readonly source: RunSource; readonly again: () => void }) {
  const w = words()
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  return (
    <>
      {trouble !== null && <TroubleNote title={w.notDropped} trouble={trouble} />}
      <p class="drill-drop">
        <button
          type="button"
          class="button"
          onClick={() =>
            void source.dropPractice().then((done) => {
              setTrouble(done.ok ? null : done.error)
              again()
            })
          }
        >
          {w.drop}
        </button>
        <span class="hint">{w.dropHow}</span>
      </p>
    </>
  )
}

import '../style/drills.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import { type PracticeResults, readResults } from '../../formats/drill/results-file.ts'
import type { InputProblem } from '../../formats/input-problem.ts'
import { classResults } from '../../operations/class-results.ts'
import { asWritten, m } from '../messages.ts'
import { download } from '../parts/download.ts'
import { TroubleNote } from '../parts/trouble-note.tsx'
import { Kinds } from './kinds.tsx'
import { percent } from './percent.ts'
import { words } from './words.ts'

/** A class from the results files of its devices: by person, by kind of fault, and how far people agree. */
export function ClassView() {
  const w = words().class
  const [files, setFiles] = useState<readonly PracticeResults[]>([])
  const [problems, setProblems] = useState<readonly InputProblem[]>([])
  useEffect(() => {
    document.title = `${w.title} | ${m.page.name}`
  }, [w])
  const results = useMemo(() => classResults(files), [files])
  const take = async (picked: FileList): Promise<void> => {
    const read = await Promise.all([...picked].map(async (file) => readResults(file.name, await file.text())))
    setFiles([...files, ...read.flatMap((one) => (one.ok ? [one.value] : []))])
    setProblems(read.flatMap((one) => (one.ok ? [] : one.error)))
  }
  return (
    <section class="sheet drills">
      <h1>{w.title}</h1>
      <p>{w.how}</p>
      <label>
        <span>{w.files}</span>
        <input
          type="file"
          multiple
          accept=".json,application/json"
          onChange={({ currentTarget }) => {
            if (currentTarget.files !== null) void take(currentTarget.files)
          }}
        />
      </label>
      {problems.length > 0 && <TroubleNote title={w.notRead} trouble={{ message: '', problems }} />}
      {results.people.length > 0 && <People people={results.people} />}
      {results.kinds.length > 0 && <Kinds records={results.kinds} />}
      {results.agreements.length > 0 && (
        <>
          <h2>{w.agreement}</h2>
          <ul>
            {results.agreements.map(({ number, people, alpha }) => (
              <li key={number}>
                {w.agree(number, people, alpha === null ? words().agreement.notTold : alpha.toFixed(2))}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  )
}

type People = ReturnType<typeof classResults>['people']

function People({ people }: { readonly people: People }) {
  const w = words()
  return (
    <>
      <table>
        <thead>
          <tr>
            {w.class.columns.map((column) => (
              <th key={column} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {people.map(({ person, drills, found, falseAlarms }) => (
            <tr key={person}>
              <th scope="row">{asWritten(person)}</th>
              <td>{drills}</td>
              {[found, falseAlarms].map(({ times, of, low, high }, i) => (
                <td key={i === 0 ? 'found' : 'alarms'}>{w.debrief.of(times, of, percent(low), percent(high))}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p>
        <button
          type="button"
          class="button"
          onClick={() => download(new Blob([csvOf(people)], { type: 'text/csv' }), w.class.file)}
        >
          {w.class.save}
        </button>
      </p>
    </>
  )
}

/** Comma separated, quoted throughout; no cell begins as a formula of a spreadsheet does. */
function csvOf(people: People): string {
  const w = words()
  const cell = (value: string | number): string =>
    `"${String(value)
      .replace(/^[=+\-@\t\r]/, "'$&")
      .replaceAll('"', '""')}"`
  const rows = people.map(({ person, drills, found, falseAlarms }) => [
    ...[w.bar, person, drills, found.times, found.of, percent(found.low), percent(found.high)],
    ...[falseAlarms.times, falseAlarms.of, percent(falseAlarms.low), percent(falseAlarms.high)],
  ])
  return [w.class.csvColumns, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('')
}

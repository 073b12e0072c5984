import '../style/drills.css'
import { useEffect, useMemo, useState } from 'preact/hooks'
import type { EndSheet } from '../../core/hardware/hardware-sheet.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { type LessonPair, type LessonStep, lessonOf } from '../../operations/lesson.ts'
import { type Shelf, shippedShelf } from '../../operations/sheet-shelf.ts'
import { placeWords } from '../entry/reading-words.ts'
import { preferences } from '../fieldwork/preferences.ts'
import { m, printIn, say } from '../messages.ts'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { Picture } from '../parts/picture.tsx'
import { words } from './words.ts'

const figures = partOf(() => import('../entry/figure-of.ts'))

/** Two end units walked in step: what differs at each place is marked, with why it matters. */
export function LessonView() {
  const w = words()
  const shelf: Shelf = shippedShelf
  const ends = useMemo(
    () => [...shelf.values()].filter((sheet): sheet is EndSheet => sheet.kind !== 'longitudinal'),
    [],
  )
  const [ids, setIds] = useState(['flared-terminal-31', 'flared-terminal-27-3-4'] as const satisfies [string, string])
  const [one, other] = (ids as readonly string[]).map((id) => shelf.get(id) as EndSheet)
  const steps = useMemo(() => lessonOf(one!, other!, shelf), [one, other])
  const [at, setAt] = useState(0)
  const step = steps[Math.min(at, steps.length - 1)]
  useEffect(() => {
    document.title = `${w.lesson.title} | ${m.page.name}`
  }, [w])
  const choose = (which: 0 | 1, id: string): void => {
    setIds((which === 0 ? [id, ids[1]] : [ids[0], id]) as typeof ids)
    setAt(0)
  }
  return (
    <section class="sheet lesson">
      <h1>{w.lesson.title}</h1>
      <p>{w.lesson.how}</p>
      <div class="lesson-pair">
        {([0, 1] as const).map((which) => (
          <label key={which}>
            <span>{which === 0 ? w.lesson.one : w.lesson.other}</span>
            <select value={ids[which]} onChange={({ currentTarget: { value } }) => choose(which, value)}>
              {ends.map((sheet) => (
                <option key={sheet.id} value={sheet.id}>
                  {say(nameOf(sheet))}
                </option>
              ))}
            </select>
          </label>
        ))}
      </div>
      {step !== undefined && <Step key={at} step={step} sheets={[one!, other!]} />}
      <nav class="lesson-steps" aria-label={w.lesson.places}>
        <button type="button" class="button" disabled={at === 0} onClick={() => setAt(at - 1)}>
          {w.lesson.before}
        </button>
        <span>{w.lesson.at(Math.min(at, steps.length - 1) + 1, steps.length)}</span>
        <button type="button" class="button main" disabled={at >= steps.length - 1} onClick={() => setAt(at + 1)}>
          {w.lesson.next}
        </button>
      </nav>
    </section>
  )
}

type Both = readonly [EndSheet, EndSheet]

function Step({ step, sheets }: { readonly step: LessonStep; readonly sheets: Both }) {
  const w = words().lesson
  const differing = step.asked.filter(({ differs }) => differs)
  const alike = step.asked.filter(({ differs }) => !differs)
  return (
    <article class="lesson-step">
      <h2>{placeWords(step.place, preferences().units)}</h2>
      <p role="status">{differing.length === 0 ? w.alike : w.differs(differing.length)}</p>
      {differing.map((pair) => (
        <Pair key={pair.topic} pair={pair} sheets={sheets} />
      ))}
      {alike.length > 0 && (
        <details open={differing.length === 0}>
          <summary>{w.allAlike}</summary>
          <ul>
            {alike.map(({ topic, one }) => (
              <li key={topic}>{say(one!.must, preferences().units)}</li>
            ))}
          </ul>
        </details>
      )}
    </article>
  )
}

function Pair({ pair: { one, other }, sheets }: { readonly pair: LessonPair; readonly sheets: Both }) {
  const { units } = preferences()
  const why = (one ?? other)!.why
  return (
    <section class="lesson-differs">
      <div class="lesson-pair">
        {[one, other].map((requirement, i) => (
          <Asked key={i === 0 ? 'one' : 'other'} requirement={requirement} sheet={sheets[i]!} />
        ))}
      </div>
      <p>
        <span class="label">{m.entry.why}</span> {say(why, units)}
      </p>
    </section>
  )
}

interface AskedProps {
  readonly requirement: Requirement | null
  readonly sheet: EndSheet
}

function Asked({ requirement, sheet }: AskedProps) {
  const { units } = preferences()
  const figure = requirement?.figure ?? null
  return (
    <div>
      <p class="label">{say(nameOf(sheet))}</p>
      <p>
        <b>{requirement === null ? words().lesson.only : say(requirement.must, units)}</b>
      </p>
      {requirement !== null && figure !== null && (
        <LaterPart part={figures} title={m.entry.figure}>
          {({ halvesOf }) => {
            const right = halvesOf(figure, requirement, sheet, printIn(units))?.right
            return right === undefined ? null : <Picture class="half" drawing={right} />
          }}
        </LaterPart>
      )}
    </div>
  )
}

import '../style/check.css'
import { useEffect, useState } from 'preact/hooks'
import type { EndSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { SeenRun } from '../../operations/counted-run.ts'
import type { RunSource } from '../data/run-source.ts'
import { m } from '../messages.ts'
import { Back } from './back.tsx'
import { CountPieces } from './count-pieces.tsx'
import { FindByKey } from './find-by-key.tsx'
import { ends, joinedBy, systems } from './shelf.ts'
import { Card, nameOf, UnitCard } from './unit-card.tsx'

type End = SeenRun['first']

/** What was said so far; what is missing is asked next. */
interface Said {
  readonly first?: End
  readonly second?: End
  readonly system?: LongitudinalSheet
}

/** From what stands in front of somebody to its first requirement. */
export function CheckView({ source }: { readonly source: RunSource }) {
  const [said, setSaid] = useState<Said>({})
  const { first, second, system } = said
  useEffect(() => {
    document.title = `${m.check.title} | ${m.page.name}`
  }, [])
  const back = (): void => setSaid(second === undefined ? {} : first === undefined ? {} : { first })
  const pickFirst = (end: End): void =>
    setSaid(
      typeof end === 'object' && joinedBy(end).length === 1
        ? { first: end, system: joinedBy(end)[0]! }
        : { first: end },
    )
  return (
    <section class="sheet checking">
      {first === undefined ? (
        <PickUnit title={m.check.whichEnd} sheets={ends} pick={pickFirst} />
      ) : system === undefined ? (
        <PickSystem pick={(one) => setSaid({ ...said, system: one })} back={() => setSaid({})} />
      ) : second === undefined ? (
        <Scope
          first={first}
          system={system}
          pick={(end) => setSaid({ ...said, second: end })}
          back={() => setSaid({})}
        />
      ) : (
        <CountPieces source={source} first={first} second={second} system={system} back={back} />
      )}
    </section>
  )
}

interface PickUnitProps {
  readonly title: string
  readonly sheets: readonly EndSheet[]
  readonly pick: (end: End) => void
}

/** An end unit from the shelf by its picture, or by the key. */
function PickUnit({ title, sheets, pick }: PickUnitProps) {
  const [isByKey, setByKey] = useState(false)
  if (isByKey)
    return <FindByKey sheets={sheets} found={pick} none={() => pick('no sheet fits')} back={() => setByKey(false)} />
  return (
    <>
      <h1>{title}</h1>
      <button type="button" class="button main check-main" onClick={() => setByKey(true)}>
        {m.check.findByQuestions}
      </button>
      <div class="check-cards">
        {sheets.map((sheet) => (
          <UnitCard key={sheet.id} sheet={sheet} system={joinedBy(sheet)[0]!} view="end" choose={() => pick(sheet)} />
        ))}
        <Card words={m.check.noneOfThese} drawing={null} choose={() => pick('no sheet fits')} />
      </div>
    </>
  )
}

interface PickSystemProps {
  readonly pick: (system: LongitudinalSheet) => void
  readonly back: () => void
}

function PickSystem({ pick, back }: PickSystemProps) {
  const [isNone, setNone] = useState(false)
  return (
    <>
      <Back back={back} />
      <h1>{m.check.whichSystem}</h1>
      <div class="check-cards">
        {systems.map((system) => {
          const sheet = ends.find((end) => joinedBy(end).includes(system))!
          return (
            <UnitCard
              key={system.id}
              sheet={sheet}
              system={system}
              view="splice"
              words={nameOf(system)}
              choose={() => pick(system)}
            />
          )
        })}
        <Card words={m.check.noneOfThese} drawing={null} choose={() => setNone(true)} />
      </div>
      {isNone && <p role="alert">{m.check.noSystem}</p>}
    </>
  )
}

interface ScopeProps {
  readonly first: End
  readonly system: LongitudinalSheet
  readonly pick: (second: End) => void
  readonly back: () => void
}

/** This end alone, or all of the run to its other end. */
function Scope({ first, system, pick, back }: ScopeProps) {
  const [isWhole, setWhole] = useState(false)
  const joining = ends.filter((end) => joinedBy(end).includes(system))
  if (isWhole) return <PickUnit title={m.check.whichSecond} sheets={joining} pick={pick} />
  return (
    <>
      <Back back={back} />
      <h1>{typeof first === 'object' ? nameOf(first) : m.check.unknownEnd}</h1>
      <p>{m.check.scopeHow}</p>
      <div class="check-others check-scope">
        <button type="button" class="button main" onClick={() => pick('not looked at')}>
          {m.check.endOnly}
        </button>
        <button type="button" class="button" onClick={() => setWhole(true)}>
          {m.check.wholeRun}
        </button>
      </div>
    </>
  )
}

import { useState } from 'preact/hooks'
import type { EndSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { SeenRun } from '../../operations/counted-run.ts'
import { undescribedSystem } from '../../sheets/undescribed-system.ts'
import { m } from '../messages.ts'
import { Back } from './back.tsx'
import { FindByKey } from './find-by-key.tsx'
import { type AtHand, endsJoining, joinedBy } from './shelf.ts'
import { Card, nameOf, UnitCard } from './unit-card.tsx'

export type End = SeenRun['first']

interface PickUnitProps {
  readonly atHand: AtHand
  readonly title: string
  readonly sheets: readonly EndSheet[]
  readonly pick: (end: End) => void
  /** Null where nothing was asked before. */
  readonly back: (() => void) | null
}

/** An end unit from the shelf by its picture, or by the key. */
export function PickUnit({ atHand, title, sheets, pick, back }: PickUnitProps) {
  const [isByKey, setByKey] = useState(false)
  if (isByKey)
    return (
      <FindByKey {...{ atHand, sheets }} found={pick} none={() => pick('no sheet fits')} back={() => setByKey(false)} />
    )
  return (
    <>
      {back !== null && <Back back={back} />}
      <h1>{title}</h1>
      <button type="button" class="button main check-main" onClick={() => setByKey(true)}>
        {m.check.findByQuestions}
      </button>
      <div class="check-cards">
        {sheets.map((sheet) => (
          <UnitCard
            key={sheet.id}
            sheet={sheet}
            system={joinedBy(sheet, atHand.systems)[0]!}
            view="end"
            choose={() => pick(sheet)}
          />
        ))}
        <Card words={m.check.noneOfThese} drawing={null} choose={() => pick('no sheet fits')} />
      </div>
    </>
  )
}

interface PickSystemProps {
  readonly atHand: AtHand
  readonly pick: (system: LongitudinalSheet) => void
  readonly back: () => void
}

/** The barrier of an end that no sheet fits; where none of them is it, nothing can be compared with what was tested. */
export function PickSystem({ atHand: { systems, ends }, pick, back }: PickSystemProps) {
  return (
    <>
      <Back back={back} />
      <h1>{m.check.whichSystem}</h1>
      <div class="check-cards">
        {systems.map((system) => {
          const shared = { key: system.id, words: nameOf(system), choose: () => pick(system) }
          const sheet = endsJoining(system, ends)[0]
          return sheet === undefined ? (
            <Card drawing={null} {...shared} />
          ) : (
            <UnitCard sheet={sheet} system={system} view="splice" {...shared} />
          )
        })}
        <Card words={m.check.noSystem} drawing={null} choose={() => pick(undescribedSystem)} />
      </div>
    </>
  )
}

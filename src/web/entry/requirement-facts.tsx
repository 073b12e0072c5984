import { useState } from 'preact/hooks'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { rulePicture } from '../../core/hardware/rule-picture.ts'
import { nameOf } from '../../core/hardware/sheet-text.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { theirs } from '../../core/theirs.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { m, printIn, say } from '../messages.ts'
import { DoubtHelp } from '../parts/doubt-help.tsx'
import { LaterPart, partOf } from '../parts/later-part.tsx'
import { OwnPicture } from '../parts/own-picture.tsx'
import { Picture } from '../parts/picture.tsx'

const terms = partOf(() => import('../glossary/term-list.tsx'))
const figures = partOf(() => import('./figure-of.ts'))

interface Props {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  /** Of the requirement; null where the run has it no more. */
  readonly sheet: HardwareSheet | null
}

/** How to look, the right one and its wrong twin, why it matters, and where the requirement comes from. */
export function RequirementFacts({ judged, requirement, sheet }: Props) {
  const { how, why, remedy, source, confirmation, sheet: sheetId, sheetVersion, figure } = requirement
  const { units } = judged.run
  const own = sheet === null ? null : rulePicture(sheet, requirement.topic)
  const [isExplained, setExplained] = useState(false)
  return (
    <div class="facts">
      <h3>{m.entry.how}</h3>
      <p>{say(how, units)}</p>
      {own !== null && <OwnPicture {...own} alt={say(own.alt, units)} />}
      {figure !== null && sheet !== null && (
        <>
          <h3>{m.entry.figure}</h3>
          <LaterPart part={figures} title={m.entry.figure}>
            {({ figureOf }) => (
              <Picture class="figure" drawing={figureOf(figure, requirement, sheet, printIn(units))} />
            )}
          </LaterPart>
        </>
      )}
      <h3>{m.entry.why}</h3>
      <p>{say(why, units)}</p>
      <h3>{m.entry.remedy}</h3>
      <p>{say(remedy, units)}</p>
      <h3>{m.entry.source}</h3>
      <p>
        {say(source)} (
        {confirmation === 'from memory' ? (
          <b class="unconfirmed">{m.entry.unconfirmed}</b>
        ) : (
          m.entry.confirmation[confirmation]
        )}
        )
      </p>
      {requirement.look.kind === 'measure' && <DoubtHelp />}
      {figure !== null && (
        <details class="doubt-help" onToggle={({ currentTarget }) => setExplained(currentTarget.open)}>
          <summary>{m.entry.words}</summary>
          {isExplained && (
            <LaterPart part={terms} title={m.entry.words}>
              {({ TermList }) => <TermList figure={figure} />}
            </LaterPart>
          )}
        </details>
      )}
      <p class="hint">{m.entry.sheet(say(sheet === null ? theirs(sheetId) : nameOf(sheet), units), sheetVersion)}</p>
    </div>
  )
}

import type { ComponentChildren } from 'preact'
import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Side } from '../../core/measurement/reading.ts'
import type { Requirement, RequirementLook } from '../../core/requirements/requirement.ts'
import type { Unit } from '../../core/units/quantity-kinds.ts'
import { m } from '../messages.ts'
import { Choices, SeenChoices } from './choices.tsx'
import { type Complaint, ComplaintNote } from './complaint.tsx'
import type { Draft } from './draft.ts'
import { ValueField } from './value-field.tsx'

interface Props {
  readonly requirement: Requirement
  /** How the value is found that is being read: that of the requirement, or a measure for a value it is computed from. */
  readonly kind: RequirementLook['kind']
  readonly sheet: HardwareSheet | null
  /** Whether it is an offset, whose side is asked. */
  readonly isSided: boolean
  /** Of a number that names none. */
  readonly unit: Unit
  readonly units: 'us' | 'metric'
  readonly hasDeviceKeyboard: boolean
  readonly draft: Draft
  readonly complaint: Complaint | null
  readonly change: (changes: Partial<Draft>) => void
  /** Told before the change of an answer that a finger touched. */
  readonly touched: () => void
  /** The verdict as it is typed; of a value it stands between field and keypad. */
  readonly verdict: ComponentChildren
}

const sides: readonly Side[] = ['away', 'toward']

/** The fields for what is seen or measured, or for why it is not. */
export function AnswerFields(props: Props) {
  const {
    requirement,
    kind,
    sheet,
    isSided,
    unit,
    units,
    hasDeviceKeyboard,
    draft,
    complaint,
    change,
    touched,
    verdict,
  } = props
  const note = <ComplaintNote complaint={complaint} at="answer" />
  if (draft.mode === 'answer' && kind === 'measure')
    return (
      <ValueField
        text={draft.text}
        unit={unit}
        units={units}
        after={isSided && draft.side !== null ? m.entry.sides[draft.side].toLowerCase() : null}
        change={(text) => change({ text })}
        hasDeviceKeyboard={hasDeviceKeyboard}
        beside={
          isSided && (
            <>
              <Choices
                legend={m.entry.side}
                name="side"
                choices={sides.map((side) => ({ id: side, words: m.entry.sides[side] }))}
                chosen={draft.side}
                choose={(side) => change({ side: side as Side })}
              />
              <ComplaintNote complaint={complaint} at="side" />
            </>
          )
        }
      >
        {note}
        {verdict}
      </ValueField>
    )
  const choose = (changes: Partial<Draft>, byFinger: boolean): void => {
    if (byFinger) touched()
    change(changes)
  }
  return (
    <div class="answer">
      {draft.mode === 'answer' && kind === 'choose' && (
        <SeenChoices
          requirement={requirement}
          sheet={sheet}
          units={units}
          chosen={draft.choice}
          choose={(choice, byFinger) => choose({ choice }, byFinger)}
        />
      )}
      {draft.mode === 'answer' && kind === 'confirm' && (
        <Choices
          legend={m.entry.confirm}
          name="choice"
          choices={[
            { id: 'yes', words: m.entry.yes },
            { id: 'no', words: m.entry.no },
          ]}
          chosen={draft.yes === null ? null : draft.yes ? 'yes' : 'no'}
          choose={(id, byFinger) => choose({ yes: id === 'yes' }, byFinger)}
        />
      )}
      {draft.mode === 'cannot see' && <p class="instead">{m.entry.cannotSeeSaid}.</p>}
      {draft.mode === 'does not apply' && (
        <label class="because">
          <span>{m.entry.because}</span>
          <input
            data-first
            value={draft.because}
            required
            maxLength={500}
            onInput={({ currentTarget }) => change({ because: currentTarget.value })}
          />
        </label>
      )}
      {note}
      {verdict}
    </div>
  )
}

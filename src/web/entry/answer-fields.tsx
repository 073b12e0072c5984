import type { ComponentChildren } from 'preact'
import type { Side } from '../../core/measurement/reading.ts'
import type { RequirementLook } from '../../core/requirements/requirement.ts'
import type { Unit } from '../../core/units/quantity-kinds.ts'
import { m, say } from '../messages.ts'
import type { Draft } from './draft.ts'
import { NoteField } from './note-field.tsx'
import { ValueField } from './value-field.tsx'

interface Props {
  readonly look: RequirementLook
  /** How the value is found that is being read: that of `look`, or a measure for a value it is computed from. */
  readonly kind: RequirementLook['kind']
  /** Whether it may be taken out of judging with a reason. */
  readonly maySetAside: boolean
  /** Whether it is an offset, whose side is asked. */
  readonly isSided: boolean
  /** Of a number that names none. */
  readonly unit: Unit
  readonly units: 'us' | 'metric'
  readonly draft: Draft
  readonly change: (changes: Partial<Draft>) => void
  /** The last answer to the same question elsewhere, in words; null when there is none. */
  readonly last: { readonly words: string; readonly draft: Partial<Draft> } | null
  /** The verdict as it is typed. */
  readonly children: ComponentChildren
}

/** The fields for what is seen or measured, and the answers instead: that it could not be seen, or does not apply. */
export function AnswerFields({ look, kind, maySetAside, isSided, unit, units, draft, change, last, children }: Props) {
  return (
    <div class="answer">
      {draft.mode === 'answer' && kind === 'measure' && isSided && (
        <Choices
          legend={m.entry.side}
          name="side"
          choices={sides.map((side) => [side, m.entry.sides[side]])}
          chosen={draft.side}
          choose={(side) => change({ side: side as Side })}
        />
      )}
      {draft.mode === 'answer' && kind === 'measure' && (
        <ValueField
          text={draft.text}
          unit={unit}
          units={units}
          after={isSided && draft.side !== null ? m.entry.sides[draft.side].toLowerCase() : null}
          change={(text) => change({ text })}
        >
          {children}
        </ValueField>
      )}
      {draft.mode === 'answer' && kind === 'choose' && look.kind === 'choose' && (
        <Choices
          legend={m.entry.choice}
          name="choice"
          choices={look.choices.map(({ id, label }) => [id, say(label, units)])}
          chosen={draft.choice}
          choose={(choice) => change({ choice })}
        />
      )}
      {draft.mode === 'answer' && kind === 'confirm' && (
        <Choices
          legend={m.entry.confirm}
          name="choice"
          choices={[
            ['yes', m.entry.yes],
            ['no', m.entry.no],
          ]}
          chosen={draft.yes === null ? null : draft.yes ? 'yes' : 'no'}
          choose={(id) => change({ yes: id === 'yes' })}
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
      {(draft.mode !== 'answer' || kind !== 'measure') && children}
      <div class="instead-buttons">
        {last !== null && draft.mode === 'answer' && (
          <button type="button" class="button" onClick={() => change(last.draft)}>
            {m.entry.repeat(last.words)}
          </button>
        )}
        {draft.mode !== 'answer' && (
          <button type="button" class="button" onClick={() => change({ mode: 'answer' })}>
            {m.entry.answerInstead}
          </button>
        )}
        {draft.mode !== 'cannot see' && kind !== 'record' && (
          <button type="button" class="button" onClick={() => change({ mode: 'cannot see' })}>
            {m.entry.cannotSee}
          </button>
        )}
        <NoteField note={draft.note} change={(note) => change({ note })} />
        {draft.mode !== 'does not apply' && maySetAside && (
          <button type="button" class="button" onClick={() => change({ mode: 'does not apply' })}>
            {m.entry.setAside}
          </button>
        )}
      </div>
    </div>
  )
}

const sides: readonly Side[] = ['away', 'toward']

interface ChoicesProps {
  readonly legend: string
  /** A side is asked beside a length, which the hand comes to first. */
  readonly name: 'choice' | 'side'
  readonly choices: readonly (readonly [id: string, label: string])[]
  readonly chosen: string | null
  readonly choose: (id: string) => void
}

const Choices = ({ legend, name, choices, chosen, choose }: ChoicesProps) => (
  <fieldset class={`choices ${name}`}>
    <legend>{legend}</legend>
    {choices.map(([id, label], i) => (
      <label key={id} class="choice">
        <input
          type="radio"
          name={name}
          value={id}
          checked={chosen === id}
          data-first={name === 'choice' && (chosen === null ? i === 0 : chosen === id)}
          data-side={name === 'side' || undefined}
          onChange={() => choose(id)}
        />
        <span>{label}</span>
      </label>
    ))}
  </fieldset>
)

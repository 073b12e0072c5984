import type { ComponentType } from 'preact'
import { useState } from 'preact/hooks'
import type { InputProblem } from '../../formats/input-problem.ts'
import { m } from '../messages.ts'
import { meaningOf, textOf } from './draft.ts'
import type { ControlProps, FormField } from './form-field.ts'
import { PictureChoice } from './picture-choice.tsx'
import { problemWords } from './problem-words.ts'

interface Props {
  readonly field: FormField
  readonly problems: readonly InputProblem[]
  readonly change: (field: FormField, value: unknown) => void
  /** Asks for pictures, given by a form that has such fields: others need not carry it. */
  readonly ownPicture?: ComponentType<ControlProps> | undefined
}

export const fieldId = (place: string): string => `field-${place.replaceAll(/[^a-zA-Z0-9]+/g, '-')}`

/** A field with its unit and, below it, what is wrong with it. */
export function FieldView({ field, problems, change, ownPicture: OwnPicture }: Props) {
  const id = fieldId(field.place)
  const shared = {
    id,
    'aria-invalid': problems.length > 0,
    'aria-describedby': problems.length > 0 ? `${id}-wrong` : undefined,
  } as const
  return (
    <div class={isLong(field) || problems.length > 0 ? 'form-field whole' : 'form-field'}>
      {field.kind === 'own picture' ? (
        OwnPicture && <OwnPicture field={field} id={id} change={change} />
      ) : field.kind === 'pictures' ? (
        <PictureChoice field={field} id={id} change={change} />
      ) : field.kind === 'check' ? (
        <label class="check" for={id}>
          <input
            {...shared}
            type="checkbox"
            checked={field.value === true}
            onChange={({ currentTarget }) => change(field, currentTarget.checked)}
          />
          {field.label}
        </label>
      ) : (
        <>
          <label for={id}>
            <span>
              {field.label}
              {field.unit !== null && field.unit !== '' && <span class="unit"> ({field.unit})</span>}
            </span>
          </label>
          {field.kind === 'choice' ? (
            <ChoiceInput field={field} shared={shared} change={change} />
          ) : (
            <TextInput field={field} shared={shared} change={change} />
          )}
        </>
      )}
      {problems.length > 0 && (
        <div class="field-wrong" id={`${id}-wrong`}>
          {problems
            .map((problem) => problemWords(problem, field))
            .map((one) => (
              <p key={one}>{one}</p>
            ))}
        </div>
      )}
    </div>
  )
}

/** Whether a field takes a row of its own. */
const isLong = ({ kind, choices }: FormField): boolean =>
  kind === 'check' ||
  kind === 'text' ||
  kind === 'words' ||
  kind === 'lengths' ||
  kind === 'own picture' ||
  choices.some(({ label }) => label.length > 10)

type InputProps = Pick<Props, 'field' | 'change'> & { readonly shared: object }

const ChoiceInput = ({ field, shared, change }: InputProps) => (
  <select
    {...shared}
    value={textOf(field.value)}
    onChange={({ currentTarget: { value } }) => change(field, value === '' ? null : value)}
  >
    {field.isOptional && <option value="">{m.form.notSaid}</option>}
    {field.choices.map(({ value, label }) => (
      <option key={value} value={value}>
        {label}
      </option>
    ))}
  </select>
)

/** What was typed stays as it was typed while it means the value; a value from elsewhere, as a drag, replaces it. */
function TextInput({ field, shared, change }: InputProps) {
  const isNumber = field.kind === 'number' || field.kind === 'length'
  const [typed, setTyped] = useState('')
  const read = field.read ?? (isNumber ? meaningOf : (text: string) => text || undefined)
  const meaning = read(typed)
  const common = {
    ...shared,
    autocomplete: 'off',
    value: meaning !== undefined && isSame(meaning, field.value) ? typed : (field.text ?? textOf)(field.value),
    onInput: ({ currentTarget: { value } }: { readonly currentTarget: { readonly value: string } }) => {
      setTyped(value)
      change(field, read(value) ?? (field.isOptional ? null : undefined))
    },
  }
  if (field.kind === 'date') return <input {...common} type="date" />
  if (field.kind === 'words') return <textarea {...common} rows={2} />
  const list = field.choices.length === 0 ? undefined : `${fieldId(field.place)}-known`
  return (
    <>
      <input
        {...common}
        type="text"
        inputMode={field.kind === 'number' ? 'decimal' : 'text'}
        spellcheck={false}
        placeholder={isNumber && field.isOptional ? m.form.notSaid : undefined}
        list={list}
      />
      {list !== undefined && (
        <datalist id={list}>
          {field.choices.map(({ value }) => (
            <option key={value} value={value} />
          ))}
        </datalist>
      )}
    </>
  )
}

const isSame = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b)

import { useState } from 'preact/hooks'
import { m } from '../messages.ts'
import { textOf } from './draft.ts'
import type { Choice, ControlProps } from './form-field.ts'

/** One of several things, each with its picture: the one that is chosen, and the others once somebody asks for them. */
export function PictureChoice({ field, id, change }: ControlProps) {
  const [isOpen, setOpen] = useState(false)
  const chosen = textOf(field.value)
  const shown = field.choices.filter(({ value }) => isOpen || value === chosen)
  return (
    <fieldset class="form-pictures" id={id} tabIndex={-1}>
      <legend>{field.label}</legend>
      {shown.map((choice) => (
        <Picture
          key={choice.value}
          choice={choice}
          name={id}
          isChosen={choice.value === chosen}
          choose={() => {
            setOpen(false)
            change(field, choice.value)
          }}
        />
      ))}
      <button type="button" class="button small" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
        {isOpen ? m.form.fewer : m.form.others(field.label)}
      </button>
    </fieldset>
  )
}

interface PictureProps {
  readonly choice: Choice
  readonly name: string
  readonly isChosen: boolean
  readonly choose: () => void
}

const Picture = ({ choice: { label, svg }, name, isChosen, choose }: PictureProps) => (
  <label class={isChosen ? 'form-picture chosen' : 'form-picture'}>
    <span class="check">
      <input type="radio" name={name} checked={isChosen} onChange={choose} />
      {label}
    </span>
    {svg !== undefined && <span class="picture" aria-hidden="true" dangerouslySetInnerHTML={{ __html: svg }} />}
  </label>
)

import '../style/form.css'
import type { ComponentType } from 'preact'
import { useState } from 'preact/hooks'
import { m } from '../messages.ts'
import type { Draft } from './draft.ts'
import { FieldView } from './field-view.tsx'
import type { ControlProps, FormField } from './form-field.ts'
import { type FormItem, type FormList, type FormSection, fieldsIn } from './form-section.ts'
import type { PlacedProblems } from './place-problems.ts'

interface Props {
  /** Of the form in the page. */
  readonly id: string
  readonly title: string
  readonly sections: readonly FormSection[]
  readonly problems: PlacedProblems
  /** Whether there is room for sections to stand open from the start. */
  readonly isWide: boolean
  readonly change: (change: (draft: Draft) => Draft) => void
  /** A change that takes much away or touches many fields; `said` is shown with a way back. */
  readonly sweep: (change: (draft: Draft) => Draft, said: (before: Draft, after: Draft) => string) => void
  readonly saidOfUnits: (before: Draft, after: Draft) => string
  readonly ownPicture?: ComponentType<ControlProps>
}

/** A form of sections that fold; what is wrong stands at the field that it is wrong with. */
export function FormView(props: Props) {
  const { id, title, sections, problems } = props
  const put = (field: FormField, value: unknown): void => {
    const change = (draft: Draft): Draft => field.put(draft, value)
    if (field.place === 'units') props.sweep(change, props.saidOfUnits)
    else props.change(change)
  }
  const fields = (list: readonly FormField[]) => (
    <div class="form-fields">
      {list.map((field) => (
        <FieldView
          key={field.place}
          field={field}
          problems={problems.at.get(field.place) ?? []}
          change={put}
          ownPicture={props.ownPicture}
        />
      ))}
    </div>
  )
  return (
    <form class="form" aria-labelledby={`${id}-title`} noValidate onSubmit={(event) => event.preventDefault()}>
      <h2 id={`${id}-title`}>{title}</h2>
      {sections.map((section) => (
        <Section
          key={section.id}
          section={section}
          isOpenFirst={props.isWide ? section.isMain : section.isHandiest}
          isWrong={fieldsIn(section).some(({ place }) => problems.at.has(place))}
          content={() => (
            <>
              {section.how !== null && <p class="hint">{section.how}</p>}
              {section.fields.length > 0 && fields(section.fields)}
              {section.list !== null && (
                <ItemList list={section.list} fields={fields} change={props.change} sweep={props.sweep} />
              )}
            </>
          )}
        />
      ))}
    </form>
  )
}

interface SectionProps {
  readonly section: FormSection
  readonly isOpenFirst: boolean
  /** A section in which something is wrong cannot be shut. */
  readonly isWrong: boolean
  /** Made only while the section is open: a form has hundreds of fields, and a phone shows a few. */
  readonly content: () => preact.ComponentChildren
}

function Section({ section, isOpenFirst, isWrong, content }: SectionProps) {
  const [isOpen, setOpen] = useState(isOpenFirst)
  return (
    <details
      class="form-section"
      open={isOpen || isWrong}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        <h3>{section.title}</h3>
      </summary>
      {(isOpen || isWrong) && content()}
    </details>
  )
}

interface ItemListProps extends Pick<Props, 'change' | 'sweep'> {
  readonly list: FormList
  readonly fields: (list: readonly FormField[]) => preact.ComponentChildren
}

function ItemList({ list, fields, change, sweep }: ItemListProps) {
  const remove = (item: FormItem): void => sweep(item.remove, () => m.form.removed(item.name))
  return (
    <>
      {list.items.map((item, i) => (
        <fieldset class="form-item" key={i}>
          <legend>{item.title}</legend>
          {fields(item.fields)}
          {list.items.length > list.least && (
            <button type="button" class="button small" onClick={() => remove(item)}>
              {m.form.remove(item.name)}
            </button>
          )}
        </fieldset>
      ))}
      <button type="button" class="button" onClick={() => change(list.add)}>
        {list.addWords}
      </button>
    </>
  )
}

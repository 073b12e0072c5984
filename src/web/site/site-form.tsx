import { useState } from 'preact/hooks'
import type { Draft } from './draft.ts'
import { FieldView } from './field-view.tsx'
import type { FormField } from './form-field.ts'
import type { FormItem, FormList } from './form-lists.ts'
import type { FormSection } from './form-sections.ts'
import type { PlacedProblems } from './place-problems.ts'
import { words } from './words.ts'

interface Props {
  readonly sections: readonly FormSection[]
  readonly problems: PlacedProblems
  /** Whether there is room for sections to stand open from the start. */
  readonly isWide: boolean
  readonly change: (change: (draft: Draft) => Draft) => void
  /** A change that takes much away or touches many fields; `said` is shown with a way back. */
  readonly sweep: (change: (draft: Draft) => Draft, said: (before: Draft, after: Draft) => string) => void
  readonly saidOfUnits: (before: Draft, after: Draft) => string
}

export function SiteForm(props: Props) {
  const { sections, problems } = props
  const put = (field: FormField, value: unknown): void => {
    const change = (draft: Draft): Draft => field.put(draft, value)
    if (field.place === 'units') props.sweep(change, props.saidOfUnits)
    else props.change(change)
  }
  const fields = (list: readonly FormField[]) => (
    <div class="site-fields">
      {list.map((field) => (
        <FieldView key={field.place} field={field} problems={problems.at.get(field.place) ?? []} change={put} />
      ))}
    </div>
  )
  return (
    <form class="site-form" aria-labelledby="site-form-title" noValidate onSubmit={(event) => event.preventDefault()}>
      <h2 id="site-form-title">{words().form.title}</h2>
      {sections.map((section) => (
        <Section
          key={section.id}
          section={section}
          isOpenFirst={props.isWide ? section.isMain : handiest.includes(section.id)}
          isWrong={allFields(section).some(({ place }) => problems.at.has(place))}
          content={() => (
            <>
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

const handiest: readonly FormSection['id'][] = ['hazards', 'barrier']

const allFields = ({ fields, list }: FormSection): readonly FormField[] => [
  ...fields,
  ...(list?.items ?? []).flatMap((item) => item.fields),
]

interface SectionProps {
  readonly section: FormSection
  readonly isOpenFirst: boolean
  /** A section in which something is wrong cannot be shut. */
  readonly isWrong: boolean
  /** Made only while the section is open: a site has hundreds of fields, and a phone shows a few. */
  readonly content: () => preact.ComponentChildren
}

function Section({ section, isOpenFirst, isWrong, content }: SectionProps) {
  const [isOpen, setOpen] = useState(isOpenFirst)
  return (
    <details
      class="site-section"
      open={isOpen || isWrong}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>
        <h3>{words().sections[section.id]}</h3>
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
  const { form } = words()
  const remove = (item: FormItem): void => sweep(item.remove, () => form.removed(item.name))
  return (
    <>
      {list.items.map((item, i) => (
        <fieldset class="site-item" key={i}>
          <legend>{item.title}</legend>
          {fields(item.fields)}
          {list.items.length > list.least && (
            <button type="button" class="button small" onClick={() => remove(item)}>
              {form.remove(item.name)}
            </button>
          )}
        </fieldset>
      ))}
      <button type="button" class="button" onClick={() => change(list.add)}>
        {form.add[list.place]}
      </button>
    </>
  )
}

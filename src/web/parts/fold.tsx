import type { ComponentChildren } from 'preact'
import { useState } from 'preact/hooks'

interface Props {
  readonly title: string
  /** Of its heading. */
  readonly level: 2 | 3
  /** What of it is seen while it is folded, beside its title. */
  readonly beside: ComponentChildren
  readonly isOpen: boolean
  /** Tells that a hand opened or folded it. */
  readonly fold: (isOpen: boolean) => void
  readonly class?: string
  /** Place of the run that it stands for, by id. */
  readonly at?: string | undefined
  /** What is in it, which is drawn only while it is open. */
  readonly children: () => ComponentChildren
}

/** What stands together under a title and can be folded away; it is a button to who hears the page. */
export const Fold = ({ title, level, beside, isOpen, fold, class: kind = '', at, children }: Props) => (
  <details
    class={`group ${kind}`}
    data-at={at}
    open={isOpen}
    onToggle={({ currentTarget }) => currentTarget.open !== isOpen && fold(currentTarget.open)}
  >
    <summary>
      {level === 2 ? <h2>{title}</h2> : <h3>{title}</h3>}
      {beside}
    </summary>
    {isOpen && children()}
  </details>
)

/** The same where nobody else has to know whether it is open. */
export function FoldByItself({
  opensFirst,
  ...props
}: Omit<Props, 'isOpen' | 'fold'> & { readonly opensFirst: boolean }) {
  const [isOpen, setOpen] = useState(opensFirst)
  return <Fold {...props} isOpen={isOpen} fold={setOpen} />
}

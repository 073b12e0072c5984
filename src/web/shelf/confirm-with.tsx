import { useState } from 'preact/hooks'
import type { Confirming } from '../../core/hardware/confirm-statement.ts'
import { recall, remember, rememberedVisit, rememberVisit } from '../data/device.ts'
import { words } from './words.ts'

/** What is said once and holds for every statement that is found in one document. */
export interface ConfirmWith extends Omit<Confirming, 'page'> {}

const key = 'confirming'

/** The document in hand, who reads in it and on which day; the device remembers all but the day. */
export function useConfirmWith() {
  const [inHand, setInHand] = useState<ConfirmWith>(() => ({
    document: (recall(key) as ConfirmWith['document'] | null) ?? { title: '', edition: '' },
    by: rememberedVisit().by,
    on: new Date().toISOString().slice(0, 10),
  }))
  const change = (changes: Partial<ConfirmWith>): void => {
    const next = { ...inHand, ...changes }
    setInHand(next)
    remember(key, next.document)
    rememberVisit({ ...rememberedVisit(), by: next.by })
  }
  return { inHand, change, isSaid: isSaid(inHand) }
}

const isSaid = ({ document: { title, edition }, by, on }: ConfirmWith): boolean =>
  [title, edition, by, on].every((text) => text.trim() !== '')

interface Props {
  readonly inHand: ConfirmWith
  readonly change: (changes: Partial<ConfirmWith>) => void
  /** Whether somebody tried to confirm before all of it was said. */
  readonly isAsked: boolean
}

/** Asks for the document in hand, before the first number is confirmed in it. */
export function ConfirmWithFields({ inHand, change, isAsked }: Props) {
  const w = words().confirm
  const { document, by, on } = inHand
  const input = (value: string, put: (value: string) => void) => ({
    maxLength: 200,
    value,
    'aria-invalid': isAsked && value.trim() === '',
    onInput: ({ currentTarget }: { readonly currentTarget: { readonly value: string } }) => put(currentTarget.value),
  })
  return (
    <section class="shelf-in-hand" aria-labelledby="in-hand-title">
      <h2 id="in-hand-title">{w.title}</h2>
      <p class="hint">{w.how}</p>
      <div class="fields">
        <label>
          <span>{w.document}</span>
          <input {...input(document.title, (title) => change({ document: { ...document, title } }))} />
        </label>
        <label>
          <span>{w.edition}</span>
          <input {...input(document.edition, (edition) => change({ document: { ...document, edition } }))} />
        </label>
        <label>
          <span>{w.by}</span>
          <input {...input(by, (name) => change({ by: name }))} />
        </label>
        <label>
          <span>{w.on}</span>
          <input type="date" {...input(on, (day) => change({ on: day }))} />
        </label>
      </div>
    </section>
  )
}

interface ConfirmProps {
  readonly confirm: (page: string) => void
}

/** The page on which one statement was found, and that it says the same there. */
export function ConfirmOne({ confirm }: ConfirmProps) {
  const w = words().confirm
  const [page, setPage] = useState('')
  const [isAsked, setAsked] = useState(false)
  return (
    <form
      class="shelf-confirm"
      onSubmit={(event) => {
        event.preventDefault()
        if (page.trim() === '') setAsked(true)
        else confirm(page.trim())
      }}
    >
      <label>
        <span>{w.page}</span>
        <input
          maxLength={60}
          value={page}
          aria-invalid={isAsked && page.trim() === ''}
          onInput={({ currentTarget }) => setPage(currentTarget.value)}
        />
      </label>
      <button type="submit" class="button">
        {w.confirm}
      </button>
    </form>
  )
}

import { m } from '../messages.ts'
import type { Draft } from './draft.ts'

/** What a sweeping change did, and what stood there before it. */
export interface Swept {
  readonly said: string
  readonly before: Draft
}

/** Says what a sweeping change did, with the way back. */
export const SweptNote = ({ swept, back }: { readonly swept: Swept | null; readonly back: (draft: Draft) => void }) => (
  <div role="status">
    {swept !== null && (
      <p class="form-swept">
        {swept.said}{' '}
        <button type="button" class="button small" onClick={() => back(swept.before)}>
          {m.form.back}
        </button>
      </p>
    )}
  </div>
)

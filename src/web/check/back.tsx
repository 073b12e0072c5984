import { m } from '../messages.ts'

/** To what was asked before. */
export const Back = ({ back }: { readonly back: () => void }) => (
  <button type="button" class="back" onClick={back}>
    {m.check.back}
  </button>
)

import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { verdictOrder } from '../../drawing/verdict-signs.ts'
import { className } from './verdict-sign.tsx'

/** How much is read and how, as one bar. The numbers stand in words beside it, so it says nothing to who hears the page. */
export const ProgressBar = ({ counts }: { readonly counts: Readonly<Record<VerdictWord, number>> }) => (
  <span class="progress" aria-hidden="true">
    {verdictOrder.map((word) => (
      <i key={word} class={className(word)} style={{ flexGrow: counts[word] }} />
    ))}
  </span>
)

import { useMemo } from 'preact/hooks'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { countVerdicts } from '../../operations/count-verdicts.ts'
import { m } from '../messages.ts'
import { className, Sign } from '../parts/verdict-sign.tsx'
import type { WalkWish } from './walk-groups.ts'

interface Props {
  readonly wish: WalkWish
  readonly verdicts: readonly VerdictWord[]
  readonly change: (changes: Partial<WalkWish>) => void
}

/** What somebody goes to look for: what nobody read, what fails, what the measurement cannot decide. */
const sought: readonly VerdictWord[] = ['unread', 'fails', 'too close']

/** Search by word or number, and by verdict. */
export function WalkWishFields({ wish, verdicts, change }: Props) {
  const counts = useMemo(() => countVerdicts(verdicts.map((verdict) => ({ verdict }))), [verdicts])
  const filter = (verdict: VerdictWord | null) => ({
    type: 'button' as const,
    class: 'filter',
    'aria-pressed': wish.verdict === verdict,
    onClick: () => change({ verdict }),
  })
  return (
    <search class="walk-wish">
      <input
        type="search"
        aria-label={m.walk.search}
        placeholder={m.walk.search}
        value={wish.search}
        onInput={({ currentTarget }) => change({ search: currentTarget.value })}
      />
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would be a group of fields */}
      <div class="filters" role="group" aria-label={m.walk.shown}>
        {sought.map((word) => (
          <button key={word} {...filter(word)}>
            <span class={className(word)}>
              <Sign word={word} />
              <b>{counts[word]}</b>
            </span>
            <span>{m.verdict[word]}</span>
          </button>
        ))}
        <button {...filter(null)}>
          <b>{verdicts.length}</b>
          <span>{m.walk.all}</span>
        </button>
      </div>
    </search>
  )
}

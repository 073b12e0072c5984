import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { verdictOrder } from '../../drawing/verdict-signs.ts'
import type { RunFace } from '../../protocol/runs.ts'
import { className } from './verdict-sign.tsx'

const [width, height, top, bottom] = [320, 26, 8, 18]

interface Props {
  readonly face: RunFace
  /** Where on it somebody is, 0 at its beginning, 1 at its end. */
  readonly here?: number | null
}

/**
 * A run's miniature: its line as it bends, and on it the worst verdict of each stretch. What it shows stands beside it in
 * words, so it says nothing to who hears the page.
 */
export function RunFaceView({ face: { bends, stretches }, here = null }: Props) {
  const at = (share: number): number => 6 + share * (width - 12)
  const lateral = (share: number): number => {
    const first = bends.first !== null && share < bends.first ? 1 - share / bends.first : 0
    const second = bends.second !== null && share > bends.second ? (share - bends.second) / (1 - bends.second) : 0
    return top + Math.max(first, second) * (bottom - top)
  }
  const corners = [0, bends.first ?? 0, bends.second ?? 1, 1]
  return (
    <svg class="run-face" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      <polyline points={corners.map((share) => `${at(share)},${lateral(share)}`).join(' ')} />
      {[...stretches].map((digit, i) => {
        const word = verdictOrder[Number(digit)]!
        const share = (i + 0.5) / stretches.length
        return word === 'does not apply' ? null : (
          <path
            key={`${i}`}
            class={className(word)}
            d={marks[word]}
            transform={`translate(${at(share)} ${lateral(share)})`}
          />
        )
      })}
      {here !== null && (
        <path class="here" d="M-5-3h10L0 4z" transform={`translate(${at(here)} ${lateral(here) - 5})`} />
      )}
    </svg>
  )
}

/** As the signs of the verdicts, without what is too small to be seen. */
const marks: Readonly<Record<Exclude<VerdictWord, 'does not apply'>, string>> = {
  fails: 'M-5-5h10v10h-10z',
  'too close': 'M0-5.5l5.5 10h-11z',
  unread: 'M-3.5-3.5h7v7h-7z',
  meets: 'M3.2 0a3.2 3.2 0 1 1-6.4 0a3.2 3.2 0 1 1 6.4 0z',
}

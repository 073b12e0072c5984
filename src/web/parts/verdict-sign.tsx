import type { ComponentChildren } from 'preact'
import type { Acceptance, VerdictWord } from '../../core/verdicts/verdict.ts'
import { m, say } from '../messages.ts'

/** The same shapes as on the strip: they tell a verdict without colour. */
const shapes: Readonly<Record<VerdictWord, ComponentChildren>> = {
  meets: (
    <>
      <circle cx="12" cy="12" r="10" />
      <path d="M7 12.4l3.6 4L17 8" />
    </>
  ),
  fails: (
    <>
      <path class="filled" d="M7.9 2h8.2L22 7.9v8.2L16.1 22H7.9L2 16.1V7.9z" />
      <path class="on-filled" d="M8 8l8 8M16 8l-8 8" />
    </>
  ),
  'too close': (
    <>
      <path d="M12 2.5L22.5 21.5h-21z" />
      <path d="M9.6 12.2c0-3.4 5-3.2 4.8-.3-.1 1.8-2.3 2-2.4 4M12 18.4v.6" />
    </>
  ),
  unread: (
    <>
      <path class="dashed" d="M3 3h18v18H3z" />
      <path d="M8 12h8" />
    </>
  ),
  'does not apply': <path class="bar" d="M5 12h14" />,
}

const wordOf: Readonly<Record<Acceptance['kind'], VerdictWord>> = {
  acceptable: 'meets',
  'acceptable except': 'does not apply',
  'not acceptable': 'fails',
  'not yet known': 'unread',
}

/** Of what is shown in the ink of a verdict. */
export const className = (word: VerdictWord): string => `verdict verdict-${word.replaceAll(' ', '-')}`

/** Shape of a verdict, for where its word stands beside it. */
export const Sign = ({ word }: { readonly word: VerdictWord }) => (
  <svg class="sign" viewBox="0 0 24 24" aria-hidden="true">
    {shapes[word]}
  </svg>
)

interface MarkProps {
  readonly word: VerdictWord
  /** How often it is given. */
  readonly count?: number
  /** Out of how many; not said where that is one. */
  readonly of?: number
}

/** Shape and word of a verdict. */
export const VerdictMark = ({ word, count, of }: MarkProps) => (
  <span class={className(word)}>
    <Sign word={word} />
    <span class="verdict-word">
      {m.verdict[word]}
      {count !== undefined && (of === undefined || of > 1) && (
        <b class="count">
          {' '}
          {count}
          {of !== undefined && `/${of}`}
        </b>
      )}
    </span>
  </span>
)

/** Shape and word of a run's acceptance. */
export const AcceptanceMark = ({ acceptance }: { readonly acceptance: Acceptance }) => (
  <span class={`${className(wordOf[acceptance.kind])} acceptance`}>
    <Sign word={wordOf[acceptance.kind]} />
    <span class="verdict-word">{say(acceptance)}</span>
  </span>
)

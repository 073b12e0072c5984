import type { EndSheet, LongitudinalSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Place } from '../../core/requirements/requirement.ts'
import { exactValue, kindOf } from '../../core/units/quantity-kinds.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { requirementsOf } from '../../operations/sheet-requirements.ts'
import { shippedShelf } from '../../operations/sheet-shelf.ts'
import { shippedSheets } from '../../sheets/shipped-sheets.ts'
import { BegunHere } from '../entry/begun.tsx'
import { Choices, SeenChoices } from '../entry/choices.tsx'
import { emptyDraft } from '../entry/draft.ts'
import { Gauge } from '../entry/gauge.tsx'
import { Keypad } from '../entry/keypad.tsx'
import { SaveBar } from '../entry/save-bar.tsx'
import { m, say } from '../messages.ts'
import { FoldByItself } from '../parts/fold.tsx'
import { VerdictMark } from '../parts/verdict-sign.tsx'
import { NextUnread } from '../views/next-unread.tsx'
import { WalkWishFields } from '../views/walk-wish-fields.tsx'

/** The keys of each kind of quantity, in either system. */
export const Keypads = () => (
  <>
    {(
      [
        ['in', 'us'],
        ['mm', 'metric'],
        ['count', 'us'],
        ['%', 'metric'],
        ['lbf·ft', 'us'],
      ] as const
    ).map(([unit, units]) => (
      <div key={unit} class="gallery-narrow">
        <p class="label">{m.entry.kinds[kindOf(unit)]}</p>
        <Keypad unit={unit} units={units} insert={() => undefined} erase={() => undefined} />
      </div>
    ))}
  </>
)

/** Of the first shelf sheet: 30 in to 32 in. */
const { railHeight } = shippedSheets[0]!

/** A value in each of its verdicts, and none yet. */
export const Gauges = () => (
  <>
    {[null, 31, 30.1, 28].map((value) => (
      <div key={value} class="gallery-narrow">
        <Gauge
          limits={railHeight}
          units={value === 28 ? 'metric' : 'us'}
          doubt={{ fixed: exactValue(0.25, 'in'), relative: 0 }}
          rule={{ kind: 'guard band', multiple: 1 }}
          value={value}
        />
      </div>
    ))}
  </>
)

const nothing = (): void => undefined

const terminal = shippedShelf.get('flared-terminal-31') as EndSheet
const pictured = requirementsOf(terminal, shippedShelf.get('w-beam-midspan-31') as LongitudinalSheet).filter(
  ({ figure, look }) => figure !== null && look.kind === 'choose',
)

/** Right and wrong of each figure as answers, each chosen in turn, and none yet. */
export const PicturedAnswers = () => (
  <>
    {[...new Map(pictured.map((one) => [one.figure, one])).values()].map((requirement, i) => {
      const { look } = requirement
      const answers = look.kind === 'choose' ? [null, ...look.choices.map(({ id }) => id)] : []
      return (
        <form key={requirement.id} class="gallery-narrow">
          <SeenChoices
            requirement={requirement}
            sheet={terminal}
            units={i % 2 === 0 ? 'us' : 'metric'}
            chosen={answers[i % answers.length] ?? null}
            choose={nothing}
          />
        </form>
      )
    })}
  </>
)

/** Answers in words, as long as they get, with one chosen and with none; and what saves them, in each state. */
export const Answers = () => (
  <>
    {[null, 'yes'].map((chosen) => (
      <div key={chosen} class="gallery-narrow">
        <Choices
          legend={m.entry.confirm}
          name={chosen === null ? 'choice' : 'side'}
          choices={[
            { id: 'yes', words: chosen === null ? m.entry.yes : m.entry.sides.away },
            { id: 'no', words: chosen === null ? m.entry.no : m.entry.sides.toward },
          ]}
          chosen={chosen}
          choose={nothing}
        />
      </div>
    ))}
    {(
      [
        [{ previous: null, next: '/gallery' }, '', null, null, false],
        [{ previous: '/gallery', next: '/gallery' }, m.entry.saved(say(post)), nothing, null, false],
        [{ previous: '/gallery', next: null }, '', null, nothing, false],
        [{ previous: '/gallery', next: null }, '', null, null, true],
      ] as const
    ).map(([steps, saved, undo, takeBack, isSaving], i) => (
      <div key={i} class="gallery-narrow">
        <SaveBar steps={steps} isSaving={isSaving} save={nothing} saved={saved} undo={undo} takeBack={takeBack} />
      </div>
    ))}
  </>
)

const post: Place = { kind: 'post', id: 'post-8', number: 8, alongInches: 525, own: null }
const begun = {
  ...{ run: 'gallery', of: 'post-8/rail-height', requirement: 'post-8/rail-height', version: 'now' },
  ...{ at: '2026-05-12T14:02-06:00', draft: { ...emptyDraft, text: '30 1/2', note: '…' } },
}

/** What was begun, in this version and in an earlier one. */
export const Kept = () => (
  <>
    {['now', 'earlier'].map((version) => (
      <div key={version} class="gallery-narrow">
        <BegunHere
          units="us"
          begun={{ ...begun, version }}
          version="now"
          requirement={{ look: { kind: 'confirm' } }}
          takeUp={nothing}
          drop={nothing}
        />
      </div>
    ))}
  </>
)

const verdicts: readonly VerdictWord[] = ['unread', 'fails', 'fails', 'too close', 'meets', 'does not apply']

/** The head of the walk, places folded and not, and what is to be done next, in each of its states. */
export const WalkParts = () => (
  <>
    <WalkWishFields wish={{ search: '', verdict: 'fails' }} verdicts={verdicts} change={nothing} />
    <div>
      {verdicts.map((word, i) => (
        <FoldByItself
          key={i}
          level={3}
          title={say({ ...post, number: i + 1 })}
          beside={<VerdictMark word={word} count={2} of={12} />}
          opensFirst={i === 1}
        >
          {() => <p>{m.walk.noneFound}</p>}
        </FoldByItself>
      ))}
    </div>
    {(
      [
        [{ id: 'post-8/rail-height', place: post }, 0],
        [null, 3],
        [null, 0],
      ] as const
    ).map(([next, standing], i) => (
      <div key={i} class="gallery-narrow">
        <NextUnread run="gallery" units="us" next={next} standing={standing} />
      </div>
    ))}
  </>
)

import { useState } from 'preact/hooks'
import { hardwareKey, type KeyAnswer, type KeyOption, type KeyQuestion } from '../../core/hardware/hardware-key.ts'
import type { EndSheet } from '../../core/hardware/hardware-sheet.ts'
import type { KeySaying } from '../../core/hardware/key-saying.ts'
import type { KeyTrait } from '../../core/hardware/key-traits.ts'
import type { UnitView } from '../../drawing/views/unit-view.ts'
import { m, say } from '../messages.ts'
import { Back } from './back.tsx'
import { type AtHand, joinedBy } from './shelf.ts'
import { nameOf, UnitCard } from './unit-card.tsx'

/** What of an end unit its answer shows. */
const views: Readonly<Partial<Record<KeyTrait, UnitView>>> = { 'line of rail': 'line', splices: 'splice' }

interface Props {
  readonly atHand: AtHand
  readonly sheets: readonly EndSheet[]
  readonly found: (sheet: EndSheet) => void
  readonly none: () => void
  readonly back: () => void
}

/** The key that finds the hardware: one question at a time, with pictures to answer. */
export function FindByKey({ atHand, sheets, found, none, back }: Props) {
  const [answers, setAnswers] = useState<readonly KeyAnswer[]>([])
  const { left, question } = hardwareKey(sheets, atHand.sheets, answers)
  const stepBack = (): void => (answers.length === 0 ? back() : setAnswers(answers.slice(0, -1)))
  const words = m.check
  return (
    <>
      <Back back={stepBack} />
      {question === null ? (
        <Left atHand={atHand} left={left} found={found} none={none} />
      ) : (
        <Question
          atHand={atHand}
          question={question}
          answer={(is) => setAnswers([...answers, { of: question.of, is }])}
        />
      )}
      {question !== null && (
        <p class="hint" role="status">
          {words.left(left.length, sheets.length, left.map(nameOf).join(' · '))}
        </p>
      )}
    </>
  )
}

interface QuestionProps {
  readonly atHand: AtHand
  readonly question: KeyQuestion<EndSheet>
  readonly answer: (is: KeyAnswer['is']) => void
}

function Question({ atHand, question: { of, options }, answer }: QuestionProps) {
  return (
    <>
      <h1>{say({ kind: 'key question', of })}</h1>
      <p>{say({ kind: 'where to look', of })}</p>
      <div class="check-cards">
        {options.map((option) => (
          <Option key={String(option.is)} atHand={atHand} of={of} option={option} choose={() => answer(option.is)} />
        ))}
      </div>
      <div class="check-others">
        <button type="button" class="button" onClick={() => answer('not sure')}>
          {m.check.notSure}
        </button>
        <button type="button" class="button" onClick={() => answer('none of these')}>
          {m.check.noneOfThese}
        </button>
      </div>
    </>
  )
}

interface OptionProps {
  readonly atHand: AtHand
  readonly of: KeyTrait
  readonly option: KeyOption<EndSheet>
  readonly choose: () => void
}

function Option({ atHand, of, option: { is, left }, choose }: OptionProps) {
  const sheet = left[0]!
  const system = joinedBy(sheet, atHand.systems)[0]!
  const words = say({ kind: 'key answer', of, is } as KeySaying)
  return <UnitCard sheet={sheet} system={system} view={views[of] ?? 'end'} words={words} choose={choose} />
}

interface LeftProps extends Pick<Props, 'atHand' | 'found' | 'none'> {
  readonly left: readonly EndSheet[]
}

/** What it can be: one or several to compare with what stands. */
function Left({ atHand, left, found, none }: LeftProps) {
  const words = m.check
  return (
    <>
      <h1>{left.length === 0 ? words.nothingLeft : left.length === 1 ? words.isIt : words.whichOf}</h1>
      <div class="check-cards check-wide">
        {left.map((sheet) => (
          <UnitCard
            key={sheet.id}
            sheet={sheet}
            system={joinedBy(sheet, atHand.systems)[0]!}
            view="whole"
            choose={() => found(sheet)}
          />
        ))}
      </div>
      <div class="check-others">
        <button type="button" class={left.length === 0 ? 'button main' : 'button'} onClick={none}>
          {left.length === 0 ? words.goOnUnknown : words.noneOfThese}
        </button>
      </div>
    </>
  )
}

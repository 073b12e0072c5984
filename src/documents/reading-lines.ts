import { quantityText } from '../core/hardware/dimension-text.ts'
import type { Instrument } from '../core/measurement/instruments.ts'
import { lacksSide } from '../core/measurement/offset-side.ts'
import type { Answer, MeasuredAnswer, Reading } from '../core/measurement/reading.ts'
import type { ThingNames } from '../core/record/thing-read.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { isLengthUnit, valueIn } from '../core/units/quantity-kinds.ts'
import type { Judgement, WithoutEffect } from '../core/verdicts/verdict.ts'
import { valueToText } from '../formats/written-value.ts'
import type { Print } from '../words/print.ts'
import { timeText } from './printed-time.ts'
import { documentWords } from './words/document-words.ts'

/** One reading in words. */
export interface ReadingLine {
  readonly id: string
  /** Name of what it is of. */
  readonly of: string
  /** As it was read, in the unit of the reading. */
  readonly answer: string
  readonly instrument: string | null
  /** Standard uncertainty that the reader stated. */
  readonly uncertainty: string | null
  readonly by: string
  readonly at: string
  readonly where: string | null
  /** What its person says beside the answer. */
  readonly note: string | null
  readonly photos: readonly string[]
  /** Null also where it names what it cannot correct or recheck: that stands in `withoutEffect`. */
  readonly corrects: string | null
  readonly rechecks: string | null
  /** What it says besides and counts for nothing. */
  readonly withoutEffect: readonly string[]
  /** A name shared by readings that were taken in one go for several places. */
  readonly together: string | null
}

export interface LineInput {
  readonly instruments: readonly Instrument[]
  readonly nameOf: ThingNames
  readonly judgement: Pick<Judgement, 'withoutEffect'>
  readonly print: Print
}

/** @param requirement the one it answers, whose choices give the answer its words; undefined where it is not known */
export function readingLine(
  reading: Reading,
  requirement: Requirement | undefined,
  { instruments, nameOf, judgement, print }: LineInput,
): ReadingLine {
  const { id, of, by, where, note, photos, together, uncertainty } = reading
  const { theirs } = print
  const words = documentWords(print).readings
  const answer = answerText(reading.answer, requirement, print)
  const instrument = instruments.find((one) => one.id === reading.instrument)
  const vain = judgement.withoutEffect.filter((one) => one.reading === id)
  const counting = (kind: WithoutEffect['kind'], names: string | null): string | null =>
    vain.some((one) => one.kind === kind) ? null : names
  return {
    id,
    of: print.say(nameOf(of, null)),
    answer: lacksSide(reading) ? words.sideNotStated(answer) : answer,
    instrument:
      instrument === undefined
        ? reading.instrument === null
          ? null
          : theirs(reading.instrument)
        : print.say(instrument.name),
    uncertainty: uncertainty === null ? null : words.uncertainty(quantityText(uncertainty.value, uncertainty.unit)),
    by: theirs(by),
    at: timeText(reading.at),
    where: where === null ? null : theirs(where),
    note: note === undefined ? null : theirs(note),
    photos,
    corrects: counting('correction', reading.corrects),
    rechecks: counting('recheck', reading.rechecks),
    withoutEffect: vain.map(print.say),
    together,
  }
}

function answerText(answer: Answer, requirement: Requirement | undefined, print: Print): string {
  const words = documentWords(print).readings
  switch (answer.kind) {
    case 'measured':
      return writtenText(answer, print)
    case 'choice': {
      const choices = requirement?.look.kind === 'choose' ? requirement.look.choices : []
      const choice = choices.find(({ id }) => id === answer.choice)
      return choice === undefined ? print.theirs(answer.choice) : print.say(choice.label)
    }
    case 'confirmed':
      return answer.yes ? words.confirmed : words.notConfirmed
    case 'cannot see':
      return words.cannotSee
    case 'does not apply':
      return words.doesNotApply(print.theirs(answer.because))
    default:
      return answer satisfies never
  }
}

/** A length that has no exact text is written with all its decimals. */
const sizeText = ({ value, unit }: MeasuredAnswer): string =>
  isLengthUnit(unit) ? `${valueIn(value, unit)} ${unit}` : quantityText(valueIn(value, unit), unit)

/** `27 3/4 in`, `705 mm`, `48 in away from traffic`; `28 in (read to 1/8 in)` where the reader stated a resolution. */
function writtenText(answer: MeasuredAnswer, print: Print): string {
  const written = valueToText(answer) as { value: string | number; resolution?: string }
  const size = typeof written.value === 'string' ? written.value : sizeText(answer)
  const value = answer.side === undefined ? size : `${size} ${print.say({ kind: 'side', side: answer.side })}`
  return written.resolution === undefined ? value : documentWords(print).readings.readTo(value, written.resolution)
}

import type { InputProblem } from '../../formats/input-problem.ts'
import type { EntryAnswer } from '../../protocol/entries.ts'
import type { ErrorAnswer, ToldProblem } from '../../protocol/error-answer.ts'
import { english } from '../../words/english.ts'
import type { Saying } from '../../words/saying.ts'
import type { HeardAnswer } from './merge-entries.ts'
import type { Trouble } from './run-source.ts'

export const heardError = ({
  message,
  saying,
  problems = [],
}: ErrorAnswer['error']): Pick<Trouble, 'message' | 'problems'> => ({
  message: heard(saying, message),
  problems: problems.map(heardProblem),
})

/** An entry that was refused, with the first of its problems. */
export function heardAnswer(answer: EntryAnswer): HeardAnswer {
  if (answer.outcome !== 'rejected') return answer
  const { id, outcome, reason, saying, problems } = answer
  const why = heard(saying, reason)
  const [first] = problems
  if (first === undefined) return { id, outcome, reason: why }
  const { place, expected } = heardProblem(first)
  return { id, outcome, reason: { kind: 'rejected for', why, place, expected } }
}

const heardProblem = ({ file, place, expected, found, saying }: ToldProblem): InputProblem => ({
  file,
  place,
  expected: heard(saying?.expected, expected),
  found: saying?.found === null || found === '' ? null : heard(saying?.found, found),
})

/** What was said as data; in the server's own words where it said none, or is newer and says what we have no words for. */
function heard<S extends Saying>(saying: S | undefined, text: string): S | OtherWords {
  return saying !== undefined && isKnown(saying) ? saying : { kind: 'in these words', words: text }
}

type OtherWords = Extract<Saying, { readonly kind: 'in these words' }>

function isKnown(saying: Saying): boolean {
  try {
    english(null).say(saying)
    return true
  } catch (cause) {
    if (cause instanceof TypeError) return false
    throw cause
  }
}

import type { InputProblem } from '../../formats/input-problem.ts'
import type { EntryAnswer } from '../../protocol/entries.ts'
import type { ErrorAnswer, ToldProblem } from '../../protocol/error-answer.ts'
import type { Print } from '../../words/print.ts'
import type { Saying } from '../../words/saying.ts'
import { later } from './later.ts'
import type { HeardAnswer } from './merge-entries.ts'
import type { Trouble } from './run-source.ts'

export async function heardError({
  message,
  saying,
  problems = [],
}: ErrorAnswer['error']): Promise<Pick<Trouble, 'message' | 'problems'>> {
  const heard = await ears()
  return { message: heard(saying, message), problems: problems.map((one) => heardProblem(one, heard)) }
}

/** An entry that was refused, with the first of its problems. */
export async function heardAnswer(answer: EntryAnswer): Promise<HeardAnswer> {
  if (answer.outcome !== 'rejected') return answer
  const { id, outcome, reason, saying, problems } = answer
  const heard = await ears()
  const why = heard(saying, reason)
  const [first] = problems
  if (first === undefined) return { id, outcome, reason: why }
  const { place, expected } = heardProblem(first, heard)
  return { id, outcome, reason: { kind: 'rejected for', why, place, expected } }
}

const heardProblem = ({ file, place, expected, found, saying }: ToldProblem, heard: Ears): InputProblem => ({
  file,
  place,
  expected: heard(saying?.expected, expected),
  found: saying?.found === null || found === '' ? null : heard(saying?.found, found),
})

type OtherWords = Extract<Saying, { readonly kind: 'in these words' }>

/** What was said as data; in the server's own words where it said none, or is newer and says what we have no words for. */
type Ears = <S extends Saying>(saying: S | undefined, text: string) => S | OtherWords

/** They know what is said by the words for it, which are fetched where something goes wrong; without them all stands in those of the server. */
async function ears(): Promise<Ears> {
  const words = await later(() => import('../../words/english.ts'))
  const isKnown = (saying: Saying): boolean => words.ok && canSay(words.value.english(null), saying)
  return (saying, text) => (saying !== undefined && isKnown(saying) ? saying : { kind: 'in these words', words: text })
}

function canSay(print: Print, saying: Saying): boolean {
  try {
    print.say(saying)
    return true
  } catch (cause) {
    if (cause instanceof TypeError) return false
    throw cause
  }
}

import { namesOfThings } from '../../core/record/thing-read.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { say } from '../messages.ts'

/**
 * What is asked where the version in force may not ask it, by name.
 * @returns of the id of what is asked, and of the version that its person saw, null where that is not known
 */
export function askedWords({ model, run, versions }: Pick<JudgedRun, 'model' | 'versions' | 'run'>) {
  const nameOf = namesOfThings(model, run.version, versions)
  return (of: string, seen: string | null): string => say(nameOf(of, seen), run.units)
}

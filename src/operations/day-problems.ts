import { placeIdsIn } from '../core/record/version.ts'
import { dayLogOf, locateTicketOf } from '../formats/entry/day-entries.ts'
import type { Entry } from '../formats/entry/entry-kinds.ts'
import { type InputProblem, written } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { chooseLayout } from './choose-layout.ts'
import { meansOfToday } from './means-of-today.ts'

export type DayEntry = Pick<Entry, 'run' | 'schemaVersion' | 'body'> & { readonly kind: 'day-log' | 'locate-ticket' }

export const isDayEntry = <E extends Pick<Entry, 'kind'>>(entry: E): entry is E & Pick<DayEntry, 'kind'> =>
  entry.kind === 'day-log' || entry.kind === 'locate-ticket'

/**
 * What is wrong with a day log or a utility-locate ticket beyond its form: a version that the run does not have, a post
 * or panel that no version of it has. A log written anew carries on what an earlier version had and its own has not;
 * since no id is ever used again, any version that has the piece will do.
 *
 * @param place  of the body in `file`
 * @param files  the versions of the run by id; one that can no longer be laid out says nothing
 */
export function dayProblems(
  file: string,
  place: string,
  entry: DayEntry,
  files: ReadonlyMap<string, RunFile>,
): readonly InputProblem[] {
  const problem = (field: string, expected: InputProblem['expected'], found: unknown): InputProblem => {
    const at = [place, field].filter((part) => part !== '').join('.')
    return { file, place: at, expected, found: written(found) }
  }
  const { version, named } = namedIn(entry)
  if (!files.has(version ?? entry.run)) return [problem('version', { kind: 'version of run' }, version)]
  const layouts = [...files.values()].flatMap((one) => {
    const chosen = chooseLayout(file, one, meansOfToday)
    return chosen.ok ? [chosen.value.layout] : []
  })
  if (layouts.length === 0) return []
  const known = new Set(layouts.flatMap(placeIdsIn))
  return named
    .filter(({ id }) => !known.has(id))
    .map(({ field, piece, id }) => problem(field, { kind: 'piece of run', piece }, id))
}

/** Every post and panel that is named, and where. */
function namedIn({ kind, schemaVersion, body }: DayEntry) {
  if (kind === 'locate-ticket') {
    const { version, marks } = locateTicketOf(schemaVersion, body)
    return {
      version,
      named: marks.map(({ from }, i) => ({ field: `marks[${i}].from`, piece: 'post', id: from }) as const),
    }
  }
  const { version, postsDriven, panelsHung } = dayLogOf(schemaVersion, body)
  return {
    version,
    named: [
      ...postsDriven.map((id, i) => ({ field: `postsDriven[${i}]`, piece: 'post', id }) as const),
      ...panelsHung.map((id, i) => ({ field: `panelsHung[${i}]`, piece: 'panel', id }) as const),
    ],
  }
}

import type { Kysely } from 'kysely'
import { z } from 'zod'
import { err, ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import { checkShape } from '../formats/read-json.ts'
import type { Project } from './read.ts'
import type { Tables } from './schema.ts'
import { storableText } from './storable-text.ts'

export type ProjectProblem =
  /** A project of this id is there under another name. */
  | { readonly kind: 'same-id-different-name'; readonly storedName: string }
  | { readonly kind: 'unstorable'; readonly problems: readonly InputProblem[] }

const projectShape = z.object({ id: storableText, name: storableText })

/** Makes a project, unless the very same is there. */
export async function createProject(
  db: Kysely<Tables>,
  project: Pick<Project, 'id' | 'name'>,
): Promise<Result<'stored' | 'already', ProjectProblem>> {
  const checked = checkShape('project', project, projectShape)
  if (!checked.ok) return err({ kind: 'unstorable', problems: checked.error })
  const { id, name } = checked.value
  const made = await db
    .insertInto('project')
    .values({ id, name })
    .onConflict((conflict) => conflict.column('id').doNothing())
    .returning('id')
    .executeTakeFirst()
  if (made !== undefined) return ok('stored')
  const { name: storedName } = await db
    .selectFrom('project')
    .select('name')
    .where('id', '=', id)
    .executeTakeFirstOrThrow()
  return storedName === name ? ok('already') : err({ kind: 'same-id-different-name', storedName })
}

import { ok, type Result } from '../core/result.ts'
import type { InputProblem } from '../formats/input-problem.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { contentId } from './content-id.ts'
import type { LayoutMeans } from './means-of-today.ts'
import type { RequiredRun } from './require-by.ts'
import { requireRun } from './require-run.ts'
import { sheetsInUse } from './sheets-in-use.ts'

/**
 * The run with the layout chosen and every sheet in use by content, as its first version; one that is pinned stays as
 * it is. From here on neither the shelf nor the solver has a say in it.
 * @param version  id of the version
 */
export function pinRun(
  file: string,
  run: RunFile,
  version: string,
  means?: LayoutMeans,
): Result<RunFile, readonly InputProblem[]> {
  if (run.version !== undefined) return ok(run)
  const required = requireRun(file, run, means)
  return required.ok ? ok(pinnedTo(required.value, { id: version, earlier: [] })) : required
}

/**
 * The same with its run pinned as its first version, under an id made from its content; one that is pinned stays as it is.
 * @param sha256 hexadecimal SHA-256 of a text in UTF-8
 */
export function pinned<R extends Pick<RequiredRun, 'run' | 'model'>>(required: R, sha256: (text: string) => string): R {
  if (required.run.version !== undefined) return required
  const id = contentId(pinnedTo(required, { id: '-', earlier: [] }), sha256)
  return { ...required, run: pinnedTo(required, { id, earlier: [] }) }
}

/** The run as its file pins it: what was asked, its layout and its sheets. */
export const pinnedTo = (
  { run, model }: Pick<RequiredRun, 'run' | 'model'>,
  { id, earlier }: Pick<NonNullable<RunFile['version']>, 'id' | 'earlier'>,
): RunFile => ({ ...run, sheets: sheetsInUse(model), version: { id, earlier, layout: model.layout } })

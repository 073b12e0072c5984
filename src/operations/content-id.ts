import { canonicalJson } from '../formats/canonical-json.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { runToValue } from '../formats/run/write-run.ts'

/**
 * An id of a version made from what it holds, whatever its id was: the same run pinned twice has one.
 * @param sha256 hexadecimal SHA-256 of a text in UTF-8
 */
export function contentId(run: RunFile, sha256: (text: string) => string): string {
  const { version: _, ...content } = runToValue(run) as { readonly version?: string }
  return sha256(canonicalJson(content)).slice(0, 24)
}

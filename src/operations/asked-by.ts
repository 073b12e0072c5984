import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { requireBy } from './require-by.ts'
import type { VersionAtHand } from './run-history.ts'

/**
 * What a version of a run asked under an id, so that an answer to it can be said in its words; undefined where the version is
 * not at hand, or asked nothing there. Each version's requirements are derived once, when one of them is wanted.
 */
export function askedBy(
  versions: ReadonlyMap<string, VersionAtHand>,
): (of: string, version: string) => Requirement | undefined {
  const known = new Map<string, ReadonlyMap<string, Requirement>>()
  return (of, version) => {
    const at = versions.get(version)
    if (at === undefined) return undefined
    const asked = known.get(version) ?? requirementsIn(version, at.file)
    known.set(version, asked)
    return asked.get(of)
  }
}

function requirementsIn(version: string, file: RunFile): ReadonlyMap<string, Requirement> {
  const required = requireBy(null, `run ${version}`, file)
  return new Map(required.ok ? required.value.requirements.map((one) => [one.id, one]) : [])
}

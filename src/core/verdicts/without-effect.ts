import { correctionsIn } from '../measurement/corrections.ts'
import type { Reading } from '../measurement/reading.ts'
import type { Requirement } from '../requirements/requirement.ts'
import { restsOn } from '../requirements/rests-on.ts'
import { recheckedFinding } from './rechecks.ts'
import type { WithoutEffect } from './verdict.ts'

/** All that counts for nothing in a log, in its order. */
export function withoutEffect(
  requirements: readonly Requirement[],
  readings: readonly Reading[],
): readonly WithoutEffect[] {
  const correcting = new Set([...correctionsIn(readings).values()].flat())
  const rechecking = rechecksThatCount(requirements, readings)
  const canBeSetAside = new Set(requirements.filter(({ maySetAside }) => maySetAside).map(({ id }) => id))
  return readings.flatMap(({ id, of, answer, corrects, rechecks }): WithoutEffect[] => [
    ...(answer.kind !== 'does not apply' || canBeSetAside.has(of)
      ? []
      : [{ reading: id, kind: 'setting aside', names: of } as const]),
    ...(corrects === null || correcting.has(id) ? [] : [{ reading: id, kind: 'correction', names: corrects } as const]),
    ...(rechecks === null || rechecking.has(id) ? [] : [{ reading: id, kind: 'recheck', names: rechecks } as const]),
  ])
}

function rechecksThatCount(requirements: readonly Requirement[], readings: readonly Reading[]): ReadonlySet<string> {
  const naming = readings.filter(({ rechecks }) => rechecks !== null)
  if (naming.length === 0) return new Set()
  const proven = provenBy(requirements)
  const byId = new Map(requirements.map((requirement) => [requirement.id, requirement]))
  return new Set(
    naming
      .filter((reading) => (proven.get(reading.of) ?? []).some((one) => recheckedFinding(reading, one, byId) !== null))
      .map(({ id }) => id),
  )
}

/** By what is read, the requirements that a reading of it can prove. */
export function provenBy(requirements: readonly Requirement[]): ReadonlyMap<string, readonly Requirement[]> {
  const proven = new Map<string, Requirement[]>()
  for (const requirement of requirements)
    for (const of of restsOn(requirement)) {
      const list = proven.get(of)
      if (list === undefined) proven.set(of, [requirement])
      else list.push(requirement)
    }
  return proven
}

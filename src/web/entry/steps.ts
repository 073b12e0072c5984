import { inputsOf } from '../../core/requirements/rests-on.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { requirementPath } from '../route.ts'

export interface Steps {
  readonly previous: string | null
  readonly next: string | null
}

/** Before and after in walking order; among the values that a requirement is computed from, first those. */
export function stepsFrom({ requirements }: JudgedRun, run: string, at: number, of: string): Steps {
  const requirement = requirements[at]!
  const own = of === requirement.id ? [] : inputsOf(requirement)
  const place = own.indexOf(of)
  const ownPath = (i: number): string | null => {
    const id = own[i]
    return id === undefined ? null : requirementPath(run, requirement.id, id)
  }
  const pathOf = (i: number): string | null => {
    const id = requirements[i]?.id
    return id === undefined ? null : requirementPath(run, id)
  }
  if (place === -1) return { previous: pathOf(at - 1), next: pathOf(at + 1) }
  return { previous: place === 0 ? pathOf(at) : ownPath(place - 1), next: ownPath(place + 1) ?? pathOf(at + 1) }
}

/** Steps by Alt with page up or page down. */
export const stepByKey =
  (steps: Steps, go: (path: string) => void) =>
  (event: KeyboardEvent): void => {
    if (!event.altKey || (event.key !== 'PageDown' && event.key !== 'PageUp')) return
    event.preventDefault()
    const path = event.key === 'PageDown' ? steps.next : steps.previous
    if (path !== null) go(path)
  }

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

/** How far a finger has to go sideways to be a swipe, and how near the edge of the screen it may not begin, pixels. */
const swipeLength = 70
const edge = 24

/** Steps by swipe, and by Alt with page up or page down. A swipe that begins in what scrolls sideways is left alone. */
export function stepHandlers(steps: Steps, go: (path: string) => void) {
  let start: { readonly x: number; readonly y: number } | null = null
  return {
    onTouchStart: (event: TouchEvent) => {
      const touch = event.touches[0]!
      const isFree = event.touches.length === 1 && !(event.target as Element).closest('input, select, dialog, .keypad')
      const isInside = touch.clientX > edge && touch.clientX < window.innerWidth - edge
      start = isFree && isInside ? { x: touch.clientX, y: touch.clientY } : null
    },
    onTouchEnd: (event: TouchEvent) => {
      const touch = event.changedTouches[0]!
      if (start === null) return
      const [dx, dy] = [touch.clientX - start.x, touch.clientY - start.y]
      start = null
      if (Math.abs(dx) < swipeLength || Math.abs(dx) < 2 * Math.abs(dy)) return
      const path = dx < 0 ? steps.next : steps.previous
      if (path !== null) go(path)
    },
    onKeyDown: (event: KeyboardEvent) => {
      if (!event.altKey || (event.key !== 'PageDown' && event.key !== 'PageUp')) return
      event.preventDefault()
      const path = event.key === 'PageDown' ? steps.next : steps.previous
      if (path !== null) go(path)
    },
  }
}

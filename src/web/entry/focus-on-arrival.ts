import { useEffect, useRef } from 'preact/hooks'
import type { Draft } from './draft.ts'

/** Brings the entry into view, and its first field under the hands of whoever came here or chose other fields. */
export function useFocusOnArrival(panel: { readonly current: HTMLFormElement | null }, mode: Draft['mode']): void {
  const shownMode = useRef<Draft['mode'] | null>(null)
  useEffect(() => {
    const form = panel.current
    if (form === null) return
    const hasArrived = shownMode.current === null
    const isMoved = hasArrived ? history.state !== null : shownMode.current !== mode
    shownMode.current = mode
    if (isMoved) form.querySelector<HTMLElement>('[data-first]')?.focus({ preventScroll: true })
    if (!hasArrived) return
    const { top } = form.getBoundingClientRect()
    if (top < 0 || top > window.innerHeight / 2) form.scrollIntoView({ block: 'start' })
  }, [panel, mode])
}

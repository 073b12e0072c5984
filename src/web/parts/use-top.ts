import { useLayoutEffect, useRef } from 'preact/hooks'
import { type Route, wentOn } from '../route.ts'

/**
 * Begins a view at its top when somebody goes on to it. Who goes back finds it where the browser kept it, and the walk
 * keeps its place by itself.
 */
export function useTop(route: Route): void {
  const place = placeOf(route)
  const before = useRef(place)
  useLayoutEffect(() => {
    const isOther = before.current !== place
    before.current = place
    if (isOther && place !== null && wentOn()) scrollTo(0, 0)
  }, [place])
}

function placeOf(route: Route): string | null {
  if (route.view === 'run') return route.pane === 'walk' ? null : `${route.run} ${route.pane}`
  if (route.view === 'shelf') return `${route.sheet} ${route.part}`
  return route.view
}

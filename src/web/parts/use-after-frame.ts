import { useEffect, useState } from 'preact/hooks'

/** The value as it was until the frame with the new one's other effects is on screen: what is large follows apart. */
export function useAfterFrame<T>(value: T): T {
  const [shown, setShown] = useState(() => value)
  useEffect(() => setShown(() => value), [value])
  return shown
}

/**
 * How many of `total` are drawn: `step` with the first frame, and more each time that is on screen: as many again as are
 * there already, but no more than `most` at once. What is to be drawn is made in a task of its own between two frames,
 * so that neither lasts long; the frame between gives the browser time to put the one before on screen.
 */
export function useFrameByFrame(total: number, step: number, most = step): number {
  const [drawn, setDrawn] = useState(step)
  useEffect(() => {
    if (drawn >= total) return
    let timer: ReturnType<typeof setTimeout> | undefined
    let frame = requestAnimationFrame(() => {
      frame = requestAnimationFrame(() => {
        timer = setTimeout(() => setDrawn(drawn + Math.min(drawn, most)))
      })
    })
    return () => {
      cancelAnimationFrame(frame)
      clearTimeout(timer)
    }
  }, [drawn, total, most])
  return Math.min(drawn, total)
}

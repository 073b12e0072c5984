import { useEffect, useState } from 'preact/hooks'

/** The value as it was until the frame with the new one's other effects is on screen: what is large follows apart. */
export function useAfterFrame<T>(value: T): T {
  const [shown, setShown] = useState(() => value)
  useEffect(() => setShown(() => value), [value])
  return shown
}

/**
 * How many of `total` are drawn: `step` with the first frame, and as many more each time that is on screen. What is to
 * be drawn is made in a task of its own between two frames, so that neither lasts long; the frame between gives the
 * browser time to put the one before on screen.
 */
export function useFrameByFrame(total: number, step: number): number {
  const [drawn, setDrawn] = useState(step)
  useEffect(() => {
    if (drawn >= total) return
    let timer: ReturnType<typeof setTimeout> | undefined
    let frame = requestAnimationFrame(() => {
      frame = requestAnimationFrame(() => {
        timer = setTimeout(() => setDrawn(drawn + step))
      })
    })
    return () => {
      cancelAnimationFrame(frame)
      clearTimeout(timer)
    }
  }, [drawn, total, step])
  return Math.min(drawn, total)
}

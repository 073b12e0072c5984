import { useEffect, useState } from 'preact/hooks'

/** The value as it was until the frame with the new one's other effects is on screen: what is large follows apart. */
export function useAfterFrame<T>(value: T): T {
  const [shown, setShown] = useState(() => value)
  useEffect(() => setShown(() => value), [value])
  return shown
}

/**
 * How many of `total` are drawn: `step` with the first frame, and as many more with each one after it. What is to be
 * drawn is made in a task of its own between two frames, so that neither lasts long.
 */
export function useFrameByFrame(total: number, step: number): number {
  const [drawn, setDrawn] = useState(step)
  useEffect(() => {
    if (drawn >= total) return
    let timer: ReturnType<typeof setTimeout> | undefined
    const frame = requestAnimationFrame(() => {
      timer = setTimeout(() => setDrawn(drawn + step))
    })
    return () => {
      cancelAnimationFrame(frame)
      clearTimeout(timer)
    }
  }, [drawn, total, step])
  return Math.min(drawn, total)
}

import { useEffect, useRef, useState } from 'preact/hooks'

/** The value as it was at the last frame, so that many changes between two frames are computed once. */
export function useEachFrame<T extends object>(value: T): T {
  const [settled, settle] = useState(value)
  const latest = useRef(value)
  const waiting = useRef(0)
  latest.current = value
  useEffect(() => {
    if (waiting.current !== 0 || latest.current === settled) return
    waiting.current = requestAnimationFrame(() => {
      waiting.current = 0
      settle(latest.current)
    })
  })
  useEffect(() => () => cancelAnimationFrame(waiting.current), [])
  return settled
}

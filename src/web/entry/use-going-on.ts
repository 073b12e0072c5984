import { useEffect, useRef, useState } from 'preact/hooks'

/** How long an answer can be taken back before it saves itself, milliseconds. */
const pause = 500

export interface GoingOn {
  /** Whether the answer saves itself if nothing happens. */
  readonly isGoing: boolean
  /** Says that the answer that is being given was touched by a finger. */
  readonly touch: () => void
  readonly stop: () => void
}

/**
 * Saves an answer by itself a moment after a finger gave it.
 * @param may  whether the answer at hand is one that may: it is asked after it was given
 */
export function useGoingOn(may: boolean, saveAndGo: () => void): GoingOn {
  const isTouched = useRef(false)
  const [isGoing, setGoing] = useState(false)
  const go = useRef(saveAndGo)
  go.current = saveAndGo
  useEffect(() => {
    if (!isTouched.current) return
    isTouched.current = false
    if (may) setGoing(true)
  })
  useEffect(() => {
    if (!isGoing) return
    const timer = setTimeout(() => {
      setGoing(false)
      go.current()
    }, pause)
    return () => clearTimeout(timer)
  }, [isGoing])
  return {
    isGoing,
    touch: () => {
      isTouched.current = true
    },
    stop: () => setGoing(false),
  }
}

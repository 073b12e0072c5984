import { useEffect, useState } from 'preact/hooks'

/** Whether there is room for the plan with its words beside what they name. */
export function useWide(): boolean {
  const [isWide, setWide] = useState(() => matchMedia(wide).matches)
  useEffect(() => {
    const query = matchMedia(wide)
    const read = (): void => setWide(query.matches)
    query.addEventListener('change', read)
    return () => query.removeEventListener('change', read)
  }, [])
  return isWide
}

const wide = '(min-width: 62rem)'

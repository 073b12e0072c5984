import { useEffect, useState } from 'preact/hooks'

/** Room for a plan or a layout with its words beside what they name. */
export const wide = '(min-width: 62rem)'

/** Whether the screen is as the query says, also once it is turned or made larger. */
export function useMedia(query: string): boolean {
  const [isSo, setSo] = useState(() => matchMedia(query).matches)
  useEffect(() => {
    const asked = matchMedia(query)
    const read = (): void => setSo(asked.matches)
    asked.addEventListener('change', read)
    return () => asked.removeEventListener('change', read)
  }, [query])
  return isSo
}

import { useEffect, useMemo } from 'preact/hooks'
import type { RunSource } from './run-source.ts'
import { shelfOf } from './shelf-of.ts'
import { useLoaded } from './use-loaded.ts'

/** The editions that are this device's own, anew after each change; and the shelf, shipped sheets alone until they are known. */
export function useShelf(source: RunSource) {
  const [own, again] = useLoaded('own sheets', () => source.ownSheets())
  useEffect(() => source.onChange(({ isOfShelf }) => isOfShelf === true && again()), [source, again])
  const shelf = useMemo(() => shelfOf(own.state === 'loaded' ? own.value : []), [own])
  return { own, shelf, again }
}

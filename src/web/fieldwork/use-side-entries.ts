import { useCallback, useEffect, useState } from 'preact/hooks'
import type { PhotoStrokes } from '../../core/record/photo-strokes.ts'
import { photoStrokes } from '../../formats/entry/photo-strokes.ts'
import type { KeptEntry, RunSource, SideKind, Trouble } from '../data/run-source.ts'

/** What is recorded at a run besides readings, each kind in the order of storing. */
export interface SideEntries {
  /** Each as it was described last. */
  readonly photos: readonly KeptEntry<'photo'>[]
  /** What is drawn on them. */
  readonly strokes: readonly PhotoStrokes[]
  readonly signatures: readonly KeptEntry<'sign-off'>[]
  readonly logs: readonly KeptEntry<'day-log'>[]
  readonly tickets: readonly KeptEntry<'locate-ticket'>[]
  readonly assignments: readonly KeptEntry<'assignment'>[]
  /** Why they are not known; then the lists are not to be taken for empty. */
  readonly trouble: Trouble | null
  readonly isLoaded: boolean
}

const none: SideEntries = {
  photos: [],
  strokes: [],
  signatures: [],
  logs: [],
  tickets: [],
  assignments: [],
  trouble: null,
  isLoaded: false,
}

/**
 * The side entries of a run, and the way to read them anew after one of them was appended.
 * @param isWanted  false as long as there is something to show before them
 */
export function useSideEntries(
  source: RunSource,
  run: string,
  isWanted: boolean,
): readonly [SideEntries, again: () => Promise<void>] {
  const [entries, setEntries] = useState<SideEntries>(none)
  const again = useCallback(async (): Promise<void> => {
    const read = <K extends SideKind>(kind: K) => source.entries(run, kind)
    const [photos, strokes, signatures, logs, tickets, assignments] = await Promise.all([
      read('photo'),
      read('photo-strokes'),
      read('sign-off'),
      read('day-log'),
      read('locate-ticket'),
      read('assignment'),
    ])
    if (photos.ok && strokes.ok && signatures.ok && logs.ok && tickets.ok && assignments.ok) {
      setEntries({
        photos: photos.value.filter(({ isSuperseded }) => !isSuperseded),
        strokes: photoStrokes(strokes.value),
        signatures: signatures.value,
        logs: logs.value,
        tickets: tickets.value,
        assignments: assignments.value,
        trouble: null,
        isLoaded: true,
      })
    } else {
      const failed = [photos, strokes, signatures, logs, tickets, assignments].find((answer) => !answer.ok)
      if (failed !== undefined && !failed.ok) setEntries((before) => ({ ...before, trouble: failed.error }))
    }
  }, [source, run])
  useEffect(() => {
    if (isWanted) void again()
  }, [again, isWanted])
  return [entries, again]
}

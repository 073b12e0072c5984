import { useEffect } from 'preact/hooks'

/**
 * Keeps the screen awake for as long as this is shown and wanted: a browser lets go of it whenever the page is hidden, so
 * it is taken again on return. Where there is no such thing, or the device refuses, the screen sleeps as it always did.
 */
export function useKeptAwake(isWanted: boolean): void {
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return
    let isOver = false
    let held: WakeLockSentinel | null = null
    const take = async (): Promise<void> => {
      if (document.visibilityState !== 'visible') return
      // Refused where the battery is low: nobody has to know.
      const lock = await navigator.wakeLock.request('screen').catch(() => null)
      if (isOver) await lock?.release()
      else held = lock
    }
    const takeAgain = (): void => void take()
    document.addEventListener('visibilitychange', takeAgain)
    takeAgain()
    return () => {
      isOver = true
      document.removeEventListener('visibilitychange', takeAgain)
      void held?.release()
    }
  }, [isWanted])
}

import { useEffect, useState } from 'preact/hooks'
import type { Answer, DeviceStatus, RunSource, Trouble } from './run-source.ts'

/** The status, anew after each change; and why it cannot be told. */
export function useStatus(source: RunSource): readonly [DeviceStatus | null, Trouble | null] {
  const [status, setStatus] = useState<DeviceStatus | null>(null)
  const [trouble, setTrouble] = useState<Trouble | null>(null)
  useEffect(() => {
    const look = async (): Promise<void> => {
      const answer = await statusNow(source)
      setTrouble(answer.ok ? null : answer.error)
      if (answer.ok) setStatus(answer.value)
    }
    void look()
    return source.onChange(() => void look())
  }, [source])
  return [status, trouble]
}

let asked: Answer<DeviceStatus> | null = null

/** All that show it ask at the same moment, and it is computed once for them. */
function statusNow(source: RunSource): Answer<DeviceStatus> {
  asked ??= source.status().finally(() => {
    asked = null
  })
  return asked
}

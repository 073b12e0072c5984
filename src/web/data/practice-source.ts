import { deviceSource } from './device-source.ts'
import type { RunSource } from './run-source.ts'

let opened: RunSource | null = null

/** What is practised on this device: a database of its own, from which nothing is sent and nothing comes to real runs. */
export function practiceSource(): RunSource {
  opened ??= deviceSource(true, 'practice')
  return opened
}

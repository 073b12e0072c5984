import { err, type Result } from '../../core/result.ts'
import type { StoreTrouble } from './device-store.ts'
import { d } from './messages.ts'
import type { Trouble } from './run-source.ts'

/** In words to show: a store that cannot be read is never one in which there is nothing. */
export function fromStore({ kind, reason }: StoreTrouble): Result<never, Trouble> {
  if (kind === 'no room') return err({ kind, message: d.trouble.noRoom, problems: [] })
  if (kind === 'gone') return err({ kind: 'fault', message: d.trouble.gone, problems: [] })
  return err({ kind: 'fault', message: d.trouble.store(reason), problems: [] })
}

export const orTrouble = <T>(answer: Result<T, StoreTrouble>): Result<T, Trouble> =>
  answer.ok ? answer : fromStore(answer.error)

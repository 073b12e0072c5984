import { err, ok } from '../../core/result.ts'
import { d } from './messages.ts'
import type { Answer } from './run-source.ts'

/** A part of the page that is fetched only when it is needed; without a connection that can fail. */
export async function later<T>(fetchPart: () => Promise<T>): Answer<T> {
  try {
    return ok(await fetchPart())
  } catch {
    return err({ kind: 'unreachable', message: d.trouble.part, problems: [] })
  }
}

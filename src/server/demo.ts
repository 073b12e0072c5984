import { randomBytes } from 'node:crypto'
import { demoEntries } from '../operations/demo-entries.ts'
import type { Store } from '../store/store.ts'

const project = { id: 'demo', name: 'Demo' }
const device = 'server'

/** Whether the store is new, or was left before its demo project was complete. */
export async function lacksDemo(store: Store): Promise<boolean> {
  const projects = answered(await store.projects())
  if (projects.length === 0) return true
  if (!projects.some(({ id }) => id === project.id)) return false
  return answered(await store.entries({ project: project.id, limit: 1 })).length === 0
}

/** Puts the demo run and its readings into the store, all of it or nothing. */
export async function createDemo(store: Store, now: Date): Promise<void> {
  const entries = demoEntries(now, () => randomBytes(10))
  answered(await store.createProject(project))
  const answers = answered(await store.append(entries.map((entry) => ({ ...entry, project: project.id, device }))))
  const refused = answers.find(({ outcome }) => outcome === 'rejected')
  if (refused !== undefined) throw new Error('the demo project cannot be stored', { cause: refused })
}

function answered<T>(
  result: { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: unknown },
): T {
  if (!result.ok) throw new Error('the demo project cannot be made', { cause: result.error })
  return result.value
}

import { entryId } from '../../formats/entry-id.ts'

/** A new id for something written down here and now. */
export const newId = (): string => entryId(Date.now(), crypto.getRandomValues(new Uint8Array(10)))

export const now = (): string => new Date().toISOString()

/** What is asked once and holds until it is changed. */
export interface Visit {
  readonly by: string
  readonly instrument: string
  readonly where: string
}

const emptyVisit: Visit = { by: '', instrument: 'tape-and-level', where: '' }

export const rememberedVisit = (): Visit => ({ ...emptyVisit, ...(recall('visit') as Partial<Visit> | null) })
export const rememberVisit = (visit: Visit): void => remember('visit', visit)

/** A browser may keep its storage shut; then things hold until the page is closed. */
const unkept = new Map<string, unknown>()

function recall(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(`lapwise/${key}`) ?? 'null')
  } catch {
    return unkept.get(key) ?? null
  }
}

function remember(key: string, value: unknown): void {
  try {
    localStorage.setItem(`lapwise/${key}`, JSON.stringify(value))
  } catch {
    unkept.set(key, value)
  }
}

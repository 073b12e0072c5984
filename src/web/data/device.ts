import type { QuantityKind } from '../../core/units/quantity-kinds.ts'
import { entryId, entryIdAfter } from '../../formats/entry-id.ts'

/** Ten of them. */
export const randomBytes = (): Uint8Array => crypto.getRandomValues(new Uint8Array(10))

/** A new id for something that follows nothing: a run, a device, a name that readings share. */
export const newId = (): string => entryId(Date.now(), randomBytes())

/** By run: the last id that this page gave out for an entry of it. */
const given = new Map<string, string>()

/**
 * A new id for an entry of `run`: it follows every entry of that run that this page has seen or made.
 * @param seen  ids of the entries that the page has before it
 */
export function nextId(run: string, seen: readonly string[]): string {
  const id = entryIdAfter([run, given.get(run) ?? run, ...seen], randomBytes())
  given.set(run, id)
  return id
}

export const now = (): string => new Date().toISOString()

/** A kind of quantity; how straight something stands is a length, but read from a string. */
export type InstrumentUse = QuantityKind | 'straightness'

/** What is asked once and holds until it is changed. */
export interface Visit {
  readonly by: string
  /** Ids, by what each was last used for. */
  readonly instruments: Readonly<Partial<Record<InstrumentUse, string>>>
  readonly where: string
}

/** A visit remembered before there was more than length to measure names one instrument. */
type EarlierVisit = Partial<Visit> & { readonly instrument?: string }

export function rememberedVisit(): Visit {
  const { by = '', where = '', instrument = 'tape-and-level', instruments } = (recall('visit') ?? {}) as EarlierVisit
  return { by, where, instruments: { straightness: 'string-line', ...(instruments ?? { length: instrument }) } }
}
export const rememberVisit = (visit: Visit): void => remember('visit', visit)

/** Whether somebody was told that this tab and the installed app keep their stores apart. */
export const mereTabWasSaid = (): boolean => recall('mere-tab') === true
export const sayMereTab = (): void => remember('mere-tab', true)

/** A browser may keep its storage shut; then things hold until the page is closed. */
const unkept = new Map<string, unknown>()

/** What this browser was given to remember under a name; null where that is nothing. */
export function recall(key: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(`lapwise/${key}`) ?? 'null')
  } catch {
    return unkept.get(key) ?? null
  }
}

export function remember(key: string, value: unknown): void {
  try {
    localStorage.setItem(`lapwise/${key}`, JSON.stringify(value))
  } catch {
    unkept.set(key, value)
  }
}

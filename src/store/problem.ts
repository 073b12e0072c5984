/** Why a store cannot be opened. */
export type StoreProblem =
  /** Another process (or this one) has the folder open; `pid` when it said who it is. */
  | { readonly kind: 'folder-in-use'; readonly folder: string; readonly pid: number | null }
  /** `place` is the folder, or the server without user name and password. */
  | { readonly kind: 'cannot-open'; readonly place: string; readonly reason: string }
  /** The store was written by a newer version of the program than this one. */
  | { readonly kind: 'newer-store'; readonly storeVersion: number; readonly programVersion: number }

/**
 * The database did not answer: server gone, disk full, connection lost. An append that ends so may or may not have
 * been stored; handing in the same entries again is safe, since ids decide.
 */
export interface StoreUnavailable {
  readonly kind: 'unavailable'
  readonly reason: string
}

/** SQLSTATE of a user who may not do this on the server: a matter for its administrator. */
const insufficientPrivilege = '42501'

/** What `error` says when the world outside caused it; a mistake of this program is thrown again. */
export function outageReason(error: unknown): string {
  if (!(error instanceof Error) || isOwnMistake(error)) throw error
  if (error instanceof AggregateError) return error.errors.map((each: unknown) => reasonOf(each)).join('; ')
  return reasonOf(error)
}

function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error)
}

/**
 * The language's own errors, and the classes of SQLSTATE that speak of the statement or its data rather than of the
 * server (PostgreSQL documentation, appendix A): 0A not supported, 22 data, 23 constraint, 42 syntax or access rule.
 */
function isOwnMistake(error: Error): boolean {
  if (error instanceof TypeError || error instanceof RangeError || error instanceof ReferenceError) return true
  if (!('code' in error) || typeof error.code !== 'string' || error.code === insufficientPrivilege) return false
  return /^(0A|22|23|42)[0-9A-Z]{3}$/.test(error.code)
}

/** Posts or panels that somebody logged, as the version in force has them. */
export interface LoggedPieces {
  /** Their numbers in it, in rising order, each once. */
  readonly numbers: readonly number[]
  /** Ids of those that it no longer has. */
  readonly gone: readonly string[]
}

/**
 * @param pieces  of the version in force
 * @param ids     as they were logged, whichever version their person saw
 */
export function loggedPieces(
  pieces: readonly { readonly id: string; readonly number: number }[],
  ids: readonly string[],
): LoggedPieces {
  const numbers = new Map(pieces.map(({ id, number }) => [id, number]))
  const logged = [...new Set(ids)]
  return {
    numbers: logged.flatMap((id) => numbers.get(id) ?? []).sort((a, b) => a - b),
    gone: logged.filter((id) => !numbers.has(id)),
  }
}

import { type Draft, valueAt, withValue } from '../form/draft.ts'

/**
 * The draft after something changed at `place`: the statement that it belongs to is no longer published nor checked, since what was
 * found in the document was what stood there before.
 */
export function unconfirmed(draft: Draft, place: string): Draft {
  const owner = citedAround(draft, place)
  if (owner === null) return draft
  const { checked: _, ...cited } = valueAt(draft, owner) as Readonly<Record<string, unknown>>
  const confirmation = cited.confirmation === 'published' ? 'from memory' : cited.confirmation
  return withValue(draft, owner, { ...cited, confirmation })
}

/** The innermost statement with a source in which a place lies. */
function citedAround(draft: Draft, place: string): string | null {
  for (let at = place; at !== ''; at = outerOf(at)) {
    const value = valueAt(draft, at)
    if (typeof value === 'object' && value !== null && 'source' in value && 'confirmation' in value) return at
  }
  return null
}

const outerOf = (place: string): string => place.replace(/(^|\.)[^.[\]]+$|\[\d+\]$/, '')

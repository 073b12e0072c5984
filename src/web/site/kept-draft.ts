import type { Draft } from './draft.ts'
import { exampleSite } from './example-site.ts'

const key = 'lapwise/site'

/** A browser may keep its storage shut; then the site holds until the page is closed. */
let unkept: Draft | null = null

/** The site that was being worked on here, or the example. */
export function keptDraft(): Draft {
  try {
    const kept = JSON.parse(localStorage.getItem(key) ?? 'null') as Draft | null
    return kept?.format === 'lapwise-site/1' ? kept : (unkept ?? exampleSite)
  } catch {
    return unkept ?? exampleSite
  }
}

export function keepDraft(draft: Draft): void {
  unkept = draft
  try {
    localStorage.setItem(key, JSON.stringify(draft))
  } catch {
    // What is kept above holds.
  }
}

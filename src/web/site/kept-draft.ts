import { recall, remember } from '../data/device.ts'
import type { Draft } from '../form/draft.ts'
import { exampleSite } from './example-site.ts'

/** The site that was being worked on here, or the example. */
export function keptDraft(): Draft {
  const kept = recall('site') as Draft | null
  return kept?.format === 'lapwise-site/1' ? kept : exampleSite
}

export const keepDraft = (draft: Draft): void => remember('site', draft)

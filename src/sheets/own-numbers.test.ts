import { expect, it } from 'vitest'
import { shippedSheets } from './shipped-sheets.ts'

// The same unit stands at either end of a run: its own count of posts is not the run's, and a place says both.
it.each(shippedSheets.map((sheet) => [sheet.id, sheet] as const))(
  'no text of %s names a post by the count of its unit',
  (_, sheet) => {
    expect(JSON.stringify(sheet).match(/\b(posts?|postes?) \d+[^"]*/g)).toBeNull()
  },
)

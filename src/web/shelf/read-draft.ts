import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import { sheetFromValue } from '../../formats/sheet/sheet-file.ts'
import { type Draft, withValue } from '../form/draft.ts'

/** The draft as a sheet, or what is wrong with it, each thing at its place. */
export const readDraft = (draft: Draft) => sheetFromValue('sheet', soundTexts(draft))

/**
 * The draft without what other languages say of texts that no longer stand in it: such a text is said as it stands, and marked,
 * until somebody translates it anew.
 */
function soundTexts(draft: Draft): Draft {
  const { translations, ...own } = draft as Draft & Pick<HardwareSheet, 'translations'>
  if (translations === undefined) return draft
  const texts = new Set(textsIn(own))
  const kept = Object.entries(translations).map(([language, said]) => [
    language,
    Object.fromEntries(Object.entries(said ?? {}).filter(([text]) => texts.has(text))),
  ])
  return withValue(draft, 'translations', Object.fromEntries(kept))
}

const textsIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(textsIn)
      : []

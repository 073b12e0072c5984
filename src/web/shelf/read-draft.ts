import { sheetFromValue } from '../../formats/sheet/sheet-file.ts'
import { followTexts } from '../../operations/follow-texts.ts'
import type { Draft } from '../form/draft.ts'

/**
 * The draft as a sheet, or what is wrong with it, each thing at its place. What other languages say of texts that were changed is
 * kept as what was said earlier.
 *
 * @param from  the sheet that it was begun from
 */
export const readDraft = (draft: Draft, from: Draft) => sheetFromValue('sheet', followTexts(from, draft))

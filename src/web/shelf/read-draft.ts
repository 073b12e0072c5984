import { sheetFromValue } from '../../formats/sheet/sheet-file.ts'
import type { Draft } from '../form/draft.ts'

/** The draft as a sheet, or what is wrong with it, each thing at its place. */
export const readDraft = (draft: Draft) => sheetFromValue('sheet', draft)

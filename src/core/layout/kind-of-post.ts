import type { HardwareSheet } from '../hardware/hardware-sheet.ts'
import { type SheetText, sheetText } from '../hardware/sheet-text.ts'
import type { LayoutPost } from './layout.ts'

/** What a post is called. */
export type PostKind = SheetText | PostThatStands

/** A post that no sheet names, as it stood before the run was laid out. */
export interface PostThatStands {
  readonly kind: 'post that stands'
}

/** What kind of post it is, as `sheet` calls it, by which it was placed. */
export const kindOfPost = ({ kind, state }: LayoutPost, sheet: HardwareSheet): PostKind =>
  state === 'standing' ? { kind: 'post that stands' } : sheetText(sheet, kind)

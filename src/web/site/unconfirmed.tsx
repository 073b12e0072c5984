import type { Confirmation } from '../../core/hardware/hardware-sheet.ts'
import { words } from './words.ts'

/** Marks a number that was checked against no document. */
export const Unconfirmed = ({ confirmation }: { readonly confirmation: Confirmation }) =>
  confirmation === 'from memory' ? <span class="tag strong">{words().need.unconfirmed}</span> : null

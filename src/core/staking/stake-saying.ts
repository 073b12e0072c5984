import type { EndSheet } from '../hardware/hardware-sheet.ts'
import type { PostKind } from '../layout/kind-of-post.ts'

/** What a stake is for: the post that it stands for. */
export interface StakeSaying {
  readonly kind: 'post at stake'
  /** Kind of post, as its sheet calls it. */
  readonly of: PostKind
  readonly block: boolean
  /** Its number in its end unit's own count; null in the run. */
  readonly own: { readonly number: number; readonly unit: EndSheet['kind'] } | null
  readonly state: 'moved' | 'stands already' | null
}

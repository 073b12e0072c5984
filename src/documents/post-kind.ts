import { kindOfPost } from '../core/layout/kind-of-post.ts'
import type { LayoutPost } from '../core/layout/layout.ts'
import { sheetOf } from '../core/layout/sheet-of.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import type { Print } from '../words/print.ts'

/** What kind of post it is, as its sheet calls it in the language of `print`. */
export const postKind = (post: LayoutPost, model: RunModel, print: Print): string =>
  print.say(kindOfPost(post, sheetOf(model, post.unit)))

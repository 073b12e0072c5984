import { longestRunInches } from '../units/longest-run.ts'
import { fixedAt } from './frames.ts'
import type { LayoutRequest } from './layout.ts'
import { inchesOf } from './sixteenths.ts'

export type SizeProblem =
  | { readonly kind: 'too long'; readonly inches: number; readonly most: number }
  | { readonly kind: 'too many posts'; readonly posts: number; readonly most: number }

/** Most posts of one run: 10 miles at full spacing have 8 448. Our judgement, as the longest run is. */
const mostPosts = 10_000

/** Why a run is too large to be laid out as one; null when it is not. */
export function sizeProblem(request: LayoutRequest): SizeProblem | null {
  const [from, to] = extent(request)
  const inches = to - from
  if (inches > longestRunInches) return { kind: 'too long', inches, most: longestRunInches }
  const { spacings } = request.system
  const posts = request.reduced.reduce((sum, part) => {
    const inside = Math.max(0, Math.min(to, part.toInches) - Math.max(from, part.fromInches))
    return sum + inside / spacings[part.spacing].inches - inside / spacings.full.inches
  }, inches / spacings.full.inches)
  return posts > mostPosts ? { kind: 'too many posts', posts: Math.ceil(posts), most: mostPosts } : null
}

/** The least stretch that the run has to span, inches from its datum. */
function extent({ first, second, need, standing }: LayoutRequest): readonly [from: number, to: number] {
  const fixed = [first, second].flatMap((end) => {
    const at = fixedAt(end)
    return at === null ? [] : [inchesOf(at)]
  })
  const stands =
    standing === null
      ? []
      : [standing.postOneAtInches, standing.panels.reduce((sum, panel) => sum + panel, standing.postOneAtInches)]
  const places = [...fixed, ...stands, ...(need === null ? [] : [need.fromInches, need.toInches])]
  return [Math.min(...places), Math.max(...places)]
}

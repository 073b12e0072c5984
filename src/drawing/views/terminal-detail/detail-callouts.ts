import type { EndSheet, SheetPost, SheetRule } from '../../../core/hardware/hardware-sheet.ts'
import { contentOf, sheetText } from '../../../core/hardware/sheet-text.ts'
import type { LayoutPanel, LayoutPost } from '../../../core/layout/layout.ts'
import { drawnSizes } from '../../../core/scene/drawn-sizes.ts'
import type { Print } from '../../../words/print.ts'
import { point } from '../../draw.ts'
import type { Point } from '../../drawing.ts'
import { detailWords } from '../../words/detail-words.ts'
import type { EndPlaces } from '../elevation/end-elevation.ts'

/** What the sheet says of one place of the end, with where to point. */
export interface DetailCallout {
  readonly at: Point
  readonly words: string
}

/** The end as it is laid out. */
export interface DetailEnd {
  readonly places: EndPlaces
  /** Of the end unit alone. */
  readonly posts: readonly LayoutPost[]
  readonly panels: readonly LayoutPanel[]
  /** Where the splice nearest to the outermost post lies; null where there is none. */
  readonly splice: number | null
  readonly print: Print
}

interface DetailPlaces extends DetailEnd {
  /** Inches along the run's rail for inches from the origin of the end's sheet. */
  readonly along: (own: number) => number
}

/** Every statement of the sheet on its posts, panels and parts, from left to right. */
export function detailCallouts(sheet: EndSheet, end: DetailEnd): DetailCallout[] {
  const firstPost = sheet.posts[0]?.along ?? 0
  const along = (own: number): number => end.places.postOne - end.places.outward * (own - firstPost)
  const where: DetailPlaces = { ...end, along }
  return [...partCallouts(sheet, where), ...postCallouts(sheet, where), ...panelCallouts(sheet, where)].sort(
    (a, b) => a.at.x - b.at.x,
  )
}

function partCallouts(sheet: EndSheet, where: DetailPlaces): DetailCallout[] {
  return sheet.parts.flatMap((part) => {
    const rules = part.rules.filter((rule) => rule.at.kind !== 'unit')
    const [first] = rules
    const { print } = where
    if (first === undefined) return []
    return [
      {
        at: placeOf(first, sheet, where),
        words: detailWords(print).part(
          print.say(sheetText(sheet, part.name)),
          rules.map((rule) => print.say(sheetText(sheet, rule.must))),
        ),
      },
    ]
  })
}

/** Where the part lies that the rule is about: by its figure, else by the place that the rule names. */
function placeOf(rule: SheetRule, sheet: EndSheet, { places, along, splice }: DetailPlaces): Point {
  const { cable, railTop, postOne, outward } = places
  const onRail = (x: number): Point => point(x, railTop - 2)
  switch (rule.figure) {
    case 'head-holes':
      return point(postOne + outward * 10, railTop)
    case 'bearing-plate':
      return cable.low
    case 'cable-play':
      return point((cable.foot.x + cable.high.x) / 2, (cable.foot.y + cable.high.y) / 2)
    case 'bracket-opening':
      return cable.high
  }
  const { at } = rule
  if (at.kind === 'posts')
    return point(along(sheet.posts.find((post) => post.number === at.numbers[0])?.along ?? 0), -8)
  if (at.kind === 'panels') {
    const before = sheet.panels.own.slice(0, (at.numbers[0] ?? 1) - 1).reduce((sum, panel) => sum + panel.inches, 0)
    return onRail(along(before + (sheet.panels.own[(at.numbers[0] ?? 1) - 1]?.inches ?? 0) * 0.6))
  }
  return onRail(at.kind === 'each splice' && splice !== null ? splice : postOne - outward * 30)
}

/** One statement for neighbouring posts that are alike, by the run's numbers with the unit's in brackets. */
function postCallouts(sheet: EndSheet, { along, posts: laidOut, print }: DetailPlaces): DetailCallout[] {
  const words = detailWords(print)
  const groups: { readonly post: SheetPost; readonly number: number }[][] = []
  for (const post of sheet.posts) {
    const number = laidOut.find(({ ownNumber }) => ownNumber === post.number)?.number
    if (number === undefined) continue
    const last = groups.at(-1)
    if (last !== undefined && isAlike(last[0]!.post, post)) last.push({ post, number })
    else groups.push([{ post, number }])
  }
  return groups.map((posts) => {
    const { post } = posts[0]!
    // At the second end the unit counts against the run.
    const inOrder = posts.toSorted((a, b) => a.number - b.number)
    const [from, to] = [inOrder[0]!, inOrder.at(-1)!]
    const name =
      posts.length === 1
        ? words.post(from.number, from.post.number)
        : words.posts([from.number, to.number], [from.post.number, to.post.number])
    return { at: point(along(post.along), 12), words: words.postsAre(name, postFacts(post, sheet, print)) }
  })
}

/** Whether the two are said to be the same. */
const isAlike = (one: SheetPost, other: SheetPost): boolean => contentOf(statedOf(one)) === contentOf(statedOf(other))

const statedOf = ({ kind, block, railBolted, hingeSide, slots, stub, soilTube }: SheetPost) => ({
  ...{ kind, block, railBolted, hingeSide, slots, soilTube: soilTube === true },
  stub: stub === 'none' ? null : { high: stub.high, unit: stub.unit },
})

function postFacts(post: SheetPost, sheet: EndSheet, print: Print): readonly string[] {
  const words = detailWords(print)
  const { hingeSide, slots, stub, railBolted, soilTube } = post
  return [
    print.say(sheetText(sheet, post.kind)),
    words.block(post.block),
    words.railBolted(railBolted),
    ...(hingeSide === 'notStated' || hingeSide === 'none' ? [] : [words.hinge(hingeSide)]),
    ...(slots === 'notStated' || slots === 'none' ? [] : [words.slots(slots.set, slots.side)]),
    ...(stub === 'none' || stub.high === 'notStated' ? [] : [words.stub(print.length(stub.high, stub.unit))]),
    ...(soilTube === true ? [words.soilTube] : []),
  ]
}

function panelCallouts(sheet: EndSheet, { places, along, panels, print }: DetailPlaces): DetailCallout[] {
  const words = detailWords(print)
  let from = 0
  return sheet.panels.own.flatMap((panel, i) => {
    const middle = from + panel.inches * 0.7
    from += panel.inches
    const number = panels.find(({ ownNumber }) => ownNumber === i + 1)?.number
    if (!panel.slotted || number === undefined) return []
    return [
      {
        at: point(along(middle), places.railTop - drawnSizes.beam / 2),
        words: words.slottedPanel(number, i + 1, print.say(sheetText(sheet, panel.name))),
      },
    ]
  })
}

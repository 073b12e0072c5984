import type { EndSheet } from '../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../core/hardware/limits-saying.ts'
import { sheetText } from '../../core/hardware/sheet-text.ts'
import type { Unit } from '../../core/layout/layout.ts'
import { drawnSizes } from '../../core/scene/drawn-sizes.ts'
import { unitFlare } from '../../core/staking/unit-flare.ts'
import type { PaperName } from '../../core/units/paper-names.ts'
import { circle, dimension, group, line, moved, point, polyline, text } from '../draw.ts'
import type { Drawing, Item } from '../drawing.ts'
import { type PlainScale, papers } from '../paper.ts'
import { textWidth, wrapText } from '../text-width.ts'
import { detailWords } from '../words/detail-words.ts'
import { runWords } from '../words/run-words.ts'
import { heightItems, panelLengths } from './elevation/elevation-band.ts'
import { elevationLayers } from './elevation/elevation-layers.ts'
import { heightLabel } from './elevation/elevation-sizes.ts'
import { endElevation, endPlaces } from './elevation/end-elevation.ts'
import { postElevation } from './elevation/post-elevation.ts'
import { railElevation } from './elevation/rail-elevation.ts'
import { type Frame, lengthLabel, type Range, stripFrame } from './strip/frame.ts'
import { postSign, postSignOf } from './strip/posts.ts'
import { scaleBar, scaleBarWidth } from './strip/scale-bar.ts'
import type { StripInput } from './strip/strip-input.ts'
import { blockRow, headHeight, titleBlock } from './strip/title-block.ts'
import { type DetailCallout, detailCallouts } from './terminal-detail/detail-callouts.ts'

const marginPoints = 30

/** From the largest picture to the smallest. */
const detailScales: Readonly<Record<StripInput['units'], readonly PlainScale[]>> = {
  'feet and inches': [3, 4, 5, 8, 10].map((feet) => ({
    ratio: feet * 12,
    words: `1 in = ${feet} ft (1:${feet * 12})`,
  })),
  metric: [25, 50, 75, 100].map((ratio) => ({ ratio, words: `1:${ratio}` })),
}

/**
 * One end unit on a landscape page: its plan with the offsets of the flare, its elevation with its parts numbered, and
 * below what the sheet says of each. Null for an end without a sheet.
 */
export function terminalDetail(input: StripInput, which: 'first' | 'second', page: PaperName): Drawing | null {
  const { sheet, name } = input[which]
  const [detail, run] = [detailWords(input.print), runWords(input.print)]
  if (sheet === null) return null
  const paper = papers[page]
  const width = paper.widthPoints - 2 * marginPoints
  const range = detailRange(input, which, sheet)
  const scale =
    detailScales[input.units].find(({ ratio }) => ((range.to - range.from) / ratio) * 72 <= width) ??
    detailScales[input.units].at(-1)!
  const perPoint = scale.ratio / 72
  const frame = stripFrame({ ...input, lateralExaggeration: 1 }, scale.ratio, range)
  const places = endPlaces(input, which)
  const splices = input.layout.splices
    .map((splice) => splice.alongInches)
    .sort((a, b) => Math.abs(a - places.postOne) - Math.abs(b - places.postOne))
  const isOwn = ({ unit }: { readonly unit: Unit }): boolean => unit === which
  const [posts, panels] = [input.layout.posts.filter(isOwn), input.layout.panels.filter(isOwn)]
  const callouts = detailCallouts(sheet, { places, posts, panels, splice: splices[0] ?? null, print: input.print })
  const put = (items: readonly Item[], x: number, y: number): Item[] =>
    items.map((item) => moved(item, x * perPoint, y * perPoint))
  const left = marginPoints - range.from / perPoint
  const top = paper.heightPoints - marginPoints
  const planLevel = top - headHeight(input) - 34
  const planDepth =
    Math.max(...input.layout.posts.filter(isShown(range)).map((post) => frame.drawnOffset(post.alongInches))) + 40
  const grade = planLevel - planDepth - (places.railTop + 10) / perPoint - 34
  const listTop = grade - drawnSizes.cutBelow / perPoint - 56
  const title = titleBlock(input, width, perPoint, {
    scale: run.paperScale(scale.words, page),
    measure: detail.measure(which, name),
    page: null,
  })
  return {
    title: detail.title(which, input.titles.run, name),
    description: detail.description(
      name,
      callouts.map(({ words }, i) => detail.callout(i + 1, words)),
    ),
    scale: scale.ratio,
    paper,
    extent: { minX: 0, minY: 0, maxX: paper.widthPoints * perPoint, maxY: paper.heightPoints * perPoint },
    layers: elevationLayers,
    items: [
      ...put([...title, ...blockRow(input, width, perPoint)], marginPoints, top),
      ...put(planItems(frame, sheet, which), left, planLevel),
      ...put(elevationItems(frame, callouts), left, grade),
      ...put(
        calloutList(
          callouts,
          sheet,
          input,
          { width: width - scaleBarWidth - 24, height: listTop - marginPoints },
          perPoint,
        ),
        marginPoints,
        listTop,
      ),
      ...put(
        scaleBar(scale.ratio, input.units, true, input.print),
        paper.widthPoints - marginPoints - scaleBarWidth,
        marginPoints + 20,
      ),
    ],
  }
}

const isShown =
  (range: Range) =>
  (post: { readonly alongInches: number }): boolean =>
    post.alongInches >= range.from && post.alongInches <= range.to

/** From beyond the head to a little past the unit's last panel. */
function detailRange({ layout }: StripInput, which: 'first' | 'second', sheet: EndSheet): Range {
  const own = layout.panels.filter((panel) => panel.unit === which)
  const posts = layout.posts.filter((post) => post.unit === which)
  const places = [
    ...own.flatMap((panel) => [panel.fromInches, panel.toInches]),
    ...posts.map((post) => post.alongInches),
  ]
  const flare = unitFlare(layout, which, sheet)
  const inward = which === 'first' ? 1 : -1
  const all = flare === null ? places : [...places, flare.originInches + inward * flare.overInches]
  return { from: Math.min(...all) - 30, to: Math.max(...all) + 30 }
}

/** Seen from above, the traffic side up: face of rail, posts with their offsets from the line of the run. */
function planItems(frame: Frame, sheet: EndSheet, which: 'first' | 'second'): Item[] {
  const { input, range, perPoint, rail } = frame
  const [from, to] = [Math.max(rail.from, range.from), Math.min(rail.to, range.to)]
  const bends = [from, ...frame.bends.filter((one) => one > from && one < to), to]
  const posts = input.layout.posts.filter(isShown(range))
  const [detail, run] = [detailWords(input.print), runWords(input.print)]
  const outermost = input.layout.posts.at(which === 'first' ? 0 : -1)!
  const flare =
    sheet.flare === 'none'
      ? detail.noFlare
      : detail.flare(
          input.print.say(limitsOf(sheet.flare.offset)),
          sheet.flare.shape,
          lengthLabel(input, unitFlare(input.layout, which, sheet)?.overInches ?? sheet.flare.overInches),
          outermost.number,
        )
  return [
    line('line of the run', frame.level(range.from, 0), frame.level(range.to, 0)),
    text('text', frame.level(range.from, 20), detail.plan, 7, { bold: true }),
    text('text', frame.level(range.from, 11), flare, 7),
    polyline(
      'rail',
      bends.map((along) => frame.at(along, 0)),
    ),
    ...posts.map((post) => {
      const centre = frame.at(post.alongInches, -9)
      const own = post.unit === which ? post.ownNumber : null
      const title = own === null ? run.post(post.number) : run.ownPost(post.number, own)
      return group(`plan-${post.id}`, title, [
        ...postSign(postSignOf(input, post), centre, perPoint),
        text(
          'text',
          point(centre.x, centre.y - 5 * perPoint),
          own === null ? `${post.number}` : `${post.number} (${own})`,
          7,
          {
            anchor: 'middle',
            level: 'top',
          },
        ),
      ])
    }),
    ...posts.flatMap((post): Item[] => {
      const offset = frame.drawnOffset(post.alongInches) * perPoint
      if (offset < 0.5) return []
      const x = post.alongInches
      const hasRoom = offset >= 8 * perPoint
      return [
        line('dimensions', point(x, 0), point(x, -offset)),
        text(
          'text',
          point(x + 2.5 * perPoint, hasRoom ? -Math.min(offset / 2, offset - 4 * perPoint) : 5 * perPoint),
          heightLabel(input.units, Math.round(offset * 16) / 16),
          6.5,
          { level: 'middle' },
        ),
      ]
    }),
  ]
}

/** Square to the rail, with the numbers of the callouts. */
function elevationItems(frame: Frame, callouts: readonly DetailCallout[]): Item[] {
  const { input, range, perPoint } = frame
  const posts = input.layout.posts.filter(isShown(range))
  const [before, last] = posts.slice(-2).map((post) => post.alongInches)
  const middleOfLastSpace = ((before ?? range.from) + (last ?? range.to)) / 2
  const level = -drawnSizes.cutBelow - 2 - 22 * perPoint
  return [
    line('finish grade', point(range.from, 0), point(range.to, 0)),
    ...panelLengths(frame, level / perPoint - 14),
    ...railElevation(frame),
    ...heightItems(frame),
    text('text', frame.level(middleOfLastSpace, -9), detailWords(input.print).finishGrade, 6.5, {
      anchor: 'middle',
    }),
    ...posts.map((post) => postElevation(frame, post)),
    ...endElevation(input, range),
    ...posts.map((post) =>
      text('text', point(post.alongInches, -drawnSizes.cutBelow - 2 - 3 * perPoint), String(post.number), 7, {
        anchor: 'middle',
        level: 'top',
        bold: true,
      }),
    ),
    ...posts.slice(1).map((post, i) => {
      const before = posts[i]!.alongInches
      const words = lengthLabel(input, post.alongInches - before)
      const label = textWidth(words, 6.5) + 4 <= (post.alongInches - before) / perPoint ? words : ''
      return dimension('dimensions', point(before, level), point(post.alongInches, level), 0, label, 6.5)
    }),
    ...calloutMarks(callouts, perPoint, Math.max(0, ...callouts.map(({ at }) => at.y))),
  ]
}

/** Numbers in circles above the rail, kept apart, each with a line to its place. */
function calloutMarks(callouts: readonly DetailCallout[], perPoint: number, highest: number): Item[] {
  const y = highest + 26 * perPoint
  const shown = callouts.map(({ at }, i) => ({ at, number: i + 1, x: at.x }))
  for (const [i, one] of shown.entries()) if (i > 0) one.x = Math.max(one.x, shown[i - 1]!.x + 14 * perPoint)
  return shown.flatMap(({ at, number, x }) => [
    line('callouts', point(x, y - 5.5 * perPoint), at),
    circle('callouts', at, 0.9 * perPoint, 'solid'),
    circle('callouts', point(x, y), 5.5 * perPoint, 'blank'),
    text('text', point(x, y), String(number), 7, { anchor: 'middle', level: 'middle', bold: true }),
  ])
}

/** Sizes of letters for the list, the largest first that leaves all of it on the page. */
const listSizes = [7, 6.5, 6, 5.5, 5, 4.5]

/** What the sheet says, by number, and what kind of sheet it is. Its top left corner is the origin. */
function calloutList(
  callouts: readonly DetailCallout[],
  sheet: EndSheet,
  { print }: StripInput,
  room: { readonly width: number; readonly height: number },
  perPoint: number,
): Item[] {
  const notice = detailWords(print).sheet(sheet.id, sheet.version, print.say(sheetText(sheet, sheet.notice)))
  const entries = [...callouts.map(({ words }, i) => [`${i + 1}`, words] as const), ['', notice] as const]
  const lists = listSizes.map((size) => ({
    size,
    step: (size * 9) / 7,
    rows: entries.flatMap(([number, words]) =>
      wrapText(words, room.width - 14, size, 3).map((line, i) => ({ number: i === 0 ? number : null, line })),
    ),
  }))
  const { size, step, rows } = lists.find((list) => list.rows.length * list.step <= room.height) ?? lists.at(-1)!
  return rows.flatMap(({ number, line }, i) => {
    const y = -(i * step + 7) * perPoint
    return [
      ...(number === null ? [] : [text('text', point(0, y), number, size, { bold: true })]),
      text('text', point(14 * perPoint, y), line, size),
    ]
  })
}

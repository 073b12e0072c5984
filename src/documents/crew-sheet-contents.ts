import { lengthText } from '../core/hardware/dimension-text.ts'
import type { FigureKind } from '../core/hardware/hardware-sheet.ts'
import { rulePicture, type SaidPicture } from '../core/hardware/rule-picture.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import type { LayoutPost } from '../core/layout/layout.ts'
import { flareBends } from '../core/layout/run-flare.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { type RailLine, type RailLineRefusal, railLine } from '../core/staking/rail-line.ts'
import { unitFlare } from '../core/staking/unit-flare.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { printLength } from '../core/units/print-length.ts'
import { inches } from '../core/units/quantity.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import { cautions } from './cautions.ts'
import { crewDepartures } from './crew-departures.ts'
import { type CrewPanel, crewPanels } from './crew-panels.ts'
import { groupBy } from './group-by.ts'
import { alongText, placesText } from './places-text.ts'
import { postKind } from './post-kind.ts'
import type { RecordInput, WrittenPlace } from './record-input.ts'
import { type Fact, runFacts } from './run-facts.ts'
import { type TitleBlockContents, titleBlockContents } from './title-block.ts'
import { documentWords } from './words/document-words.ts'

/** What the crew builds from, in the order in which it says it, for any writer. Nothing in it was read on the ground. */
export interface CrewSheetContents {
  readonly title: string
  readonly run: string
  readonly titleBlock: TitleBlockContents | null
  readonly facts: readonly Fact[]
  /** As somebody wrote it; null when nobody did. */
  readonly ticket: string | null
  readonly posts: readonly CrewPost[]
  /** What station and offset in the table of posts are; null where the road is not known. */
  readonly road: string | null
  /** What the distances from the line of the run in the table of posts are; a reason where there are none. */
  readonly flare: string
  readonly panels: readonly CrewPanel[]
  readonly laps: readonly CrewRule[]
  /** Heights and where the splices lie. */
  readonly heights: readonly CrewRule[]
  /** Holes, slots and bolts, and which way parts face. */
  readonly holes: readonly CrewRule[]
  readonly departures: readonly string[]
  readonly holds: readonly CrewRule[]
  /** Rules that have a picture of the sheet's own. */
  readonly pictured: readonly PicturedRule[]
  readonly cautions: readonly string[]
}

export interface CrewPost {
  readonly number: number
  /** Null where the road is not known. */
  readonly onRoad: WrittenPlace | null
  /** Along the rail from the centre of post 1. */
  readonly along: string
  /** To the next post along the rail; null at the last. */
  readonly next: string | null
  /** The space to the next post is not the system's full spacing. */
  readonly isOddSpace: boolean
  /** Of the face of rail from the line of the run, away from the road; null where no flare is stated. */
  readonly offset: string | null
  readonly kind: string
  readonly block: boolean
  readonly state: LayoutPost['state']
}

/** One rule with the places where it holds. */
export interface CrewRule {
  readonly places: string
  readonly must: string
  /** False when its limit comes from memory alone. */
  readonly confirmed: boolean
}

export interface PicturedRule extends CrewRule {
  readonly picture: SaidPicture
}

/** @param ticket  the utility ticket as somebody wrote it, or those entered; null when nobody did */
export function crewSheetContents(input: RecordInput, ticket: string | null): CrewSheetContents {
  const { run, model, requirements, print } = input
  const words = documentWords(print).crewSheet
  const line = railLine(model)
  const place = input.onRoad?.(0) ?? null
  const withFigure = (figures: readonly FigureKind[]): readonly CrewRule[] =>
    figures.flatMap((figure) =>
      crewRules(
        requirements.filter((one) => one.figure === figure),
        print,
      ),
    )
  return {
    title: words.title,
    run: print.theirs(run.name),
    titleBlock: titleBlockContents(run, print),
    facts: runFacts(input).filter(({ id }) => id !== 'work' && id !== 'letting' && id !== 'readings'),
    ticket,
    posts: crewPosts(input, line.ok ? line.value : null),
    road: place && words.fromRoad(place.unit === 'metre' ? 'm' : 'ft'),
    flare: line.ok ? flareText(run, model, print) : words.noOffsets(unstakedText(line.error, print)),
    panels: crewPanels(run, model, print),
    laps: withFigure(['lap']),
    heights: withFigure(['rail-height', 'stub-height', 'flare-offset', 'splice-position']),
    holes: withFigure(holeFigures),
    departures: crewDepartures(run, model, print),
    holds: crewRules(
      requirements.filter(({ hold }) => hold),
      print,
    ),
    pictured: picturedRules(model, requirements, print),
    cautions: cautions(print),
  }
}

const holeFigures: readonly FigureKind[] = [
  'head-holes',
  'slot-set',
  'rail-bolt',
  'hinge-side',
  'bearing-plate',
  'bracket-opening',
  'slotted-panel',
  'cable-play',
]

const crewRules = (requirements: readonly Requirement[], print: Print): readonly CrewRule[] =>
  groupBy(requirements, (one) => contentOf({ must: one.must, confirmed: isConfirmed(one) })).map((group) => ({
    places: placesText(
      group.map(({ place }) => place),
      print,
    ),
    must: print.say(group[0].must),
    confirmed: isConfirmed(group[0]),
  }))

function picturedRules(model: RunModel, requirements: readonly Requirement[], print: Print): readonly PicturedRule[] {
  const ends = [model.first, model.second].flatMap((end) => (end.kind === 'unit' ? [end.sheet] : []))
  const sheets = new Map([model.system, ...ends].map((sheet) => [sheet.id, sheet]))
  return groupBy(requirements, ({ sheet, topic }) => `${sheet} ${topic}`).flatMap((group) => {
    const picture = rulePicture(sheets.get(group[0].sheet) ?? model.system, group[0].topic)
    return picture === null ? [] : crewRules(group, print).map((rule) => ({ ...rule, picture }))
  })
}

const isConfirmed = ({ confirmation }: Requirement): boolean => confirmation !== 'from memory'

function crewPosts({ run, model, onRoad, print }: RecordInput, line: RailLine | null): readonly CrewPost[] {
  const { layout, system } = model
  return layout.posts.map((post, i) => {
    const { number, alongInches, block, state } = post
    const next = layout.posts[i + 1]
    return {
      number,
      onRoad: onRoad?.(alongInches) ?? null,
      along: alongText(run, alongInches),
      next: next === undefined ? null : alongText(run, next.alongInches - alongInches),
      isOddSpace: next !== undefined && next.alongInches - alongInches !== system.spacings.full.inches,
      offset: line === null ? null : offsetText(run, line.awayAt(inches(alongInches)) / inches(1)),
      kind: postKind(post, model, print),
      block,
      state,
    }
  })
}

/** To the nearest 1/8 in, or millimetre in a metric run: closer than a post is driven. */
function offsetText({ units }: Pick<RunFile, 'units'>, away: number): string {
  return units === 'metric'
    ? printLength(exactLength(Math.round(away * 25.4), 'mm'), 'millimetres')
    : lengthText(Math.round(away * 8) / 8, 'in')
}

function unstakedText(refusal: RailLineRefusal, print: Print): string {
  const words = documentWords(print).crewSheet
  switch (refusal.kind) {
    case 'flare-not-stated':
      return words.flareNotStated(refusal.sheet)
    case 'flare-inside-unit':
      return words.flareInsideUnit(refusal.end)
    case 'flare-at-fixed-end':
      return words.flareAtFixedEnd(refusal.closedBy)
    default:
      return refusal satisfies never
  }
}

function flareText(run: RunFile, model: RunModel, print: Print): string {
  const words = documentWords(print).crewSheet
  const { layout, flare } = model
  const bends = flareBends(layout, flare)
  const own = (['first', 'second'] as const).map((end) =>
    flare === null || bends[end] === null ? null : words.runFlare(end, `${flare.rate}:1`, alongText(run, bends[end])),
  )
  const flares = [...own, flareOf(model, 'first', print), flareOf(model, 'second', print)].filter(
    (text) => text !== null,
  )
  return flares.length === 0 ? words.noFlare : words.flares(flares)
}

function flareOf(model: RunModel, which: 'first' | 'second', print: Print): string | null {
  const end = model[which]
  if (end.kind !== 'unit' || end.sheet.flare === 'none') return null
  const { shape, offset, confirmation } = end.sheet.flare
  const flare = unitFlare(model.layout, which, end.sheet)
  if (flare === null || offset.nominal === 'notStated' || offset.nominal === 0) return null
  return documentWords(print).crewSheet.endFlare(
    which,
    shape,
    print.length(offset.nominal, offset.unit),
    print.feetInches(flare.overInches),
    confirmation === 'from memory',
  )
}

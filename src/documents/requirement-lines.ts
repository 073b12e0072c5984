import type { FitSource } from '../core/fit/fit-saying.ts'
import { neededTestSaying } from '../core/hardware/hardware-saying.ts'
import type { Confirmation } from '../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../core/hardware/limits-saying.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import type { LayoutPost } from '../core/layout/layout.ts'
import type { Reading } from '../core/measurement/reading.ts'
import type { measurableTopics } from '../core/requirements/derived-topics.ts'
import type { Place, RecordRule, Requirement } from '../core/requirements/requirement.ts'
import { measuredValue } from '../core/verdicts/saying.ts'
import type { Verdict, VerdictWord } from '../core/verdicts/verdict.ts'
import type { Print } from '../words/print.ts'
import { groupBy } from './group-by.ts'
import { alongText, numberedText, onRoadText } from './places-text.ts'
import { type ReadingLine, readingLine } from './reading-lines.ts'
import type { RecordInput } from './record-input.ts'
import { documentWords } from './words/document-words.ts'

export interface PlaceLine {
  readonly name: string
  /** Along the rail from the centre of post 1. */
  readonly along: string
  /** Station and offset in words; null where the road is not known. */
  readonly onRoad: string | null
}

/** One requirement with what was read and what that means. */
export interface RequirementLine {
  /** Counts through the whole record, hold points first. */
  readonly number: number
  readonly id: string
  readonly place: PlaceLine
  readonly must: string
  /** What decides it: the limits in their published unit, or the right answer. */
  readonly limit: string
  readonly readings: readonly ReadingLine[]
  /** What stands for a reading of its own: the value that other readings give together, or the run file. */
  readonly derived: DerivedLine | null
  readonly verdict: VerdictWord
  readonly reason: string
  readonly sheet: string
  /** Number of its source in the record's list of sources. */
  readonly source: number
  readonly confirmation: Confirmation
}

interface DerivedLine {
  readonly value: string
  readonly from: string | null
}

/** A document that limits were taken from. */
export interface SourceLine {
  readonly number: number
  readonly title: string
  readonly edition: string
}

/** The sources of all requirements in the order of their first use. */
export const sourceLines = (requirements: readonly Requirement[], print: Print): readonly SourceLine[] =>
  sourcesOf(requirements).map((source, i) => ({ number: i + 1, ...titleAndEdition(source, print) }))

export function titleAndEdition(source: FitSource, print: Print): Pick<SourceLine, 'title' | 'edition'> {
  if (source.kind !== 'source') return { title: print.say(source), edition: '' }
  return { title: print.say(source.title), edition: source.edition === null ? '' : print.say(source.edition) }
}

/** The number of each source in that list, by its content. */
export const sourceNumbers = (requirements: readonly Requirement[]): SourceNumbers =>
  new Map(sourcesOf(requirements).map((source, i) => [contentOf(source), i + 1]))

type SourceNumbers = ReadonlyMap<string, number>

const sourcesOf = (requirements: readonly Requirement[]): readonly FitSource[] => [
  ...new Map(requirements.map(({ source }) => [contentOf(source), source])).values(),
]

export function requirementLines(input: RecordInput): readonly RequirementLine[] {
  const sources = sourceNumbers(input.requirements)
  const verdicts = new Map(input.judgement.verdicts.map((verdict) => [verdict.requirement, verdict]))
  const readings = new Map(input.readings.map((reading) => [reading.id, reading]))
  return input.requirements.map((requirement, i) => {
    const verdict = verdicts.get(requirement.id)
    if (verdict === undefined) throw new RangeError(`no verdict on ${requirement.id}`)
    const used = verdict.readings.flatMap((id) => readings.get(id) ?? [])
    return requirementLine(input, sources, requirement, verdict, used, i + 1)
  })
}

function requirementLine(
  input: RecordInput,
  sources: SourceNumbers,
  requirement: Requirement,
  verdict: Verdict,
  used: readonly Reading[],
  number: number,
): RequirementLine {
  const { id, must, sheet, sheetVersion, source, confirmation } = requirement
  const { print } = input
  return {
    number,
    id,
    place: placeLine(input, requirement.place),
    must: print.say(must),
    limit: limitText(requirement, print),
    readings: used.filter((reading) => reading.of === id).map((reading) => readingLine(reading, requirement, input)),
    derived: derivedLine(input, verdict, used),
    verdict: verdict.verdict,
    // Why it was set aside stands in the reading.
    reason:
      verdict.because.kind === 'set aside'
        ? documentWords(print).readings.setAsideBy(print.theirs(verdict.because.by))
        : print.say(verdict.because),
    sheet: `${sheet} ${sheetVersion}`,
    source: sources.get(contentOf(source))!,
    confirmation,
  }
}

function derivedLine(
  { model, print }: RecordInput,
  { because }: Verdict,
  used: readonly Reading[],
): DerivedLine | null {
  const words = documentWords(print).readings
  if (because.kind === 'criteria' || because.kind === 'crashworthy' || because.kind === 'site check')
    return { value: words.fromRunFile, from: null }
  if (because.kind !== 'measured' || !because.computed) return null
  const from = words.computedFrom(
    measuredPlaces(
      used.map(({ of }) => of),
      model.layout.posts,
      print,
    ),
  )
  return { value: print.say(measuredValue(because)), from }
}

/** `lateral offset at posts 1 to 5`, from what was measured, such as `post-3/lateral-offset`. */
function measuredPlaces(measured: readonly string[], posts: readonly LayoutPost[], print: Print): string {
  const numbers = new Map(posts.map(({ id, number }) => [id, number]))
  const parts = measured.map((of) => {
    const [place = '', topic = ''] = of.split('/')
    return { number: numbers.get(place) ?? 0, topic }
  })
  return groupBy(parts, ({ topic }) => topic)
    .map((group) => {
      const [{ topic }] = group
      return documentWords(print).readings.measuredAt(
        topic as (typeof measurableTopics)[number],
        numberedText(
          'post',
          group.map(({ number }) => number),
          print,
        ),
      )
    })
    .join('; ')
}

export const placeLine = (input: RecordInput, place: Place): PlaceLine => ({
  name: input.print.say(place),
  along: alongText(input.run, place.alongInches),
  onRoad: onRoadText(input, place.alongInches),
})

function recordText(rule: RecordRule, print: Print): string {
  switch (rule.kind) {
    case 'criteria':
      return print.say(neededTestSaying(rule.hardware, rule.at))
    case 'crashworthy':
      return print.say({ kind: 'needed end', end: rule.exposure.end })
    case 'site check':
      return print.say(rule.check.limit)
    case 'not said':
    case 'need of run':
    case 'unit joins another system':
    case 'too few pieces':
      return print.say(rule)
    default:
      return rule satisfies never
  }
}

function limitText({ look }: Requirement, print: Print): string {
  switch (look.kind) {
    case 'measure':
      return print.say(limitsOf(look.limits))
    case 'choose':
      return print.list(
        look.choices.filter(({ right }) => right).map(({ label }) => print.say(label)),
        'or',
      )
    case 'confirm':
      return documentWords(print).readings.confirmedOnSight
    case 'record':
      return recordText(look.rule, print)
    default:
      return look satisfies never
  }
}

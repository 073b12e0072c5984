import { contentOf } from '../core/hardware/sheet-text.ts'
import { correctionsIn } from '../core/measurement/corrections.ts'
import type { PhotoStrokes } from '../core/record/photo-strokes.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { isGrave, standingOf } from '../core/verdicts/free-findings.ts'
import { currentReadings } from '../core/verdicts/judge-requirements.ts'
import { remedyOf, whatMustBe, whatWasFound } from '../core/verdicts/saying.ts'
import { setAsideIn } from '../core/verdicts/set-aside.ts'
import type { Acceptance, VerdictWord } from '../core/verdicts/verdict.ts'
import { verdictOrder } from '../drawing/verdict-signs.ts'
import type { EntryOf, PhotoBody } from '../formats/entry/entry-kinds.ts'
import { type AskedEarlierLines, askedEarlierLines } from './asked-earlier.ts'
import { assignmentText, type NamedAssignment } from './assignment-text.ts'
import { cautions } from './cautions.ts'
import { type FreeFindingLine, freeFindingLines } from './free-finding-lines.ts'
import { groupBy } from './group-by.ts'
import { type PhotoHashes, type PhotoLine, photoLines } from './photo-lines.ts'
import { placesText } from './places-text.ts'
import { printedText } from './printed-text.ts'
import { type ReadingLine, readingLine } from './reading-lines.ts'
import type { Printing, RecordInput } from './record-input.ts'
import {
  type PlaceLine,
  placeLine,
  type RequirementLine,
  requirementLines,
  type SourceLine,
  sourceLines,
  sourceNumbers,
} from './requirement-lines.ts'
import { decisionRuleText, type Fact, runFacts, type SheetLine, sheetLines } from './run-facts.ts'
import { type SignatureLine, type SignedVersion, signatureLine } from './signature-lines.ts'
import { type TitleBlockContents, titleBlockContents } from './title-block.ts'
import { type VersionMade, versionReasons } from './version-reasons.ts'
import { documentWords } from './words/document-words.ts'

/** The inspection record: everything it says, in the order in which it says it, for any writer. */
export interface RecordContents {
  readonly title: string
  readonly run: string
  readonly titleBlock: TitleBlockContents | null
  readonly facts: readonly Fact[]
  readonly acceptance: { readonly kind: Acceptance['kind']; readonly text: string; readonly means: string }
  /** Stands on the first page, right below the acceptance. */
  readonly setAside: readonly SetAsideLine[]
  /** From the worst to the best, those that do not occur too. */
  readonly counts: readonly { readonly verdict: VerdictWord; readonly count: number }[]
  readonly decisionRule: string
  readonly sheets: readonly SheetLine[]
  readonly findings: readonly FindingLine[]
  /** What was seen that no requirement asks for. */
  readonly freeFindings: readonly FreeFindingLine[]
  readonly rechecks: readonly RecheckLine[]
  readonly unproven: readonly UnprovenLine[]
  /** How many verdicts rest on limits that nobody has confirmed, in a sentence; null where none does. */
  readonly onMemory: string | null
  /** What later work covers: to be looked at before. */
  readonly holdPoints: readonly RequirementLine[]
  readonly requirements: readonly RequirementLine[]
  /** Readings in force that answer no requirement by themselves: others are computed from them. */
  readonly measured: readonly ReadingLine[]
  readonly replaced: readonly ReplacedLine[]
  readonly withoutEffect: readonly WithoutEffectLine[]
  /** Why each version of the run was made, in sentences. */
  readonly versionReasons: readonly string[]
  readonly askedEarlier: AskedEarlierLines
  readonly unconfirmed: readonly UnconfirmedLine[]
  readonly sources: readonly SourceLine[]
  /** What of run file and readings is seldom right, in sentences. */
  readonly unusual: readonly string[]
  readonly cautions: readonly string[]
  readonly photos: readonly PhotoLine[]
  /** Given on a device, the latest first. */
  readonly signed: readonly SignatureLine[]
  /** Who signs by hand. */
  readonly signatures: readonly string[]
  /** Of the list of photos, as the manifest repeats it. */
  readonly photosHash: string
  readonly hash: string
  readonly hashOf: string
  readonly printed: string
  /** As `Printing` gives them, for the file's own properties. */
  readonly printedAt: string
  readonly author: string
}

interface FindingLine {
  readonly number: number
  readonly place: PlaceLine
  /** What it is, what it must be and what to do. */
  readonly found: string
  readonly mustBe: string
  readonly remedy: string
  readonly severity: string
  /** Who sees to it; null where nobody was named. */
  readonly assigned: string | null
  readonly requirements: readonly string[]
}

/** What one person took out of judging for one reason, at one place or several. */
interface SetAsideLine {
  readonly places: string
  readonly must: string
  readonly because: string
  readonly by: string
  readonly requirements: readonly string[]
}

/** A reading taken to see whether a finding was put right. */
interface RecheckLine {
  readonly finding: string
  readonly reading: ReadingLine
  /** The verdict on what it reads, as it is now. */
  readonly verdict: VerdictWord
}

/** What is not proven for one reason, at one place or several. */
interface UnprovenLine {
  readonly places: string
  readonly must: string
  readonly why: string
  readonly requirements: readonly string[]
}

/** A reading that no longer counts. */
interface ReplacedLine {
  readonly reading: ReadingLine
  /** Id of the one that counts instead; null when none does. */
  readonly by: string | null
}

/** What a reading says besides its answer and counts for nothing. */
interface WithoutEffectLine {
  readonly reading: ReadingLine
  readonly what: string
}

/** A limit that nobody has checked against a document. */
interface UnconfirmedLine {
  readonly must: string
  readonly places: string
  readonly sheet: string
  readonly source: number
  readonly requirements: readonly string[]
}

/** What the record shows besides the readings. */
export interface RecordSide {
  /** The signatures under the run, the latest first. */
  readonly signed: readonly SignedVersion[]
  readonly photos: readonly EntryOf<PhotoBody>[]
  /** What was drawn on the photos. */
  readonly photoStrokes: readonly PhotoStrokes[]
  /** What the record's hash takes in of each photo, and the SHA-256 of all that. */
  readonly photoHashes: PhotoHashes
  readonly photosHash: string
  /** Names of the photos that are at hand. */
  readonly photosHere: ReadonlySet<string>
  /** Who made which version of the run. */
  readonly versions: readonly VersionMade[]
  /** Who sees to which finding, in the order that counts. */
  readonly assignments: readonly NamedAssignment[]
}

export function recordContents(
  input: RecordInput,
  printing: Printing,
  { signed, photos, photoStrokes, photoHashes, photosHash, photosHere, versions, assignments }: RecordSide,
): RecordContents {
  const { run, judgement, requirements, print } = input
  const words = documentWords(print).record
  const lines = requirementLines(input)
  const covered = new Set(requirements.filter(({ hold }) => hold).map(({ id }) => id))
  return {
    title: words.title,
    run: print.theirs(run.name),
    titleBlock: titleBlockContents(run, print),
    facts: runFacts(input),
    acceptance: {
      kind: judgement.acceptance.kind,
      text: print.say(judgement.acceptance),
      means: acceptanceText(input),
    },
    setAside: setAsideLines(input),
    counts: verdictOrder.map((verdict) => ({
      verdict,
      count: judgement.verdicts.filter((one) => one.verdict === verdict).length,
    })),
    decisionRule: decisionRuleText(run.decisionRule, print),
    sheets: sheetLines(input),
    findings: judgement.findings.map((finding, i) => ({
      number: i + 1,
      place: placeLine(input, finding.place),
      found: print.say(whatWasFound(finding.what)),
      mustBe: print.say(whatMustBe(finding.what)),
      remedy: print.say(remedyOf(finding)),
      severity: print.say({ kind: 'severity', rated: finding.severity }),
      assigned: assignmentText(assignments, finding.id, print),
      requirements: finding.requirements,
    })),
    freeFindings: freeFindingLines(input, assignments),
    rechecks: recheckLines(input),
    unproven: unprovenLines(input),
    onMemory: onMemoryText(input),
    holdPoints: lines.filter(({ id }) => covered.has(id)),
    requirements: lines.filter(({ id }) => !covered.has(id)),
    ...otherReadings(input, lines),
    withoutEffect: withoutEffectLines(input),
    versionReasons: versionReasons(run, versions, print),
    askedEarlier: askedEarlierLines(input, photos),
    unconfirmed: unconfirmedLines(input),
    sources: sourceLines(requirements, print),
    unusual: input.unusual.map((one) => print.say({ kind: 'unusual', ...one })),
    cautions: cautions(print),
    photos: photoLines(lines, input, photos, photoStrokes, photoHashes, photosHere),
    signed: signed.map((one) => signatureLine(one, print)),
    signatures: words.signatures,
    photosHash,
    hash: printing.hash,
    hashOf: words.hashOf,
    printed: printedText(printing, print),
    printedAt: printing.printedAt,
    author: printing.author,
  }
}

function acceptanceText({ judgement, print }: RecordInput): string {
  const { acceptance, verdicts, unproven, freeFindings } = judgement
  const standing = standingOf(freeFindings)
  const count = (word: VerdictWord): number => verdicts.filter(({ verdict }) => verdict === word).length
  return documentWords(print).record.means(acceptance.kind, {
    fails: count('fails'),
    unrechecked: unproven.filter(({ because }) => because.kind === 'not rechecked').length,
    open: count('too close') + count('unread'),
    doesNotApply: count('does not apply'),
    seen: standing.length,
    grave: standing.filter(isGrave).length,
  })
}

function setAsideLines({ judgement, requirements, print }: RecordInput): readonly SetAsideLine[] {
  const must = new Map(requirements.map((requirement) => [requirement.id, requirement.must]))
  const lines = setAsideIn(judgement.verdicts).map((aside) => ({ ...aside, must: must.get(aside.requirement)! }))
  return groupBy(lines, ({ must, because, by }) => contentOf({ must, because, by })).map((group) => ({
    places: placesText(
      group.map(({ place }) => place),
      print,
    ),
    must: print.say(group[0].must),
    because: print.theirs(group[0].because),
    by: print.theirs(group[0].by),
    requirements: group.map(({ requirement }) => requirement),
  }))
}

function recheckLines(input: RecordInput): readonly RecheckLine[] {
  const { readings, requirements, judgement } = input
  return readings.flatMap((reading) => {
    if (reading.rechecks === null) return []
    const requirement = requirements.find(({ id }) => id === reading.of)
    const line = readingLine(reading, requirement, input)
    const verdict = judgement.verdicts.find((one) => one.requirement === reading.of)
    return line.rechecks === null
      ? []
      : [{ finding: line.rechecks, reading: line, verdict: verdict?.verdict ?? 'unread' }]
  })
}

function withoutEffectLines(input: RecordInput): readonly WithoutEffectLine[] {
  const byId = new Map(input.readings.map((reading) => [reading.id, reading]))
  return input.judgement.withoutEffect.map((one) => {
    const reading = byId.get(one.reading)!
    const requirement = input.requirements.find(({ id }) => id === reading.of)
    return { reading: readingLine(reading, requirement, input), what: input.print.say(one) }
  })
}

function unprovenLines({ judgement, requirements, print }: RecordInput): readonly UnprovenLine[] {
  const must = new Map(requirements.map((requirement) => [requirement.id, requirement.must]))
  const missing = new Set(
    judgement.verdicts
      .filter(({ because }) => because.kind === 'readings missing')
      .map(({ requirement }) => requirement),
  )
  const lines = judgement.unproven.map(({ requirement: id, place, because }) => ({
    ...{ id, place, must: must.get(id)! },
    // Which ones are missing stands with the requirement itself.
    because: missing.has(id) ? null : because,
  }))
  return groupBy(lines, ({ must, because }) => contentOf({ must, because })).map((group) => {
    const [{ must, because }] = group
    return {
      places: placesText(
        group.map(({ place }) => place),
        print,
      ),
      must: print.say(must),
      why: because === null ? documentWords(print).record.notAllRead : print.say(because),
      requirements: group.map(({ id }) => id),
    }
  })
}

/** What is decided may rest on limits from memory: it is read, and still not proven by a document. */
function onMemoryText({ judgement, requirements, print }: RecordInput): string | null {
  const unconfirmed = new Set(
    requirements.filter(({ confirmation }) => confirmation === 'from memory').map(({ id }) => id),
  )
  const count = judgement.verdicts.filter(
    ({ requirement, verdict }) => unconfirmed.has(requirement) && (verdict === 'meets' || verdict === 'fails'),
  ).length
  return count === 0 ? null : documentWords(print).record.onMemory(count)
}

/** The readings that do not stand beside a requirement: those behind computed values, and those that no longer count. */
function otherReadings(
  input: RecordInput,
  lines: readonly RequirementLine[],
): Pick<RecordContents, 'measured' | 'replaced'> {
  const { readings, requirements } = input
  const byId = new Map(requirements.map((requirement) => [requirement.id, requirement]))
  const shown = new Set(lines.flatMap((line) => line.readings.map(({ id }) => id)))
  const current = currentReadings(readings)
  const corrections = correctionsIn(readings)
  const others = readings.filter(({ id }) => !shown.has(id))
  const line = (reading: (typeof readings)[number]) => readingLine(reading, byId.get(reading.of), input)
  return {
    // What could not be set aside stands with what counts for nothing.
    measured: others
      .filter((reading) => current.get(reading.of) === reading && reading.answer.kind !== 'does not apply')
      .map(line),
    replaced: others
      .filter((reading) => current.get(reading.of) !== reading)
      .map((reading) => ({
        reading: line(reading),
        by: corrections.get(reading.id)?.[0] ?? current.get(reading.of)?.id ?? null,
      })),
  }
}

function unconfirmedLines({ requirements, print }: RecordInput): readonly UnconfirmedLine[] {
  const sources = sourceNumbers(requirements)
  const unconfirmed = requirements.filter(({ confirmation }) => confirmation === 'from memory')
  const titleOf = ({ source }: Requirement) => (source.kind === 'source' ? source.title : source)
  return groupBy(unconfirmed, (one) => contentOf({ must: one.must, sheet: one.sheet, title: titleOf(one) })).map(
    (group) => {
      const { must, sheet, sheetVersion, source } = group[0]
      return {
        must: print.say(must),
        places: placesText(
          group.map(({ place }) => place),
          print,
        ),
        sheet: `${sheet} ${sheetVersion}`,
        source: sources.get(contentOf(source))!,
        requirements: group.map(({ id }) => id),
      }
    },
  )
}

import type { HardwareSheet, LongitudinalSheet, SplicePosition } from '../../core/hardware/hardware-sheet.ts'
import type {
  CountedPieces,
  CurbBefore,
  Obstruction,
  ReducedPart,
  StandingPart,
  StockPanel,
  UnknownEnd,
} from '../../core/layout/layout.ts'
import type { RunFlare } from '../../core/layout/run-flare.ts'
import type { Instrument } from '../../core/measurement/instruments.ts'
import type { RunVersion } from '../../core/record/version.ts'
import { ok, type Result } from '../../core/result.ts'
import type { DecisionRule } from '../../core/verdicts/verdict.ts'
import { reportContradictions } from '../contradiction.ts'
import type { DevicePosition } from '../device-position.ts'
import type { InputProblem } from '../input-problem.ts'
import { checkShape, parseJson } from '../read-json.ts'
import type { MadeOf } from './made-of.ts'
import { contradictionsIn } from './run-sense.ts'
import { type RunShape, runShape } from './run-shape.ts'
import { layoutFromShape } from './run-version.ts'

/** The road that a run stands on; null where the file does not say. */
export interface RunRoad {
  readonly route: string | null
  /** Looking up-station. */
  readonly side: 'right' | 'left' | null
  /** Station of the run's datum, in the text's own words; `parseStation` reads it in the run's `units`. */
  readonly datumStation: string | null
  /** Miles an hour when the run's `units` are `us`, kilometres an hour when they are `metric`. */
  readonly speed: number | null
  readonly traffic: 'two-way' | 'one-way' | 'divided' | null
  /** Whether opposing traffic can reach the second end. */
  readonly opposingReaches: boolean | null
  /** Where a device said that it was, at the end that was looked at; left out, so that the file stays what it was. */
  readonly position?: DevicePosition | undefined
}

/** An end by the id of its sheet, not yet looked up; or a splice of a run that stands. */
export type RunFileEnd =
  | { readonly kind: 'unit'; readonly sheet: string; readonly atInches: number | null }
  | { readonly kind: 'standing splice'; readonly atInches: number; readonly position: SplicePosition }
  | UnknownEnd

/** What stands in the title block of its drawings and documents; each left out where nobody said it. */
export interface TitleBlock {
  readonly agency?: string | undefined
  readonly contract?: string | undefined
  readonly drawn?: string | undefined
  readonly checked?: string | undefined
  readonly approved?: string | undefined
  /** Whether room is left for a seal. */
  readonly seal?: boolean | undefined
  /** The latest last. */
  readonly revisions?: readonly Revision[] | undefined
}

/** An issue of the documents after the first. */
export interface Revision {
  readonly date: string
  /** What was changed. */
  readonly what: string
  /** When what it replaces was issued, and the hash of that record, or as much of it as somebody wrote. */
  readonly replacedDate?: string | undefined
  readonly replacedHash?: string | undefined
}

/** The layout somebody chose: where post 1 stands and the panels from there on. */
export interface RunDecision {
  readonly postOneAtInches: number
  readonly panels: readonly number[]
}

/** An instrument with the name and source that the writer of the run gave it. */
export interface WrittenInstrument extends Omit<Instrument, 'name' | 'source'> {
  readonly name: string
  readonly source: string
}

/**
 * One run as its file states it, every default filled in.
 *
 * Distances are inches along the rail from the run's datum, positive downstream, exact to 1/16; the first end is the
 * one that adjacent traffic meets first. Null means that the file does not say.
 */
export interface RunFile {
  readonly name: string
  /** What it is listed under with others; left out, so that the file stays what it was, where nobody said. */
  readonly project?: string | undefined
  /** Left out, so that the file stays what it was, where nobody said anything of it. */
  readonly titleBlock?: TitleBlock | undefined
  /** For stations, speed and print; lengths here are inches in either. */
  readonly units: 'us' | 'metric'
  readonly road: RunRoad
  readonly work: 'new' | 'standing' | null
  /** ISO date on which the work was let. */
  readonly letting: string | null
  /** Id of the longitudinal system's sheet. */
  readonly system: string
  readonly first: RunFileEnd
  readonly second: RunFileEnd
  readonly need: { readonly fromInches: number; readonly toInches: number } | null
  readonly flare: RunFlare | null
  /** Null for every length that the sheet allows, as many as wanted. */
  readonly stock: readonly StockPanel[] | null
  readonly obstructions: readonly Obstruction[]
  /** What a post keeps clear of an obstruction from its side, inches; left out, so that the file stays what it was, where nobody said. */
  readonly clearanceInches?: number | undefined
  /** Whether a curb stands before the rail; left out, so that the file stays what it was, where nobody said. */
  readonly curb?: CurbBefore | undefined
  readonly reduced: readonly ReducedPart[]
  readonly standing: StandingPart | null
  /** What stands, of a run that is checked where it stands; left out of one that is laid out. */
  readonly counted?: CountedPieces | undefined
  readonly mayExtendInches: number
  readonly decision: RunDecision | null
  readonly decisionRule: DecisionRule
  /** Instruments that replace shipped ones of the same id, or add to them. */
  readonly instruments: readonly WrittenInstrument[]
  /** Sheets that replace shipped ones of the same id, or add to them. */
  readonly sheets: readonly HardwareSheet[]
  /** The site that it was made of; left out, so that the file stays what it was, of one that was made of none. */
  readonly madeOf?: MadeOf | undefined
  /** What was chosen; `sheets` then holds every sheet in use. Left out of a run that only asks. */
  readonly version?: RunVersion | undefined
}

/** A run file: its shape, and that its parts do not contradict each other. */
const runSchema = runShape.check((context) => reportContradictions(context, contradictionsIn(context.value)))

/** The run in `text`, or every problem found in it; `file` is the name that the problems carry. */
export function readRun(file: string, text: string): Result<RunFile, readonly InputProblem[]> {
  const parsed = parseJson(file, text)
  return parsed.ok ? runFromValue(file, parsed.value) : parsed
}

/** The same of a run file that is a value already, as the body of an entry is. */
export function runFromValue(file: string, raw: unknown): Result<RunFile, readonly InputProblem[]> {
  const read = checkShape(file, raw, runSchema)
  return read.ok ? ok(fromShape(read.value)) : read
}

function fromShape(shape: RunShape): RunFile {
  const {
    format: _,
    version,
    earlier,
    layout,
    need,
    flare,
    stock,
    clearance,
    standing,
    mayExtend,
    decision,
    ...same
  } = shape
  const system = shape.sheets.find(({ id }) => id === shape.system)
  return {
    ...same,
    ...(version === undefined || earlier === undefined || layout === undefined
      ? {}
      : { version: { id: version, earlier, layout: layoutFromShape(layout, system as LongitudinalSheet) } }),
    first: endFromShape(shape.first),
    second: endFromShape(shape.second),
    need: need && { fromInches: need.from, toInches: need.to },
    flare: flare && { rate: flare.rate, firstFromInches: flare.firstFrom, secondFromInches: flare.secondFrom },
    stock:
      stock?.map((entry) =>
        typeof entry === 'number' ? { inches: entry, count: null } : { inches: entry.length, count: entry.count },
      ) ?? null,
    obstructions: shape.obstructions.map(({ name, from, to }) => ({ name, fromInches: from, toInches: to })),
    ...(clearance === undefined ? {} : { clearanceInches: clearance }),
    reduced: shape.reduced.map(({ from, to, ...part }) => ({ fromInches: from, toInches: to, ...part })),
    standing: standing && {
      postOneAtInches: standing.postOneAt,
      panels: standing.panels,
      postsDriven: standing.postsDriven,
      ...(standing.leftOut === undefined ? {} : { leftOutAtInches: standing.leftOut }),
      ...(standing.moved === undefined ? {} : { movedToInches: standing.moved }),
      ...(standing.special === undefined ? {} : { specialAtInches: standing.special }),
    },
    mayExtendInches: mayExtend,
    decision: decision && { postOneAtInches: decision.postOneAt, panels: decision.panels },
  }
}

function endFromShape(end: RunShape['first']): RunFileEnd {
  if ('sheet' in end) return { kind: 'unit', sheet: end.sheet, atInches: end.at }
  if ('unknown' in end)
    return { kind: 'unknown', because: end.unknown, atInches: end.at, posts: end.posts, panels: end.panels }
  return { kind: 'standing splice', atInches: end.standingSplice.at, position: end.standingSplice.position }
}

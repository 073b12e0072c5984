import type { Severity } from '../hardware/hardware-sheet.ts'
import type { Instrument } from '../measurement/instruments.ts'
import type { Verdict, VerdictWord } from '../verdicts/verdict.ts'
import { type Detection, detectionOf } from './detection.ts'
import type { Drill, PlantedFault } from './make-drill.ts'
import { truthOf } from './truth.ts'

export type Outcome =
  | 'found'
  /** Looked at and left open, though a reading would have told. */
  | 'left open'
  /** Looked at and called right. */
  | 'missed'
  | 'not looked at'

/** What a trainee made of one fault. */
export interface FaultScore {
  readonly fault: PlantedFault
  readonly outcome: Outcome
  /** The requirement by which it was found; null where it was not. */
  readonly by: string | null
  /** Whether it was said how bad it is, and rightly; null where it was not asked or the sheet does not say. */
  readonly severity: boolean | null
  readonly remedy: boolean | null
}

export interface DrillScore {
  readonly faults: readonly FaultScore[]
  /** Requirements that are met and were called wrong. */
  readonly falseAlarms: readonly string[]
  /** How many sound places were looked at, those called wrong with them. */
  readonly sound: number
  /** Null where there was no fault, or nothing sound was looked at. */
  readonly detection: Detection | null
}

/** What was said of one finding besides: how bad it is, and whose remedy it needs. */
export interface SaidOfFinding {
  readonly severity: Severity | null
  /** The topic of the requirement whose remedy was chosen. */
  readonly remedy: string | null
}

/**
 * How a trainee's verdicts stand to what is true. A fault is found by any requirement that it makes wrong, and one within the
 * doubt of a tape also by leaving it open: no reading could tell more. Whatever is true and called wrong is a false alarm.
 * What nobody looked at is a miss of the faults, and counts for nothing of what is sound.
 *
 * @param verdicts  on the requirements of the drill's run, as its readings give them
 * @param said      by requirement, what was said of what was found there
 */
export function scoreDrill(
  { site, faults }: Drill,
  verdicts: readonly Verdict[],
  said: ReadonlyMap<string, SaidOfFinding>,
  instruments: readonly Instrument[],
): DrillScore {
  const words = new Map(verdicts.map(({ requirement, verdict }) => [requirement, verdict]))
  const byId = new Map(site.requirements.map((one) => [one.id, one]))
  const scored = faults.map((fault): FaultScore => {
    const by = foundBy(fault, words)
    const answer = by === null ? undefined : said.get(by)
    const asked = byId.get(by ?? fault.requirement)!
    const severity = asked.severity === 'notStated' ? null : asked.severity.severity
    return {
      ...{ fault, by, outcome: by === null ? missedHow(fault, words) : 'found' },
      severity: severity === null || answer?.severity == null ? null : answer.severity === severity,
      remedy: answer?.remedy == null ? null : answer.remedy === asked.topic,
    }
  })
  const sound = site.requirements.filter((one) => {
    const word = words.get(one.id)
    return word !== undefined && isDecided(word) && truthOf(site, one, instruments)?.isRight === true
  })
  const falseAlarms = sound.filter(({ id }) => words.get(id) === 'fails').map(({ id }) => id)
  const found = scored.filter(({ outcome }) => outcome === 'found').length
  return {
    ...{ faults: scored, falseAlarms, sound: sound.length },
    detection: detectionOf(found, faults.length, falseAlarms.length, sound.length),
  }
}

const isDecided = (word: VerdictWord): boolean => word === 'meets' || word === 'fails' || word === 'too close'

function foundBy({ shows, size }: PlantedFault, words: ReadonlyMap<string, VerdictWord>): string | null {
  const counts = (id: string): boolean =>
    words.get(id) === 'fails' || (size === 'borderline' && words.get(id) === 'too close')
  return shows.find(counts) ?? null
}

function missedHow({ shows }: PlantedFault, words: ReadonlyMap<string, VerdictWord>): Outcome {
  if (shows.some((id) => words.get(id) === 'too close')) return 'left open'
  return shows.some((id) => isDecided(words.get(id) ?? 'unread')) ? 'missed' : 'not looked at'
}

import type { PhotoStrokes } from '../core/record/photo-strokes.ts'
import type { EntryOf, PhotoBody } from '../formats/entry/entry-kinds.ts'
import type { Print } from '../words/print.ts'
import { positionText } from './places-text.ts'
import { timeText } from './printed-time.ts'
import type { RecordInput } from './record-input.ts'
import type { RequirementLine } from './requirement-lines.ts'
import { documentWords } from './words/document-words.ts'

/** One photo of the record. */
export interface PhotoLine {
  /** Counts through the record, in the order of its requirements. */
  readonly number: number
  /** What it is called where it is named, shortened where that is a hash. */
  readonly name: string
  /** Id of the requirement that it shows; null for the run as a whole and for what no requirement asks. */
  readonly requirement: string | null
  /** What it shows, in words. */
  readonly shows: string
  /** Who took it, when and where. */
  readonly taken: string
  readonly note: string | null
  /** Who drew on it, and when; null where nobody did. */
  readonly drawn: string | null
  /** The first digits of the SHA-256 of its bytes, as the record's hash takes them in; null where they are not known. */
  readonly hash: string | null
  /** Whether it is in this packet. */
  readonly isHere: boolean
  /** As readings or its entry name it, in full. */
  readonly photo: string
}

/** The SHA-256 of each photo by its name; null of one that is not at hand and not named by it. */
export type PhotoHashes = Readonly<Record<string, string | null>>

interface Named {
  readonly photo: string
  readonly of: string | null
  readonly taken: string
  readonly note: string | null
}

/**
 * Every photo that a reading or a free finding names, or that was entered, once.
 * @param drawn  what was drawn on them
 * @param hashes  the SHA-256 of each by its name
 * @param given  names of the photos that are at hand
 */
export function photoLines(
  lines: readonly RequirementLine[],
  { log, judgement, nameOf, print }: Pick<RecordInput, 'log' | 'judgement' | 'nameOf' | 'print'>,
  entered: readonly EntryOf<PhotoBody>[],
  drawn: readonly PhotoStrokes[],
  hashes: PhotoHashes,
  given: ReadonlySet<string>,
): readonly PhotoLine[] {
  const words = documentWords(print).record
  const named = new Map<string, Named>()
  const seen = new Map<string, string>()
  for (const { photos, of, by, at } of log)
    for (const photo of photos)
      if (!named.has(photo))
        named.set(photo, { photo, of, taken: words.named(timeText(at), print.theirs(by)), note: null })
  for (const { finding, place } of judgement.freeFindings) {
    const shows = [{ kind: 'seen', what: finding.what } as const, ...(place === null ? [] : [place])].map(print.say)
    for (const { photos, by, at } of [finding, ...(finding.closed === null ? [] : [finding.closed])])
      for (const photo of photos) {
        seen.set(photo, shows.join(', '))
        named.set(photo, { photo, of: null, taken: words.named(timeText(at), print.theirs(by)), note: null })
      }
  }
  for (const entry of entered) named.set(entry.body.sha256, ofEntry(entry, named.get(entry.body.sha256), print))
  const place = new Map(lines.map((line, i) => [line.id, i]))
  const orderOf = ({ of }: Named): number => (of === null ? lines.length + 1 : (place.get(of) ?? lines.length))
  return [...named.values()]
    .sort((a, b) => orderOf(a) - orderOf(b))
    .map(({ photo, of, taken, note }, i) => {
      const line = of === null ? undefined : lines[place.get(of) ?? -1]
      return {
        number: i + 1,
        name: /^[0-9a-f]{64}$/.test(photo) ? `${photo.slice(0, 12)}…` : photo,
        requirement: line?.id ?? null,
        shows:
          line === undefined
            ? of === null
              ? (seen.get(photo) ?? words.theRun)
              : print.say(nameOf(of, null))
            : words.shows(line.number, line.place.name, line.must),
        taken,
        note,
        drawn: drawnText(
          drawn.filter((one) => one.photo === photo),
          print,
        ),
        hash: hashes[photo]?.slice(0, 16) ?? null,
        isHere: given.has(photo),
        photo,
      }
    })
}

function drawnText(drawn: readonly PhotoStrokes[], print: Print): string | null {
  const words = documentWords(print).record
  return drawn.length === 0
    ? null
    : drawn.map(({ by, at }) => words.strokesBy(print.theirs(by), timeText(at))).join('; ')
}

function ofEntry({ author, body }: EntryOf<PhotoBody>, reading: Named | undefined, print: Print): Named {
  const words = documentWords(print).record
  const { sha256, takenAt, position, drawnOn, note, of } = body
  const parts = [
    takenAt === null ? words.timeUnknown : timeText(takenAt),
    print.theirs(author),
    ...(position === null ? [] : [positionText(position)]),
    ...(drawnOn === null ? [] : [words.drawnOn(`${drawnOn.slice(0, 12)}…`)]),
  ]
  return {
    photo: sha256,
    of: of ?? reading?.of ?? null,
    taken: parts.join('; '),
    note: note === null ? null : print.theirs(note),
  }
}

import { photoAskedEarlier } from '../core/record/readings-in-force.ts'
import { askedEarlierReason } from '../core/record/record-saying.ts'
import { chainOf, type RunVersion } from '../core/record/version.ts'
import { readableIn } from '../core/requirements/readable-in.ts'
import type { EntryOf, PhotoBody } from '../formats/entry/entry-kinds.ts'
import { timeText } from './printed-time.ts'
import { type ReadingLine, readingLine } from './reading-lines.ts'
import type { RecordInput } from './record-input.ts'

/** What an earlier version of the run asked and this one does not: kept and shown, never judged. */
export interface AskedEarlierLines {
  readonly readings: readonly AskedEarlierReading[]
  readonly photos: readonly AskedEarlierPhoto[]
}

interface AskedEarlierReading {
  readonly reading: ReadingLine
  /** Number of the version that its person saw, or the id of one that this run did not come from. */
  readonly version: string
  readonly why: string
}

interface AskedEarlierPhoto {
  readonly photo: string
  /** Name of what it shows. */
  readonly of: string
  readonly by: string
  readonly at: string | null
  readonly note: string | null
  readonly why: string
}

/** The readings and photos of a run that answer nothing which its version in force asks, in the order of the log. */
export function askedEarlierLines(input: RecordInput, photos: readonly EntryOf<PhotoBody>[]): AskedEarlierLines {
  const { run, print } = input
  const { version } = run
  const asked = readableIn(input)
  return {
    readings: input.askedEarlier.map((one) => ({
      // The choices of the requirement that has this id now may be others.
      reading: {
        ...readingLine(one.reading, input.askedBy(one.reading.of, one.version), input),
        of: print.say(input.nameOf(one.reading.of, one.version)),
      },
      version: versionName(one.version, version),
      why: print.say(askedEarlierReason(one)),
    })),
    photos: photos.flatMap(({ author, body: { sha256, of, takenAt, note } }) => {
      const because = version === undefined || of === null ? null : photoAskedEarlier(version, asked, of)
      if (because === null || of === null) return []
      const at = takenAt === null ? null : timeText(takenAt)
      return [
        {
          photo: sha256,
          of: print.say(input.nameOf(of, null)),
          by: print.theirs(author),
          at,
          note: note === null ? null : print.theirs(note),
          why: print.say(askedEarlierReason({ because })),
        },
      ]
    }),
  }
}

function versionName(id: string, inForce: RunVersion | undefined): string {
  const at = inForce === undefined ? -1 : chainOf(inForce).indexOf(id)
  return at < 0 ? id : `${at + 1}`
}

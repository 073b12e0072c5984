import type { PhotoStrokes } from '../core/record/photo-strokes.ts'
import type { PhotoHashes } from '../documents/photo-lines.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import { readingsToValue } from '../formats/readings/readings-file.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { runToValue } from '../formats/run/write-run.ts'
import type { JudgedRun } from './judge-readings.ts'
import { sheetsInUse } from './sheets-in-use.ts'

/** The rule by which records are named from now on; a signature says by which its own was. */
export const hashRule = 2

/**
 * The text whose SHA-256 names the record as it stands: the contents of run.json and readings.json as a packet has
 * them, and the SHA-256 of each photo, as canonical JSON. docs/record-hash.md says how anyone computes it from a packet.
 * Where a hash is awaited, as in a browser, the caller makes it of this text.
 * @throws RangeError where the run is not pinned, since nothing is recorded at such a run
 */
export function recordText(
  { run, log, freeFindings }: Pick<JudgedRun, 'run' | 'log' | 'freeFindings'>,
  photos: PhotoHashes,
  photoStrokes: readonly PhotoStrokes[],
): string {
  if (run.version === undefined) throw new RangeError(`the run ${run.name} is not pinned`)
  return canonicalJson({
    format: `lapwise-record/${hashRule}`,
    photos,
    readings: readingsToValue({ run: run.name, readings: log, findings: freeFindings, photoStrokes }),
    run: runToValue(run),
  })
}

/** The text whose SHA-256 names the photos alone: the object `photos` of the record's own text. */
export const photosText = (photos: PhotoHashes): string => canonicalJson(photos)

/**
 * The same by the first rule, of what the program held itself before runs held their layout and readings named a
 * version: what signatures given then name. Readings of then are all lengths, choices and confirmations. Null where
 * nobody can have signed by it.
 */
export function firstRecordText({ model, log, firstAsked: asked }: JudgedRun): string | null {
  if (asked === null) return null
  const readings = log.map(({ version: _, ...reading }) =>
    reading.answer.kind === 'measured' ? { ...reading, answer: { ...reading.answer, kind: 'length' } } : reading,
  )
  return canonicalJson({ decisionRule: asked.decisionRule, readings, run: saidBy(asked), sheets: sheetsInUse(model) })
}

/** Fields that the format did not have at first are left out while they say nothing: an older record keeps its hash. */
function saidBy(run: RunFile): unknown {
  const { opposingReaches, ...road } = run.road
  const { flare, ...rest } = run
  return { ...rest, ...(flare && { flare }), road: opposingReaches === null ? road : run.road }
}

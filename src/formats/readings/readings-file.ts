import { lacksSide } from '../../core/measurement/offset-side.ts'
import type { Answer, Reading } from '../../core/measurement/reading.ts'
import type { PhotoStrokes } from '../../core/record/photo-strokes.ts'
import type { Result } from '../../core/result.ts'
import type { FreeFinding } from '../../core/verdicts/free-findings.ts'
import type { InputProblem } from '../input-problem.ts'
import { checkShape, parseJson } from '../read-json.ts'
import { valueToText } from '../written-value.ts'
import { readingsSchema } from './readings-schema.ts'

/** The readings of one or more visits to a run. */
export interface ReadingsFile {
  /** The name of the run that they were taken at. */
  readonly run: string
  readonly readings: readonly Reading[]
  /** What was seen that no requirement asks for. */
  readonly findings: readonly FreeFinding[]
  /** What was drawn on photos. */
  readonly photoStrokes: readonly PhotoStrokes[]
}

/** The readings in `text`, in the order listed, or every problem found; `file` is the name that the problems carry. */
export function readReadings(file: string, text: string): Result<ReadingsFile, readonly InputProblem[]> {
  const parsed = parseJson(file, text)
  return parsed.ok ? readingsFromValue(file, parsed.value) : parsed
}

/** The same of a readings file that is a value already. */
export const readingsFromValue = (file: string, raw: unknown): Result<ReadingsFile, readonly InputProblem[]> =>
  checkShape(file, raw, readingsSchema)

/** The readings as the text that `readReadings` reads back, nothing left to a default. */
export const writeReadings = (file: ReadingsFile): string => `${JSON.stringify(readingsToValue(file), null, 2)}\n`

/** The readings as such a file has them. */
export const readingsToValue = ({ run, readings, findings, photoStrokes }: ReadingsFile): object => ({
  format: 'lapwise-readings/3',
  run,
  readings: readings.map(readingToValue),
  // Left out where there are none, as before there were any: a record keeps its hash.
  ...(findings.length === 0 ? {} : { findings }),
  ...(photoStrokes.length === 0 ? {} : { photoStrokes }),
})

/** One reading as such a file lists it, and as the body of its entry. */
export function readingToValue(reading: Reading): object {
  const { id, of, answer, ...rest } = reading
  const side = lacksSide(reading) ? { side: 'not stated' } : {}
  return { id, of, ...answerToShape(answer), ...side, ...rest }
}

function answerToShape(answer: Answer): object {
  switch (answer.kind) {
    case 'measured':
      return { ...valueToText(answer), ...(answer.side === undefined ? {} : { side: answer.side }) }
    case 'choice':
      return { choice: answer.choice }
    case 'confirmed':
      return { confirmed: answer.yes }
    case 'cannot see':
      return { cannotSee: true }
    case 'does not apply':
      return { doesNotApply: answer.because }
    default:
      return answer satisfies never
  }
}

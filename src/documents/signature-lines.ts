import { line, point, polyline, text } from '../drawing/draw.ts'
import type { Drawing } from '../drawing/drawing.ts'
import type { EntryOf } from '../formats/entry/entry-kinds.ts'
import type { SignOff } from '../formats/entry/sign-off.ts'
import { boxHeight, nameLine } from '../formats/entry/signature.ts'
import type { Print } from '../words/print.ts'
import { timeText } from './printed-time.ts'
import { documentWords } from './words/document-words.ts'

export interface SignedVersion {
  /** Counts from 1 in the order of signing. */
  readonly version: number
  readonly signed: EntryOf<SignOff>
  /** Readings not signed; null when it is not known which were, or not all of them are at hand. */
  readonly readingsSince: number | null
  /** Whether the record as it stands is the one that was signed. */
  readonly isCurrent: boolean
}

/** A signature that was given under the record, as it stood then. */
export interface SignatureLine {
  readonly version: number
  readonly name: string
  readonly role: string
  readonly at: string
  /** In words, as it was signed. */
  readonly acceptance: string
  /** Requirements that were not proven when it was signed. */
  readonly unproven: number
  readonly statement: string | null
  /** The name was typed instead of drawn. */
  readonly isTyped: boolean
  /** Of the record that was signed. */
  readonly hash: string
  /** Whether that is the record at hand, in a sentence. */
  readonly standing: string
}

export const signatureLine = (
  { version, signed, readingsSince, isCurrent }: SignedVersion,
  print: Print,
): SignatureLine => ({
  version,
  name: print.theirs(signed.body.name),
  role: print.theirs(signed.body.role),
  at: timeText(signed.capturedAt),
  acceptance: print.say(signed.body.acceptance),
  unproven: signed.body.unproven.length,
  statement: signed.body.statement === null ? null : print.theirs(signed.body.statement),
  isTyped: signed.body.signature.kind === 'typed',
  hash: signed.body.recordHash,
  standing: isCurrent ? documentWords(print).record.standing.same : otherRecord(readingsSince, print),
})

function otherRecord(readingsSince: number | null, print: Print): string {
  const { unknown, other, earlier } = documentWords(print).record.standing
  if (readingsSince === null) return unknown
  return readingsSince === 0 ? other : earlier(readingsSince)
}

/** Width of a signature on paper, inches. */
const signatureWidth = 2.2

/** The signature as it was drawn; a typed name stands on its line. */
export function signatureDrawing({ body: { name, role, signature } }: EntryOf<SignOff>, print: Print): Drawing {
  const words = documentWords(print).record
  const isTyped = signature.kind === 'typed'
  const strokes = isTyped ? nameLine : signature.strokes
  const xs = [0, 1, ...strokes.flatMap((stroke) => stroke.map(([x]) => x))]
  const ys = [0, -boxHeight, ...strokes.flatMap((stroke) => stroke.map(([, y]) => -y))]
  const extent = { minX: least(xs), maxX: greatest(xs), minY: least(ys), maxY: greatest(ys) }
  const wide = Math.max(extent.maxX - extent.minX, (extent.maxY - extent.minY) / boxHeight)
  const drawn = strokes.map((stroke) => {
    const points = stroke.map(([x, y]) => point(x, -y))
    return points.length === 1 ? line('signature', points[0]!, points[0]!) : polyline('signature', points)
  })
  const typedName = text('signature', point(0.5, -0.27), print.theirs(name.slice(0, 40)), 12, { anchor: 'middle' })
  return {
    title: words.signatureOf(print.theirs(name)),
    description: isTyped ? words.signatureTyped(print.theirs(role)) : words.signatureDrawn(print.theirs(role)),
    extent,
    scale: wide / signatureWidth,
    paper: null,
    layers: [{ name: 'signature', penPoints: 1.1, dash: 'solid', ink: '#000000' }],
    items: isTyped ? [...drawn, typedName] : drawn,
  }
}

const least = (values: readonly number[]): number => values.reduce((a, b) => Math.min(a, b))
const greatest = (values: readonly number[]): number => values.reduce((a, b) => Math.max(a, b))

import type { UnitSystem } from '../site/site.ts'
import type { Alternative, Note } from './note.ts'

/** Fields that hold a length in every note and alternative that has them. */
const lengthFields: ReadonlySet<string> = new Set([
  'runoutLength',
  'narrowest',
  'widest',
  'clearZone',
  'radius',
  'near',
  'far',
  'offset',
  'shyLine',
  'at',
  'lengthOfNeed',
  'lateralAtEnd',
  'parallelLength',
  'lateralExtent',
  'straightFormula',
  'behindFirst',
  'available',
  'shortfall',
  'to',
])

/** `note` with every length in it passed through `convert`. */
export const noteWith = (note: Note, convert: (length: number) => number): Note => converted(note, convert)

function converted<T extends object>(value: T, convert: (length: number) => number): T {
  const copy: Record<string, unknown> = {}
  for (const field in value) {
    const entry: unknown = value[field]
    if (typeof entry === 'number') copy[field] = lengthFields.has(field) ? convert(entry) : entry
    else if (Array.isArray(entry)) copy[field] = entry.map((item) => converted(item, convert))
    else copy[field] = typeof entry === 'object' && entry !== null ? converted(entry, convert) : entry
  }
  return copy as T
}

/** One sentence for the engineer; the lengths of `note` are already in the site's unit, ft or m. */
export function printNote(note: Note, units: UnitSystem): string {
  const unit = units === 'us' ? 'ft' : 'm'
  const long = (length: number) => `${short(length)} ${unit}`
  const speed = (value: number) => `${value} ${units === 'us' ? 'mi/h' : 'km/h'}`
  switch (note.kind) {
    case 'interpolated-speed':
      return `Runout length interpolated between ${speed(note.lowSpeed)} and ${speed(note.highSpeed)}, as the site asks.`
    case 'next-higher-speed':
      return `Runout length of ${speed(note.usedSpeed)}, the next higher speed of ${note.table}; set interpolateSpeeds to interpolate.`
    case 'runout-length-given':
      return `Runout length ${long(note.runoutLength)} as given in the site, not from a table.`
    case 'clear-zone-range':
      return `The table gives a clear zone of ${short(note.narrowest)} to ${long(note.widest)}; ${long(note.clearZone)} is used.`
    case 'clear-zone-may-be-limited':
      return `Where similar designs have a satisfactory history the clear zone may be limited to ${long(note.clearZone)}.`
    case 'curve-factor':
      return `Outside of a curve of ${long(note.radius)} radius: the clear zone is multiplied by ${note.factor}, to ${long(note.clearZone)}.`
    case 'curve-factor-not-applied':
      return `Outside of a curve of ${long(note.radius)} radius: the clear zone is taken as given, without a curve factor.`
    case 'hazard-outside-clear-zone':
      return `${note.hazard} begins ${long(note.near)} from the edge of this traffic, beyond its clear zone of ${long(note.clearZone)}: not shielded.`
    case 'hazard-cut-at-clear-zone':
      return note.far === null
        ? `${note.hazard} goes on beyond the clear zone: shielded to its limit, ${long(note.clearZone)}.`
        : `${note.hazard} reaches to ${long(note.far)}: shielded to the limit of the clear zone, ${long(note.clearZone)}.`
    case 'at-clear-zone-limit':
      return `The ${note.what} lies exactly at the limit of the clear zone, ${long(note.clearZone)}; it is counted as inside.`
    case 'no-room-behind-barrier':
      return `${note.hazard} begins at the face of the barrier: there is no room for its working width.`
    case 'inside-shy-line':
      return `The barrier stands ${long(note.offset)} from the edge, inside the shy line at ${long(note.shyLine)}.`
    case 'shy-line-not-tabulated':
      return `No shy-line offset is tabulated above ${speed(note.highestSpeed)}: not judged.`
    case 'flare-limit-not-tabulated':
      return `No flare limit is tabulated above ${speed(note.highestSpeed)}: not judged.`
    case 'flare-too-steep':
      return `The flare of ${short(note.rate)}:1 is steeper than ${note.limit}:1, suggested ${note.where}: only where crash tested.`
    case 'flare-crosses-shy-line':
      return `The flare crosses the shy line ${long(note.at)} from the hazard: ${note.insideLimit}:1 holds up to there, ${note.beyondLimit}:1 beyond.${printCompound(note, long)}`
    case 'flare-not-reached':
      return `The need of ${long(note.lengthOfNeed)} ends on the parallel part of ${long(note.parallelLength)}: the parallel formula governs.`
    case 'flare-on-curve':
      return 'A flare is generally not used on a curve.'
    case 'barrier-covers-lateral-extent':
      return `The barrier stands ${long(note.offset)} out, at or beyond the lateral extent of ${long(note.lateralExtent)}: no length is needed.`
    case 'on-curve':
      return `Solved on the curve (hazard on the ${note.side === 'mixed' ? 'inside and outside' : note.side}), runout length measured along the ${note.reading}; the straight formula would give ${long(note.straightFormula)}.`
    case 'later-hazard-governs':
      return `${note.hazard} governs; it begins ${long(note.behindFirst)} behind the first hazard.`
    case 'crashworthy-end':
      return 'The barrier stands inside the clear zone of opposing traffic: its end there has to be crashworthy.'
    case 'anchor-only':
      return note.why === 'no opposing traffic'
        ? 'No opposing traffic: the departure end needs an anchor, not a crashworthy end.'
        : 'The barrier stands outside the clear zone of opposing traffic: its end there needs an anchor, not a crashworthy end.'
    case 'opposing-traffic-not-judged':
      return note.why === 'no median width'
        ? 'Opposing traffic is not judged: give medianWidth to have it judged.'
        : 'Opposing traffic is not judged: hazards in a median are shielded from it by a run of its own.'
    case 'centre-of-odd-lanes':
      return `With ${note.lanes} lanes the edge of opposing traffic is taken in the middle of the road.`
    case 'driveway-cuts-run':
      return `${note.driveway} cuts the run: ${long(note.available)} can stand, ${long(note.shortfall)} are missing. ${printAlternatives(note.alternatives, long)}`.trimEnd()
    default:
      return note satisfies never
  }
}

const short = (value: number): string => String(Number(value.toFixed(2)))

function printCompound(note: Note & { kind: 'flare-crosses-shy-line' }, long: (length: number) => string): string {
  if (note.compound === null) return ''
  const { lengthOfNeed, lateralAtEnd } = note.compound
  return ` With ${note.beyondLimit}:1 beyond it the need would be ${long(lengthOfNeed)}, ending ${long(lateralAtEnd)} out.`
}

function printAlternatives(alternatives: readonly Alternative[], long: (length: number) => string): string {
  if (alternatives.length === 0) return ''
  return `Enough would be: ${alternatives.map((alternative) => printAlternative(alternative, long)).join('; or ')}.`
}

function printAlternative(alternative: Alternative, long: (length: number) => string): string {
  switch (alternative.change) {
    case 'flare':
      return `a flare of ${short(alternative.rate)}:1${alternative.steeperThanLimit === null ? '' : ` (steeper than the suggested ${alternative.steeperThanLimit}:1)`}`
    case 'barrier offset':
      return `the barrier at ${long(alternative.to)}`
    case 'far side of hazard':
      return `a hazard that reaches no further than ${long(alternative.to)}`
    case 'accept runout length':
      return `to accept a runout length of ${long(alternative.to)}`
    default:
      return alternative satisfies never
  }
}

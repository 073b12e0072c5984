import type { Alternative, Note } from '../../core/need/note.ts'
import type { Print } from '../print.ts'
import { hundredths, type SiteLengths } from '../site-lengths.ts'

/** One sentence for the engineer, by kind of note. */
export const needNotes: {
  readonly [K in Note['kind']]: (note: Extract<Note, { readonly kind: K }>, site: SiteLengths, print: Print) => string
} = {
  'interpolated-speed': ({ lowSpeed, highSpeed }, { speed }) =>
    `Runout length interpolated between ${speed(lowSpeed)} and ${speed(highSpeed)}, as the site asks.`,
  'next-higher-speed': ({ usedSpeed, table }, { speed }) =>
    `Runout length of ${speed(usedSpeed)}, the next higher speed of ${table}; set interpolateSpeeds to interpolate.`,
  'runout-length-given': ({ runoutLength }, { long }) =>
    `Runout length ${long(runoutLength)} as given in the site, not from a table.`,
  'clear-zone-range': ({ narrowest, widest, clearZone }, { bare, long }) =>
    `The table gives a clear zone of ${bare(narrowest)} to ${long(widest)}; ${long(clearZone)} is used.`,
  'clear-zone-may-be-limited': ({ clearZone }, { long }) =>
    `Where similar designs have a satisfactory history the clear zone may be limited to ${long(clearZone)}.`,
  'curve-factor': ({ radius, factor, clearZone }, { long }) =>
    `Outside of a curve of ${long(radius)} radius: the clear zone is multiplied by ${factor}, to ${long(clearZone)}.`,
  'curve-factor-not-applied': ({ radius }, { long }) =>
    `Outside of a curve of ${long(radius)} radius: the clear zone is taken as given, without a curve factor.`,
  'hazard-outside-clear-zone': ({ hazard, near, clearZone }, { long }, print) =>
    `${print.theirs(hazard)} begins ${long(near)} from the edge of this traffic, beyond its clear zone of ${long(clearZone)}: not shielded.`,
  'hazard-cut-at-clear-zone': ({ hazard, far, clearZone }, { long }, print) =>
    far === null
      ? `${print.theirs(hazard)} goes on beyond the clear zone: shielded to its limit, ${long(clearZone)}.`
      : `${print.theirs(hazard)} reaches to ${long(far)}: shielded to the limit of the clear zone, ${long(clearZone)}.`,
  'at-clear-zone-limit': ({ what, clearZone }, { long }) =>
    `The ${what} lies exactly at the limit of the clear zone, ${long(clearZone)}; it is counted as inside.`,
  'no-room-behind-barrier': ({ hazard }, _, print) =>
    `${print.theirs(hazard)} begins at the face of the barrier: there is no room for its working width.`,
  'inside-shy-line': ({ offset, shyLine }, { long }) =>
    `The barrier stands ${long(offset)} from the edge, inside the shy line at ${long(shyLine)}.`,
  'shy-line-not-tabulated': ({ highestSpeed }, { speed }) =>
    `No shy-line offset is tabulated above ${speed(highestSpeed)}: not judged.`,
  'flare-limit-not-tabulated': ({ highestSpeed }, { speed }) =>
    `No flare limit is tabulated above ${speed(highestSpeed)}: not judged.`,
  'flare-too-steep': ({ rate, limit, where }) =>
    `The flare of ${hundredths(rate)}:1 is steeper than ${limit}:1, suggested ${where}: only where crash tested.`,
  'flare-crosses-shy-line': ({ at, insideLimit, beyondLimit, compound }, { long }) => {
    const crosses = `The flare crosses the shy line ${long(at)} from the hazard: ${insideLimit}:1 holds up to there, ${beyondLimit}:1 beyond.`
    return compound === null
      ? crosses
      : `${crosses} With ${beyondLimit}:1 beyond it the need would be ${long(compound.lengthOfNeed)}, ending ${long(compound.lateralAtEnd)} out.`
  },
  'flare-not-reached': ({ lengthOfNeed, parallelLength }, { long }) =>
    `The need of ${long(lengthOfNeed)} ends on the parallel part of ${long(parallelLength)}: the parallel formula governs.`,
  'flare-on-curve': () => 'A flare is generally not used on a curve.',
  'barrier-covers-lateral-extent': ({ offset, lateralExtent }, { long }) =>
    `The barrier stands ${long(offset)} out, at or beyond the lateral extent of ${long(lateralExtent)}: no length is needed.`,
  'on-curve': ({ side, reading, straightFormula }, { long }) =>
    `Solved on the curve (hazard on the ${side === 'mixed' ? 'inside and outside' : side}), runout length measured along the ${reading}; the straight formula would give ${long(straightFormula)}.`,
  'later-hazard-governs': ({ hazard, behindFirst }, { long }, print) =>
    `${print.theirs(hazard)} governs; it begins ${long(behindFirst)} behind the first hazard.`,
  'crashworthy-end': () =>
    'The barrier stands inside the clear zone of opposing traffic: its end there has to be crashworthy.',
  'anchor-only': ({ why }) =>
    why === 'no opposing traffic'
      ? 'No opposing traffic: the departure end needs an anchor, not a crashworthy end.'
      : 'The barrier stands outside the clear zone of opposing traffic: its end there needs an anchor, not a crashworthy end.',
  'opposing-traffic-not-judged': ({ why }) =>
    why === 'no median width'
      ? 'Opposing traffic is not judged: give medianWidth to have it judged.'
      : 'Opposing traffic is not judged: hazards in a median are shielded from it by a run of its own.',
  'centre-of-odd-lanes': ({ lanes }) =>
    `With ${lanes} lanes the edge of opposing traffic is taken in the middle of the road.`,
  'driveway-cuts-run': ({ driveway, available, shortfall, alternatives }, { long }, print) => {
    const cuts = `${print.theirs(driveway)} cuts the run: ${long(available)} can stand, ${long(shortfall)} are missing.`
    return alternatives.length === 0
      ? cuts
      : `${cuts} Enough would be: ${alternatives.map((one) => alternativeText(one, long)).join('; or ')}.`
  },
}

function alternativeText(alternative: Alternative, long: SiteLengths['long']): string {
  switch (alternative.change) {
    case 'flare':
      return `a flare of ${hundredths(alternative.rate)}:1${alternative.steeperThanLimit === null ? '' : ` (steeper than the suggested ${alternative.steeperThanLimit}:1)`}`
    case 'barrier offset':
      return `the barrier at ${long(alternative.to)}`
    case 'far side of hazard':
      return `a hazard that reaches no further than ${long(alternative.to)}`
    case 'accept runout length':
      return `to accept a runout length of ${long(alternative.to)}`
  }
}

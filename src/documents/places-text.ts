import { feetInchesText } from '../core/hardware/dimension-text.ts'
import type { Place } from '../core/requirements/requirement.ts'
import { exactLength } from '../core/units/exact-length.ts'
import { printLength } from '../core/units/print-length.ts'
import type { DevicePosition } from '../formats/device-position.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import type { RecordInput } from './record-input.ts'
import { type DocumentWords, documentWords } from './words/document-words.ts'

/** `9 ft 4 1/2 in`, or metres in a metric run. */
export const alongText = (run: Pick<RunFile, 'units'>, inches: number): string =>
  run.units === 'metric' ? printLength(exactLength(inches, 'in'), 'metres') : feetInchesText(inches)

/** `station 108+18.65, offset +12.00 ft`; null where the road is not known. */
export function onRoadText(
  { onRoad, print }: Pick<RecordInput, 'onRoad' | 'print'>,
  alongInches: number,
): string | null {
  const place = onRoad?.(alongInches) ?? null
  if (place === null) return null
  return documentWords(print).places.onRoad(place.station, place.offset, place.unit === 'metre' ? 'm' : 'ft')
}

/**
 * How far a place lies from the run's datum along the rail, which is no station: on a curve, or where the rail leaves the
 * line of the run, the two differ.
 * @param inches from the datum, positive downstream
 */
export function fromDatumText(run: Pick<RunFile, 'units'>, inches: number, print: Print): string {
  const words = documentWords(print).places.fromDatum
  return inches === 0 ? words.at : words[inches < 0 ? 'upstream' : 'downstream'](alongText(run, Math.abs(inches)))
}

/** `44.05231, -92.91174 (WGS 84, ±8 m)`: what a device said of where it was. */
export const positionText = ({ latitude, longitude, accuracy }: DevicePosition): string =>
  `${latitude.toFixed(5)}, ${longitude.toFixed(5)} (WGS 84, ±${Math.ceil(accuracy)} m)`

/** Many places in few words: `posts 3 to 18 and 20; panel 2`. */
export function placesText(places: readonly Place[], print: Print): string {
  const numbersOf = (kind: Place['kind']): number[] =>
    places.filter((place) => place.kind === kind).map(({ number }) => number)
  const wholes = places.filter(({ kind }) => kind === 'unit' || kind === 'run').map(print.say)
  return [
    ...new Set(wholes),
    numberedText('post', numbersOf('post'), print),
    numberedText('space', numbersOf('space'), print),
    numberedText('panel', numbersOf('panel'), print),
    numberedText('splice', numbersOf('splice'), print),
  ]
    .filter((text) => text !== '')
    .join('; ')
}

/** `posts 3 to 18 and 20`; nothing for no numbers. */
export function numberedText(
  kind: keyof DocumentWords['places']['numbered'],
  numbers: readonly number[],
  print: Print,
): string {
  const words = documentWords(print).places
  const stretches: { from: number; to: number }[] = []
  for (const number of [...new Set(numbers)].sort((a, b) => a - b)) {
    const last = stretches.at(-1)
    if (last !== undefined && number === last.to + 1) last.to = number
    else stretches.push({ from: number, to: number })
  }
  const parts = stretches.flatMap(({ from, to }) =>
    to - from > 1 ? [words.fromTo(from, to)] : from === to ? [`${from}`] : [`${from}`, `${to}`],
  )
  if (parts.length === 0) return ''
  const isOne = stretches.length === 1 && stretches[0]!.from === stretches[0]!.to
  return words.numbered[kind](print.list(parts, 'and'), isOne)
}

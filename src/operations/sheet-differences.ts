import type { HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { namedFields, pathWithin } from '../core/hardware/sheet-paths.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { isLaterEdition } from './later-edition.ts'
import { type Shelf, shippedShelf } from './sheet-shelf.ts'

/** A sheet that a run is pinned to and that is another on the shelf. */
export interface SheetDifference {
  readonly sheet: string
  /** Version of the one that the run is judged by, and of the one on the shelf. */
  readonly pinned: string
  readonly onShelf: string
  /** Whether the one on the shelf is of a later version, and not only another. */
  readonly isNewer: boolean
  readonly values: readonly ValueDifference[]
}

/** One value that is another, at its path; undefined where there is none. */
export interface ValueDifference {
  readonly place: string
  readonly pinned: Value | undefined
  readonly onShelf: Value | undefined
}

type Value = string | number | boolean | null

/**
 * The sheets of a run that are others on the shelf, with each value that differs. A run that is not pinned has none, and
 * so has a sheet that is not on the shelf. Nothing follows from a difference: the run is judged by what it holds.
 */
export function sheetDifferences(
  { version, sheets }: Pick<RunFile, 'version' | 'sheets'>,
  shelf: Shelf = shippedShelf,
): readonly SheetDifference[] {
  if (version === undefined) return []
  return sheets.flatMap((sheet) => {
    const other = shelf.get(sheet.id)
    if (other === undefined || canonicalJson(other) === canonicalJson(sheet)) return []
    const isNewer = isLaterEdition(other.version, sheet.version)
    const values = valueDifferences(sheet, other).filter(({ place }) => place !== 'version')
    return [{ sheet: sheet.id, pinned: sheet.version, onShelf: other.version, isNewer, values }]
  })
}

/** Each value that is another in the one than in the other, by its path. */
export const valueDifferences = (one: HardwareSheet, other: HardwareSheet): readonly ValueDifference[] =>
  differencesIn('', one, other)

/** Of the bytes of a picture only how long they are written: nobody reads them. */
const shown = (place: string, value: unknown): Value =>
  place.endsWith('.base64') && typeof value === 'string' ? value.length : (value as Value)

function differencesIn(place: string, pinned: unknown, onShelf: unknown): readonly ValueDifference[] {
  const [one, other] = [namedFields(pinned), namedFields(onShelf)]
  if (one === null && other === null)
    return pinned === onShelf ? [] : [{ place, pinned: shown(place, pinned), onShelf: shown(place, onShelf) }]
  // A value on the one side and a list or object on the other: both are shown, each at its places.
  const alone = [
    ...(one === null && pinned !== undefined ? [{ place, pinned: pinned as Value, onShelf: undefined }] : []),
    ...(other === null && onShelf !== undefined ? [{ place, pinned: undefined, onShelf: onShelf as Value }] : []),
  ]
  const names = [...new Set([...(one?.keys() ?? []), ...(other?.keys() ?? [])])]
  return [
    ...alone,
    ...names.flatMap((name) => differencesIn(pathWithin(place, name), one?.get(name), other?.get(name))),
  ]
}

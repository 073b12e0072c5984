import { canonicalJson, isPlainRecord } from '../formats/canonical-json.ts'
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
    const values = differencesIn('', sheet, other).filter(({ place }) => place !== 'version')
    return [{ sheet: sheet.id, pinned: sheet.version, onShelf: other.version, isNewer, values }]
  })
}

function differencesIn(place: string, pinned: unknown, onShelf: unknown): readonly ValueDifference[] {
  const [one, other] = [fieldsOf(pinned), fieldsOf(onShelf)]
  if (one === null && other === null)
    return pinned === onShelf ? [] : [{ place, pinned: pinned as Value, onShelf: onShelf as Value }]
  // A value on the one side and a list or object on the other: both are shown, each at its places.
  const alone = [
    ...(one === null && pinned !== undefined ? [{ place, pinned: pinned as Value, onShelf: undefined }] : []),
    ...(other === null && onShelf !== undefined ? [{ place, pinned: undefined, onShelf: onShelf as Value }] : []),
  ]
  const names = [...new Set([...(one?.keys() ?? []), ...(other?.keys() ?? [])])]
  return [
    ...alone,
    ...names.flatMap((name) => {
      const within = name.startsWith('[') || place === '' ? `${place}${name}` : `${place}.${name}`
      return differencesIn(within, one?.get(name), other?.get(name))
    }),
  ]
}

/** What an object or list holds, by name; things with an id or a number by that, whatever their place in the list. */
function fieldsOf(value: unknown): ReadonlyMap<string, unknown> | null {
  if (isPlainRecord(value)) return new Map(Object.entries(value))
  if (!Array.isArray(value)) return null
  const keys = value.map(keyOf)
  const areNamed = keys.every((key) => key !== null) && new Set(keys).size === keys.length
  return new Map(value.map((one, i) => [`[${areNamed ? keys[i] : i}]`, one]))
}

function keyOf(value: unknown): string | null {
  if (!isPlainRecord(value)) return null
  const key = value.id ?? value.number
  return typeof key === 'string' || typeof key === 'number' ? `${key}` : null
}

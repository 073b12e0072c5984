import type { Cited, HardwareSheet } from '../core/hardware/hardware-sheet.ts'
import { withEach } from '../core/hardware/sheet-paths.ts'
import { isCited, type SheetStatement, statementsOf } from '../core/hardware/sheet-statements.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import { type ValueDifference, valueDifferences } from './sheet-differences.ts'

/** What two sheets, or two editions of one, state otherwise at one place. */
export interface StatedOtherwise {
  readonly place: string
  /** Null where it states nothing there. */
  readonly one: SheetStatement | null
  readonly other: SheetStatement | null
  /** Whether the values are others; else only how it is said, or where it comes from. */
  readonly what: 'values' | 'texts' | 'source'
}

export interface SheetComparison {
  readonly statements: readonly StatedOtherwise[]
  /** What differs besides, as the name, which no statement with a source says. */
  readonly besides: readonly ValueDifference[]
}

/** Which texts are in which language, and under which key a source is, says nothing of hardware. */
const beside = /^(format|id|version|basedOn|language|translations|earlierTranslations|sources)\b/

/** Everything that two sheets state otherwise. Places are the same by number or id. */
export function compareSheets(one: HardwareSheet, other: HardwareSheet): SheetComparison {
  const [here, there] = [byPlace(one), byPlace(other)]
  const places = [...new Set([...here.keys(), ...there.keys()])]
  const found = new Map<string, StatedOtherwise>()
  const besides: ValueDifference[] = []
  for (const difference of valueDifferences(one, other)) {
    if (beside.test(difference.place)) continue
    const place = ownerOf(difference.place, places)
    if (place === null) besides.push(difference)
    else if (!found.has(place)) {
      const pair = { one: here.get(place) ?? null, other: there.get(place) ?? null }
      found.set(place, { place, ...pair, what: whatDiffers(pair) })
    }
  }
  // The same key may stand for another document.
  for (const place of places) {
    const [a, b] = [here.get(place), there.get(place)]
    if (a === undefined || b === undefined || found.has(place)) continue
    if (canonicalJson(one.sources[a.cited.source] ?? null) !== canonicalJson(other.sources[b.cited.source] ?? null))
      found.set(place, { place, one: a, other: b, what: 'source' })
  }
  return { statements: places.flatMap((place) => found.get(place) ?? []), besides }
}

/** What somebody confirmed in the one and nobody in the other, where the sheets state it; null where the other states nothing. */
export function unconfirmedThere(one: HardwareSheet, other: HardwareSheet): readonly StatedOtherwise[] {
  const there = byPlace(other)
  return statementsOf(one).flatMap((statement): readonly StatedOtherwise[] => {
    const pair = { one: statement, other: there.get(statement.place) ?? null }
    if (statement.cited.checked === undefined || pair.other?.cited.checked !== undefined) return []
    return [{ place: statement.place, ...pair, what: whatDiffers(pair) }]
  })
}

const byPlace = (sheet: HardwareSheet): ReadonlyMap<string, SheetStatement> =>
  new Map(statementsOf(sheet).map((statement) => [statement.place, statement]))

/** The innermost statement that a value belongs to. */
function ownerOf(place: string, places: readonly string[]): string | null {
  const owners = places.filter((one) => place === one || place.startsWith(`${one}.`) || place.startsWith(`${one}[`))
  return owners.reduce<string | null>((inner, one) => (inner === null || one.length > inner.length ? one : inner), null)
}

function whatDiffers({ one, other }: Pick<StatedOtherwise, 'one' | 'other'>): StatedOtherwise['what'] {
  if (one === null || other === null || valuesIn(one) !== valuesIn(other)) return 'values'
  return canonicalJson(besideSource(one.cited)) === canonicalJson(besideSource(other.cited)) ? 'source' : 'texts'
}

/** In whatever order the file has them. */
const valuesIn = ({ values }: SheetStatement): string => values.map(contentOf).sort().join()

/** What it says itself, without what has a source of its own within it. */
const besideSource = (cited: Cited): object => ({
  ...withEach(cited, (value, place) => (place !== '' && isCited(value) ? null : value)),
  ...{ source: '', confirmation: '', checked: undefined },
})

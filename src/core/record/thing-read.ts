import type { HardwareSheet } from '../hardware/hardware-sheet.ts'
import { type SheetText, sheetText } from '../hardware/sheet-text.ts'
import type { Layout } from '../layout/layout.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import { type ReservedTopic, reservedTopic } from '../requirements/derived-topics.ts'
import { spacePlace, splicePlace } from '../requirements/places.ts'
import type { Place } from '../requirements/requirement.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { type Theirs, theirs } from '../theirs.ts'
import { placesById } from '../verdicts/free-findings.ts'
import { chainOf, type HeldVersion, type RunVersion } from './version.ts'

/** What a reading or a photo is of, by name. */
export interface ThingRead {
  readonly kind: 'thing read'
  /** As it was written where nothing at hand has it. */
  readonly place: Place | Theirs
  /** Number of the version whose name of the place this is; null for the one in force. */
  readonly version: number | 'another' | null
  /** A rule of a sheet by what it says; null for the place itself. */
  readonly what: TopicSaying | SheetText | Theirs | null
}

/** What something is required or read under, by name. */
export interface TopicSaying {
  readonly kind: 'topic'
  readonly topic: ReservedTopic
}

/** Names what is read: `of` is its id, `seen` the id of the version that its person saw, null where that is not known. */
export type ThingNames = (of: string, seen: string | null) => ThingRead

/**
 * Names of what is read at a run. A place has its number of today while the run has it, else the last that it had and the
 * version that had it, since another piece may bear that number now. A rule of a sheet is the sentence that its person
 * read: that of another edition may state other limits.
 *
 * @param version   in force; left out of a run that is not pinned
 * @param versions  of the run, at hand, by id
 */
export function namesOfThings(
  model: RunModel,
  version: RunVersion | undefined,
  versions: ReadonlyMap<string, HeldVersion>,
): ThingNames {
  // A long run has thousands of places, and most of what is read names none of another version.
  let here: ReturnType<typeof placesById> | null = null
  const sheetsNow: readonly HardwareSheet[] = (['run', 'first', 'second'] as const).map((unit) => sheetOf(model, unit))
  // Ids of a version that has none in common with this one may be those of other places here.
  const own = version === undefined ? [] : chainOf(version)
  const isOther = (seen: string | null): boolean => {
    if (seen === null || version === undefined || own.includes(seen)) return false
    const other = versions.get(seen)
    return other === undefined || !chainOf(other).some((id) => own.includes(id))
  }
  return (of, seen) => {
    here ??= placesById(model)
    const [id = '', topic] = of.split('/')
    const sheets = seen === null || seen === version?.id ? sheetsNow : versions.get(seen)?.sheets
    const what = topic === undefined ? null : topicNamed(topic, sheets ?? [])
    const place = isOther(seen) ? undefined : here.get(id)?.place
    if (place !== undefined) return { kind: 'thing read', place, version: null, what }
    const earlier = isOther(seen) ? [] : (version?.earlier ?? [])
    return { kind: 'thing read', ...goneOf(id, earlier, seen, versions), what }
  }
}

/** What is required or read under a topic; a rule of one of the sheets by what it says, and what none of them has by its id. */
export function topicNamed(topic: string, sheets: readonly HardwareSheet[]): TopicSaying | SheetText | Theirs {
  const reserved = reservedTopic(topic)
  if (reserved !== null) return { kind: 'topic', topic: reserved }
  for (const sheet of sheets)
    for (const { rules } of sheet.parts) {
      const rule = rules.find(({ id }) => id === topic)
      if (rule !== undefined) return sheetText(sheet, rule.must)
    }
  return theirs(topic)
}

function goneOf(
  id: string,
  earlier: RunVersion['earlier'],
  seen: string | null,
  versions: ReadonlyMap<string, HeldVersion>,
): Pick<ThingRead, 'place' | 'version'> {
  for (const [i, one] of [...earlier.entries()].reverse()) {
    const place = pieceOf(versions.get(one.id)?.layout, id)
    if (place !== null) return { place, version: i + 1 }
  }
  const elsewhere = seen === null ? null : pieceOf(versions.get(seen)?.layout, id)
  return elsewhere === null ? { place: theirs(id), version: null } : { place: elsewhere, version: 'another' }
}

function pieceOf(layout: Layout | undefined, id: string): Place | null {
  if (layout === undefined) return null
  const has = (one: { readonly id: string }): boolean => one.id === id
  const post = layout.posts.find(has)
  if (post !== undefined) return { id, kind: 'post', number: post.number, alongInches: post.alongInches, own: null }
  const panel = layout.panels.find(has)
  if (panel !== undefined) return { id, kind: 'panel', number: panel.number, alongInches: panel.fromInches, own: null }
  const space = layout.spaces.find(has)
  if (space !== undefined) return spacePlace(space)
  const splice = layout.splices.find(has)
  return splice === undefined ? null : splicePlace(splice)
}

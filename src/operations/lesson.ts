import type { EndSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import { deriveRequirements } from '../core/requirements/derive-requirements.ts'
import type { Place, Requirement } from '../core/requirements/requirement.ts'
import type { Shelf } from './sheet-shelf.ts'
import { notLooked, unitLayout } from './unit-layout.ts'

/** One place of two end units that are walked in step. */
export interface LessonStep {
  /** Where the first unit has it, or else the other. */
  readonly place: Place
  readonly asked: readonly LessonPair[]
}

/** What the two ask at one place under one topic; null where a sheet asks nothing. */
export interface LessonPair {
  readonly topic: string
  readonly one: Requirement | null
  readonly other: Requirement | null
  readonly differs: boolean
}

/**
 * Two end units walked place by place from the outermost in: posts, spaces, panels and splices are paired by their numbers in
 * the unit, and at each place what is asked by its topic.
 */
export function lessonOf(one: EndSheet, other: EndSheet, shelf: Shelf): readonly LessonStep[] {
  const [here, there] = [one, other].map((sheet) => askedOf(sheet, shelf))
  const places = new Map<string, Place>()
  for (const { place } of [...there!.values(), ...here!.values()]) places.set(placeKey(place), place)
  const ordered = [...places.values()].sort((a, b) => a.alongInches - b.alongInches || a.kind.localeCompare(b.kind))
  const keys = [...new Set([...here!.keys(), ...there!.keys()])]
  return ordered.map((place) => ({
    place,
    asked: keys
      .filter((key) => key.startsWith(`${placeKey(place)} `))
      .map((key) => pairOf(here!.get(key) ?? null, there!.get(key) ?? null)),
  }))
}

const placeKey = ({ kind, number }: Place): string => `${kind}-${number}`

function askedOf(sheet: EndSheet, shelf: Shelf): ReadonlyMap<string, Requirement> {
  const system = shelf.get(sheet.joins[0]!) as LongitudinalSheet
  const requirements = deriveRequirements({
    ...{ layout: unitLayout(sheet, system, sheet.panels.adapters[0] ?? null), system },
    ...{ first: { kind: 'unit', sheet, atInches: null }, second: notLooked },
    ...{ flare: null, work: null, letting: null, speed: null, opposingReaches: null },
  })
  return new Map(
    requirements
      .filter((requirement) => requirement.sheet === sheet.id && requirement.look.kind !== 'record')
      .map((requirement) => [`${placeKey(requirement.place)} ${requirement.topic}`, requirement]),
  )
}

function pairOf(one: Requirement | null, other: Requirement | null): LessonPair {
  const { topic } = (one ?? other)!
  const differs = one === null || other === null || contentOf(one.must) !== contentOf(other.must)
  return { topic, one, other, differs }
}

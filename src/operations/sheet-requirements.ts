import type { EndSheet, HardwareSheet, LongitudinalSheet, OmissionRule } from '../core/hardware/hardware-sheet.ts'
import { withEach } from '../core/hardware/sheet-paths.ts'
import { isCited } from '../core/hardware/sheet-statements.ts'
import { contentOf } from '../core/hardware/sheet-text.ts'
import { countedLayout } from '../core/layout/counted-layout.ts'
import type { Layout } from '../core/layout/layout.ts'
import { deriveRequirements } from '../core/requirements/derive-requirements.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { notLooked, unitLayout } from './unit-layout.ts'

/** What one statement of a sheet requires: each thing once, whatever the places at which it is required. Its source is the statement's. */
export type RequiredByStatement = ReadonlyMap<string, readonly Omit<Requirement, 'source'>[]>

/**
 * What a sheet requires, by the path of the statement that each requirement rests on. Found by the code that makes the
 * requirements of runs: it is given the sheet with the path of each statement in the place of its source, for runs in which
 * every piece and every rule of the sheet occurs.
 * @param system  of the run that an end unit is at; not looked at for a system's own sheet
 */
export function requiredBySheet(sheet: HardwareSheet, system: LongitudinalSheet): RequiredByStatement {
  const marked = withEach(sheet, (value, place) => (isCited(value) ? { ...value, source: markOf(place) } : value))
  const found = new Map<string, Requirement[]>()
  for (const requirement of requirementsOf(marked, system)) {
    for (const [, place] of JSON.stringify(requirement).matchAll(marks)) {
      const known = found.get(place!) ?? []
      if (
        !known.some(({ topic, must }) => topic === requirement.topic && contentOf(must) === contentOf(requirement.must))
      )
        found.set(place!, [...known, requirement])
    }
  }
  return found
}

/** All that a sheet requires, at every place of runs in which every piece and every rule of the sheet occurs. */
export const requirementsOf = (sheet: HardwareSheet, system: LongitudinalSheet): readonly Requirement[] =>
  (sheet.kind === 'longitudinal' ? systemModels(sheet) : unitModels(sheet, system))
    .flatMap(deriveRequirements)
    .filter((requirement) => requirement.sheet === sheet.id)

/** The system that a sheet is of, or the first of `sheets` that an end unit joins. */
export function systemOf(sheet: HardwareSheet, sheets: readonly HardwareSheet[]): LongitudinalSheet | undefined {
  if (sheet.kind === 'longitudinal') return sheet
  return sheets.find((one): one is LongitudinalSheet => one.kind === 'longitudinal' && sheet.joins.includes(one.id))
}

/** No source of a sheet is called so. */
const markOf = (place: string): string => `⌖${place}⌖`
const marks = /⌖([^⌖]*)⌖/g

const said = { flare: null, work: null, letting: null, speed: null, opposingReaches: null } as const

/** The unit with each of its adapters. */
function unitModels(sheet: EndSheet, system: LongitudinalSheet): readonly RunModel[] {
  const adapters = sheet.panels.adapters.length === 0 ? [null] : sheet.panels.adapters
  return adapters.map((adapter) => ({
    ...{ layout: unitLayout(sheet, system, adapter), system, ...said },
    ...{ first: { kind: 'unit', sheet, atInches: null }, second: notLooked },
  }))
}

/** A run with every length of panel and a moved post, and one with each kind of gap. */
function systemModels(system: LongitudinalSheet): readonly RunModel[] {
  const layouts = [plainLayout(system), ...system.omissions.map((rule) => gapLayout(system, rule))]
  return layouts.map((layout) => ({ layout, system, first: notLooked, second: notLooked, ...said }))
}

function plainLayout(system: LongitudinalSheet): Layout {
  const { standard, converting, endOnly } = system.panels
  const panels = [...standard, ...converting, ...endOnly].map(({ inches }) => inches)
  const layout = laidOut(system, panels)
  const posts = layout.posts.map((post, i) => (i === 1 ? { ...post, state: 'moved' as const } : post))
  return { ...layout, posts }
}

/** The most posts left out in a row, with the special posts and the doubled rail that go with them. */
function gapLayout(system: LongitudinalSheet, rule: OmissionRule): Layout {
  const panel = system.panels.standard[0]!.inches
  const full = system.spacings.full.inches
  const special = rule.specialPostsEachSide
  const panels = Array.from({ length: Math.ceil(((rule.most + 2 * special + 4) * full) / panel) }, () => panel)
  const { asCounted: _, ...layout } = laidOut(system, panels)
  const gap = { from: special + 2, to: special + 1 + rule.most }
  const posts = layout.posts.flatMap((post, i) => {
    if (i >= gap.from && i <= gap.to) return []
    const isBeside = i >= gap.from - special && i <= gap.to + special
    return isBeside && rule.specialPostKind !== null
      ? [{ ...post, kind: rule.specialPostKind, state: 'special' as const }]
      : [post]
  })
  const omitted = layout.posts
    .slice(gap.from, gap.to + 1)
    .map(({ alongInches }) => ({ alongInches, obstructions: ['…'], rule: rule.kind }))
  const spaces = posts.slice(1).map((after, i) => ({
    ...{ id: `space-${i + 1}`, number: i + 1 },
    ...{ fromInches: posts[i]!.alongInches, toInches: after.alongInches },
  }))
  const doubled = layout.panels.map((one) => ({ ...one, nested: rule.nestedInches > 0 }))
  return { ...layout, posts, spaces, omitted, panels: doubled, splices: [] }
}

function laidOut(system: LongitudinalSheet, panels: readonly number[]): Layout {
  const full = system.spacings.full.inches
  const rail = panels.reduce((sum, inches) => sum + inches, 0)
  const posts = Array.from({ length: Math.floor(rail / full) + 1 }, (_, i) => i * full)
  return countedLayout({ system, first: notLooked, second: notLooked }, { panels, posts })
}

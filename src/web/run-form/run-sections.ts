import type { HardwareSheet } from '../../core/hardware/hardware-sheet.ts'
import type { Layout } from '../../core/layout/layout.ts'
import type { Shelf } from '../../operations/sheet-shelf.ts'
import { type Draft, itemsAt, valueAt, withValue } from '../form/draft.ts'
import { type FormField, fieldMaker } from '../form/form-field.ts'
import type { FormSection } from '../form/form-section.ts'
import { aboutFields, titleFields, trafficFields } from './about-fields.ts'
import { hardwareFields } from './hardware-fields.ts'
import { instrumentList, obstructionList, reducedList, revisionList, stockList } from './run-lists.ts'
import {
  countedFields,
  lineFields,
  obstructionFields,
  ruleFields,
  standingFields,
  stockFields,
  stretchFields,
} from './stretch-fields.ts'
import { type RunSection, words } from './words.ts'

/** What is known of the run that is edited; nothing of one that is laid out. */
export interface Edited {
  readonly layout: Layout
  /** Sheets that it holds and that the shelf has otherwise by now. */
  readonly otherOnShelf: readonly HardwareSheet[]
}

/** What of this device can be chosen. */
export interface Offered {
  readonly shelf: Shelf
  /** That its runs are listed under. */
  readonly projects: readonly string[]
}

/** The form of a run's draft: which fields there are depends on what it says. */
export function runSections(draft: Draft, edited: Edited | null, { shelf, projects }: Offered): readonly FormSection[] {
  const { sections, hows } = words()
  const isCounted = valueAt(draft, 'counted') !== undefined
  const isNew = edited === null
  const section = (
    id: RunSection,
    fields: readonly FormField[],
    { isMain = true, list = null }: Partial<FormSection> = {},
  ): FormSection => ({
    ...{ id, title: sections[id], how: hows[id], fields, list, isMain },
    isHandiest: isNew && (id === 'hardware' || id === 'stretch'),
  })
  const about = section('about', aboutFields(draft, projects), { isMain: !isNew })
  const hardware = section('hardware', [...hardwareFields(draft, shelf), ...sheetFields(draft, edited)], {
    isMain: isNew,
  })
  const stretch = section('stretch', stretchFields(draft))
  const line = section('line', lineFields(draft), { isMain: false })
  const obstructions = section('obstructions', obstructionFields(draft), {
    list: obstructionList(draft),
    isMain: !isNew,
  })
  const reduced = section('reduced', [], { list: reducedList(draft), isMain: false })
  const parts = isCounted
    ? [section('counted', countedFields(draft)), obstructions, reduced]
    : [
        obstructions,
        section('stock', stockFields(draft), {
          ...{ isMain: false, list: valueAt(draft, 'stock') === null ? null : stockList(draft) },
        }),
        reduced,
        section('standing', standingFields(draft, edited?.layout.postOneAtInches ?? 0), { isMain: false }),
      ]
  return [
    ...(isNew ? [stretch, hardware, ...parts, line, about] : [about, stretch, ...parts, line, hardware]),
    section('traffic', trafficFields(draft), { isMain: false }),
    section('titleBlock', titleFields(draft), { isMain: false, list: revisionList(draft) }),
    section('judging', ruleFields(draft), { isMain: false, list: instrumentList(draft) }),
  ]
}

/** Whether the sheets of the shelf are taken in the place of those that the run holds; only where they differ. */
function sheetFields(draft: Draft, edited: Edited | null): readonly FormField[] {
  const others = edited?.otherOnShelf ?? []
  if (others.length === 0) return []
  const ids = new Set(others.map(({ id }) => id))
  const own = itemsAt(draft, 'sheets') as readonly HardwareSheet[]
  return [
    fieldMaker(draft).check('sheets', words().fields.sheetsOfShelf, {
      value: !own.some(({ id }) => ids.has(id)),
      put: (into, value) =>
        withValue(into, 'sheets', [...own.filter(({ id }) => !ids.has(id)), ...(value === true ? [] : others)]),
    }),
  ]
}

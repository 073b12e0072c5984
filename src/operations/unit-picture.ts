import type { EndSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { sheetText } from '../core/hardware/sheet-text.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { drawUnit, type UnitView } from '../drawing/views/unit-view.ts'
import type { Print } from '../words/print.ts'
import { unitLayout } from './unit-layout.ts'

/** One end unit as its sheet has it, with a panel of the run beyond it: all of it, or what somebody is to look at. */
export function unitPicture(sheet: EndSheet, system: LongitudinalSheet, view: UnitView, print: Print): Drawing {
  const layout = unitLayout(sheet, system, sheet.panels.adapters[0] ?? null)
  const name = print.say(sheetText(sheet, sheet.name))
  return drawUnit(
    {
      ...{ layout, system, first: { name, kind: sheet.kind, sheet } },
      second: { name: '', kind: 'standing splice', sheet: null },
      ...{ flareRate: null, traffic: null, obstructions: [], need: null, verdicts: null },
      ...{
        titles: { run: name, route: '', stations: '', block: null },
        units: 'feet and inches',
        print,
        lateralExaggeration: 1,
        areEndsKnown: true,
      },
    },
    view,
  )
}

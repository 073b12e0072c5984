import type { EndSheet, LongitudinalSheet } from '../core/hardware/hardware-sheet.ts'
import { sheetText } from '../core/hardware/sheet-text.ts'
import { countedLayout } from '../core/layout/counted-layout.ts'
import type { RunEnd } from '../core/layout/layout.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { drawUnit, type UnitView } from '../drawing/views/unit-view.ts'
import type { Print } from '../words/print.ts'
import { panelsBySheet } from './counted-run.ts'

const notLooked: RunEnd = { kind: 'unknown', because: 'not looked at', atInches: null, posts: 0, panels: 0 }

/** One end unit as its sheet has it, with a panel of the run beyond it: all of it, or what somebody is to look at. */
export function unitPicture(sheet: EndSheet, system: LongitudinalSheet, view: UnitView, print: Print): Drawing {
  const [{ inches: beyond } = { inches: 150 }] = system.panels.standard
  const panels = [...panelsBySheet(sheet), beyond]
  const rail = panels.reduce((sum, inches) => sum + inches, 0)
  const full = system.spacings.full.inches
  const own = sheet.posts.map(({ along }) => along)
  const last = own.at(-1) ?? 0
  const more = Array.from({ length: Math.max(0, Math.floor((rail - last) / full)) }, (_, i) => last + (i + 1) * full)
  const zero = own[0] ?? 0
  const posts = [...own, ...more].map((along) => along - zero)
  const first: RunEnd = { kind: 'unit', sheet, atInches: null }
  const layout = countedLayout({ system, first, second: notLooked }, { panels, posts })
  const name = print.say(sheetText(sheet, sheet.name))
  return drawUnit(
    {
      ...{ layout, system, first: { name, kind: sheet.kind, sheet } },
      second: { name: '', kind: 'standing splice', sheet: null },
      ...{ flareRate: null, traffic: null, obstructions: [], need: null, verdicts: null },
      ...{
        titles: { run: name, route: '', stations: '' },
        units: 'feet and inches',
        print,
        lateralExaggeration: 1,
        areEndsKnown: true,
      },
    },
    view,
  )
}

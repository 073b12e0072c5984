import type { EndSheet } from '../hardware/hardware-sheet.ts'
import { nameOf } from '../hardware/sheet-text.ts'
import type { LayoutPanel, LayoutPost, LayoutSpace, LayoutSplice } from '../layout/layout.ts'
import type { OwnNumber, Place } from './requirement.ts'
import { endSheetOf, type RunModel } from './run-model.ts'

export function postPlace(model: RunModel, post: LayoutPost): Place {
  const { id, number, alongInches } = post
  return { id, kind: 'post', number, alongInches, own: ownNumber(model, post) }
}

export function spacePlace({ id, number, fromInches, toInches }: LayoutSpace): Place {
  const alongInches = (fromInches + toInches) / 2
  return { id, kind: 'space', number, alongInches }
}

export function panelPlace(model: RunModel, panel: LayoutPanel): Place {
  return {
    id: panel.id,
    kind: 'panel',
    number: panel.number,
    alongInches: (panel.fromInches + panel.toInches) / 2,
    own: ownNumber(model, panel),
  }
}

export const splicePlace = ({ id, number, alongInches }: LayoutSplice): Place => ({
  id,
  kind: 'splice',
  number,
  alongInches,
})

export function unitPlace(model: RunModel, unit: 'first' | 'second', sheet: EndSheet): Place {
  const { posts } = model.layout
  const outermost = unit === 'first' ? posts[0]! : posts[posts.length - 1]!
  return {
    id: model.layout.endIds[unit],
    kind: 'unit',
    number: unit === 'first' ? 1 : 2,
    alongInches: outermost.alongInches,
    sheet: nameOf(sheet),
  }
}

export const runPlace = (): Place => ({ id: 'run', kind: 'run', number: 0, alongInches: 0 })

function ownNumber(model: RunModel, { unit, ownNumber: number }: LayoutPost | LayoutPanel): OwnNumber | null {
  return number === null ? null : { number, of: endSheetOf(model, unit)!.kind }
}

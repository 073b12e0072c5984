import type { EndSheet } from '../hardware/hardware-sheet.ts'
import type { LayoutPanel, LayoutPost, LayoutSpace, LayoutSplice } from '../layout/layout.ts'
import type { Place } from './requirement.ts'
import { endSheetOf, type RunModel } from './run-model.ts'

export function postPlace(model: RunModel, post: LayoutPost): Place {
  const own = ownName(endSheetOf(model, post.unit), 'post', post.ownNumber)
  const { id, number, alongInches } = post
  return { id, kind: 'post', number, alongInches, name: `post ${number}${own}` }
}

export function spacePlace({ id, number, fromInches, toInches }: LayoutSpace): Place {
  const alongInches = (fromInches + toInches) / 2
  return { id, kind: 'space', number, alongInches, name: `between posts ${number} and ${number + 1}` }
}

export function panelPlace(model: RunModel, panel: LayoutPanel): Place {
  const own = ownName(endSheetOf(model, panel.unit), 'panel', panel.ownNumber)
  return {
    id: panel.id,
    kind: 'panel',
    number: panel.number,
    alongInches: (panel.fromInches + panel.toInches) / 2,
    name: `panel ${panel.number}${own}`,
  }
}

export function splicePlace(splice: LayoutSplice): Place {
  const name = `splice ${splice.number}, between panels ${splice.number} and ${splice.number + 1}`
  return { id: splice.id, kind: 'splice', number: splice.number, alongInches: splice.alongInches, name }
}

export function unitPlace(model: RunModel, unit: 'first' | 'second', sheet: EndSheet): Place {
  const posts = model.layout.posts.filter((post) => post.unit === unit)
  const outermost = unit === 'first' ? posts[0] : posts[posts.length - 1]
  return {
    id: model.layout.endIds[unit],
    kind: 'unit',
    number: unit === 'first' ? 1 : 2,
    alongInches: outermost?.alongInches ?? 0,
    name: `${unit} end, ${lower(sheet.name)}`,
  }
}

export const runPlace = (): Place => ({ id: 'run', kind: 'run', number: 0, alongInches: 0, name: 'the run' })

function ownName(sheet: EndSheet | null, piece: string, number: number | null): string {
  return sheet === null || number === null ? '' : ` (${piece} ${number} of the ${sheet.kind})`
}

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1)

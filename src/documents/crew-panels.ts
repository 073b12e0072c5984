import { panelKind } from '../core/quantities/count-panels.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import type { Print } from '../words/print.ts'
import { groupBy } from './group-by.ts'
import { alongText } from './places-text.ts'
import { documentWords } from './words/document-words.ts'

/** Panels of one kind that hang one after the other. */
export interface CrewPanel {
  /** `4 to 6`, `3` */
  readonly numbers: string
  readonly count: number
  readonly length: string
  readonly name: string
  readonly nested: boolean
  readonly hung: boolean
  /** Where the first of them begins, along the rail from post 1. */
  readonly from: string
}

/** The panels in the order in which they hang, like neighbours drawn together. */
export function crewPanels(run: Pick<RunFile, 'units'>, model: RunModel, print: Print): readonly CrewPanel[] {
  let stretch = 0
  const panels = model.layout.panels.map((panel, i, all) => {
    const kind = panelKind(panel, model)
    const before = i === 0 ? null : panelKind(all[i - 1]!, model)
    if (before !== null && JSON.stringify(before) !== JSON.stringify(kind)) stretch++
    return { panel, kind, stretch }
  })
  return groupBy(panels, ({ stretch }) => stretch).map((group) => {
    const [{ panel, kind }] = group
    const last = group.at(-1)!.panel
    return {
      numbers: group.length === 1 ? `${panel.number}` : documentWords(print).places.fromTo(panel.number, last.number),
      count: group.length,
      length: alongText(run, panel.inches),
      name: `${print.say({ kind: 'panel as named', of: kind.name })}, ${print.say({ kind: 'gauge of panel', gauge: kind.gauge })}`,
      nested: kind.layers === 2,
      hung: kind.hung,
      from: alongText(run, panel.fromInches),
    }
  })
}

import type { LayoutPanel } from '../layout/layout.ts'
import type { Barrier } from './barrier.ts'

/** Where places of the rail stand on panels that have to be straight. */
export interface PanelChords {
  /** The places with the ends of those panels, rising, inches along the rail. */
  readonly along: readonly number[]
  /** For each place asked for, by indices into `along`: itself, and the panel that it lies within. */
  readonly places: readonly { readonly at: number; readonly within: PanelChord | null }[]
}

interface PanelChord {
  readonly from: number
  readonly to: number
  /** How far from one end to the other, 0 to 1. */
  readonly share: number
}

/** @param alongInches rising */
export function panelChords(barrier: Barrier, alongInches: readonly number[]): PanelChords {
  const straight = barrier.layout.panels.filter((panel) => hasToBeStraight(barrier, panel))
  const panels = alongInches.map((at) => straight.find(({ fromInches, toInches }) => at > fromInches && at < toInches))
  const ends = panels.flatMap((panel) => (panel === undefined ? [] : [panel.fromInches, panel.toInches]))
  const along = [...new Set([...alongInches, ...ends])].sort((a, b) => a - b)
  const index = new Map(along.map((at, i) => [at, i]))
  return {
    along,
    places: alongInches.map((at, i) => {
      const panel = panels[i]
      if (panel === undefined) return { at: index.get(at)!, within: null }
      const { fromInches, toInches } = panel
      const share = (at - fromInches) / (toInches - fromInches)
      return { at: index.get(at)!, within: { from: index.get(fromInches)!, to: index.get(toInches)!, share } }
    }),
  }
}

/** Whether the sheet of the panel's unit says how straight its panels have to be. */
function hasToBeStraight({ first, second }: Barrier, { unit }: LayoutPanel): boolean {
  const end = unit === 'first' ? first : unit === 'second' ? second : null
  return end?.kind === 'unit' && end.sheet.straightness !== 'notStated'
}

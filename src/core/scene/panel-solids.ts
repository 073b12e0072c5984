import { beamOf, railOfRun } from '../hardware/make.ts'
import type { LayoutPanel, LayoutSplice } from '../layout/layout.ts'
import { endSheetOf, type RunModel } from '../requirements/run-model.ts'
import { inches, type Metres } from '../units/quantity.ts'
import { drawnSizes, railFace, spliceBoltPlaces } from './drawn-sizes.ts'
import { joined, roundAcross, sweep, vector } from './mesh.ts'
import { placed, type RailPath } from './rail-path.ts'
import type { Mesh, Solid, Vector } from './scene.ts'
import type { Standing } from './standing.ts'

const { halfLap, beam, beamDepth, beamSteel } = drawnSizes
/** Over which a panel comes from before its neighbour to behind it. */
const joggle = 12

/** Panels as they hang, each swept along the rail from lap to lap, with the slots of a slotted one. */
export function panelSolids(model: RunModel, standing: Standing, path: RailPath): readonly Solid[] {
  const ends = panelEnds(model, standing)
  return model.layout.panels.flatMap((panel, i): Solid[] => {
    const [from, to] = [ends[i]!, ends[i + 1]!]
    const solid = { part: 'panel', place: panel.id, material: 'steel', isSign: !isPlainW(model, panel) } as const
    const behind = {
      start: depthAt(model, standing, i - 1, 'downstream'),
      end: depthAt(model, standing, i, 'upstream'),
    }
    const isLast = i === model.layout.panels.length - 1
    const stretch = { from: i === 0 ? from : from - inches(halfLap), to: isLast ? to : to + inches(halfLap) }
    const layers = isDoubled(model, standing, panel) ? 2 : 1
    return [
      ...Array.from({ length: layers }, (_, layer) => ({ ...solid, form: rail(path, stretch, behind, layer) })),
      ...(isSlotted(model, standing, panel) ? [slots(panel, path, from)] : []),
    ]
  })
}

/** Where the panels begin and end along the rail: one of another length moves every splice after it. */
export function panelEnds({ layout }: RunModel, { panels }: Standing): readonly Metres[] {
  const ends = [inches(layout.panels[0]?.fromInches ?? 0)]
  for (const { length } of panels) ends.push(ends.at(-1)! + length)
  return ends
}

/** Which panel lies on the traffic side of a splice: as it was seen, or else as its sheet asks. */
function overAt(model: RunModel, standing: Standing, splice: LayoutSplice): 'upstream' | 'downstream' {
  const seen = standing.seen(`${splice.id}/lap`)
  if (seen?.kind === 'choice') return seen.choice === 'downstream-over' ? 'downstream' : 'upstream'
  const { lap } = endSheetOf(model, splice.unit) ?? model.system
  return lap.rule === 'terminal end-on' && splice.unit === 'second' ? 'downstream' : 'upstream'
}

/** How far behind the face the panel on that side of the splice lies: not at all, or behind its neighbour's steel. */
function depthAt(model: RunModel, standing: Standing, splice: number, panel: 'upstream' | 'downstream'): number {
  const at = model.layout.splices[splice]
  return at === undefined || overAt(model, standing, at) === panel ? 0 : beamSteel
}

const isPlainW = (model: RunModel, panel: LayoutPanel): boolean => beamAt(model, panel).profile === 'W'

function beamAt(model: RunModel, { role, unit, ownNumber }: LayoutPanel) {
  const own = role === 'own' ? endSheetOf(model, unit)?.panels.own[(ownNumber ?? 0) - 1] : undefined
  return own === undefined ? railOfRun : beamOf(own)
}

function isDoubled(model: RunModel, { seen }: Standing, panel: LayoutPanel): boolean {
  const was = seen(`${panel.id}/nested`)
  return was?.kind === 'choice' ? was.choice === 'nested' : panel.nested || beamAt(model, panel).layers === 2
}

function isSlotted(model: RunModel, { seen }: Standing, panel: LayoutPanel): boolean {
  const own = panel.role === 'own' ? endSheetOf(model, panel.unit)?.panels.own[(panel.ownNumber ?? 0) - 1] : undefined
  const was = seen(`${panel.id}/slotted-panel`)
  return was?.kind === 'choice' ? was.choice === 'slotted' : (own?.slotted ?? false)
}

function rail(
  path: RailPath,
  { from, to }: { readonly from: Metres; readonly to: Metres },
  behind: { readonly start: number; readonly end: number },
  layer: number,
): Mesh {
  const [lap, bend] = [inches(2 * halfLap), inches(2 * halfLap + joggle)]
  const inside = (along: Metres): boolean => along > from + bend && along < to - bend
  const cuts = [from, from + lap, from + bend, ...path.bends.filter(inside), to - bend, to - lap, to]
  return sweep(
    cuts.map((along) => {
      const depth = along <= from + lap ? behind.start : along >= to - lap ? behind.end : 0
      const [at, turn, top] = [path.at(along), path.turn(along), path.top(along)]
      return outline.map(
        ({ behind: back, below }): Vector =>
          placed(vector(0, top - inches(below), inches(back + depth + layer * beamSteel)), at, turn),
      )
    }),
  )
}

/** Round the steel of a rail, against the clock looked at from downstream: down the back, up the face. */
const outline = [
  ...railFace.map(([behind, below]) => ({ behind: behind + beamSteel, below })),
  ...railFace.toReversed().map(([behind, below]) => ({ behind, below })),
]

/** A row of slots on the rail's upper and lower slope; how many and where no sheet says. */
function slots(panel: LayoutPanel, path: RailPath, from: Metres): Solid {
  const row = Array.from({ length: 10 }, (_, i) => from + inches(30 + 6 * i))
  const meshes = row.flatMap((along) =>
    [beam * 0.36, beam * 0.64].map((below) => {
      const [at, turn, top] = [path.at(along), path.turn(along), path.top(along)]
      const y = top - inches(below)
      const corner = (x: number, dy: number, z: number): Vector =>
        placed(vector(inches(x), y + inches(dy), inches(z)), at, turn)
      const ring = (x: number): Vector[] => [
        corner(x, -0.35, beamDepth * 0.42),
        corner(x, 0.35, beamDepth * 0.42),
        corner(x, 0.35, beamDepth * 0.62),
        corner(x, -0.35, beamDepth * 0.62),
      ]
      return sweep([ring(-2), ring(2)])
    }),
  )
  return { part: 'slots', place: panel.id, material: 'dark', isSign: true, form: joined(meshes) }
}

/** The eight bolts of a splice, or those that are left, heads on the traffic side, from the top of rail at its middle. */
export function spliceBolts(count: number): Mesh {
  const heads = spliceBoltPlaces
    .slice(0, count)
    .map(([along, below]) => roundAcross(along, -below, [beamDepth * 0.45 - 0.7, beamDepth * 0.45 + 1], 0.65, 8))
  return joined(heads)
}

import type { EndSheet, FigureKind, SheetRule } from '../hardware/hardware-sheet.ts'
import type { RunModel } from '../requirements/run-model.ts'
import { inches, type Metres } from '../units/quantity.ts'
import { drawnSizes } from './drawn-sizes.ts'
import { bar, box, joined, type Span, vector } from './mesh.ts'
import { panelEnds } from './panel-solids.ts'
import { placed, type RailPath } from './rail-path.ts'
import type { Material, Mesh, Part, Solid } from './scene.ts'
import type { Standing } from './standing.ts'

const { beam, beamDepth, postDepth, cableHeight, bracketAt } = drawnSizes

/** What closes the run at both ends: signs, each where its sheet has a rule about the part. */
export function endSolids(model: RunModel, standing: Standing, path: RailPath): readonly Solid[] {
  return (['first', 'second'] as const).flatMap((which): readonly Solid[] => {
    const end = model[which]
    const ends = panelEnds(model, standing)
    const out = which === 'first' ? -1 : 1
    const railEnd = which === 'first' ? ends[0]! : ends.at(-1)!
    const at = frame(path, railEnd, out)
    const post = which === 'first' ? standing.posts[0] : standing.posts.at(-1)
    const top = (post === undefined ? path.top(railEnd) : post.top) / inches(1)
    const closing = (part: Part, material: Material, mesh: Mesh): Solid[] => [
      { part, place: null, material, isSign: true, form: at(mesh) },
    ]
    if (end.kind === 'standing splice')
      return closing('standing run', 'steel', box([0, 40], [top - beam, top], [0, beamDepth]))
    if (end.kind === 'unknown') return closing('unknown end', 'unknown', box([-2, 14], [0, top], [0, beamDepth + 12]))
    if (end.sheet.kind === 'bridge end') return closing('bridge end', 'concrete', box([0, 60], [-12, top + 1], [0, 14]))
    return post === undefined
      ? []
      : unitSolids({
          ...{ sheet: end.sheet, standing, path, out, post, at, top },
          placeOf: placeOfRule(model, which, post.id),
        })
  })
}

interface UnitEnd {
  readonly sheet: EndSheet
  readonly standing: Standing
  readonly path: RailPath
  /** Away from the run along the rail. */
  readonly out: 1 | -1
  readonly post: Standing['posts'][number]
  /** Puts what is drawn from the rail's end outward, inches, at that end. */
  readonly at: (mesh: Mesh) => Mesh
  readonly top: number
  /** Id of the place that a rule of the sheet is about. */
  readonly placeOf: (rule: SheetRule | null) => string
}

/** By the sheet's own numbers; post 1 for a rule about no single piece. */
const placeOfRule =
  ({ layout }: RunModel, unit: 'first' | 'second', postOne: string) =>
  (rule: SheetRule | null): string => {
    const at = rule?.at
    const pieces = at?.kind === 'posts' ? layout.posts : at?.kind === 'panels' ? layout.panels : []
    const [number] = at?.kind === 'posts' || at?.kind === 'panels' ? at.numbers : []
    return pieces.find((one) => one.unit === unit && one.ownNumber === number)?.id ?? postOne
  }

function unitSolids(end: UnitEnd): Solid[] {
  const { sheet, top } = end
  const sign = (part: Part, figure: FigureKind, material: Material, form: Mesh): Solid => ({
    ...{ part, place: end.placeOf(ruleOf(sheet, figure)), material, isSign: true },
    form,
  })
  const solids: Solid[] = []
  if (sheet.kind === 'terminal') {
    const lift = isWrong(end, 'head-holes') ? 3.5 : 0
    const [low, high] = [top - beam + lift, top + lift]
    solids.push(
      sign(
        'impact head',
        'head-holes',
        'steel',
        end.at(
          joined([
            box([-10, 8], [low - 2, high + 2], [-2, beamDepth + 2]),
            box([8, 12], [low - 5, high + 5], [-8, beamDepth + 8]),
          ]),
        ),
      ),
    )
  }
  if (ruleOf(sheet, 'cable-play') !== null) solids.push(sign('anchor cable', 'cable-play', 'cable', cable(end)))
  if (ruleOf(sheet, 'bearing-plate') !== null && choiceOf(end, 'bearing-plate') !== 'missing')
    solids.push(sign('bearing plate', 'bearing-plate', 'steel', plate(end)))
  if (ruleOf(sheet, 'bracket-opening') !== null)
    solids.push(sign('cable bracket', 'bracket-opening', 'steel', bracket(end)))
  return solids
}

/** The rule of the sheet that is about that part, where it is about which way the part points, not about what holds it. */
const ruleOf = ({ parts }: EndSheet, figure: FigureKind): SheetRule | null =>
  parts.flatMap(({ rules }) => rules).find((one) => one.figure === figure && one.shows?.fixing === undefined) ?? null

function seenOf({ sheet, standing, placeOf }: UnitEnd, figure: FigureKind) {
  const rule = ruleOf(sheet, figure)
  return rule === null ? null : standing.seen(`${placeOf(rule)}/${rule.id}`)
}

function choiceOf(end: UnitEnd, figure: FigureKind): string | null {
  const was = seenOf(end, figure)
  return was?.kind === 'choice' ? was.choice : null
}

function isWrong(end: UnitEnd, figure: FigureKind): boolean {
  const was = seenOf(end, figure)
  return was?.kind === 'choice' && !was.right
}

/** Behind the face, at the middle of post 1 and at the back of the rail. */
const [postMiddle, railBack] = [beamDepth + postDepth / 2, beamDepth + 1.5]

/** From before post 1 through its hole to the bracket on the rail, as slack as half the travel that was felt. */
function cable(end: UnitEnd): Mesh {
  const { path, out, post, top } = end
  const play = seenOf(end, 'cable-play')
  const sag = play?.kind === 'length' ? play.length / 2 : 0
  const point = (inward: number, y: Metres, z: number) => {
    const along = post.along - out * inches(inward)
    return placed(vector(0, y, inches(z)), path.at(along), path.turn(along))
  }
  const [low, high] = [inches(cableHeight), inches(top - beam / 2)]
  const share = (t: number) =>
    point(
      4 + (bracketAt - 4) * t,
      low + (high - low) * t - sag * 4 * t * (1 - t),
      postMiddle + (railBack - postMiddle) * t,
    )
  return bar([point(-5.5, low, postMiddle), ...Array.from({ length: 13 }, (_, i) => share(i / 12))], inches(0.5))
}

/** Upright on the far side of post 1, longer above the cable than below it, or the other way where that was seen. */
function plate(end: UnitEnd): Mesh {
  const { path, post, out } = end
  const shown = ruleOf(end.sheet, 'bearing-plate')?.shows?.plate ?? { upInches: 5, downInches: 3 }
  const isTurned = isWrong(end, 'bearing-plate')
  const [up, down] = isTurned ? [shown.downInches, shown.upInches] : [shown.upInches, shown.downInches]
  const at = frame(path, post.along, out)
  return at(box([4.1, 5.1], [cableHeight - down, cableHeight + up], [postMiddle - 4, postMiddle + 4]))
}

/** A channel on the back of the rail, closed at the end away from its opening. */
function bracket(end: UnitEnd): Mesh {
  const { path, post, out, top } = end
  const opens = ruleOf(end.sheet, 'bracket-opening')?.shows?.toward ?? 'head'
  const towardHead = (opens === 'head') !== isWrong(end, 'bracket-opening')
  const middle = top - beam / 2
  const z: Span = [beamDepth, beamDepth + 3]
  const closed: Span = towardHead ? [-9, -8] : [8, 9]
  const at = frame(path, post.along - out * inches(bracketAt), out)
  return at(
    joined([
      box([-9, 9], [middle + 1.6, middle + 2.2], z),
      box([-9, 9], [middle - 2.2, middle - 1.6], z),
      box(closed, [middle - 1.6, middle + 1.6], z),
    ]),
  )
}

/** Puts a shape whose x goes outward from there; at the first end the shape is turned over, and so are its triangles. */
function frame(path: RailPath, along: Metres, out: 1 | -1): (mesh: Mesh) => Mesh {
  const [at, turn] = [path.at(along), path.turn(along)]
  return ({ points, triangles }) => ({
    points: points.map(({ x, y, z }) => placed(vector(out * x, y, z), at, turn)),
    triangles: out === 1 ? triangles : triangles.toReversed(),
  })
}

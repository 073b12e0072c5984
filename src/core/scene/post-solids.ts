import type { LayoutPost } from '../layout/layout.ts'
import { makeOfPost } from '../layout/make-of-post.ts'
import { endSheetOf, type RunModel } from '../requirements/run-model.ts'
import { inches } from '../units/quantity.ts'
import { drawnSizes } from './drawn-sizes.ts'
import { box, joined, roundAcross, type Span } from './mesh.ts'
import type { RailPath } from './rail-path.ts'
import type { Mesh, Part, Solid } from './scene.ts'
import type { Standing, StandingPost } from './standing.ts'

/** Gives the name of a shape; the first to ask for it says what it is. */
export type ShapeNamed = (name: string, make: () => Mesh) => string

const { beam, beamDepth, blockDepth, postDepth, postWidth, breakawayWidth, postAboveRail, stubBeyond } = drawnSizes
/** Depths of what is in the ground; nobody sees where it ends. */
const driven = -40
const tube = -60
/** Height of the hinge above finish grade where no stub is stated or read. */
const unstatedStub = 4
/** How deep the lower end of an upper post stands in its lower one. */
const inStub = 3

/** A post with all that it carries; place by place a copy of a shape that like posts share. */
export function postSolids(model: RunModel, standing: Standing, path: RailPath, named: ShapeNamed): readonly Solid[] {
  return model.layout.posts.flatMap((post, i) =>
    onePost(factsOf(model, standing, post, standing.posts[i]!), path, named),
  )
}

interface PostFacts {
  readonly post: StandingPost
  readonly material: 'steel' | 'wood' | 'notStated'
  readonly breakaway: 'hinge' | 'other' | 'none'
  readonly isBent: boolean
  readonly hasBlock: boolean
  readonly bolt: 'bolted' | 'washer' | 'none'
  /** Side of the hinge bolt, and of the slots that hold the rail, -1 upstream along the run; null for none. */
  readonly hinge: 1 | -1 | null
  readonly slots: { readonly side: 1 | -1; readonly held: 'upper' | 'lower' | null } | null
  readonly hasTube: boolean
}

function factsOf(model: RunModel, { seen }: Standing, post: LayoutPost, at: StandingPost): PostFacts {
  const own = endSheetOf(model, post.unit)?.posts.find(({ number }) => number === post.ownNumber)
  const make = makeOfPost(post, model)
  const choice = (topic: string): string | null => {
    const was = seen(`${post.id}/${topic}`)
    return was?.kind === 'choice' ? was.choice : null
  }
  const toHead = post.unit === 'second' ? 1 : -1
  const isOther = choice('post-kind') === 'other'
  const hingeSide = { 'toward-head': 'upstream', away: 'downstream' }[choice('hinge-side') ?? ''] ?? own?.hingeSide
  const sideOf = (side: 'upstream' | 'downstream'): 1 | -1 => (side === 'upstream' ? toHead : (-toHead as 1 | -1))
  const bolted = own === undefined ? true : own.railBolted === true
  const bolt = choice('rail-bolt') ?? (bolted ? 'bolted' : 'not-bolted')
  return {
    post: at,
    material: make.material,
    // As the figures draw another kind of post: plain for one that breaks away, with holes for a plain one.
    breakaway: isOther ? (make.breakaway === 'none' ? 'other' : 'none') : make.breakaway,
    isBent: choice('post-kind') === 'damaged',
    hasBlock: (choice('block') ?? (post.block ? 'block' : 'no-block')) === 'block',
    bolt: bolt === 'washer' || bolt === 'bolted' ? bolt : 'none',
    hinge: hingeSide === 'upstream' || hingeSide === 'downstream' ? sideOf(hingeSide) : null,
    slots: slotsOf(choice('slot-set'), own?.slots ?? 'none', sideOf),
    hasTube: own?.soilTube === true,
  }
}

function slotsOf(
  seen: string | null,
  asked: 'notStated' | 'none' | { readonly set: 'upper' | 'lower'; readonly side: 'upstream' | 'downstream' },
  sideOf: (side: 'upstream' | 'downstream') => 1 | -1,
): PostFacts['slots'] {
  if (asked === 'none' || asked === 'notStated') return null
  const side = sideOf(asked.side)
  const other = asked.set === 'upper' ? 'lower' : 'upper'
  if (seen === 'not-held') return { side, held: null }
  if (seen === 'other-side') return { side: -side as 1 | -1, held: asked.set }
  return { side, held: seen === 'other-set' ? other : asked.set }
}

function onePost(facts: PostFacts, path: RailPath, named: ShapeNamed): Solid[] {
  const { post, breakaway, hasBlock } = facts
  const height = toSixteenths(post.top)
  const stub = post.stub === null ? unstatedStub : toSixteenths(post.stub)
  const front = beamDepth + (hasBlock ? blockDepth : 0)
  const depth: Span = [front, front + postDepth]
  const half = (breakaway === 'none' ? postWidth : breakawayWidth) / 2
  const where = { at: path.at(post.along), turn: path.turn(post.along) }
  const solid = (part: Part, material: Solid['material'], isSign: boolean, name: string, make: () => Mesh): Solid => ({
    ...{ part, place: post.id, material, isSign },
    form: { of: named(name, make), ...where },
  })
  const body = facts.material === 'wood' ? 'wood' : 'steel'
  const isSign = facts.material === 'notStated'
  const top = height + postAboveRail
  const key = `${height} ${front} ${half}`
  const solids: Solid[] = []
  if (breakaway === 'hinge') {
    solids.push(
      solid('post', body, isSign, `upper post ${key} ${stub} ${facts.isBent}`, () =>
        bentBox([-half, half], [stub - inStub, top], depth, facts.isBent),
      ),
      solid('lower post', 'steel', true, `lower post ${front} ${half} ${stub}`, () =>
        box([-half - stubBeyond, half + stubBeyond], [driven, stub], [depth[0] - 0.5, depth[1] + 0.5]),
      ),
    )
    if (facts.hinge !== null) {
      const side = facts.hinge
      solids.push(
        solid('hinge bolt', 'cable', true, `hinge bolt ${side} ${front} ${stub}`, () =>
          across(side * 2.6, stub - 1.5, depth, 1, 1.2),
        ),
        solid('hole', 'dark', true, `hinge hole ${side} ${front} ${stub}`, () =>
          across(-side * 2.6, stub - 1.5, depth, 1, 0.55),
        ),
      )
    }
  } else {
    const make = () =>
      facts.material === 'steel'
        ? steelPost([driven, top], depth)
        : bentBox([-half, half], [driven, top], depth, facts.isBent)
    solids.push(solid('post', body, isSign, `post ${facts.material} ${key} ${facts.isBent}`, make))
    if (breakaway === 'other')
      solids.push(
        solid('hole', 'dark', true, `holes ${front}`, () => joined([0, -7].map((y) => across(0, y, depth, 1.75, 0.1)))),
      )
    if (facts.hasTube)
      solids.push(
        solid('soil tube', 'steel', true, `soil tube ${front} ${half} ${stub}`, () =>
          box([-half - stubBeyond, half + stubBeyond], [tube, Math.min(stub, 3)], [depth[0] - 1, depth[1] + 1]),
        ),
      )
  }
  if (hasBlock)
    solids.push(
      solid('offset block', 'wood', true, `block ${height}`, () => {
        const middle = height - beam / 2
        const [w, h] = [drawnSizes.blockWidth / 2, drawnSizes.blockHeight / 2]
        return box([-w, w], [middle - h, middle + h], [beamDepth, beamDepth + blockDepth])
      }),
    )
  if (facts.bolt !== 'none') {
    const y = height - beam / 2
    solids.push(
      solid('rail bolt', 'cable', true, `rail bolt ${height}`, () =>
        roundAcross(0, y, [beamDepth - 0.9, beamDepth], 0.7, 8),
      ),
    )
    if (facts.bolt === 'washer')
      solids.push(
        solid('washer', 'marker', true, `washer ${height}`, () =>
          box([-1.75, 1.75], [y - 1.5, y + 1.5], [beamDepth - 0.5, beamDepth - 0.2]),
        ),
      )
  }
  const { slots } = facts
  if (slots !== null) {
    const held = slots.held
    solids.push(
      solid('slots', 'dark', true, `post slots ${key} ${slots.side}`, () =>
        joined(
          [...slotDepths.upper, ...slotDepths.lower].map((below) =>
            sideSlot(top - below, half, depth, slots.side, 0.05),
          ),
        ),
      ),
    )
    if (held !== null)
      solids.push(
        solid('slots', 'cable', true, `holders ${key} ${slots.side} ${held}`, () =>
          joined(slotDepths[held].map((below) => sideSlot(top - below, half, depth, slots.side, 1.5))),
        ),
      )
  }
  return solids
}

/** Of the two pairs of slots below the top of post, inches, as the figures draw them: a sign. */
const slotDepths = { upper: [3.5, 14.5], lower: [7, 18] } as const

const toSixteenths = (length: number): number => Math.round((length / inches(1)) * 16) / 16

const across = (x: number, y: number, depth: Span, radius: number, beyond: number): Mesh =>
  roundAcross(x, y, [depth[0] - beyond, depth[1] + beyond], radius, 10)

function sideSlot(y: number, half: number, depth: Span, side: 1 | -1, beyond: number): Mesh {
  const [inner, outer] = [side * (half - 3), side * (half + beyond)]
  return box(
    [Math.min(inner, outer), Math.max(inner, outer)],
    [y - 0.6, y + 0.6],
    [depth[0] - beyond / 2, depth[1] + beyond / 2],
  )
}

/** A post of I-section: two flanges along the rail and the web between them; sizes from memory. */
const steelPost = (y: Span, [front, back]: Span): Mesh =>
  joined([
    box([-postWidth / 2, postWidth / 2], y, [front, front + 0.22]),
    box([-0.09, 0.09], y, [front + 0.22, back - 0.22]),
    box([-postWidth / 2, postWidth / 2], y, [back - 0.22, back]),
  ])

/** A straight box, or one that leans downstream: the sign of a post that is damaged. */
function bentBox(x: Span, y: Span, z: Span, isBent: boolean): Mesh {
  const straight = box(x, y, z)
  if (!isBent) return straight
  const top = inches(y[1])
  return { ...straight, points: straight.points.map((at) => (at.y === top ? { ...at, x: at.x + inches(8) } : at)) }
}

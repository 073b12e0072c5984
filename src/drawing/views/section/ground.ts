import { inches, type Metres } from '../../../core/units/quantity.ts'
import { siteWords } from '../../words/site-words.ts'
import { carriageways } from '../plan/carriageways.ts'
import type { SiteView } from '../plan/site-view.ts'

/** A place in a cross section: lateral from the edge beside the hazards, height above that edge, m. */
export interface SectionPoint {
  readonly lateral: Metres
  readonly height: Metres
}

/** One straight part of the surface, from the road outwards. */
export interface GroundPart {
  readonly from: SectionPoint
  readonly to: SectionPoint
  readonly what: 'travelled way' | 'shoulder' | 'foreslope' | 'slope' | 'not stated'
  /** What it is called in the drawing. */
  readonly words: string
}

/** Not in a site: crossfall of travelled way and shoulder, as a share. Common practice. */
const travelledWaySlope = 0.02
const shoulderSlope = 0.04

/** From the face of the rail to the back of the post: rail, block and post of W-beam. Common practice. */
export const barrierDepth = inches(18)

/** The surface from the far edge of the travelled way beside the hazards out to `reach`. */
export function groundParts({ site, print }: Pick<SiteView, 'site' | 'print'>, reach: Metres): readonly GroundPart[] {
  const words = siteWords(print).ground
  const [beside] = carriageways(site)
  const back = beside!.from
  const parts: GroundPart[] = []
  const travelled = words.travelledWay(travelledWaySlope * 100)
  if (site.road.traffic === 'two-way') {
    const crown = { lateral: back / 2, height: (-back / 2) * travelledWaySlope }
    parts.push({ from: { lateral: back, height: 0 }, to: crown, what: 'travelled way', words: travelled })
    parts.push({ from: crown, to: edge, what: 'travelled way', words: travelled })
  } else {
    // falls to its right-hand edge
    const height = (site.side === 'right' ? -back : back) * travelledWaySlope
    parts.push({ from: { lateral: back, height }, to: edge, what: 'travelled way', words: travelled })
  }
  const { shoulderWidth } = site.road
  let at: SectionPoint = edge
  const go = (lateral: Metres, slope: number, what: GroundPart['what'], called: string): void => {
    if (lateral <= at.lateral) return
    const to = { lateral, height: at.height + (lateral - at.lateral) * slope }
    parts.push({ from: at, to, what, words: called })
    at = to
  }
  const { breakBehindPost, slopeBehind } = site.hardware.ground
  const hasBreak = breakBehindPost !== null && slopeBehind !== null
  const breaks = hasBreak ? site.barrier.offset + barrierDepth + breakBehindPost : reach
  const { clearZone } = site
  go(shoulderWidth, -shoulderSlope, 'shoulder', words.shoulder(shoulderSlope * 100))
  if (clearZone.kind === 'slope' && clearZone.slope === 'foreslope')
    go(breaks, -1 / clearZone.run, 'foreslope', words.foreslope(clearZone.run))
  else go(breaks, 0, 'not stated', words.notStated)
  if (hasBreak) go(reach, -1 / slopeBehind, 'slope', words.slope(slopeBehind))
  return parts
}

const edge: SectionPoint = { lateral: 0, height: 0 }

/** Height of the surface at `lateral`, m above the edge. */
export function groundAt(parts: readonly GroundPart[], lateral: Metres): Metres {
  const part = parts.find(({ from, to }) => lateral >= from.lateral && lateral <= to.lateral) ?? parts.at(-1)!
  const { from, to } = part
  return from.height + ((lateral - from.lateral) * (to.height - from.height)) / (to.lateral - from.lateral)
}

import type { Point as GroundPoint } from '../../core/geometry/point.ts'
import type { Stake } from '../../core/staking/stake-run.ts'
import type { Finding } from '../../core/verdicts/verdict.ts'
import type { Print } from '../../words/print.ts'
import { circle, group, line, point, polyline, text } from '../draw.ts'
import type { Drawing, Item, Layer, Point } from '../drawing.ts'
import { stakePlanWords } from '../words/stake-plan-words.ts'

export interface StakePlanInput {
  readonly run: string
  readonly stakes: readonly Stake[]
  /** The face of rail from end to end. */
  readonly rail: readonly GroundPoint[]
  /** The alignment beside the run. */
  readonly alignment: readonly GroundPoint[]
  readonly findings: readonly PlanFinding[]
  readonly print: Print
}

interface PlanFinding {
  readonly number: number
  readonly finding: Pick<Finding, 'place' | 'what'>
  readonly position: GroundPoint
}

/** Inches in the world for an inch on paper: 1 in = 20 ft. */
const scale = 240

const layers: readonly Layer[] = [
  { name: 'alignment', penPoints: 0.5, dash: 'dash-dot', ink: '#404040' },
  { name: 'face of rail', penPoints: 1, dash: 'solid', ink: '#000000' },
  { name: 'stakes', penPoints: 0.7, dash: 'solid', ink: '#000000' },
  { name: 'stake numbers', penPoints: 0.5, dash: 'solid', ink: '#000000' },
  { name: 'findings', penPoints: 1, dash: 'solid', ink: '#b00000' },
]

/** The stakes at their own coordinates, easting to the right and northing up, for survey and road-design programs. */
export function stakePlan(input: StakePlanInput): Drawing {
  const { stakes, findings, print } = input
  const words = stakePlanWords(print)
  const rail = input.rail.map(placed)
  const alignment = input.alignment.map(placed)
  const all = [...rail, ...alignment, ...stakes.map(({ position }) => placed(position))]
  const margin = scale * 0.5
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)]
  return {
    title: words.title(print.theirs(input.run)),
    description: words.shows(stakes.length, findings.length),
    extent: {
      minX: Math.min(...xs) - margin,
      minY: Math.min(...ys) - margin,
      maxX: Math.max(...xs) + margin,
      maxY: Math.max(...ys) + margin,
    },
    scale,
    paper: null,
    layers,
    items: [
      polyline('alignment', alignment),
      polyline('face of rail', rail),
      ...stakes.map((stake) => stakeItem(stake, print)),
      ...findings.map((finding, i) => findingItem(finding, findings.slice(0, i), print)),
    ],
  }
}

/** True size in inches: the drawing's unit. */
const placed = ({ easting, northing }: GroundPoint): Point => point(easting / 0.0254, northing / 0.0254)

function stakeItem({ point: number, purpose, alongInches, position }: Stake, print: Print): Item {
  const at = placed(position)
  const reach = 3
  return group(
    `stake-${number}`,
    stakePlanWords(print).stake(number, print.length(alongInches, 'in'), print.say(purpose)),
    [
      circle('stakes', at, reach),
      line('stakes', point(at.x - 2 * reach, at.y), point(at.x + 2 * reach, at.y)),
      line('stakes', point(at.x, at.y - 2 * reach), point(at.x, at.y + 2 * reach)),
      text('stake numbers', point(at.x + 2 * reach, at.y + 2 * reach), String(number), 6),
    ],
  )
}

/** A cross where it lies; labels of findings at one place stand one below the other. */
function findingItem({ number, finding, position }: PlanFinding, before: readonly PlanFinding[], print: Print): Item {
  const words = stakePlanWords(print)
  const place = print.say(finding.place)
  const at = placed(position)
  const reach = 12
  const lineHeight = 9 * (scale / 72)
  const above = before.filter((other) => other.finding.place.id === finding.place.id).length
  const corner = (dx: number, dy: number): Point => point(at.x + dx * reach, at.y + dy * reach)
  return group(`finding-${number}`, words.found(number, place, print.say(finding.what)), [
    line('findings', corner(-1, -1), corner(1, 1)),
    line('findings', corner(-1, 1), corner(1, -1)),
    text('findings', point(at.x + 2 * reach, at.y - 2 * reach - above * lineHeight), words.finding(number, place), 6),
  ])
}

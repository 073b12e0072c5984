import type { Requirement } from '../../src/core/requirements/requirement.ts'
import type { RunModel } from '../../src/core/requirements/run-model.ts'
import { lengthLimits, type PhysicalRun } from './physical-run.ts'
import type { Dice } from './random-runs.ts'

/** What was done to a run, and which requirements are read there; null where the run has nothing to do it to. */
export interface Fault {
  readonly name: string
  readonly at: readonly string[]
}

type Plant = (
  run: PhysicalRun,
  model: RunModel,
  requirements: readonly Requirement[],
  roll: Dice,
  clear: number,
) => Fault | null

const either = (roll: Dice): number => (roll.chance(0.5) ? 1 : -1)

/** `clear` is how far beyond a limit a value has to lie to fail for certain, inches; everything planted lies on eighths. */
const beyond = (roll: Dice, clear: number): number => Math.ceil(4 * clear) / 4 + roll.between(0.25, 3, 0.25)

const heightsOf = (post: number): readonly string[] => [`post-${post}/rail-height`, `post-${post}/stub-height`]

function heightOf(run: PhysicalRun, requirements: readonly Requirement[], roll: Dice, what: 'rail' | 'stub') {
  const { place, look } = roll.oneOf(requirements.filter(({ topic }) => topic === `${what}-height`))
  if (look.kind !== 'measure') throw new Error('a height is measured')
  const { low, high } = lengthLimits(look)
  return { post: run.posts[place.number - 1]!, number: place.number, low: Number(low), high: Number(high) }
}

const railAlone: Plant = (run, _, requirements, roll, clear) => {
  const { post, number, low, high } = heightOf(run, requirements, roll, 'rail')
  post.rail = either(roll) > 0 ? high + beyond(roll, clear) : low - beyond(roll, clear)
  return { name: `rail at post ${number} at ${post.rail}`, at: heightsOf(number) }
}

const stubAlone: Plant = (run, _, requirements, roll, clear) => {
  if (!requirements.some(({ topic }) => topic === 'stub-height')) return null
  const { post, number, high } = heightOf(run, requirements, roll, 'stub')
  post.stub = high + beyond(roll, clear)
  post.rail += roll.between(-1, 1, 0.25)
  return { name: `stub of post ${number} at ${post.stub}, rail at ${post.rail}`, at: heightsOf(number) }
}

const postRaised: Plant = (run, _, requirements, roll, clear) => {
  if (!requirements.some(({ topic }) => topic === 'stub-height')) return null
  const { post, number, high } = heightOf(run, requirements, roll, 'stub')
  const up = high - post.stub! + beyond(roll, clear)
  post.stub! += up
  post.rail += up
  return { name: `post ${number} ${up} too high`, at: heightsOf(number) }
}

/** Posts from one number to another out of place by one amount; posts of a standing run stay. */
function misplaced(
  run: PhysicalRun,
  { layout }: RunModel,
  roll: Dice,
  clear: number,
  from: number,
  to: number,
): Fault | null {
  if (layout.posts.slice(from - 1, to).some(({ state }) => state === 'standing')) return null
  const by = either(roll) * (1 + beyond(roll, clear))
  for (const post of run.posts.slice(from - 1, to)) post.along += by
  const at = [from - 1, to]
    .filter((space) => space > 0 && space < run.posts.length)
    .map((space) => `space-${space}/spacing`)
  return { name: `posts ${from} to ${to} out by ${by}`, at }
}

const onePost: Plant = (run, model, _, roll, clear) => {
  const post = roll.between(1, run.posts.length)
  return misplaced(run, model, roll, clear, post, post)
}

const postsBeyond: Plant = (run, model, _, roll, clear) => {
  const space = roll.between(1, run.posts.length - 1)
  return roll.chance(0.5)
    ? misplaced(run, model, roll, clear, space + 1, run.posts.length)
    : misplaced(run, model, roll, clear, 1, space)
}

const postsBetween: Plant = (run, model, _, roll, clear) => {
  const from = roll.between(2, run.posts.length - 1)
  return misplaced(run, model, roll, clear, from, roll.between(from, Math.min(run.posts.length - 1, from + 5)))
}

const lengths = [75, 112.5, 150, 187.5, 225, 300]

const onePanel: Plant = (run, _, __, roll) => {
  const number = roll.between(1, run.panels.length)
  const panel = run.panels[number - 1]!
  const inches = roll.oneOf(lengths.filter((one) => one !== panel.inches))
  run.panels[number - 1] = { inches, isSlotted: panel.isSlotted && roll.chance(0.5) }
  return { name: `panel ${number} of ${inches}`, at: [`panel-${number}/panel-length`] }
}

/** Two panels hung each in the other's place, or one as much too long as another is too short. */
const twoPanels: Plant = (run, _, __, roll) => {
  const one = roll.between(1, run.panels.length)
  const other = roll.between(1, run.panels.length)
  const [a, b] = [run.panels[one - 1]!, run.panels[other - 1]!]
  if (a.inches === b.inches) return null
  ;[a.inches, b.inches] = [b.inches, a.inches]
  return {
    name: `panels ${one} and ${other} exchanged`,
    at: [one, other].map((number) => `panel-${number}/panel-length`),
  }
}

const plainPanel: Plant = (run, _, __, roll) => {
  const slotted = run.panels.flatMap(({ isSlotted }, i) => (isSlotted ? [i] : []))
  if (slotted.length === 0) return null
  const i = roll.oneOf(slotted)
  run.panels[i]!.isSlotted = false
  return { name: `panel ${i + 1} without slots`, at: [`panel-${i + 1}/slotted-panel`] }
}

const wrongThing: Plant = (run, _, requirements, roll) => {
  const { id, look } = roll.oneOf(requirements.filter((one) => run.things.has(one.id) && one.look.kind !== 'measure'))
  if (look.kind === 'choose')
    run.things.set(id, { kind: 'choice', choice: roll.oneOf(look.choices.filter(({ right }) => !right)).id })
  else run.things.set(id, { kind: 'confirmed', yes: false })
  return { name: `${id} wrong`, at: [id] }
}

const wrongLength: Plant = (run, _, requirements, roll, clear) => {
  const measured = requirements.filter((one) => run.things.has(one.id) && one.look.kind === 'measure')
  if (measured.length === 0) return null
  const { id, look } = roll.oneOf(measured)
  if (look.kind !== 'measure') throw new Error('measured')
  const { low, high, unit } = lengthLimits(look)
  const isLow = low !== 'notStated' && low > clear + 3.25 && roll.chance(0.5)
  const value = isLow ? Number(low) - beyond(roll, clear) : Number(high) + beyond(roll, clear)
  run.things.set(id, { kind: 'length', value, unit })
  return { name: `${id} ${value}`, at: [id] }
}

/** Those after which what stands beyond is where it was, whichever end one comes from. */
export const plantsInPlace: readonly Plant[] = [
  railAlone,
  stubAlone,
  postRaised,
  onePost,
  postsBeyond,
  postsBetween,
  twoPanels,
]

export const plants: readonly Plant[] = [...plantsInPlace, onePanel, plainPanel, wrongThing, wrongLength]

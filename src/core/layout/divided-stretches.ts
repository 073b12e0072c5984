import type { LayoutRequest } from './layout.ts'
import { type Frame, type PostLattice, shifted } from './post-lattice.ts'
import type { Refusal } from './refusal.ts'
import { type Sixteenths, sixteenths } from './sixteenths.ts'

/** A part of the run whose full spaces are divided, from one post of the full lattice to another. */
export interface DividedStretch {
  readonly from: Sixteenths
  readonly to: Sixteenths
  /** How many spaces a full one becomes: 2 or 4. */
  readonly into: 2 | 4
}

/**
 * The stretches that the request's parts at reduced spacing ask for, in order and none over another: every full space
 * that lies in a part, even with a corner, is divided; where several parts meet in one space the finest holds.
 */
export function dividedStretches(request: LayoutRequest, frame: Frame, lattice: PostLattice): DividedStretch[] {
  const wanted = { half: new Set<number>(), quarter: new Set<number>() }
  const beyond = Math.ceil((lattice.to - lattice.from) / lattice.full) + 1
  for (const part of request.reduced) {
    if (part.spacing === 'full') continue
    const { from, to } = spacesOf(shifted(part, frame), lattice)
    // One space beyond an end refuses the part as well as all of them.
    const first = Math.min(Math.max(from, -1), beyond - 1)
    for (let space = first; space < Math.max(Math.min(to, beyond), 0); space++) wanted[part.spacing].add(space)
  }
  const beside = Math.ceil(sixteenths(request.system.spacings.halfBeforeQuarter.inches) / lattice.full)
  for (const space of wanted.quarter)
    for (let near = space - beside; near <= space + beside; near++) wanted.half.add(near)

  const stretches: DividedStretch[] = []
  for (const space of [...wanted.half].sort((a, b) => a - b)) {
    const from = lattice.from + space * lattice.full
    const into = wanted.quarter.has(space) ? 4 : 2
    const last = stretches[stretches.length - 1]
    if (last !== undefined && last.to === from && last.into === into)
      stretches[stretches.length - 1] = { ...last, to: from + lattice.full }
    else stretches.push({ from, to: from + lattice.full, into })
  }
  return stretches
}

/** The full spaces that a stretch lies in, counted from the last post of the first end; the last one left out. */
function spacesOf({ from, to }: { readonly from: Sixteenths; readonly to: Sixteenths }, lattice: PostLattice) {
  return {
    from: Math.floor((from - lattice.from) / lattice.full),
    to: Math.ceil((to - lattice.from) / lattice.full),
  }
}

/** Why the stretches cannot be had between these ends; null when they can. */
export function refuseDivided(
  request: LayoutRequest,
  frame: Frame,
  lattice: PostLattice,
  divided: readonly DividedStretch[],
  standing: Sixteenths,
): Refusal | null {
  for (const { from, to, into } of divided) {
    const spacing = spacingOf(into)
    if (from < lattice.from) return { kind: 'reduced part in unit', unit: frame.first.name, spacing }
    if (to > lattice.to) return { kind: 'reduced part in unit', unit: frame.second.name, spacing }
  }
  for (const obstruction of request.obstructions) {
    const { from, to } = shifted(obstruction, frame)
    for (const stretch of divided) {
      const step = lattice.full / stretch.into
      const clear = Math.max(from, standing, stretch.from - 1)
      const next = stretch.from + (Math.floor((clear - stretch.from) / step) + 1) * step
      if (next < to && next <= stretch.to) {
        return {
          kind: 'post at reduced spacing obstructed',
          obstructions: [obstruction.name],
          spacing: spacingOf(stretch.into),
        }
      }
    }
  }
  return null
}

const spacingOf = (into: 2 | 4): 'half' | 'quarter' => (into === 2 ? 'half' : 'quarter')

/** Whether a post stands at a place within what is divided, not at its very ends, beyond which spaces are full. */
export const isDividedPost = (divided: readonly DividedStretch[], { full }: PostLattice, at: Sixteenths): boolean =>
  divided.some(({ from, to, into }) => at > from && at < to && (at - from) % (full / into) === 0) ||
  (divided.some(({ to }) => at === to) && divided.some(({ from }) => at === from))

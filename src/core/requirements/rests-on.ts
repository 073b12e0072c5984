import type { Requirement } from './requirement.ts'

/** Ids of what the requirement's value can be computed from when nobody measured it directly, in the order of the posts. */
export function inputsOf({ look }: Pick<Requirement, 'look'>): readonly string[] {
  const from = look.kind === 'measure' ? look.orFrom : null
  switch (from?.kind) {
    case undefined:
      return []
    case 'difference':
      return [from.from, from.to]
    case 'middle ordinate':
      return from.points.map(({ reading }) => reading)
    case 'offset from line':
      return [from.point, ...from.line].map(({ reading }) => reading)
  }
}

/** What is read for a requirement: itself, or what it can be computed from. */
export const restsOn = (requirement: Pick<Requirement, 'id' | 'look'>): readonly string[] => [
  requirement.id,
  ...inputsOf(requirement),
]

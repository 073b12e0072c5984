import { longestRunInches } from '../../core/units/longest-run.ts'
import type { Contradiction } from '../contradiction.ts'
import { longestRun, numberFault } from '../range/range-faults.ts'
import type { RunShape } from './run-shape.ts'

/** What a run file says of what was counted that does not hold together; of a run that is laid out, that nothing was. */
export function contradictionsInCount(run: RunShape): readonly Contradiction[] {
  const { counted, first, second } = run
  const ends = [
    ['first', first],
    ['second', second],
  ] as const
  if (counted === undefined)
    return ends.flatMap(([field, end]) =>
      'unknown' in end ? [{ path: [field], expected: { kind: 'counted run' } }] : [],
    )
  const rail = counted.panels.reduce((sum, inches) => sum + inches, 0)
  return [
    ...(['standing', 'decision'] as const).flatMap((field): Contradiction[] =>
      run[field] === null ? [] : [{ path: [field], expected: { kind: 'nothing where counted' } }],
    ),
    ...ends.flatMap(([field, end]): Contradiction[] =>
      'standingSplice' in end ? [{ path: [field], expected: { kind: 'end where counted' } }] : [],
    ),
    ...(ends.every(([, end]) => 'unknown' in end && end.unknown === 'not looked at')
      ? [{ path: ['second', 'unknown'], expected: { kind: 'end looked at' } } as const]
      : []),
    ...inPieces(run, counted),
    ...inPosts(counted, rail),
    ...(rail > longestRunInches ? [{ path: ['counted', 'panels'], expected: longestRun }] : []),
    ...inSecondEnd(run, rail),
  ]
}

type Counted = NonNullable<RunShape['counted']>

/** An end has no more pieces than were counted. */
function inPieces({ first, second }: RunShape, { panels, posts }: Counted): Contradiction[] {
  const have = { panels: panels.length, posts: typeof posts === 'number' ? posts : posts.length }
  const lengths = panels.flatMap((inches, i): Contradiction[] => {
    const expected = numberFault('panel', inches)
    return expected === null ? [] : [{ path: ['counted', 'panels', i], expected }]
  })
  const atFirst = 'unknown' in first ? first : { panels: 0, posts: 0 }
  const beyond = (['panels', 'posts'] as const).flatMap((pieces): Contradiction[] => {
    const found: Contradiction[] = []
    if (atFirst[pieces] > have[pieces])
      found.push({ path: ['first', pieces], expected: { kind: 'at most counted', pieces: have[pieces] } })
    const left = Math.max(0, have[pieces] - atFirst[pieces])
    if ('unknown' in second && second[pieces] > left)
      found.push({ path: ['second', pieces], expected: { kind: 'at most counted', pieces: left } })
    return found
  })
  return [...lengths, ...beyond]
}

/** Posts are measured from post 1 on, and there is rail for all of them. */
function inPosts({ posts }: Counted, rail: number): Contradiction[] {
  if (typeof posts === 'number')
    return posts - 1 > rail * 16
      ? [{ path: ['counted', 'posts'], expected: { kind: 'posts at most', posts: rail * 16 + 1 } }]
      : []
  return posts.flatMap((along, i): Contradiction[] => {
    const path = ['counted', 'posts', i]
    const before = posts[i - 1]
    if (before === undefined) return along === 0 ? [] : [{ path, expected: { kind: 'origin of layout' } }]
    return along > before ? [] : [{ path, expected: { kind: 'beyond post in layout', inches: before } }]
  })
}

/** The second end stands where the panels end. */
function inSecondEnd({ first, second }: RunShape, rail: number): Contradiction[] {
  const [from, to] = [first, second].map((end) => ('standingSplice' in end ? null : end.at))
  if (to === null || to === undefined || to === (from ?? 0) + rail) return []
  return [{ path: ['second', 'at'], expected: { kind: 'this value', value: `${(from ?? 0) + rail}` } }]
}

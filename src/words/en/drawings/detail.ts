type End = 'first' | 'second'

/** One end unit larger, in plan and elevation, with what its sheet says. */
export const detail = {
  title: (end: End, run: string, unit: string) => `Detail of the ${end} end of ${run}: ${unit}`,
  description: (unit: string, callouts: readonly string[]) =>
    `Plan and elevation of ${unit}, with what its sheet says: ${callouts.join(' ')}`,
  callout: (number: number, words: string) => `${number}: ${words}`,
  measure: (end: End, unit: string) =>
    `Detail of the ${end} end, ${unit}: plan above, elevation below; distances along the rail, offsets and heights are to scale, signs of parts are not.`,
  plan: 'PLAN, traffic side up. Offsets from the line of the run to the face of rail.',
  noFlare: 'No flare.',
  flare: (offset: string, shape: 'straight' | 'parabola', over: string, post: number) =>
    `Flare: ${offset} at post ${post}, ${shape}, over ${over}.`,
  finishGrade: 'finish grade',
  sheet: (id: string, version: string, notice: string) => `Sheet ${id}, ${version}. ${notice}`,
  part: (name: string, rules: readonly string[]) => `${name}: ${rules.join(' ')}`,
  /** By the run's numbers, the unit's own in brackets. */
  post: (number: number, own: number) => `Post ${number} (${own})`,
  posts: ([from, to]: readonly [number, number], own: readonly [number, number]) =>
    `Posts ${from} to ${to} (${own[0]} to ${own[1]})`,
  postsAre: (posts: string, facts: readonly string[]) => `${posts}: ${facts.join(', ')}.`,
  block: (hasBlock: boolean): string => (hasBlock ? 'with an offset block' : 'no offset block'),
  railBolted: (bolted: boolean | 'notStated'): string =>
    bolted === 'notStated' ? 'bolt of the rail not stated' : bolted ? 'rail bolted' : 'rail not bolted',
  hinge: (side: 'upstream' | 'downstream') => `hinge bolt ${toward[side]}`,
  slots: (set: 'upper' | 'lower', side: 'upstream' | 'downstream') =>
    `rail held in the ${set} slots, on the side ${toward[side]}`,
  stub: (most: string) => `stub at most ${most} above finish grade`,
  soilTube: 'in a soil tube',
  slottedPanel: (number: number, own: number, name: string) =>
    `Panel ${number} (${own}): ${name}, with a row of slots.`,
}

const toward = { upstream: 'toward the head', downstream: 'away from the head' } as const

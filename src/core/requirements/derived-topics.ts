/**
 * Every topic under which something of a run is required or read without a sheet saying so in a rule of its own. With
 * the place it makes the id, as `post-9/rail-height`, so no rule of a sheet may have such an id: readings would then
 * answer two things at once. Topics are added here; none is ever taken away, since readings name them.
 */
export const derivedTopics = [
  'rail-height',
  'post-kind',
  'block',
  'rail-bolt',
  'hinge-side',
  'slot-set',
  'stub-height',
  'flare-offset',
  'spacing',
  'panel-length',
  'slotted-panel',
  'nested',
  'straightness',
  'splice-position',
  'lap',
  'curb',
  'new-slot',
] as const

/** Decided from the run file, not by a reading. */
export const recordTopics = [
  'criteria',
  'crashworthy',
  'need',
  'rest-of-run',
  'end-hardware',
  'end-joins',
  'location',
  'post-count',
  'panel-count',
] as const

/** Read at posts so that others can be computed from them. */
export const measurableTopics = ['along', 'lateral-offset'] as const

export type DerivedTopic = (typeof derivedTopics)[number]

export type ReservedTopic = DerivedTopic | (typeof recordTopics)[number] | (typeof measurableTopics)[number]

const reservedTopics: readonly ReservedTopic[] = [...derivedTopics, ...recordTopics, ...measurableTopics]

export const isReserved = (topic: string): topic is ReservedTopic => reservedTopics.some((one) => one === topic)

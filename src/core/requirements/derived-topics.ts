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
  'site-check',
] as const

/** Read at posts so that others can be computed from them. */
export const measurableTopics = ['along', 'lateral-offset'] as const

export type DerivedTopic = (typeof derivedTopics)[number]

export type ReservedTopic = DerivedTopic | (typeof recordTopics)[number] | (typeof measurableTopics)[number]

const reservedTopics: readonly ReservedTopic[] = [...derivedTopics, ...recordTopics, ...measurableTopics]

/** The topic of a check that a site was given before the run was made, by its place among them: there are several of a run. */
export const siteCheckTopic = (number: number): string => `site-check-${number}`

/**
 * The topic of the list that a topic is one of; null where it is a rule of a sheet.
 * @example reservedTopic('site-check-3')  // 'site-check'
 */
export function reservedTopic(topic: string): ReservedTopic | null {
  const one = topic.replace(/^(site-check)-[1-9]\d*$/, '$1')
  return reservedTopics.find((reserved) => reserved === one) ?? null
}

export const isReserved = (topic: string): boolean => reservedTopic(topic) !== null

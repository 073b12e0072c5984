import { measurableTopics } from './derived-topics.ts'
import type { Requirement } from './requirement.ts'
import type { RunModel } from './run-model.ts'

/**
 * Ids of everything of a run that can be read: its requirements, and where each post stands, from which spacing, flare
 * and straightness are computed.
 */
export const readableIn = ({
  model,
  requirements,
}: {
  readonly model: RunModel
  readonly requirements: readonly Requirement[]
}): ReadonlySet<string> => new Set([...requirements.map(({ id }) => id), ...measurables(model)])

const measurables = ({ layout }: RunModel): readonly string[] =>
  layout.posts.flatMap(({ id }) => measurableTopics.map((topic) => `${id}/${topic}`))

import type { Confirmation, HardwareSheet, SeenKind, Severity, SeverityRule, Stated } from './hardware-sheet.ts'

/** The worst first. */
export const severities = ['lets it fail', 'weakens it', 'upkeep'] as const satisfies readonly Severity[]

/** How bad something is, and on whose word: the sheet's, as far as that is confirmed, or the finder's own. */
export interface Rated {
  readonly severity: Severity
  readonly by: Confirmation | 'its finder'
}

type Ranked = Pick<HardwareSheet, 'severities'>

/** What the sheet says a fault of that requirement does. */
export const severityOfTopic = ({ severities: rules = [] }: Ranked, topic: string): Stated<Rated> =>
  ratedBy(rules.find(({ topics }) => topics.includes(topic)))

/** What the sheet says is done by something that no requirement asks for. */
export const severityOfSeen = ({ severities: rules = [] }: Ranked, kind: SeenKind): Stated<Rated> =>
  ratedBy(rules.find(({ seen }) => seen.includes(kind)))

const ratedBy = (rule: SeverityRule | undefined): Stated<Rated> =>
  rule === undefined ? 'notStated' : { severity: rule.severity, by: rule.confirmation }

/** Without whose word it is. */
export const severityOf = (rated: Stated<Rated>): Stated<Severity> => (rated === 'notStated' ? rated : rated.severity)

/** 0 for the worst. What nobody states counts as the worst: nobody said that it does less. */
export const severityRank = (rated: Stated<Rated>): number =>
  rated === 'notStated' ? 0 : severities.indexOf(rated.severity)

/** The worst of them; of those as bad, one that is stated, and on the best word. */
export const worstSeverity = (all: readonly Stated<Rated>[]): Stated<Rated> =>
  all.toSorted((a, b) => severityRank(a) - severityRank(b) || wordRank(a) - wordRank(b))[0] ?? 'notStated'

const words = ['published', 'common practice', 'from memory', 'its finder'] as const satisfies readonly Rated['by'][]

const wordRank = (rated: Stated<Rated>): number => (rated === 'notStated' ? words.length : words.indexOf(rated.by))

import type { HardwareSheet, SeenKind, Severity, Stated } from './hardware-sheet.ts'

/** The worst first. */
export const severities = ['lets it fail', 'weakens it', 'upkeep'] as const satisfies readonly Severity[]

type Ranked = Pick<HardwareSheet, 'severities'>

/** What the sheet says a fault of that requirement does. */
export const severityOfTopic = ({ severities: rules = [] }: Ranked, topic: string): Stated<Severity> =>
  rules.find(({ topics }) => topics.includes(topic))?.severity ?? 'notStated'

/** What the sheet says is done by something that no requirement asks for. */
export const severityOfSeen = ({ severities: rules = [] }: Ranked, kind: SeenKind): Stated<Severity> =>
  rules.find(({ seen }) => seen.includes(kind))?.severity ?? 'notStated'

/** 0 for the worst. What no sheet states counts as the worst: nobody said that it does less. */
export const severityRank = (severity: Stated<Severity>): number =>
  severity === 'notStated' ? 0 : severities.indexOf(severity)

/** The worst of them. */
export const worstSeverity = (all: readonly Stated<Severity>[]): Stated<Severity> =>
  severities.find((one) => all.some((severity) => severity === one && !hasWorse(all, one))) ?? 'notStated'

const hasWorse = (all: readonly Stated<Severity>[], one: Severity): boolean =>
  all.some((severity) => severityRank(severity) < severityRank(one))

import type { AskedEarlier } from './readings-in-force.ts'

/** What is said of what was recorded at another version of a run than the one in force. */
export type RecordSaying = {
  readonly kind: 'asked earlier'
  readonly because: AskedEarlier['because']
}

export const askedEarlierReason = ({ because }: Pick<AskedEarlier, 'because'>): RecordSaying => ({
  kind: 'asked earlier',
  because,
})

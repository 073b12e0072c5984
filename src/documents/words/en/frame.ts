/** Head and foot of every printed page, and words that stand in more than one document. */
export const frame = {
  printed: 'Printed',
  printedBy: (at: string, by: string) => `${at} by ${by}`,
  hash: 'Record hash',
  page: 'page',
  of: 'of',
  notConfirmed: 'NOT CONFIRMED',
  verdicts: {
    meets: 'meets',
    fails: 'fails',
    'too close': 'too close',
    unread: 'unread',
    'does not apply': 'does not apply',
  },
  confirmations: { published: 'published', 'common practice': 'common practice', 'from memory': 'from memory' },
}

/** What differs between two sheets. */
export const comparisonCard = {
  title: 'What differs',
  what: 'Of what',
  why: 'Why it matters:',
  notThere: 'nothing stated',
  same: 'Both state the same.',
  besides: (texts: number, sources: number): string =>
    `${[
      ...(texts === 0 ? [] : [`${texts} more ${texts === 1 ? 'is' : 'are'} said in other words or drawn otherwise`]),
      ...(sources === 0 ? [] : [`${sources} more ${sources === 1 ? 'comes' : 'come'} from another source`]),
    ].join('; ')}.`,
}

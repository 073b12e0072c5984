import type { Place, Requirement } from '../../core/requirements/requirement.ts'
import type { VerdictWord } from '../../core/verdicts/verdict.ts'
import { verdictOrder } from '../../drawing/verdict-signs.ts'
import { plainText } from '../data/plain-text.ts'

/** What is asked at one place, in the order of the walk. */
export interface PlaceGroup {
  /** Of its first requirement: it stays when the group is searched. */
  readonly id: string
  /** Null for the hold points, which are looked at before anything is covered, wherever they are. */
  readonly place: Place | null
  readonly members: readonly Requirement[]
}

/** What of the walk somebody wants to see. */
export interface WalkWish {
  /** Words and numbers that all have to be found. */
  readonly search: string
  /** Null for every verdict. */
  readonly verdict: VerdictWord | null
}

export type VerdictOf = ReadonlyMap<string, VerdictWord>

/** Hold points in one group, then one group for each stretch of requirements at the same place. */
export function groupByPlace(requirements: readonly Requirement[]): readonly PlaceGroup[] {
  const groups: { id: string; place: Place | null; members: Requirement[] }[] = []
  for (const requirement of requirements) {
    const place = requirement.hold ? null : requirement.place
    const last = groups.at(-1)
    if (last?.place?.id === place?.id && last !== undefined) last.members.push(requirement)
    else groups.push({ id: requirement.id, place, members: [requirement] })
  }
  return groups
}

/**
 * The groups with what of them is wanted, those with nothing left out.
 * @param textOf  plain text of what the list says of a requirement, its place with it
 */
export function chosenGroups(
  groups: readonly PlaceGroup[],
  { search, verdict }: WalkWish,
  verdictOf: VerdictOf,
  textOf: (requirement: Requirement) => string,
): readonly PlaceGroup[] {
  const isFound = foundBy(search)
  if (isFound === null && verdict === null) return groups
  const isWanted = (requirement: Requirement): boolean => {
    if (verdict !== null && verdictOf.get(requirement.id) !== verdict) return false
    return isFound === null || isFound(textOf(requirement))
  }
  return groups.flatMap((group) => {
    const members = group.members.filter(isWanted)
    return members.length === 0 ? [] : [{ ...group, members }]
  })
}

/** Whether all words and numbers of a search are found in a plain text; null where nothing is searched. */
export function foundBy(search: string): ((text: string) => boolean) | null {
  const tests = plainText(search)
    .split(/\s+/)
    .filter((word) => word !== '')
    .map(testOf)
  return tests.length === 0 ? null : (text) => tests.every((test) => test(text))
}

/** A number is found as a whole, so that 8 is not found in 18 or in 3/8; a word wherever it stands. */
function testOf(word: string): (text: string) => boolean {
  if (!/^\d+$/.test(word)) return (text) => text.includes(word)
  const whole = new RegExp(`(?<![\\d./])${word}(?![\\d/]|\\.\\d)`)
  return (text) => whole.test(text)
}

/**
 * The next in walking order after `after`, and then from the start, that is unread and that somebody can still read:
 * what was answered by "cannot see it", and what the run file has to say, is not asked again.
 */
export function nextUnread(
  requirements: readonly Requirement[],
  verdictOf: VerdictOf,
  answered: ReadonlySet<string>,
  after: string | null,
): Requirement | null {
  const at = requirements.findIndex(({ id }) => id === after) + 1
  return (
    [...requirements.slice(at), ...requirements.slice(0, at)].find(
      ({ id, look }) => verdictOf.get(id) === 'unread' && look.kind !== 'record' && !answered.has(id),
    ) ?? null
  )
}

/** The worst of these verdicts, how many are as bad, and of how many that apply. */
export function worstOf(words: readonly VerdictWord[]): { worst: VerdictWord; count: number; applying: number } {
  const worst = verdictOrder.find((word) => words.includes(word))!
  return {
    worst,
    count: words.filter((word) => word === worst).length,
    applying: words.filter((word) => word !== 'does not apply').length,
  }
}

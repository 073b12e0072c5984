import { krippendorffAlpha } from '../core/drill/agreement.ts'
import { type Rate, rateOf } from '../core/drill/intervals.ts'
import type { KindRecord } from '../core/drill/next-drill.ts'
import type { PracticeResults } from '../formats/drill/results-file.ts'

/** How one person, or all of a class, came out over their drills. */
export interface PersonResults {
  readonly person: string
  readonly drills: number
  readonly found: Rate
  readonly falseAlarms: Rate
}

export interface ClassResults {
  readonly people: readonly PersonResults[]
  /** Over all people, the least found first. */
  readonly kinds: readonly KindRecord[]
  /** How far people agree who did the same drill: Krippendorff's alpha; null where that says nothing. */
  readonly agreements: readonly { readonly number: string; readonly people: number; readonly alpha: number | null }[]
}

/** The results of a class from the files of its devices; the same drill of the same person in two files counts once. */
export function classResults(files: readonly PracticeResults[]): ClassResults {
  const drills = new Map<string, { readonly person: string; readonly result: PracticeResults['results'][number] }>()
  for (const { person, results } of files)
    for (const result of results) drills.set(`${person} ${result.number} ${result.beganAt}`, { person, result })
  const all = [...drills.values()]
  const people = [...new Set(all.map(({ person }) => person))]
  const sum = (of: readonly (typeof all)[number][], key: 'found' | 'faults' | 'falseAlarms' | 'sound'): number =>
    of.reduce((total, { result }) => total + result[key], 0)
  return {
    people: people.map((person) => {
      const own = all.filter((one) => one.person === person)
      return {
        ...{ person, drills: own.length },
        found: rateOf(sum(own, 'found'), sum(own, 'faults')),
        falseAlarms: rateOf(sum(own, 'falseAlarms'), sum(own, 'sound')),
      }
    }),
    kinds: kindsOf(all.flatMap(({ result }) => result.kinds)),
    agreements: [...new Set(all.flatMap(({ result }) => result.number ?? []))].flatMap((number) => {
      const ofNumber = all.filter(({ result }) => result.number === number)
      // Of one who did it more than once, the first time.
      const first = people.flatMap((person) => ofNumber.find((one) => one.person === person) ?? [])
      if (first.length < 2) return []
      const asked = [...new Set(first.flatMap(({ result }) => Object.keys(result.verdicts)))]
      const said = asked.map((id) => first.map(({ result }) => result.verdicts[id] ?? null))
      return [{ number, people: first.length, alpha: krippendorffAlpha(said) }]
    }),
  }
}

/** Records of the same kind added up, the least found first. */
export function kindsOf(records: readonly KindRecord[]): readonly KindRecord[] {
  const kinds = new Map<string, KindRecord>()
  for (const { kind, there, found } of records) {
    const before = kinds.get(kind) ?? { kind, there: 0, found: 0 }
    kinds.set(kind, { kind, there: before.there + there, found: before.found + found })
  }
  return [...kinds.values()].sort((a, b) => a.found / a.there - b.found / b.there || b.there - a.there)
}

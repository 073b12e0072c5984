import type { Reading } from '../core/measurement/reading.ts'
import type { Place } from '../core/requirements/requirement.ts'
import { judgeRequirements } from '../core/verdicts/judge-requirements.ts'
import type { Finding, Verdict } from '../core/verdicts/verdict.ts'
import { instrumentsOf, type JudgedRun } from './judge-readings.ts'

/** A reading with the verdict that it had by itself. */
export interface JudgedReading {
  readonly reading: Reading
  readonly verdict: Verdict
}

/** What was read for one requirement when it failed, and what since. */
export interface OldAndNew {
  readonly requirement: string
  readonly old: JudgedReading | null
  readonly new: JudgedReading | null
}

/**
 * - `open`: it fails now.
 * - `not rechecked`: a later reading does not fail, but none names the finding, so nobody said that it was put right.
 * - `closed`: a reading that names it does not fail.
 */
export type PunchState = 'open' | 'not rechecked' | 'closed'

export interface PunchItem {
  /** Of the finding: its first requirement. */
  readonly id: string
  readonly place: Place
  readonly state: PunchState
  /** What is wrong and its remedy, while it is open. */
  readonly finding: Finding | null
  readonly readings: readonly OldAndNew[]
}

/** Every finding that the run ever had, by its place along the rail; those that stand before those that are closed. */
export function punchList(judged: JudgedRun): readonly PunchItem[] {
  const judge = judgeAlone(judged)
  const open = judged.judgement.findings.map(
    (finding): PunchItem => ({
      id: finding.id,
      place: finding.place,
      state: 'open',
      finding,
      readings: finding.requirements.map((id) => ({ ...judge(id), new: null })),
    }),
  )
  const taken = new Set(judged.judgement.findings.flatMap(({ requirements }) => requirements))
  const past = new Map<string, OldAndNew[]>()
  for (const { id } of judged.requirements) {
    if (taken.has(id)) continue
    const change = judge(id)
    if (change.old === null || change.new === null) continue
    const finding = change.new.reading.rechecks ?? id
    past.set(finding, [...(past.get(finding) ?? []), change])
  }
  const rest = [...past].map(([id, readings]): PunchItem => {
    const { place } = judged.requirements.find((one) => one.id === id || one.id === readings[0]!.requirement)!
    const isClosed = readings.every((change) => change.new?.reading.rechecks != null)
    return { id, place, state: isClosed ? 'closed' : 'not rechecked', finding: null, readings }
  })
  const order: Readonly<Record<PunchState, number>> = { open: 0, 'not rechecked': 1, closed: 2 }
  return [...open, ...rest].sort((a, b) => order[a.state] - order[b.state] || a.place.alongInches - b.place.alongInches)
}

/** For a requirement, its last reading that fails, and the one in force when that came later and does not. */
function judgeAlone(judged: JudgedRun): (id: string) => OldAndNew {
  const { decisionRule, work, letting } = judged.run
  const rules = { rule: decisionRule, instruments: instrumentsOf(judged.run), work, letting }
  const requirements = new Map(judged.requirements.map((requirement) => [requirement.id, requirement]))
  const corrected = new Set(judged.readings.map(({ corrects }) => corrects))
  const byTarget = new Map<string, Reading[]>()
  for (const reading of judged.readings) {
    if (corrected.has(reading.id)) continue
    const list = byTarget.get(reading.of)
    if (list === undefined) byTarget.set(reading.of, [reading])
    else list.push(reading)
  }
  return (id) => {
    const readings = byTarget.get(id) ?? []
    const requirement = requirements.get(id)!
    let old: JudgedReading | null = null
    let later: JudgedReading | null = null
    for (const reading of readings) {
      const verdict = judgeRequirements([requirement], [reading], rules)[0]!
      if (verdict.verdict === 'fails') {
        old = { reading, verdict }
        later = null
      } else if (old !== null) later = { reading, verdict }
    }
    return { requirement: id, old, new: later }
  }
}

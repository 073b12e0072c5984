import { cohenKappa, fleissKappa, krippendorffAlpha, type Said } from '../core/drill/agreement.ts'
import { type Rate, rateOf, timesForWidth } from '../core/drill/intervals.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { judgeRequirements } from '../core/verdicts/judge-requirements.ts'
import { instrumentsOf } from './instruments-of.ts'
import type { JudgedRun } from './judge-readings.ts'

/** How far people who looked at the same run by themselves came to the same verdicts. */
export interface InspectorAgreement {
  /** Who looked, in the order of their first readings. */
  readonly people: readonly string[]
  readonly all: AgreementOn
  /** By topic, in the order of the walk; those that nobody but one looked at are not among them. */
  readonly byTopic: readonly (AgreementOn & { readonly topic: string })[]
}

export interface AgreementOn {
  /** Of the requirements that at least two came to a verdict on, those on which all of them came to the same. */
  readonly same: Rate
  /** Beyond chance, of two people (Cohen) or of more (Fleiss, on what all of them decided); null where that says nothing. */
  readonly kappa: number | null
  readonly alpha: number | null
  /** How many requirements two people have to look at for an interval of `width`, were they to agree as often as here. */
  readonly leastForWidth: number | null
}

/** How wide an interval is narrow enough to say something by: our judgement. */
export const width = 0.2

/**
 * What each person's own readings say, judged by themselves, and how far that is the same; null where fewer than two people
 * read the run. A verdict is one of `meets`, `fails` and `too close`; what somebody did not decide is not counted against
 * anybody.
 */
export function inspectorAgreement(judged: JudgedRun): InspectorAgreement | null {
  const people = [...new Set(judged.readings.map(({ by }) => by))]
  if (people.length < 2) return null
  const rules = { rule: judged.run.decisionRule, instruments: instrumentsOf(judged.run) }
  const verdicts = people.map((person) =>
    judgeRequirements(
      judged.requirements,
      judged.readings.filter(({ by }) => by === person),
      rules,
    ).map(({ verdict, readings }) =>
      readings.length > 0 && ['meets', 'fails', 'too close'].includes(verdict) ? verdict : null,
    ),
  )
  const decided = judged.requirements.flatMap((requirement, i) => {
    const said = verdicts.map((of) => of[i]!)
    return said.filter((word) => word !== null).length < 2 ? [] : [{ requirement, said }]
  })
  const topics = [...new Set(decided.map(({ requirement }) => requirement.topic))]
  return {
    people,
    all: agreementOn(decided),
    byTopic: topics.map((topic) => ({
      topic,
      ...agreementOn(decided.filter(({ requirement }) => requirement.topic === topic)),
    })),
  }
}

function agreementOn(decided: readonly { readonly requirement: Requirement; readonly said: Said }[]): AgreementOn {
  const said = decided.map((one) => one.said)
  const isSame = (one: Said): boolean => new Set(one.filter((word) => word !== null)).size === 1
  const same = rateOf(said.filter(isSame).length, said.length)
  const isPair = said[0]?.length === 2
  return {
    same,
    kappa: isPair ? cohenKappa(said) : fleissKappa(said),
    alpha: krippendorffAlpha(said),
    leastForWidth: same.rate === null ? null : timesForWidth(same.rate, width),
  }
}

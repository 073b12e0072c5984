import { limitsText } from '../core/hardware/dimension-text.ts'
import type { Layout } from '../core/layout/layout.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import { describeReason } from '../core/verdicts/describe-reason.ts'
import { describeAcceptance, setAsideIn } from '../core/verdicts/set-aside.ts'
import type { Verdict } from '../core/verdicts/verdict.ts'
import { explainLayout } from './explain-layout.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { LaidOut } from './lay-out-run.ts'
import type { RequiredRun } from './require-run.ts'

/** What `lapwise layout --json` prints; inches along the rail from the centre of post 1 of the first end. */
export function layoutOutput(laid: LaidOut) {
  return {
    runs: laid.layouts.map((layout) => ({ ...pieces(layout), why: explainLayout(layout, laid.request) })),
    more: laid.more,
    refused: laid.refused.map((reason) => ({ reason })),
  }
}

function pieces(layout: Layout) {
  return {
    postOneAtInches: layout.postOneAtInches,
    countsFromInches: layout.countsFromInches,
    countsToInches: layout.countsToInches,
    posts: layout.posts.map(({ number, alongInches, kind, block, state, unit, ownNumber }) => ({
      number,
      alongInches,
      kind,
      block,
      state,
      unit,
      ownNumber,
    })),
    panels: layout.panels.map(({ number, inches, fromInches, toInches, role, nested }) => ({
      number,
      inches,
      fromInches,
      toInches,
      role,
      nested,
    })),
    splices: layout.splices.map(({ number, alongInches, position }) => ({ number, alongInches, position })),
    omitted: layout.omitted,
    score: layout.score,
  }
}

/** What `lapwise requirements --json` prints. */
export function requirementsOutput(required: RequiredRun) {
  return {
    run: required.run.name,
    layout: pieces(required.model.layout),
    requirements: required.requirements.map(requirementOutput),
  }
}

function requirementOutput(requirement: Requirement) {
  const { look } = requirement
  return {
    id: requirement.id,
    place: requirement.place.name,
    alongInches: requirement.place.alongInches,
    must: requirement.must,
    look: look.kind,
    limits: look.kind === 'measure' ? { ...look.limits, text: limitsText(look.limits) } : null,
    choices: look.kind === 'choose' ? look.choices : null,
    computedFrom: look.kind === 'measure' ? look.orFrom : null,
    hold: requirement.hold,
    maySetAside: requirement.maySetAside,
    how: requirement.how,
    why: requirement.why,
    remedy: requirement.remedy,
    figure: requirement.figure,
    sheet: requirement.sheet,
    sheetVersion: requirement.sheetVersion,
    source: requirement.source,
    confirmation: requirement.confirmation,
  }
}

/** What `lapwise judge --json` prints; margins in the unit of the limit. */
export function judgeOutput(judged: JudgedRun) {
  const { acceptance, verdicts, findings, unproven } = judged.judgement
  return {
    acceptance: describeAcceptance(acceptance),
    setAside: setAsideIn(verdicts).map(({ place, ...aside }) => ({ ...aside, place: place.name })),
    rule: judged.run.decisionRule,
    verdicts: verdicts.map(verdictOutput),
    findings: findings.map(({ place, ...finding }) => ({
      place: place.name,
      alongInches: place.alongInches,
      ...finding,
    })),
    unproven: unproven.map(({ requirement, place, why }) => ({ requirement, place: place.name, why })),
    unusual: judged.unusual,
    unconfirmed: judged.unconfirmed.map(({ id, sheet }) => ({ requirement: id, sheet })),
  }
}

function verdictOutput({ requirement, place, verdict, because, readings, sheet, sheetVersion }: Verdict) {
  const measured = because.kind === 'measured' ? because : null
  return {
    requirement,
    place: place.name,
    verdict,
    margin: measured?.margin ?? null,
    unit: measured?.unit ?? null,
    value: measured?.value ?? null,
    uncertainty: measured?.uncertainty ?? null,
    probability: measured?.probability ?? null,
    reason: describeReason(because),
    readings,
    sheet,
    sheetVersion,
  }
}

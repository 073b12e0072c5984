import { limitsOf } from '../core/hardware/limits-saying.ts'
import { severityOf } from '../core/hardware/severity.ts'
import type { Layout } from '../core/layout/layout.ts'
import { askedEarlierReason } from '../core/record/record-saying.ts'
import type { Requirement } from '../core/requirements/requirement.ts'
import type { RemedyStep } from '../core/verdicts/remedy.ts'
import { remedyOf } from '../core/verdicts/saying.ts'
import { setAsideIn } from '../core/verdicts/set-aside.ts'
import type { Verdict } from '../core/verdicts/verdict.ts'
import { titleAndEdition } from '../documents/requirement-lines.ts'
import type { Print } from '../words/print.ts'
import { theirNames } from '../words/their-names.ts'
import { explainLayout } from './explain-layout.ts'
import type { JudgedRun } from './judge-readings.ts'
import type { LaidOut } from './lay-out-run.ts'
import type { RequiredRun } from './require-by.ts'

/** What `lapwise layout --json` prints; inches along the rail from the centre of post 1 of the first end. */
export function layoutOutput(laid: LaidOut, print: Print) {
  return {
    runs: laid.layouts.map((layout) => ({
      ...pieces(layout, print),
      why: explainLayout(layout, laid.request).map(print.say),
    })),
    more: laid.more,
    refused: laid.refused.map((reason) => ({ reason: print.say(reason) })),
  }
}

function pieces(layout: Layout, print: Print) {
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
    omitted: layout.omitted.map(({ alongInches, obstructions, rule }) => ({
      alongInches,
      obstruction: theirNames(obstructions, print),
      rule,
    })),
    score: layout.score,
  }
}

/** What `lapwise requirements --json` prints. */
export function requirementsOutput(required: RequiredRun, print: Print) {
  return {
    run: required.run.name,
    layout: pieces(required.model.layout, print),
    requirements: required.requirements.map((one) => requirementOutput(one, print)),
  }
}

function requirementOutput(requirement: Requirement, print: Print) {
  const { look } = requirement
  return {
    id: requirement.id,
    place: print.say(requirement.place),
    alongInches: requirement.place.alongInches,
    must: print.say(requirement.must),
    look: look.kind,
    limits: look.kind === 'measure' ? { ...look.limits, text: print.say(limitsOf(look.limits)) } : null,
    choices:
      look.kind === 'choose' ? look.choices.map((choice) => ({ ...choice, label: print.say(choice.label) })) : null,
    computedFrom: look.kind === 'measure' ? look.orFrom : null,
    hold: requirement.hold,
    maySetAside: requirement.maySetAside,
    severity: severityOf(requirement.severity),
    how: print.say(requirement.how),
    why: print.say(requirement.why),
    remedy: print.say(requirement.remedy),
    figure: requirement.figure,
    sheet: requirement.sheet,
    sheetVersion: requirement.sheetVersion,
    source: titleAndEdition(requirement.source, print),
    confirmation: requirement.confirmation,
  }
}

/** What `lapwise judge --json` prints; margins in the unit of the limit. */
export function judgeOutput(judged: JudgedRun, print: Print) {
  const { acceptance, verdicts, findings, unproven } = judged.judgement
  return {
    acceptance: print.say(acceptance),
    setAside: setAsideIn(verdicts).map(({ place, ...aside }) => ({ ...aside, place: print.say(place) })),
    rule: judged.run.decisionRule,
    verdicts: verdicts.map((one) => verdictOutput(one, print)),
    findings: findings.map(({ place, id, what, steps, severity, ...finding }) => ({
      place: print.say(place),
      alongInches: place.alongInches,
      id,
      what: print.say(what),
      remedy: print.say(remedyOf({ steps })),
      steps: steps.map((step) => stepOutput(step, print)),
      ...finding,
      severity: severityOf(severity),
    })),
    unproven: unproven.map(({ requirement, place, because }) => ({
      requirement,
      place: print.say(place),
      why: print.say(because),
    })),
    askedEarlier: judged.askedEarlier.map(({ reading: { id, of, by, at }, version, because }) => ({
      ...{ reading: id, of, by, at, version, because, why: print.say(askedEarlierReason({ because })) },
    })),
    unusual: judged.unusual,
    unconfirmed: judged.unconfirmed.map(({ id, sheet }) => ({ requirement: id, sheet })),
  }
}

/** What of a step is a saying stands there as text. */
function stepOutput(step: RemedyStep, print: Print) {
  if ('how' in step) return { ...step, how: print.say(step.how) }
  switch (step.kind) {
    case 'exchange panel':
      return { ...step, name: step.name && print.say(step.name) }
    case 'measure first':
      return { ...step, using: step.using && print.say(step.using) }
    case 'not provable':
      return { ...step, would: step.would.map(print.say) }
    default:
      return step
  }
}

function verdictOutput({ requirement, place, verdict, because, readings, sheet, sheetVersion }: Verdict, print: Print) {
  const measured = because.kind === 'measured' ? because : null
  return {
    requirement,
    place: print.say(place),
    verdict,
    margin: measured?.margin ?? null,
    unit: measured?.unit ?? null,
    value: measured?.value ?? null,
    uncertainty: measured?.uncertainty ?? null,
    probability: measured?.probability ?? null,
    reason: print.say(because),
    readings,
    sheet,
    sheetVersion,
  }
}

import { sourceIn } from '../hardware/hardware-saying.ts'
import type { Cited, EndSheet, HardwareSheet, SheetRule } from '../hardware/hardware-sheet.ts'
import { makeOf } from '../hardware/make.ts'
import { shownByWords } from '../hardware/older-sheets.ts'
import { severityOfTopic } from '../hardware/severity.ts'
import { sheetText } from '../hardware/sheet-text.ts'
import { doubledRail, gapsThatDependOnCurb } from '../layout/gaps-at-curb.ts'
import type { LayoutPanel, LayoutPost, LayoutSplice, Unit } from '../layout/layout.ts'
import { makeOfPost } from '../layout/make-of-post.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import { wantedLength, wantedPosition, wantedSpace } from './as-counted.ts'
import { newSlotRule, noCurbRule } from './changed-post-rules.ts'
import {
  blockRule,
  hingeRule,
  lapRule,
  nestedRule,
  panelLengthRule,
  postKindRule,
  type RuleText,
  railBoltRule,
  slotRule,
  slottedPanelRule,
  spliceRule,
} from './common-rules.ts'
import { countedRequirements } from './counted-requirements.ts'
import { flareOffsetRule, railHeightRule, spacingRule, straightnessRule, stubRule } from './measured-rules.ts'
import { panelPlace, postPlace, runPlace, spacePlace, splicePlace, unitPlace } from './places.ts'
import { crashworthyRequirement, criteriaRequirement } from './record-requirements.ts'
import type { Place, Requirement, RequirementLook } from './requirement.ts'
import { runLineAt } from './run-line.ts'
import { endSheetOf, isUnknown, type RunModel } from './run-model.ts'
import { siteCheckRequirements } from './site-check-requirements.ts'

/**
 * What must be true of the run, place by place: first what later work covers, then the rest, each in walking order
 * from the first end to the second.
 *
 * An id is that of the place and the topic, as `post-9/rail-height`. In a run's first version places are named by kind
 * and number, the end units `first` and `second`, the run `run`.
 */
export function deriveRequirements(model: RunModel): readonly Requirement[] {
  const found = [
    ...model.layout.posts.flatMap((post) => postRequirements(model, post)),
    ...spaceRequirements(model),
    ...model.layout.panels.flatMap((panel) => panelRequirements(model, panel)),
    ...model.layout.splices.flatMap((splice) => spliceRequirements(model, splice)),
    ...(['first', 'second'] as const).flatMap((unit) => unitRequirements(model, unit)),
    ...(isRunSeen(model) ? [criteriaRequirement(model, model.system, runPlace())] : []),
    ...(model.counted === undefined ? [] : countedRequirements(model, model.counted)),
    ...siteCheckRequirements(model),
  ]
  // Of one place they stay in the order in which they were found.
  return found.sort((a, b) => Number(b.hold) - Number(a.hold) || a.place.alongInches - b.place.alongInches)
}

/** Whether the run's own hardware was looked at; beside a terminal alone nobody did. */
const isRunSeen = ({ layout, first, second }: RunModel): boolean =>
  [first, second].every((end) => end.kind !== 'unknown' || end.because !== 'not looked at') ||
  [...layout.posts, ...layout.panels].some(({ unit }) => unit === 'run')

function requirementOf(rule: RuleText, place: Place, sheet: HardwareSheet): Requirement {
  const { topic, must, look, how, why, remedy, hold, figure, shows, cited } = rule
  return {
    id: `${place.id}/${topic}`,
    topic,
    place,
    must,
    look,
    how,
    why,
    remedy,
    hold,
    figure,
    shows,
    maySetAside: (sheet.maySetAside ?? []).some((one) => one.topic === topic),
    severity: severityOfTopic(sheet, topic),
    sheet: sheet.id,
    sheetVersion: sheet.version,
    source: sourceIn(sheet, cited),
    confirmation: cited.confirmation,
  }
}

const ruleOf = (sheet: HardwareSheet, rule: SheetRule): RuleText => ({
  topic: rule.id,
  must: sheetText(sheet, rule.must),
  look: lookOf(sheet, rule),
  how: sheetText(sheet, rule.how),
  why: sheetText(sheet, rule.why),
  remedy: sheetText(sheet, rule.remedy),
  hold: rule.hold,
  figure: rule.figure,
  shows: rule.shows ?? shownByWords(rule),
  cited: { source: rule.source, confirmation: rule.confirmation },
})

function lookOf(sheet: HardwareSheet, { look }: SheetRule): RequirementLook {
  switch (look.kind) {
    case 'measure':
      return { ...look, orFrom: null }
    case 'choose':
      return { ...look, choices: look.choices.map((one) => ({ ...one, label: sheetText(sheet, one.label) })) }
    case 'confirm':
      return look
  }
}

function postRequirements(model: RunModel, post: LayoutPost): Requirement[] {
  if (post.state === 'standing') return []
  const sheet = sheetOf(model, post.unit)
  const place = postPlace(model, post)
  const rules: RuleText[] = [railHeightRule(sheet.railHeight, sheet)]
  if (sheet.kind === 'longitudinal') {
    const cited = post.state === 'special' ? specialCited(model, post) : sheet.post
    rules.push(postKindRule(sheetText(sheet, post.kind), makeOfPost(post, model), cited))
    rules.push(blockRule(post.block, sheet.post), railBoltRule(true, sheet.post))
    rules.push(...slotRules(model, post))
  } else {
    rules.push(...unitPostRules(model, post, sheet))
  }
  rules.push(
    ...sheetRules(
      sheet,
      (rule) =>
        rule.at.kind === 'each post' || (rule.at.kind === 'posts' && rule.at.numbers.includes(post.ownNumber ?? 0)),
    ),
  )
  return rules.map((rule) => requirementOf(rule, place, sheet))
}

function slotRules({ system }: RunModel, post: LayoutPost): RuleText[] {
  const rule = post.state === 'moved' && system.movedPost !== 'notStated' ? newSlotRule(system.movedPost) : null
  return rule === null ? [] : [rule]
}

const specialCited = (model: RunModel, post: LayoutPost): Cited =>
  model.system.omissions.find((rule) => rule.specialPostKind === post.kind) ?? model.system.post

function unitPostRules(model: RunModel, post: LayoutPost, sheet: EndSheet): RuleText[] {
  const own = sheet.posts[post.ownNumber! - 1]!
  const rules = [postKindRule(sheetText(sheet, own.kind), makeOf(own), own), blockRule(own.block, own)]
  if (own.railBolted !== 'notStated') rules.push(railBoltRule(own.railBolted, own))
  if (own.hingeSide === 'upstream' || own.hingeSide === 'downstream') rules.push(hingeRule(own.hingeSide, own))
  if (own.slots !== 'notStated' && own.slots !== 'none') rules.push(slotRule(own.slots, own))
  if (own.stub !== 'none') rules.push(stubRule(own.stub, sheet))
  if (own.number === 1 && sheet.flare !== 'none')
    rules.push(
      flareOffsetRule(sheet.flare.offset, sheet, post, runLineAt(model, post.unit === 'second' ? 'second' : 'first')),
    )
  return rules
}

function sheetRules(sheet: HardwareSheet, applies: (rule: SheetRule) => boolean): RuleText[] {
  return sheet.parts.flatMap((part) => part.rules.filter(applies).map((rule) => ruleOf(sheet, rule)))
}

function spaceRequirements(model: RunModel): Requirement[] {
  const { posts, spaces, omitted } = model.layout
  const dependOnCurb = model.curb === undefined ? gapsThatDependOnCurb(model.layout, model.system) : []
  return posts.slice(1).flatMap((after, i) => {
    const before = posts[i]!
    if (isUnknown(model, before.unit) && isUnknown(model, after.unit)) return []
    const sheet = before.unit === after.unit ? sheetOf(model, before.unit) : model.system
    const gap = omitted.filter(({ alongInches }) => alongInches > before.alongInches && alongInches < after.alongInches)
    const rules = [spacingRule(sheet, before, after, wantedSpace(model, before, after), gap)]
    const byCurb = dependOnCurb.find((one) => gap.includes(one.omitted[0]!))
    if (byCurb !== undefined) rules.push(noCurbRule(byCurb))
    return rules.map((rule) => requirementOf(rule, spacePlace(spaces[i]!), sheet))
  })
}

function panelRequirements(model: RunModel, panel: LayoutPanel): Requirement[] {
  if (isUnknown(model, panel.unit)) return []
  const sheet = sheetOf(model, panel.unit)
  const place = panelPlace(model, panel)
  const length = wantedLength(model, panel)
  const cited = panelCited(sheet, panel, length.wanted)
  const choices = lengthChoices(model, [length.wanted, panel.inches])
  const rules: RuleText[] = [panelLengthRule(length, choices, panel.role === 'adapter', cited)]
  if (sheet.kind !== 'longitudinal') {
    const own = panel.role === 'own' ? sheet.panels.own[panel.ownNumber! - 1]! : null
    if (own?.slotted) rules.push(slottedPanelRule(length.wanted, sheetText(sheet, own.name), own))
    rules.push(
      ...sheetRules(sheet, (rule) => rule.at.kind === 'panels' && rule.at.numbers.includes(panel.ownNumber ?? 0)),
    )
  }
  if (panel.nested) rules.push(nestedRule(nestedCited(model) ?? cited))
  if (sheet.straightness !== 'notStated')
    rules.push(straightnessRule(sheet.straightness, sheet, panel, model.layout.posts))
  return rules.map((rule) => requirementOf(rule, place, sheet))
}

/** The rule of the sheet by which rail of this layout is doubled; null where the run file asks for it. */
function nestedCited({ layout, system, curb }: RunModel): Cited | null {
  const rules = system.omissions.filter(({ kind }) => layout.omitted.some(({ rule }) => rule === kind))
  const rule = rules.find((one) => (doubledRail(one, curb) ?? 0) > 0)
  const atCurb = curb === 'present' ? rule?.nestedAtCurb : undefined
  return atCurb === undefined || atCurb === 'notStated' ? (rule ?? null) : atCurb
}

function panelCited(sheet: HardwareSheet, { role, ownNumber }: LayoutPanel, inches: number): Cited {
  if (sheet.kind === 'longitudinal') {
    const { standard, converting, endOnly } = sheet.panels
    return [...standard, ...converting, ...endOnly].find((one) => one.inches === inches) ?? sheet.splice
  }
  const { own, adapters } = sheet.panels
  // Two of a unit's own may be of one length, each with its source.
  return role === 'own' ? own[ownNumber! - 1]! : (adapters.find((one) => one.inches === inches) ?? sheet.listedLength)
}

function lengthChoices(model: RunModel, others: readonly number[]): readonly number[] {
  const { standard, converting, endOnly } = model.system.panels
  const lengths = new Set([...standard, ...converting, ...endOnly].map(({ inches }) => inches).concat(others))
  return [...lengths].sort((a, b) => a - b)
}

function spliceRequirements(model: RunModel, splice: LayoutSplice): Requirement[] {
  if (isUnknown(model, splice.unit)) return []
  const sheet = sheetOf(model, splice.unit)
  const lapSheet = endSheetOf(model, splice.unit) ?? model.system
  const over = lapSheet.lap.rule === 'terminal end-on' && splice.unit === 'second' ? 'downstream' : 'upstream'
  const positionCited = sheet.kind === 'longitudinal' ? sheet.splice : sheet.listedLength
  const rules = [
    spliceRule(wantedPosition(model, splice), positionCited),
    lapRule(over, lapSheet.lap),
    ...sheetRules(sheet, (rule) => rule.at.kind === 'each splice'),
  ]
  return rules.map((rule) => requirementOf(rule, splicePlace(splice), sheet))
}

function unitRequirements(model: RunModel, unit: Extract<Unit, 'first' | 'second'>): Requirement[] {
  const sheet = endSheetOf(model, unit)
  if (sheet === null) return []
  const place = unitPlace(model, unit, sheet)
  const rules = sheetRules(sheet, (rule) => rule.at.kind === 'unit')
  return [
    ...rules.map((rule) => requirementOf(rule, place, sheet)),
    criteriaRequirement(model, sheet, place),
    crashworthyRequirement(model, sheet, place, unit),
  ]
}

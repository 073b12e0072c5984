import { feetInchesText, lengthText, quantityText } from '../../../core/hardware/dimension-text.ts'
import type { Dimension, FigureKind, HardwareSheet } from '../../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../../core/hardware/limits-saying.ts'
import { measuresLength } from '../../../core/hardware/measures-length.ts'
import type { Requirement, RequirementChoice } from '../../../core/requirements/requirement.ts'
import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import type { Unit } from '../../../core/units/quantity-kinds.ts'
import { english } from '../../../words/english.ts'
import { leavingProse, type Print } from '../../../words/print.ts'

/** One limit, as it is written and in inches. */
export interface FigureLimit {
  readonly words: string
  readonly inches: number
}

/** What a figure has to know of its requirement, in plain values. Null is "the sheet's words do not tell". */
export interface FigureFacts {
  /** What must be true. */
  readonly must: string
  /** What stands under the right one and its wrong twin. */
  readonly right: string
  readonly wrong: string
  readonly nominal: FigureLimit | null
  readonly low: FigureLimit | null
  readonly high: FigureLimit | null
  /** Length along the rail of the right panel and of the wrong one, inches. */
  readonly lengths: { readonly right: number; readonly wrong: number } | null
  readonly flareShape: 'straight' | 'parabola'
  /** The part is there (block, bolt, slots); what is wrong about the wrong twin when it is there too. */
  readonly present: boolean | null
  readonly hasWasher: boolean
  readonly set: 'upper' | 'lower' | null
  readonly toward: 'head' | 'away' | null
  readonly over: 'upstream' | 'downstream' | null
  readonly splice: 'post' | 'midspan' | null
  /** Distances of a bearing plate's hole from its upper and lower edge. */
  readonly plate: { readonly up: FigureLimit; readonly down: FigureLimit } | null
  /** The rule is about how a part is fixed, not which way it points. */
  readonly fixing: 'retainer' | 'seat' | null
}

/** The facts that `requirement`, of `sheet`, gives to its figure, in the words of `whole`. */
export function figureFacts(requirement: Requirement, sheet: HardwareSheet, whole: Print): FigureFacts {
  const print = leavingProse(whole)
  const { look } = requirement
  const must = words.say(requirement.must)
  const limits = look.kind === 'measure' ? look.limits : null
  const right = look.kind === 'choose' ? (look.choices.find((choice) => choice.right) ?? null) : null
  const wrong = look.kind === 'choose' ? (look.choices.find((choice) => !choice.right) ?? null) : null
  const said = right === null ? must : choiceWords(right)
  const splice = wordOf(said, must, ['midspan', 'midway', 'post'])
  return {
    must: print.say(requirement.must),
    right: print.say(right?.label ?? (limits ? limitsOf(limits) : requirement.must)),
    wrong: print.say(wrong?.label ?? (limits ? beyondText(limits) : 'not so')),
    ...figureLimits(limits !== null && measuresLength(limits) ? limits : null, isAlongRail(requirement.figure)),
    lengths: panelLengths(right, wrong),
    flareShape: sheet.kind !== 'longitudinal' && sheet.flare !== 'none' ? sheet.flare.shape : 'straight',
    present: right === null ? null : !/\b(no|not|without|missing|plain)\b(?! washer)/i.test(said),
    hasWasher: wrong !== null && /\bwasher\b/i.test(words.say(wrong.label)),
    set: wordOf(said, must, ['upper', 'lower']),
    toward: wordOf(said, must, ['away', 'head']),
    over: wordOf(said, must, ['upstream', 'downstream']),
    splice: splice === null ? null : splice === 'post' ? 'post' : 'midspan',
    plate: plateOf(said, must),
    fixing: /\bretainer\b/i.test(said) ? 'retainer' : /\b(seated|shoulders?)\b/i.test(said) ? 'seat' : null,
  }
}

const words = english(null)

const choiceWords = ({ id, label }: RequirementChoice): string => `${id} ${words.say(label)}`

/** The first of `words` that stands in what the right choice says; if none, in the rule. */
function wordOf<W extends string>(said: string, must: string, words: readonly W[]): W | null {
  for (const where of [said, must]) {
    const found = words.find((word) => new RegExp(`\\b${word}\\b`, 'i').test(where))
    if (found !== undefined) return found
  }
  return null
}

/** Lengths along the rail are said in feet and inches, heights in inches. */
const isAlongRail = (figure: FigureKind | null): boolean => figure === 'post-spacing' || figure === 'omitted-post'

function figureLimits(limits: Dimension | null, inFeet: boolean): Pick<FigureFacts, 'nominal' | 'low' | 'high'> {
  const limit = (value: number | 'notStated' | undefined): FigureLimit | null => {
    if (limits === null || value === undefined || value === 'notStated') return null
    const inches = lengthIn(exactLength(value, limits.unit), 'in')
    return { words: inFeet && limits.unit === 'in' ? feetInchesText(value) : lengthText(value, limits.unit), inches }
  }
  return { nominal: limit(limits?.nominal), low: limit(limits?.low), high: limit(limits?.high) }
}

/** What lies beyond the limits, in words. */
function beyondText(limits: Dimension<Unit>): string {
  const text = (value: number): string => quantityText(value, limits.unit)
  const low = limits.low === 'notStated' ? [] : [`less than ${text(limits.low)}`]
  const high = limits.high === 'notStated' ? [] : [`more than ${text(limits.high)}`]
  return [...low, ...high].join(', or ')
}

/** The choices of a panel's length are named by it, as `in-112.5`. */
function panelLengths(right: RequirementChoice | null, wrong: RequirementChoice | null): FigureFacts['lengths'] {
  const inchesOf = (choice: RequirementChoice | null): number =>
    Number(/^in-(\d+(?:\.\d+)?)$/.exec(choice?.id ?? '')?.[1])
  const lengths = { right: inchesOf(right), wrong: inchesOf(wrong) }
  return Number.isNaN(lengths.right) || Number.isNaN(lengths.wrong) ? null : lengths
}

/** From words as `5-in side up and its 3-in side down`: the rule names both, the right choice the one that is up. */
function plateOf(said: string, must: string): FigureFacts['plate'] {
  const sides = [...must.matchAll(/(\d+(?:\.\d+)?)-in side/g)].map((match) => Number(match[1]))
  const up = Number(/(\d+(?:\.\d+)?)-in side up/.exec(`${said} ${must}`)?.[1])
  const down = sides.find((inches) => inches !== up)
  if (Number.isNaN(up) || down === undefined) return null
  const side = (inches: number): FigureLimit => ({ words: lengthText(inches, 'in'), inches })
  return { up: side(up), down: side(down) }
}

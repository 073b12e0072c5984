import type { Dimension, FigureKind, HardwareSheet, PostMake, Shown } from '../../../core/hardware/hardware-sheet.ts'
import { limitsOf } from '../../../core/hardware/limits-saying.ts'
import { measuresLength } from '../../../core/hardware/measures-length.ts'
import type { Requirement, RequirementChoice } from '../../../core/requirements/requirement.ts'
import { exactLength, lengthIn } from '../../../core/units/exact-length.ts'
import type { Unit } from '../../../core/units/quantity-kinds.ts'
import type { OwnWords } from '../../../words/own-words.ts'
import type { Print } from '../../../words/print.ts'
import { figuresWords } from '../../words/figures-words.ts'
import { choicesDrawn, panelLengthOf } from './choices-drawn.ts'

/** One limit, as it is written and in inches. */
export interface FigureLimit {
  readonly words: string
  readonly inches: number
}

/** What a figure has to know of its requirement, in plain values. Null is "the sheet does not tell". */
export interface FigureFacts {
  readonly words: OwnWords['figures']
  /** What must be true. */
  readonly must: string
  /** What stands under the right one and its wrong twin. */
  readonly right: string
  readonly wrong: string
  readonly nominal: FigureLimit | null
  readonly low: FigureLimit | null
  readonly high: FigureLimit | null
  /** Length along the rail of the right panel and of the wrong one. */
  readonly lengths: { readonly right: FigureLimit; readonly wrong: FigureLimit } | null
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
  /** What lets the post break away. */
  readonly breakaway: PostMake['breakaway'] | null
}

/** What of a requirement its figure shows. */
type Drawn = Pick<Requirement, 'must' | 'look' | 'shows' | 'figure'>

/** The facts that `requirement`, of `sheet`, gives to its figure, in the words of `print`. */
export function figureFacts(requirement: Drawn, sheet: HardwareSheet, print: Print): FigureFacts {
  const words = figuresWords(print)
  const { look, shows = {} } = requirement
  const limits = look.kind === 'measure' ? look.limits : null
  const { right, wrong } = choicesDrawn(look)
  return {
    words,
    must: print.say(requirement.must),
    right: print.say(right?.label ?? (limits ? limitsOf(limits) : requirement.must)),
    wrong: wrong !== null ? print.say(wrong.label) : limits ? beyondText(limits, print) : words.notSo,
    ...figureLimits(limits !== null && measuresLength(limits) ? limits : null, isAlongRail(requirement.figure), print),
    lengths: panelLengths(right, wrong, print),
    flareShape: sheet.kind !== 'longitudinal' && sheet.flare !== 'none' ? sheet.flare.shape : 'straight',
    present: shows.present ?? null,
    hasWasher: shows.wrongWasher ?? false,
    set: shows.set ?? null,
    toward: shows.toward ?? null,
    over: shows.over ?? null,
    splice: shows.splice ?? null,
    plate: plateOf(shows, print),
    fixing: shows.fixing ?? null,
    breakaway: shows.breakaway ?? null,
  }
}

/** Lengths along the rail are said in feet and inches, heights in inches. */
const isAlongRail = (figure: FigureKind | null): boolean => figure === 'post-spacing' || figure === 'omitted-post'

function figureLimits(
  limits: Dimension | null,
  inFeet: boolean,
  { short }: Print,
): Pick<FigureFacts, 'nominal' | 'low' | 'high'> {
  const limit = (value: number | 'notStated' | undefined): FigureLimit | null => {
    if (limits === null || value === undefined || value === 'notStated') return null
    const inches = lengthIn(exactLength(value, limits.unit), 'in')
    return {
      words: inFeet && limits.unit === 'in' ? short.feetInches(value) : short.length(value, limits.unit),
      inches,
    }
  }
  return { nominal: limit(limits?.nominal), low: limit(limits?.low), high: limit(limits?.high) }
}

/** What lies beyond the limits, in words. */
function beyondText({ low, high, unit }: Dimension<Unit>, print: Print): string {
  const words = figuresWords(print)
  return words.beyond([
    ...(low === 'notStated' ? [] : [words.lessThan(print.quantity(low, unit))]),
    ...(high === 'notStated' ? [] : [words.moreThan(print.quantity(high, unit))]),
  ])
}

function panelLengths(
  right: RequirementChoice | null,
  wrong: RequirementChoice | null,
  { short }: Print,
): FigureFacts['lengths'] {
  const lengthOf = (choice: RequirementChoice | null): FigureLimit | null => {
    const inches = choice === null ? null : panelLengthOf(choice)
    return inches === null ? null : { words: short.feetInches(inches), inches }
  }
  const lengths = { right: lengthOf(right), wrong: lengthOf(wrong) }
  return lengths.right === null || lengths.wrong === null ? null : { right: lengths.right, wrong: lengths.wrong }
}

function plateOf({ plate }: Shown, { short }: Print): FigureFacts['plate'] {
  const side = (inches: number): FigureLimit => ({ words: short.length(inches, 'in'), inches })
  return plate === undefined ? null : { up: side(plate.upInches), down: side(plate.downInches) }
}

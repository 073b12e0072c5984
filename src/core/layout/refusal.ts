import type { SplicePosition } from '../hardware/hardware-sheet.ts'
import { exactLength } from '../units/exact-length.ts'
import { printLength } from '../units/print-length.ts'

/** Why an alternative is not lawful. Lengths in inches; post numbers count from the first end. */
export type Refusal =
  | {
      readonly kind: 'splice position'
      readonly panel: number
      readonly afterEnd: string
      readonly at: SplicePosition
      readonly post: number
      readonly wanted: SplicePosition
    }
  | { readonly kind: 'panel not of this unit'; readonly panel: number; readonly unit: string }
  | {
      readonly kind: 'unit post obstructed'
      readonly unit: string
      readonly post: number
      readonly obstruction: string
    }
  | {
      readonly kind: 'too many posts obstructed'
      readonly obstruction: string
      readonly posts: number
      readonly most: number
      readonly firstPost: number
    }
  | {
      readonly kind: 'special posts do not fit'
      readonly obstruction: string
      readonly rule: string
      readonly each: number
    }
  | {
      readonly kind: 'too near the end unit'
      readonly obstruction: string
      readonly rule: string
      readonly have: number
      readonly least: number
    }
  | {
      readonly kind: 'gaps too near'
      readonly first: string
      readonly second: string
      readonly have: number
      readonly least: number
    }
  | { readonly kind: 'not stated at a curb'; readonly obstruction: string; readonly rule: string }
  | { readonly kind: 'too many posts moved'; readonly obstruction: string; readonly most: number }
  | { readonly kind: 'reduced part in unit'; readonly unit: string; readonly spacing: string }
  | { readonly kind: 'post at reduced spacing obstructed'; readonly obstruction: string; readonly spacing: string }
  | { readonly kind: 'doubled part in unit'; readonly unit: string }
  | { readonly kind: 'no panels fit'; readonly between: number; readonly lengths: readonly number[] }
  | { readonly kind: 'splice on omitted post'; readonly obstruction: string }
  | {
      readonly kind: 'ends do not meet'
      readonly between: number
      readonly nearestShorter: number | null
      readonly nearestLonger: number | null
    }
  | { readonly kind: 'does not cover'; readonly end: 'first' | 'second'; readonly shortBy: number }
  | {
      readonly kind: 'hung panel differs'
      readonly panel: number
      readonly hung: number
      readonly expected: number
      readonly unit: string
    }
  | { readonly kind: 'hung splice'; readonly panel: number }
  | { readonly kind: 'hung length'; readonly panel: number; readonly hung: number; readonly endOnly: boolean }
  | { readonly kind: 'hung too long'; readonly by: number }
  | { readonly kind: 'stands elsewhere'; readonly by: number }
  | { readonly kind: 'not in stock'; readonly panel: number }
  | { readonly kind: 'posts do not meet'; readonly remainder: number; readonly spacing: number }
  | {
      readonly kind: 'nested rail in unit'
      readonly unit: string
      readonly obstruction: string
      readonly nested: number
    }

const length = (inches: number): string => printLength(exactLength(inches, 'in'), 'feet-inches')

/** The reason in one plain sentence. */
export function describeRefusal(refusal: Refusal): string {
  switch (refusal.kind) {
    case 'splice position': {
      const where =
        refusal.at === 'post'
          ? `on post ${refusal.post}`
          : `midway between posts ${refusal.post} and ${refusal.post + 1}`
      const wanted = refusal.wanted === 'post' ? 'at posts' : 'midway between posts'
      const how = refusal.panel === 0 ? refusal.afterEnd : `${refusal.afterEnd} by a ${length(refusal.panel)} panel`
      return `${how}: splice would fall ${where}, and this system's splices lie ${wanted}`
    }
    case 'panel not of this unit':
      return `a ${length(refusal.panel)} panel is not one that the sheet of the ${refusal.unit} allows before the run`
    case 'unit post obstructed':
      return `post ${refusal.post} of the ${refusal.unit} would stand in ${refusal.obstruction}`
    case 'too many posts obstructed':
      return `${refusal.obstruction}: ${refusal.posts} post${refusal.posts === 1 ? '' : 's'} from post ${refusal.firstPost} on cannot stand, and the sheet lets ${refusal.most === 0 ? 'none' : `at most ${refusal.most} in a row`} be left out or moved`
    case 'special posts do not fit':
      return `${refusal.obstruction}: the ${refusal.rule} needs ${refusal.each} special posts on each side, and they do not fit beside the end unit, another gap or posts that stand`
    case 'too near the end unit':
      return `${refusal.obstruction}: the ${refusal.rule} needs ${length(refusal.least)} to the end unit, and only ${length(refusal.have)} is there`
    case 'gaps too near':
      return `${refusal.first} and ${refusal.second}: ${length(refusal.have)} between the gaps, at least ${length(refusal.least)} needed`
    case 'not stated at a curb':
      return `${refusal.obstruction}: the sheet does not say that posts may be left out by its rule for a ${refusal.rule} gap where a curb stands before the rail`
    case 'too many posts moved':
      return `${refusal.obstruction}: the sheet lets at most ${refusal.most} post${refusal.most === 1 ? '' : 's'} of a run be moved`
    case 'reduced part in unit':
      return `${refusal.spacing} spacing would fall within the ${refusal.unit}, whose posts stand as tested`
    case 'post at reduced spacing obstructed':
      return `${refusal.obstruction}: no post may be left out where ${refusal.spacing} spacing rules`
    case 'doubled part in unit':
      return `the doubled rail that was asked for would reach into the ${refusal.unit}, whose panels hang as tested`
    case 'no panels fit':
      return `no order of panels of ${refusal.lengths.map(length).join(', ')} fills ${length(refusal.between)} with every splice where it belongs`
    case 'splice on omitted post':
      return `${refusal.obstruction}: a splice would fall on a post that is left out or moved`
    case 'ends do not meet':
      return `the fixed ends lie ${length(refusal.between)} apart, and no lawful run has that length${nearest(refusal.nearestShorter, refusal.nearestLonger)}`
    case 'does not cover':
      return `the ${refusal.end} end stands ${length(refusal.shortBy)} too near: the rail would not count for the whole need`
    case 'hung panel differs':
      return `panel ${refusal.panel} as hung is ${length(refusal.hung)}, the ${refusal.unit} has ${length(refusal.expected)} there`
    case 'hung splice':
      return `panel ${refusal.panel} as hung ends where no splice may lie`
    case 'hung length':
      return refusal.endOnly
        ? `panel ${refusal.panel} as hung is ${length(refusal.hung)}, which may only be the first or the last panel of the run`
        : `panel ${refusal.panel} as hung is ${length(refusal.hung)}, which is no panel of this system`
    case 'hung too long':
      return `what hangs reaches ${length(refusal.by)} into the second end, or beyond it`
    case 'stands elsewhere':
      return `post 1 as it stands puts the first end ${length(refusal.by)} away from where it is fixed`
    case 'not in stock':
      return `no ${length(refusal.panel)} panel in stock`
    case 'posts do not meet':
      return `the posts of the two ends are out of step by ${length(refusal.remainder)} of a ${length(refusal.spacing)} space`
    case 'nested rail in unit':
      return `${refusal.obstruction}: the ${length(refusal.nested)} of doubled rail round the gap would reach into the ${refusal.unit}`
  }
}

function nearest(shorter: number | null, longer: number | null): string {
  const both = [shorter, longer].filter((one) => one !== null).map(length)
  return both.length === 0 ? '' : ` (nearest: ${both.join(' and ')})`
}

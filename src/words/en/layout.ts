import type { SplicePosition } from '../../core/hardware/hardware-sheet.ts'
import type { SheetText } from '../../core/hardware/sheet-text.ts'
import type { LayoutSaying } from '../../core/layout/layout-saying.ts'
import type { Print, Printers } from '../print.ts'
import { theirNames } from '../their-names.ts'

export const layout: Printers<LayoutSaying> = {
  'as counted': ({ known }) =>
    `as counted: these are the pieces that stand, and no lawful layout has them${known === 'posts placed' ? '' : '; how far apart the posts stand was not measured'}`,
  'end not known': ({ end, because }) =>
    because === 'no sheet fits'
      ? `no hardware sheet fits the ${end} end`
      : `nobody looked beyond the ${end} end of what was counted`,
  'goes on from standing splice': ({ end }) => `the ${end} end goes on from the standing splice`,
  'sheet joins run': ({ sheet, adapterInches }, print) =>
    adapterInches === null
      ? `${print.say(sheet)} joins the run without an adapter panel`
      : `${print.say(sheet)} joins the run by a ${print.feetInches(adapterInches)} panel`,
  'need covered': ({ atBegin, atEnd }, print) => {
    const spare = [
      ...(atBegin === null ? [] : [`${print.feetInches(atBegin)} to spare at its begin`]),
      ...(atEnd === null ? [] : [`${print.feetInches(atEnd)} at its end`]),
    ]
    return `the rail that counts covers the need${spare.length > 0 ? ` with ${spare.join(' and ')}` : ''}`
  },
  'post left out': ({ alongInches, obstructions, rule }, print) =>
    `post at ${print.feetInches(alongInches)} left out for ${theirNames(obstructions, print)}, by the sheet's rule for a ${rule} gap`,
  'gap as without curb': ({ obstructions, doubledInches }, print) =>
    `${theirNames(obstructions, print)}: laid out as without a curb, the run does not say whether one stands before the rail; at a curb ${
      doubledInches === null
        ? 'the sheet does not allow this gap'
        : `${print.feetInches(doubledInches)} of rail has to be doubled`
    }`,
  'posts keep clear': ({ halfPostInches, clearanceInches, isStated }, print) =>
    `the centre of a post keeps ${print.feetInches(halfPostInches + clearanceInches)} from what is in its way: half a post, ${print.feetInches(halfPostInches)} (common practice), and a clearance of ${print.feetInches(clearanceInches)}${isStated ? ', as the run states' : ' (from memory, NOT CONFIRMED: the run states none)'}`,
  'post moved along rail': ({ post }) => `post ${post} is moved along the rail`,
  'post of special kind': ({ post, of }, print) => `post ${post} is a ${print.say(of)}`,
  'post that stands': () => 'standing post',
  'pieces of run': ({ changedPosts, oddPanels, railInches, pieces }, print) =>
    `${count(changedPosts, 'post')} left out, moved or replaced; ${count(oddPanels, 'panel')} of other than standard length; ${print.feetInches(railInches)} of rail in ${count(pieces, 'piece')}`,

  'splice position': ({ panel, unit, at, post, wanted }, print) => {
    const joined = panel === null ? 'joined as it is' : `joined by a ${print.feetInches(panel)} panel`
    const where = at === 'post' ? `on post ${post}` : `midway between posts ${post} and ${post + 1}`
    return `${print.say(unit)} ${joined}: splice would fall ${where}, and this system's splices lie ${positionWords[wanted]}`
  },
  'panel not of this unit': ({ panel, unit }, print) =>
    `a ${print.feetInches(panel)} panel is not one that the sheet of the ${print.say(unit)} allows before the run`,
  'unit post obstructed': ({ post, unit, obstructions }, print) =>
    `post ${post} of the ${unitText(unit, print)} would stand in ${theirNames(obstructions, print)}`,
  'too many posts obstructed': ({ obstructions, posts, firstPost, most }, print) =>
    `${theirNames(obstructions, print)}: ${count(posts, 'post')} from post ${firstPost} on cannot stand, and the sheet lets ${most === 0 ? 'none' : `at most ${most} in a row`} be left out or moved`,
  'special posts do not fit': ({ obstructions, rule, each }, print) =>
    `${theirNames(obstructions, print)}: the ${rule} needs ${each} special posts on each side, and they do not fit beside the end unit, another gap or posts that stand`,
  'too near the end unit': ({ obstructions, rule, least, have }, print) =>
    `${theirNames(obstructions, print)}: the ${rule} needs ${print.feetInches(least)} to the end unit, and only ${print.feetInches(have)} is there`,
  'gaps too near': ({ first, second, have, least }, print) =>
    `${theirNames(first, print)} and ${theirNames(second, print)}: ${print.feetInches(have)} between the gaps, at least ${print.feetInches(least)} needed`,
  'not stated at a curb': ({ obstructions, rule }, print) =>
    `${theirNames(obstructions, print)}: the sheet does not say that posts may be left out by its rule for a ${rule} gap where a curb stands before the rail`,
  'too many posts moved': ({ obstructions, most }, print) =>
    `${theirNames(obstructions, print)}: the sheet lets at most ${count(most, 'post')} of a run be moved`,
  'reduced part in unit': ({ spacing, unit }, print) =>
    `${spacing} spacing would fall within the ${unitText(unit, print)}, whose posts stand as tested`,
  'post at reduced spacing obstructed': ({ obstructions, spacing }, print) =>
    `${theirNames(obstructions, print)}: no post may be left out where ${spacing} spacing rules`,
  'doubled part in unit': ({ unit }, print) =>
    `the doubled rail that was asked for would reach into the ${unitText(unit, print)}, whose panels hang as tested`,
  'no panels fit': ({ lengths, between }, print) =>
    `no order of panels of ${lengths.map((one) => print.feetInches(one)).join(', ')} fills ${print.feetInches(between)} with every splice where it belongs`,
  'splice on omitted post': ({ obstructions }, print) =>
    `${theirNames(obstructions, print)}: a splice would fall on a post that is left out or moved`,
  'ends do not meet': ({ between, nearestShorter, nearestLonger }, print) => {
    const nearest = [nearestShorter, nearestLonger].flatMap((one) => (one === null ? [] : [print.feetInches(one)]))
    return `the fixed ends lie ${print.feetInches(between)} apart, and no lawful run has that length${nearest.length === 0 ? '' : ` (nearest: ${nearest.join(' and ')})`}`
  },
  'does not cover': ({ end, shortBy }, print) =>
    `the ${end} end stands ${print.feetInches(shortBy)} too near: the rail would not count for the whole need`,
  'hung panel differs': ({ panel, hung, unit, expected }, print) =>
    `panel ${panel} as hung is ${print.feetInches(hung)}, the ${unitText(unit, print)} has ${print.feetInches(expected)} there`,
  'hung splice': ({ panel }) => `panel ${panel} as hung ends where no splice may lie`,
  'hung length': ({ panel, hung, endOnly }, print) =>
    `panel ${panel} as hung is ${print.feetInches(hung)}, which ${endOnly ? 'may only be the first or the last panel of the run' : 'is no panel of this system'}`,
  'hung too long': ({ by }, print) => `what hangs reaches ${print.feetInches(by)} into the second end, or beyond it`,
  'stands elsewhere': ({ by }, print) =>
    `post 1 as it stands puts the first end ${print.feetInches(by)} away from where it is fixed`,
  'stands otherwise': ({ state, atInches }, print) =>
    state === 'moved'
      ? `a moved post stands at ${print.feetInches(atInches)} from the datum, and the sheet has none there: a post is moved only out of the way of something, and only as far as the sheet says`
      : `a special post stands at ${print.feetInches(atInches)} from the datum, and this layout has none there`,
  'not in stock': ({ panel }, print) => `no ${print.feetInches(panel)} panel in stock`,
  'posts do not meet': ({ remainder, spacing }, print) =>
    `the posts of the two ends are out of step by ${print.feetInches(remainder)} of a ${print.feetInches(spacing)} space`,
  'nested rail in unit': ({ obstructions, nested, unit }, print) =>
    `${theirNames(obstructions, print)}: the ${print.feetInches(nested)} of doubled rail round the gap would reach into the ${unitText(unit, print)}`,
}

const count = (n: number, thing: string): string => `${n} ${thing}${n === 1 ? '' : 's'}`

const positionWords: Readonly<Record<SplicePosition, string>> = { post: 'at posts', midspan: 'midway between posts' }

const unitText = (unit: SheetText | null, print: Print): string => (unit === null ? 'standing run' : print.say(unit))

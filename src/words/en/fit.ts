import type { FitSaying } from '../../core/fit/fit-saying.ts'
import type { SplicePosition } from '../../core/hardware/hardware-sheet.ts'
import { lengthIn } from '../../core/units/exact-length.ts'
import type { Printers } from '../print.ts'
import { exceedingInches, reachingInches } from '../reach.ts'
import { curbFace, fitChanges } from './fit-changes.ts'

export const fit: Printers<FitSaying> = {
  ...fitChanges,
  'crash test of sheet': ({ sheet }, print) => `crash test of ${print.say(sheet)} for this work and speed`,
  'end on chosen system': ({ sheet }, print) => `${print.say(sheet)} on the chosen system`,
  'against adjoining run': () => 'rail height and splices against the adjoining run',
  'sheet at end': ({ sheet, end }, print) => `${print.say(sheet)} at the ${end} end`,
  'barrier before transition': () => 'barrier before the transition',
  'length of run': () => 'length of the run, anchor to anchor',
  'room behind rail': ({ hazard, spacing }, print) =>
    `room behind the rail to ${print.theirs(hazard)}, at ${spacing} spacing`,
  'platform of end': ({ of }) => `platform before and beside the ${of}`,
  'level ground behind post 1': () => 'level ground behind post 1',
  'clear area': ({ extent }) => `clear area behind the gating end, ${extent}`,
  'foreslope beside platform': () => 'foreslope beside the platform',
  'ground to slope break': (_, print) =>
    `ground behind the posts to the slope break, ${print.written('6-ft', 6, 'ft')} posts`,
  'curb before rail': ({ by }) => `curb before the rail${by === 'study' ? ', by another study' : ''}`,
  'curb before terminal': ({ terminal }, print) => `curb before the ${print.say(terminal)}`,

  'joins systems': ({ systems }) => `joins ${systems.join(', ')}`,
  'height within': ({ height, within, splices }, print) =>
    `${print.length(lengthIn(height, 'in'), 'in')} within ${print.length(lengthIn(within, 'in'), 'in')}, ${splicesText(splices)}`,
  'barrier before transition at least': ({ inches, leastInches, plainInches }, print) =>
    `at least ${print.feetInches(inches)}: ${print.feetInches(leastInches)}, the terminal with ${print.feetInches(plainInches)} of plain rail, and the terminal's stroke`,
  'run at least': ({ shortest, redirects, recommended }, print) =>
    [
      `at least ${print.feetInches(shortest)}, the shortest tested`,
      ...(redirects === null ? [] : [`of that only about ${print.feetInches(redirects)} redirects`]),
      ...(recommended === null ? [] : [`at least ${print.feetInches(recommended)} is recommended`]),
    ].join('; '),
  'room at least': ({ length }, print) => `at least ${print.feetInches(lengthIn(length, 'in'))}`,
  'working width': ({ inches, standard }, print) =>
    `at least ${print.feetInches(inches)} from the front face of the rail, under ${standard}`,
  'working width not stated': ({ spacing, standard }) => `not stated for ${spacing} spacing under ${standard}`,
  'slope or flatter': ({ run }) => `1V:${run}H or flatter`,
  'foreslope or flatter': ({ run, never }) =>
    `1V:${run}H or flatter; 1V:${never}H is not acceptable under any circumstance`,
  'ground at least to break': ({ inches, slope }, print) =>
    `at least ${print.feetInches(inches)} to a break to 1V:${slope}H`,
  'curb allowed': ({ flushInches, leastBehindFeet, highestInches, faceSlope, testDiffers, textsDiffer }, print) => {
    const flush = `flush (to ${print.feetInches(flushInches)} behind, as the ${print.length(31, 'in')} run was tested)`
    const behind = leastBehindFeet === null ? '' : `, or ${print.feetInches(leastBehindFeet * 12)} or more behind`
    return [
      `rail ${flush}${behind}`,
      `curb of at most ${print.feetInches(highestInches)} with ${curbFace(faceSlope)}`,
      ...(testDiffers
        ? [
            `the ${print.length(31, 'in')} run passed NCHRP 350 test level 3 with its rail ${print.length(6, 'in')} behind a ${print.written('6-in', 6, 'in')} curb: text and test differ`,
          ]
        : []),
      ...(textsDiffer
        ? [
            `NCHRP Report 537, page 93, finds a risk that a vehicle goes over a rail less than ${print.written('7 m', 7, 'm')} behind a curb: the texts differ`,
          ]
        : []),
    ].join('; ')
  },
  'no curb or one for the speed': () => 'none, or one of the height, face and place that the speed allows',
  'no curb near terminal': ({ fromFeet, highestInches }, print) =>
    `none from ${print.written(`${fromFeet} ft`, fromFeet, 'ft')} before post 1 to the end of the terminal; where there must be one, at most ${print.length(highestInches, 'in')} and sloping, as far as the terminal's own manual allows it`,

  'crash tests and work': ({ tests, work, letting }, print) =>
    `${print.say(tests)}; ${work === null ? 'kind of work not said' : `${work} work`}, ${letting === null ? 'letting not said' : `let ${letting}`}`,
  'chosen system': ({ id }) => id ?? 'no system chosen',
  'adjoining rail': ({ height, splices }, print) =>
    [print.length(lengthIn(height, 'in'), 'in'), ...(splices === null ? [] : [splicesText(splices)])].join(', '),
  'length not laid out': () => 'run not laid out',
  'site does not say': () => 'not said',
  'length there is': ({ length }, print) => print.feetInches(reachingInches(length)),
  'slope there is': ({ run }) => `1V:${run}H`,
  'curb there is': ({ curb }, print) => {
    if (curb === 'none') return 'none'
    const { face, faceSlope, height, toRail } = curb
    const slope =
      face === 'vertical' ? '' : faceSlope === null ? ', slope of its face not said' : `, face 1V:${faceSlope}H`
    return `rail ${print.feetInches(reachingInches(toRail))} behind a ${face} curb of ${print.feetInches(exceedingInches(height))}${slope}`
  },

  'recalled height transitions': ({ beforeTerminal }) =>
    `Recalled: state sheets on height transitions${beforeTerminal ? '; no height change inside a terminal or its stopping distance (public research answer 1114)' : ''}`,
  'answer on transitions': () => 'Midwest Roadside Safety Facility, public answer 1277',
  'guide on curbs': () =>
    'AASHTO Roadside Design Guide, 2011, 5.6.2.1.1, as quoted by the asking state in Midwest Roadside Safety Facility public answer 1074; NCHRP Report 1089, newer and on 31 in runs, was not read',
  'study on curbs': () =>
    'NCHRP Report 537, 2005, page 94, which asks this from lower speeds on than the Roadside Design Guide',
  'recalled curbs before terminals': () =>
    'Recalled: state manuals; a public guide for military roads asks for at most 4 in before any rail at high speed',
  'figure on grading': () =>
    'FHWA figure on grading round terminals, quoted in Midwest Roadside Safety Facility public answer 441',
  'reports on slope breaks': () =>
    'Midwest Roadside Safety Facility, report on posts at slope breaks (325) and public answer 1257',
}

const splicesText = (position: SplicePosition): string =>
  `splices ${position === 'post' ? 'at posts' : 'midway between posts'}`

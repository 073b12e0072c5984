import { sourceSaying } from '../../../src/core/hardware/hardware-saying.ts'
import type { Dimension, FigureKind, Shown } from '../../../src/core/hardware/hardware-sheet.ts'
import type { Requirement, RequirementLook } from '../../../src/core/requirements/requirement.ts'
import { byHand } from '../../fixtures/by-hand.ts'

/** One requirement for each kind of figure, worded by hand as the shipped rules and sheets word theirs. */

const limits = (change: Partial<Dimension>): Dimension => ({
  nominal: 'notStated',
  low: 'notStated',
  high: 'notStated',
  unit: 'in',
  role: 'ceiling',
  measured: 'as said',
  source: 'by hand',
  confirmation: 'from memory',
  ...change,
})

const measure = (change: Partial<Dimension>): RequirementLook => ({
  kind: 'measure',
  limits: limits(change),
  orFrom: null,
})

const choose = (right: readonly [string, string], wrong: readonly [string, string]): RequirementLook => ({
  kind: 'choose',
  choices: [
    { id: right[0], label: byHand(right[1]), right: true },
    { id: wrong[0], label: byHand(wrong[1]), right: false },
  ],
})

const requirement = (
  name: string,
  figure: FigureKind,
  must: string,
  look: RequirementLook,
  shows: Shown = {},
): [string, Requirement] => [
  name,
  {
    id: `post-1/${name}`,
    topic: name,
    place: { id: 'post-1', kind: 'post', number: 1, alongInches: 0, own: null },
    must: byHand(must),
    look,
    how: byHand(''),
    why: byHand(''),
    remedy: byHand(''),
    maySetAside: false,
    severity: 'notStated',
    hold: false,
    figure,
    shows,
    sheet: 'flared-terminal-31',
    sheetVersion: '1.0.0',
    source: sourceSaying({ title: 'by hand', edition: '' }),
    confirmation: 'from memory',
  },
]

/** By the name of the picture. */
export const figureRequirements: ReadonlyMap<string, Requirement> = new Map([
  requirement(
    'rail-height-centre',
    'rail-height',
    'The top of the rail stands 30 in to 32 in, 31 in nominal above finish grade.',
    measure({ nominal: 31, low: 30, high: 32, role: 'centre' }),
  ),
  requirement(
    'rail-height-floor',
    'rail-height',
    'The top of the rail stands at least 27 3/4 in above finish grade.',
    measure({ low: 27.75, role: 'floor' }),
  ),
  requirement(
    'flare-offset',
    'flare-offset',
    'Post 1 stands 45 in to 51 in, 48 in nominal off the line of the run.',
    measure({ nominal: 48, low: 45, high: 51, role: 'centre' }),
  ),
  requirement('straightness', 'straightness', 'The panel is straight.', measure({ high: 0.5 })),
  requirement(
    'post-spacing',
    'post-spacing',
    'The posts stand 6 ft 3 in apart, centre to centre.',
    measure({ nominal: 75, low: 74, high: 76, role: 'centre' }),
  ),
  requirement('panel-length', 'panel-length', 'The last panel before the run is 9 ft 4 1/2 in long.', {
    kind: 'choose',
    choices: [
      { id: 'in-112.5', label: { kind: 'choice of panel', inches: 112.5 }, right: true },
      { id: 'in-150', label: { kind: 'choice of panel', inches: 150 }, right: false },
    ],
  }),
  requirement(
    'slotted-panel',
    'slotted-panel',
    'The panel is the slotted end panel.',
    choose(['slotted', 'Slotted'], ['plain', 'No slots']),
    { present: true },
  ),
  requirement(
    'lap',
    'lap',
    'The upstream panel lies on the traffic side of the splice.',
    choose(
      ['upstream-over', 'Upstream panel on the traffic side'],
      ['downstream-over', 'Downstream panel on the traffic side'],
    ),
    { over: 'upstream' },
  ),
  requirement(
    'splice-position',
    'splice-position',
    'The splice lies midway between two posts.',
    choose(['midspan', 'Midway between posts'], ['post', 'At a post']),
    { splice: 'midspan' },
  ),
  requirement(
    'rail-bolt',
    'rail-bolt',
    'The rail is bolted to the post, without a washer on its face.',
    choose(['bolted', 'Bolted, no washer on the face'], ['washer', 'Bolted with a washer on the face']),
    { present: true, wrongWasher: true },
  ),
  requirement(
    'rail-not-bolted',
    'rail-bolt',
    'The rail is not bolted to the post.',
    choose(['not-bolted', 'Not bolted'], ['bolted', 'Bolted']),
    { present: false },
  ),
  requirement(
    'no-block',
    'block',
    'The post carries no offset block.',
    choose(['no-block', 'No offset block'], ['block', 'An offset block']),
    { present: false },
  ),
  requirement(
    'hinge-side',
    'hinge-side',
    'The hinge bolt is on the side away from the head.',
    choose(['away', 'Away from the head'], ['toward-head', 'Toward the head']),
    { toward: 'away' },
  ),
  requirement(
    'stub-height',
    'stub-height',
    'The lower post (stub) stands at most 4 in above finish grade.',
    measure({ high: 4 }),
  ),
  requirement(
    'slot-set',
    'slot-set',
    'The rail is held in the open lower slots of the post, on its side toward the head.',
    choose(['right', 'In the lower slots, toward the head'], ['other-set', 'In the upper slots']),
    { set: 'lower', toward: 'head' },
  ),
  requirement(
    'head-holes',
    'head-holes',
    "The impact head is fixed to the terminal's first post in two places, snug, in the upper hole set.",
    choose(['upper-both', 'Both fasteners, upper hole set, snug'], ['lower-both', 'Both fasteners, lower hole set']),
    { set: 'upper' },
  ),
  requirement(
    'bearing-plate',
    'bearing-plate',
    'The bearing plate stands with its 5-in side up and its 3-in side down.',
    choose(['five-up', '5-in side up'], ['three-up', '3-in side up']),
    { plate: { upInches: 5, downInches: 3 } },
  ),
  requirement(
    'plate-retainer',
    'bearing-plate',
    'A retainer keeps the bearing plate from turning.',
    choose(['held', 'Retainer in place'], ['free', 'No retainer; the plate can turn']),
    { fixing: 'retainer' },
  ),
  requirement('cable-play', 'cable-play', 'The anchor cable moves no more than 1 in.', measure({ high: 1 })),
  requirement(
    'bracket-opening',
    'bracket-opening',
    'The opening of the cable anchor bracket is toward the head.',
    choose(['toward-head', 'Opening toward the head'], ['away', 'Opening away from the head']),
    { toward: 'head' },
  ),
  requirement(
    'bracket-seat',
    'bracket-opening',
    'The bracket sits on the shoulders of the bolts.',
    choose(['seated', 'Seated on the shoulders, bolts secure'], ['proud', 'Not seated']),
    { fixing: 'seat' },
  ),
  requirement(
    'post-kind',
    'post-kind',
    'The post is a hinged breakaway post.',
    choose(['right', 'A hinged breakaway post, sound'], ['other', 'Another kind of post']),
    { breakaway: 'hinge' },
  ),
  requirement(
    'omitted-post',
    'omitted-post',
    'The posts stand 12 ft 6 in apart (a post is left out for pipe culvert).',
    measure({ nominal: 150, low: 149, high: 151, role: 'centre' }),
  ),
])

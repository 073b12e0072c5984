import { type Draft, valueAt, withValue } from '../form/draft.ts'
import type { FormField } from '../form/form-field.ts'
import type { FormList, FormSection } from '../form/form-section.ts'
import { sheetFieldMaker } from './sheet-field-maker.ts'
import { freshCited, freshLimits, listAt, sectionOf } from './sheet-lists.ts'
import { words } from './words.ts'

/** What only an end unit has: posts and panels of its own, its length, flare and ground. */
export function endSections(draft: Draft): readonly FormSection[] {
  const { sections } = words().form
  return [
    sectionOf('posts', sections.posts, [], postList(draft)),
    sectionOf('panels', sections.panels, [], panelList(draft, 'own')),
    sectionOf('adapters', sections.adapters, [], panelList(draft, 'adapters')),
    sectionOf('length', sections.length, lengthFields(draft)),
    sectionOf('flare', sections.flare, [...flareFields(draft), ...gradingFields(draft)]),
  ]
}

/** What only a system has: its panels, spacings, gaps and working widths. */
export function systemSections(draft: Draft): readonly FormSection[] {
  const { sections, form } = { sections: words().form.sections, form: words().form }
  const make = sheetFieldMaker(draft)
  const lengths = (kind: 'standard' | 'converting' | 'endOnly'): FormList =>
    listAt(
      draft,
      `panels.${kind}`,
      form.add.panel,
      (at, i) => ({
        title: make.thing(`panels.${kind}[]`, i + 1),
        fields: [
          make.inches(`${at}.inches`, make.labelOf('inches')),
          make.source(at, make.thing(`panels.${kind}[]`, i + 1)),
        ],
      }),
      () => freshCited(draft),
      kind === 'standard' ? 1 : 0,
    )
  return [
    sectionOf('system', sections.posts, systemFields(draft)),
    ...(['standard', 'converting', 'endOnly'] as const).map((kind) =>
      sectionOf(kind, make.thing(`panels.${kind}[]`), [], lengths(kind)),
    ),
    sectionOf('gaps', sections.gaps, movedFields(draft), gapList(draft)),
    sectionOf('length', sections.length, runFields(draft)),
    sectionOf('widths', sections.widths, [], widthList(draft)),
  ]
}

function postList(draft: Draft): FormList {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  const stub = { ...freshLimits(draft), role: 'ceiling' }
  return listAt(
    draft,
    'posts',
    form.add.post,
    (at, i) => {
      const title = make.thing('posts[]', i + 1)
      const of = make.thing('posts[].stub', i + 1)
      return {
        title,
        fields: [
          make.inches(`${at}.along`, make.labelOf('along')),
          make.text(`${at}.kind`, make.labelOf('postKind')),
          ...makeFields(draft, `${at}.make`),
          make.yesNo(`${at}.block`, make.labelOf('block')),
          make.orAbsent(make.yesNo(`${at}.railBolted`, make.labelOf('railBolted')), 'notStated'),
          make.orAbsent(make.choice(`${at}.hingeSide`, 'hingeSide'), 'notStated'),
          make.orAbsent(make.yesNo(`${at}.soilTube`, make.labelOf('soilTube')), 'notStated'),
          ...make.optional(`${at}.slots`, make.labelOf('slots'), 'none', {}, () => [
            make.choice(`${at}.slots.set`, 'slotSet'),
            make.choice(`${at}.slots.side`, 'slotSide'),
          ]),
          ...make.optional(`${at}.stub`, of, 'none', stub, () => make.limits(`${at}.stub`, of)),
          make.source(at, title),
        ],
      }
    },
    (posts) => ({
      ...{ number: posts.length + 1, kind: '', make: freshMake, railBolted: 'notStated', hingeSide: 'notStated' },
      ...{ soilTube: 'notStated', slots: 'notStated', stub: 'none', ...freshCited(draft) },
    }),
  )
}

/** How it breaks away is asked for. */
const freshMake = { material: 'notStated' }

/** What a post is made of; a sheet from before that is read by its name until it is said. */
function makeFields(draft: Draft, place: string): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  return make.optional(place, words().form.make, undefined, freshMake, () => [
    make.orAbsent(make.choice(`${place}.material`, 'material'), 'notStated'),
    make.choice(`${place}.breakaway`, 'breakaway'),
  ])
}

function panelList(draft: Draft, kind: 'own' | 'adapters'): FormList {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  return listAt(
    draft,
    `panels.${kind}`,
    form.add.panel,
    (at, i) => {
      const title = make.thing(`panels.${kind}[]`, i + 1)
      return {
        title,
        fields: [
          make.inches(`${at}.inches`, make.labelOf('inches')),
          make.text(`${at}.name`, make.labelOf('name')),
          make.yesNo(`${at}.slotted`, make.labelOf('slotted')),
          ...make.optional(`${at}.beam`, form.beam, undefined, {}, () => [
            make.choice(`${at}.beam.profile`, 'profile'),
            make.number(`${at}.beam.gauge`, make.labelOf('gauge'), null),
            make.number(`${at}.beam.layers`, make.labelOf('layers'), null),
          ]),
          make.source(at, title),
        ],
      }
    },
    () => ({ name: '', ...freshCited(draft) }),
  )
}

function lengthFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const stated = (of: 'listedLength' | 'lengthOfNeedFrom'): readonly FormField[] => [
    make.inches(`${of}.inches`, make.thing(of)),
    make.source(of, make.thing(of)),
  ]
  return [...stated('listedLength'), ...stated('lengthOfNeedFrom'), ...optionalLength(draft, 'stroke')]
}

const optionalLength = (
  draft: Draft,
  of: 'stroke' | 'shortestRun' | 'shortestRunRedirects' | 'recommendedRun',
): readonly FormField[] => {
  const make = sheetFieldMaker(draft)
  return make.optional(of, make.thing(of), 'notStated', freshCited(draft), () => [
    make.inches(`${of}.inches`, make.thing(of)),
    make.source(of, make.thing(of)),
  ])
}

function flareFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const of = make.thing('flare')
  const fresh = { offset: freshLimits(draft), ...freshCited(draft) }
  return make.optional('flare', of, 'none', fresh, () => [
    make.choice('flare.shape', 'shape', make.labelOf('shape', of)),
    make.inches('flare.overInches', make.labelOf('overInches', of)),
    make.source('flare', of),
    ...make.limits('flare.offset', make.thing('flare.offset')),
  ])
}

function gradingFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const of = make.thing('grading')
  const cited = freshCited(draft)
  const slope = make.thing('grading.platformSlope')
  const isBare = typeof valueAt(draft, 'grading.platformSlope') === 'number'
  const fresh = {
    ...{ platformSlope: cited, behindPostOneFeet: 'notStated' },
    ...{ recoveryLengthFeet: 'notStated', recoveryWidthFeet: 'notStated', ...cited },
  }
  const feet = (name: 'behindPostOne' | 'recoveryLength' | 'recoveryWidth'): FormField =>
    make.orAbsent(make.number(`grading.${name}Feet`, make.labelOf(name, of), 'ft'), 'notStated')
  return make.optional('grading', of, 'notStated', fresh, () => [
    ...(isBare
      ? [make.number('grading.platformSlope', slope, null)]
      : [make.number('grading.platformSlope.run', slope, null), make.source('grading.platformSlope', slope)]),
    ...(['behindPostOne', 'recoveryLength', 'recoveryWidth'] as const).map(feet),
    make.source('grading', of),
  ])
}

function systemFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const spacings = (['full', 'half', 'quarter', 'halfBeforeQuarter'] as const).flatMap((name) => [
    make.inches(`spacings.${name}.inches`, make.thing(`spacings.${name}`)),
    make.source(`spacings.${name}`, make.thing(`spacings.${name}`)),
  ])
  return [
    make.choice('splice.position', 'position'),
    make.source('splice', make.thing('splice')),
    make.text('post.kind', make.labelOf('postKind')),
    ...makeFields(draft, 'post.make'),
    make.yesNo('post.block', make.labelOf('block')),
    make.source('post', make.thing('post')),
    ...spacings,
  ]
}

const runFields = (draft: Draft): readonly FormField[] => [
  ...optionalLength(draft, 'shortestRun'),
  ...optionalLength(draft, 'shortestRunRedirects'),
  ...optionalLength(draft, 'recommendedRun'),
]

function movedFields(draft: Draft): readonly FormField[] {
  const make = sheetFieldMaker(draft)
  const cited = freshCited(draft)
  const [of, most, inRun, slot] = (
    ['movedPost', 'movedPost.most', 'movedPost.mostInRun', 'movedPost.newSlot'] as const
  ).map((path) => make.thing(path)) as [string, string, string, string]
  const fresh = { most: cited, ...cited }
  return make.optional('movedPost', of, 'notStated', fresh, () => [
    make.inches('movedPost.most.inches', most),
    make.source('movedPost.most', most),
    make.yesNo('movedPost.atSplice', make.labelOf('atSplice', of)),
    make.source('movedPost', of),
    ...make.optional('movedPost.mostInRun', inRun, 'notStated', cited, () => [
      make.number('movedPost.mostInRun.posts', inRun, null),
      make.source('movedPost.mostInRun', inRun),
    ]),
    ...make.optional('movedPost.newSlot', slot, 'notStated', cited, () => [
      make.inches('movedPost.newSlot.widthInches', make.labelOf('slotWidth', slot)),
      make.inches('movedPost.newSlot.lengthInches', make.labelOf('slotLength', slot)),
      make.source('movedPost.newSlot', slot),
    ]),
  ])
}

function gapList(draft: Draft): FormList {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  const cited = freshCited(draft)
  return listAt(
    draft,
    'omissions',
    form.add.gap,
    (at, i) => {
      const title = make.thing('omissions[]', i + 1)
      const next = make.thing('omissions[].leastToNextGap', i + 1)
      const curb = make.thing('omissions[].nestedAtCurb', i + 1)
      return {
        title,
        fields: [
          make.choice(`${at}.kind`, 'gapKind'),
          make.number(`${at}.most`, make.labelOf('most'), null),
          make.number(`${at}.specialPostsEachSide`, make.labelOf('specialPostsEachSide'), null),
          make.changing({ ...make.text(`${at}.specialPostKind`, make.labelOf('specialPostKind')), isOptional: true }),
          ...(typeof valueAt(draft, `${at}.specialPostKind`) === 'string'
            ? makeFields(draft, `${at}.specialPostMake`)
            : []),
          make.orAbsent(make.inches(`${at}.leastToEndUnit`, make.labelOf('leastToEndUnit')), 'notStated'),
          ...make.optional(`${at}.leastToNextGap`, next, 'notStated', cited, () => [
            make.inches(`${at}.leastToNextGap.inches`, next),
            make.source(`${at}.leastToNextGap`, next),
          ]),
          make.inches(`${at}.nestedInches`, make.labelOf('nestedInches')),
          ...make.optional(`${at}.nestedAtCurb`, curb, 'notStated', cited, () => [
            make.inches(`${at}.nestedAtCurb.inches`, curb),
            make.source(`${at}.nestedAtCurb`, curb),
          ]),
          make.yesNo(`${at}.spliceOnOmittedPost`, make.labelOf('spliceOnOmittedPost')),
          make.source(at, title),
        ],
      }
    },
    () => ({ specialPostKind: null, leastToEndUnit: 'notStated', leastToNextGap: 'notStated', ...cited }),
  )
}

function widthList(draft: Draft): FormList {
  const { form } = words()
  const make = sheetFieldMaker(draft)
  return listAt(
    draft,
    'workingWidths',
    form.add.width,
    (at, i) => ({
      title: make.thing('workingWidths[]', i + 1),
      fields: [
        make.choice(`${at}.spacing`, 'spacing'),
        make.changing({
          ...make.choice(`${at}.standard`, 'standard'),
          isOptional: true,
          put: (into, value) => withValue(into, `${at}.standard`, value ?? undefined),
        }),
        make.orAbsent(make.inches(`${at}.inches`, make.labelOf('workingWidth')), 'notStated'),
        make.source(at, make.thing('workingWidths[]', i + 1)),
      ],
    }),
    () => ({ inches: 'notStated', ...freshCited(draft) }),
  )
}

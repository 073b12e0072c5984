/**
 * The fields of a sheet that hold a value, by what they mean: a name in the file that means two things in two places, as
 * `kind`, has a name here for each. Words, forms and comparisons all go by these.
 */
export type SheetField =
  | ChosenField
  | (typeof railFields)[number]
  | (typeof inchFields)[number]
  | (typeof footFields)[number]
  | (typeof numberFields)[number]
  | (typeof yesNoFields)[number]
  | (typeof textFields)[number]
  | 'slope'
  | 'severity'
  | 'seen'
  | 'slots'
  | 'topics'
  | 'joins'
  | 'limits'
  | StatedApart

/** What has a source of its own where it is stated; where it is not, that stands in its place. */
type StatedApart = 'stub' | 'nestedAtCurb' | 'mostInRun' | 'newSlot'

export type ChosenField = keyof typeof sheetChoices

/** What is chosen, besides not stated. */
export const sheetChoices = {
  category: ['W-beam barrier', 'W-beam terminal', 'transition', 'other longitudinal barrier'],
  standard: ['MASH', 'NCHRP 350'],
  lapRule: ['adjacent traffic', 'terminal end-on'],
  material: ['steel', 'wood'],
  breakaway: ['hinge', 'other', 'none'],
  hingeSide: ['upstream', 'downstream', 'none'],
  slotSet: ['upper', 'lower'],
  slotSide: ['upstream', 'downstream'],
  profile: ['W', 'thrie', 'W to thrie'],
  shape: ['straight', 'parabola'],
  position: ['post', 'midspan'],
  gapKind: ['single', 'long span', 'nested span'],
  spacing: ['full', 'half', 'quarter'],
} as const

/** Along the rail, inches. */
export const railFields = ['along', 'inches', 'overInches', 'leastToEndUnit', 'leastToNextGap', 'nestedInches'] as const
/** Across the rail, or smaller than a post space, inches. */
export const inchFields = ['workingWidth', 'slotWidth', 'slotLength'] as const
/** On the ground, feet. */
export const footFields = ['behindPostOne', 'recoveryLength', 'recoveryWidth'] as const
const numberFields = ['edition', 'testLevel', 'gauge', 'layers', 'most', 'specialPostsEachSide', 'posts'] as const
const yesNoFields = [
  'block',
  'railBolted',
  'soilTube',
  'slotted',
  'spliceOnOmittedPost',
  'atSplice',
  'gating',
  'energyAbsorbing',
  'crashworthy',
] as const
/** In the words of the sheet. */
export const textFields = ['name', 'notice', 'postKind', 'specialPostKind', 'measured', 'must', 'picture'] as const

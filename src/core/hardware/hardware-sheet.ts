import type { Language } from '../language.ts'
import type { LengthUnit } from '../units/exact-length.ts'
import type { Unit } from '../units/quantity-kinds.ts'

/** How far a statement of a sheet can be trusted. `from memory` is shown as unconfirmed until an agency replaces it. */
export type Confirmation = 'published' | 'common practice' | 'from memory'

/** Where a statement comes from: a key of the sheet's `sources`, and how far it is confirmed. */
export interface Cited {
  readonly source: string
  readonly confirmation: Confirmation
  /** By whom it was compared with its source; left out where nobody said. */
  readonly checked?: Checked | undefined
}

/** Who found a statement in its source, on which page, and on which day (ISO 8601). */
export interface Checked {
  readonly by: string
  readonly page: string
  readonly on: string
}

export interface Source {
  readonly title: string
  readonly edition: string
}

export type Stated<T> = T | 'notStated'

/**
 * One dimension as its source states it, in the source's own unit: a length, or where a rule measures something else the
 * limits of that.
 *
 * `role` says what the limits mean: a `floor` is a lowest value with every tolerance included; a `ceiling` is a
 * highest one; a `centre` is a nominal with a tolerance on both sides.
 */
export interface Dimension<U extends Unit = LengthUnit> extends Cited {
  readonly nominal: Stated<number>
  readonly low: Stated<number>
  readonly high: Stated<number>
  readonly unit: U
  readonly role: 'floor' | 'ceiling' | 'centre'
  readonly measured: string
}

/** A number with its source, in inches along the rail. */
export interface CitedInches extends Cited {
  readonly inches: number
}

export type SplicePosition = 'post' | 'midspan'

/** Which panel lies on the traffic side of a splice. */
export type LapRule = 'adjacent traffic' | 'terminal end-on'

export type TestStandard = 'NCHRP 350' | 'MASH'

export interface Criteria extends Cited {
  readonly standard: TestStandard
  /** Year of the edition, as 2016 for MASH 2016; 1993 for NCHRP Report 350. */
  readonly edition: number
  readonly testLevel: number
}

/** The class of hardware that the joint implementation agreement sets a letting date for. */
export type AgreementCategory = 'W-beam barrier' | 'W-beam terminal' | 'transition' | 'other longitudinal barrier'

/** Where a rule of a sheet applies, counted in the sheet's own numbers: post 1 is the outermost. */
export type PlaceSelector =
  | { readonly kind: 'posts'; readonly numbers: readonly number[] }
  | { readonly kind: 'panels'; readonly numbers: readonly number[] }
  | { readonly kind: 'each post' }
  | { readonly kind: 'each splice' }
  | { readonly kind: 'unit' }

export interface Choice {
  readonly id: string
  readonly label: string
  readonly right: boolean
}

/** How one finds out whether something is as it must be. */
export type Look =
  | { readonly kind: 'measure'; readonly limits: Dimension<Unit> }
  | { readonly kind: 'choose'; readonly choices: readonly Choice[] }
  | { readonly kind: 'confirm' }

export const figureKinds = [
  'rail-height',
  'flare-offset',
  'straightness',
  'post-spacing',
  'panel-length',
  'slotted-panel',
  'lap',
  'splice-position',
  'rail-bolt',
  'block',
  'hinge-side',
  'stub-height',
  'slot-set',
  'head-holes',
  'bearing-plate',
  'cable-play',
  'bracket-opening',
  'post-kind',
  'omitted-post',
] as const
export type FigureKind = (typeof figureKinds)[number]

/** What the figure of a rule draws as right, each where the kind of figure asks for it; lengths come from the rule's limits. */
export interface Shown {
  /** Whether block, bolt or slots are there. */
  readonly present?: boolean | undefined
  /** Whether the wrong one is fixed with a washer. */
  readonly wrongWasher?: boolean | undefined
  readonly set?: SlotSet['set'] | undefined
  readonly toward?: 'head' | 'away' | undefined
  /** Which panel lies on the traffic side of a lap. */
  readonly over?: 'upstream' | 'downstream' | undefined
  readonly splice?: SplicePosition | undefined
  /** Distances of a bearing plate's hole from its upper and lower edge. */
  readonly plate?: { readonly upInches: number; readonly downInches: number } | undefined
  /** What holds the part, where the rule is about that and not about which way it points. */
  readonly fixing?: 'retainer' | 'seat' | undefined
  readonly breakaway?: PostMake['breakaway'] | undefined
}

/** A picture of the sheet's own. Raster only: what is drawn in words of a program is not taken from strangers. */
export interface RulePicture {
  readonly type: 'image/jpeg' | 'image/png' | 'image/webp'
  /** The bytes of the file. They stand in the sheet, so that whoever has the sheet has its pictures. */
  readonly base64: string
  /** What it shows, for who does not see it. */
  readonly alt: string
}

/** A rule stated in the sheet in so many words; the common ones (height, lap, blocks …) are derived instead. */
export interface SheetRule extends Cited {
  readonly id: string
  readonly at: PlaceSelector
  readonly must: string
  readonly look: Look
  readonly how: string
  readonly why: string
  readonly remedy: string
  /** True when later work buries or covers it: it has to be looked at before. */
  readonly hold: boolean
  readonly figure: FigureKind | null
  /** Left out by older sheets. */
  readonly shows?: Shown | undefined
  /** Left out where there is none. */
  readonly picture?: RulePicture | undefined
}

export interface Part {
  readonly id: string
  readonly name: string
  readonly rules: readonly SheetRule[]
}

/** What a post is made of, and what lets it break away when it is hit; another way than a hinge is holes, a notch or slots. */
export interface PostMake {
  readonly material: Stated<'steel' | 'wood'>
  readonly breakaway: 'hinge' | 'other' | 'none'
}

/** The rail of a panel: its profile, thickness, and layers, which are 2 where it is nested. */
export interface Beam {
  readonly profile: 'W' | 'thrie' | 'W to thrie'
  readonly gauge: 10 | 12
  readonly layers: 1 | 2
}

/** One post of an end unit. `along` is inches along the rail from the unit's origin. */
export interface SheetPost extends Cited {
  readonly number: number
  readonly along: number
  /** What it is called. */
  readonly kind: string
  /** Left out by older sheets. */
  readonly make?: PostMake | undefined
  readonly block: boolean
  readonly railBolted: Stated<boolean>
  readonly hingeSide: Stated<'upstream' | 'downstream' | 'none'>
  readonly soilTube: Stated<boolean>
  readonly slots: Stated<SlotSet | 'none'>
  /** Highest allowed stub above finish grade; `none` for a post that does not break away. */
  readonly stub: Dimension | 'none'
}

/** Open slots in a post that hold the rail: which set, and on which side of the post (upstream is toward the head). */
export interface SlotSet {
  readonly set: 'upper' | 'lower'
  readonly side: 'upstream' | 'downstream'
}

export interface SheetPanel extends Cited {
  readonly inches: number
  readonly name: string
  /** Left out by older sheets. */
  readonly beam?: Beam | undefined
  /** True when the panel has the terminal's own row of slots. */
  readonly slotted: boolean
}

export interface Flare extends Cited {
  readonly shape: 'straight' | 'parabola'
  readonly offset: Dimension
  /**
   * Rail from the unit's origin over which the flare runs out, as the source states it, inches; it is built to run out at
   * the splice nearest to that, since no panel has a kink.
   */
  readonly overInches: number
}

export interface Grading extends Cited {
  /** Rise or fall of the platform, as 10 for 1V:10H; larger is flatter. A bare number has the source of the rest. */
  readonly platformSlope: number | ({ readonly run: number } & Cited)
  readonly behindPostOneFeet: Stated<number>
  readonly recoveryLengthFeet: Stated<number>
  readonly recoveryWidthFeet: Stated<number>
}

/** One kind of requirement that a named person may take out of judging with a reason. */
export interface MaySetAside extends Cited {
  /** A topic derived from layout and sheet, or the id of a rule of the sheet. */
  readonly topic: string
}

/** What a fault does when the hardware is struck: it fails, it holds less, or only its upkeep is behind. */
export type Severity = 'lets it fail' | 'weakens it' | 'upkeep'

/** What somebody sees at a place that no requirement asks for. */
export const seenKinds = ['hit', 'missing part', 'erosion', 'debris', 'growth', 'missing delineator', 'other'] as const
export type SeenKind = (typeof seenKinds)[number]

/** How bad it is where these requirements fail, or where one of these things is seen. */
export interface SeverityRule extends Cited {
  readonly severity: Severity
  /** Topics derived from layout and sheet, of the run file, or ids of rules of the sheet. */
  readonly topics: readonly string[]
  readonly seen: readonly SeenKind[]
}

/** By language, then by the text that is said otherwise. */
export type Translations = Readonly<Partial<Record<Language, Readonly<Record<string, string>>>>>

/** What was said of a text before it was changed: by language, then by the text as it stands now. */
export type EarlierTranslations = Readonly<Partial<Record<Language, Readonly<Record<string, Translated>>>>>

/** A text as it stood in the sheet, and what another language said of it. */
export interface Translated {
  readonly text: string
  readonly said: string
}

interface SheetCommon {
  readonly format: 'lapwise-sheet/1'
  readonly id: string
  readonly version: string
  /** The shipped edition that an agency's own one began from; left out where there is none or nobody noted it. */
  readonly basedOn?: { readonly id: string; readonly version: string } | undefined
  /** In which its texts are written; left out, English. */
  readonly language?: Language | undefined
  /** Its texts in other languages, each by the text as it stands in the sheet. What is not here is shown as it stands. */
  readonly translations?: Translations | undefined
  /** Of texts that were changed and not translated since; nobody is shown them but who translates. */
  readonly earlierTranslations?: EarlierTranslations | undefined
  readonly name: string
  /** Shown wherever the sheet is used; the shipped ones say that they are examples. */
  readonly notice: string
  readonly sources: Readonly<Record<string, Source>>
  readonly category: AgreementCategory
  readonly criteria: readonly Criteria[]
  readonly railHeight: Dimension
  /** Highest allowed deviation of a panel's middle from the chord between its ends. */
  readonly straightness: Dimension | 'notStated'
  readonly postSpacing: Dimension
  readonly lap: { readonly rule: LapRule } & Cited
  readonly parts: readonly Part[]
  /** What may be set aside; nothing else may. Left out, nothing may. */
  readonly maySetAside?: readonly MaySetAside[] | undefined
  /** How bad which fault is. What stands in none of them is not stated, and counts as the worst. */
  readonly severities?: readonly SeverityRule[] | undefined
}

/** Posts that may be left out, moved or replaced at an obstruction; each rule with its own conditions. */
export interface OmissionRule extends Cited {
  readonly kind: 'single' | 'long span' | 'nested span'
  /** Most posts in a row that may be left out. */
  readonly most: number
  /** Special posts needed on each side of the gap, and what they are. */
  readonly specialPostsEachSide: number
  readonly specialPostKind: string | null
  /** Left out by older sheets, and where there are no special posts. */
  readonly specialPostMake?: PostMake | undefined
  /** Least distance along the rail from the gap's outermost changed post to the end unit's last post. */
  readonly leastToEndUnit: Stated<number>
  /** Least clear distance to the next gap; a bare number comes from the rule's own source. */
  readonly leastToNextGap: Stated<number> | CitedInches
  /** Rail that must be doubled where no curb stands before it, centred on the gap; 0 for none. */
  readonly nestedInches: number
  /** The same where a curb stands before the rail; not stated, the gap is not allowed there. */
  readonly nestedAtCurb?: Stated<CitedInches> | undefined
  /** Whether a splice may lie on the line of an omitted post. */
  readonly spliceOnOmittedPost: boolean
}

export interface NewSlot extends Cited {
  readonly widthInches: number
  readonly lengthInches: number
}

export interface MovedPostRule extends Cited {
  readonly most: CitedInches
  readonly atSplice: boolean
  /** Most posts of one run that may be moved. */
  readonly mostInRun?: Stated<{ readonly posts: number } & Cited> | undefined
  /** The slot that is cut for the post bolt where the moved post stands. */
  readonly newSlot?: Stated<NewSlot> | undefined
}

export interface LongitudinalSheet extends SheetCommon {
  readonly kind: 'longitudinal'
  readonly splice: { readonly position: SplicePosition } & Cited
  readonly post: { readonly kind: string; readonly make?: PostMake | undefined; readonly block: boolean } & Cited
  readonly panels: {
    readonly standard: readonly CitedInches[]
    /** Odd lengths that shift the splices by half a post space. */
    readonly converting: readonly CitedInches[]
    /** Lengths allowed only as the first or last panel of the run. */
    readonly endOnly: readonly CitedInches[]
  }
  readonly spacings: {
    readonly full: CitedInches
    readonly half: CitedInches
    readonly quarter: CitedInches
    /** Rail at half spacing that has to lie between full and quarter spacing. */
    readonly halfBeforeQuarter: CitedInches
  }
  readonly omissions: readonly OmissionRule[]
  readonly movedPost: MovedPostRule | 'notStated'
  /** The shortest run that was tested, anchor to anchor; how much of it redirects, and how long one is advised to be. */
  readonly shortestRun: CitedInches | 'notStated'
  readonly shortestRunRedirects?: Stated<CitedInches> | undefined
  readonly recommendedRun?: Stated<CitedInches> | undefined
  readonly workingWidths: readonly WorkingWidth[]
}

/** Distance from the front face of rail to the hazard that a spacing needs, as tested to one standard. */
export interface WorkingWidth extends Cited {
  readonly spacing: 'full' | 'half' | 'quarter'
  /** Left out by older sheets: then the one standard to which the sheet was tested, if it is one. */
  readonly standard?: TestStandard | undefined
  readonly inches: Stated<number>
}

/** A unit that ends a run. Its origin is post 1, or for a bridge end the connection to the bridge. */
export interface EndSheet extends SheetCommon {
  readonly kind: 'terminal' | 'trailing anchor' | 'buried end' | 'bridge end'
  /** Sheets of the longitudinal systems that it joins. */
  readonly joins: readonly string[]
  readonly posts: readonly SheetPost[]
  readonly panels: {
    readonly own: readonly SheetPanel[]
    /** When not empty, exactly one of these follows the own panels. */
    readonly adapters: readonly SheetPanel[]
  }
  readonly listedLength: CitedInches
  /** From the origin: the rail counts for length of need from here on. */
  readonly lengthOfNeedFrom: CitedInches
  readonly stroke: CitedInches | 'notStated'
  readonly flare: Flare | 'none'
  readonly gating: Stated<boolean>
  readonly energyAbsorbing: Stated<boolean>
  readonly crashworthy: boolean
  readonly grading: Grading | 'notStated'
}

export type HardwareSheet = LongitudinalSheet | EndSheet

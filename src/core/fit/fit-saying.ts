import type { EndExposure } from '../hardware/crashworthy-end.ts'
import type {
  EndExposureSaying,
  NeededEndSaying,
  NeededTestSaying,
  SourceSaying,
  TestsSaying,
} from '../hardware/hardware-saying.ts'
import type { HardwareSheet, SplicePosition, TestStandard } from '../hardware/hardware-sheet.ts'
import type { SheetText } from '../hardware/sheet-text.ts'
import type { NeededTest, WorkAtHand } from '../hardware/tested-criteria.ts'
import type { Nanometres } from '../units/exact-length.ts'
import type { Curb } from './fit.ts'

/** What checks of the hardware say of their own. Names of hazards are a person's words, names of sheets the sheet's. */
export type FitSaying = FitTopic | OwnLimit | OwnValue | FitChange | OwnSource

export type FitLimit = OwnLimit | NeededTestSaying | NeededEndSaying
export type FitValue = OwnValue | EndExposureSaying
export type FitSource = OwnSource | SourceSaying

type Spacing = 'full' | 'half' | 'quarter'

/** What is checked. */
export type FitTopic =
  | { readonly kind: 'crash test of sheet'; readonly sheet: SheetText }
  | { readonly kind: 'end on chosen system'; readonly sheet: SheetText }
  | { readonly kind: 'against adjoining run' }
  | { readonly kind: 'sheet at end'; readonly sheet: SheetText; readonly end: EndExposure['end'] }
  | { readonly kind: 'barrier before transition' }
  | { readonly kind: 'length of run' }
  | { readonly kind: 'room behind rail'; readonly hazard: string; readonly spacing: Spacing }
  | { readonly kind: 'platform of end'; readonly of: HardwareSheet['kind'] }
  | { readonly kind: 'level ground behind post 1' }
  | { readonly kind: 'clear area'; readonly extent: 'length' | 'width' }
  | { readonly kind: 'foreslope beside platform' }
  | { readonly kind: 'ground to slope break' }
  | { readonly kind: 'curb before rail'; readonly by: 'guide' | 'study' }
  | { readonly kind: 'curb before terminal'; readonly terminal: SheetText }

type OwnLimit =
  | { readonly kind: 'joins systems'; readonly systems: readonly string[] }
  | {
      readonly kind: 'height within'
      readonly height: Nanometres
      readonly within: Nanometres
      readonly splices: SplicePosition
    }
  | {
      readonly kind: 'barrier before transition at least'
      readonly inches: number
      /** What it is the greatest of, besides the terminal's stroke. */
      readonly leastInches: number
      readonly plainInches: number
    }
  | {
      readonly kind: 'run at least'
      readonly shortest: number
      readonly redirects: number | null
      readonly recommended: number | null
    }
  | { readonly kind: 'room at least'; readonly length: Nanometres }
  | { readonly kind: 'working width'; readonly inches: number; readonly standard: TestStandard }
  | { readonly kind: 'working width not stated'; readonly spacing: Spacing; readonly standard: TestStandard }
  | { readonly kind: 'slope or flatter'; readonly run: number }
  | { readonly kind: 'foreslope or flatter'; readonly run: number; readonly never: number }
  | { readonly kind: 'ground at least to break'; readonly inches: number; readonly slope: number }
  | {
      readonly kind: 'curb allowed'
      readonly flushInches: number
      /** Null where only flush is allowed. */
      readonly leastBehindFeet: number | null
      readonly highestInches: number
      readonly faceSlope: number | null
      /** Whether a test passed what the text does not allow, and whether another text warns of what this one allows. */
      readonly testDiffers: boolean
      readonly textsDiffer: boolean
    }
  | { readonly kind: 'no curb or one for the speed' }
  | { readonly kind: 'no curb near terminal'; readonly fromFeet: number; readonly highestInches: number }

type OwnValue =
  | {
      readonly kind: 'crash tests and work'
      readonly tests: TestsSaying
      readonly work: WorkAtHand['work']
      readonly letting: string | null
    }
  | { readonly kind: 'chosen system'; readonly id: string | null }
  | { readonly kind: 'adjoining rail'; readonly height: Nanometres; readonly splices: SplicePosition | null }
  | { readonly kind: 'length not laid out' }
  | { readonly kind: 'site does not say' }
  | { readonly kind: 'length there is'; readonly length: Nanometres }
  | { readonly kind: 'slope there is'; readonly run: number }
  | { readonly kind: 'curb there is'; readonly curb: Curb | 'none' }

/** The smallest change that makes a thing lawful. */
export type FitChange =
  | { readonly kind: 'take tested hardware'; readonly of: HardwareSheet['kind']; readonly needed: NeededTest }
  | { readonly kind: 'take joining parts'; readonly systems: readonly string[]; readonly chosen: SheetText }
  | {
      readonly kind: 'meet adjoining run'
      /** Null where the heights meet. */
      readonly height: { readonly by: Nanometres; readonly overFeet: readonly [number, number] } | null
      /** Panels of which one shifts the splices, inches; null where the splices meet. */
      readonly shiftingPanels: readonly [number, number] | null
    }
  | { readonly kind: 'take crashworthy terminal' }
  | { readonly kind: 'add rail before transition'; readonly inches: number }
  | { readonly kind: 'add rail'; readonly inches: number }
  | {
      readonly kind: 'space posts closer'
      readonly spacing: Spacing
      readonly overInches: number
      readonly needsInches: number
      /** Rail at half spacing between full and quarter; null where none is needed. */
      readonly half: { readonly inches: number; readonly at: 'begin' | 'both ends' } | null
    }
  | { readonly kind: 'move rail away'; readonly by: Nanometres; readonly hazard: string }
  | { readonly kind: 'grade platform'; readonly run: number; readonly orTangent: boolean }
  | { readonly kind: 'widen platform behind post 1'; readonly length: Nanometres; readonly orTangent: boolean }
  | { readonly kind: 'clear ground'; readonly behind: 'end' | 'rail'; readonly length: Nanometres }
  | { readonly kind: 'flatten foreslope'; readonly run: number }
  | {
      readonly kind: 'take longer posts at break'
      readonly feet: readonly [number, number]
      readonly halfSpacingFeet: number
    }
  | {
      readonly kind: 'widen ground to break'
      readonly inches: number
      readonly feet: readonly [number, number]
      readonly beforeBreakFeet: number
    }
  | {
      readonly kind: 'change curb'
      /** Null where it is low enough. */
      readonly highestInches: number | null
      readonly railFlush: boolean
      readonly face: { readonly slope: number | null } | null
    }
  | { readonly kind: 'take curb away' }

type OwnSource =
  | { readonly kind: 'recalled height transitions'; readonly beforeTerminal: boolean }
  | { readonly kind: 'answer on transitions' }
  | { readonly kind: 'guide on curbs' }
  | { readonly kind: 'study on curbs' }
  | { readonly kind: 'recalled curbs before terminals' }
  | { readonly kind: 'figure on grading' }
  | { readonly kind: 'reports on slope breaks' }

import type { FitCheck } from '../fit/fit-check.ts'
import type { FitSource } from '../fit/fit-saying.ts'
import type { CrashworthyEnd, EndExposure } from '../hardware/crashworthy-end.ts'
import type { HardwareAtHeight } from '../hardware/hardware-saying.ts'
import type {
  Choice,
  Confirmation,
  Dimension,
  EndSheet,
  FigureKind,
  Shown,
  Stated,
} from '../hardware/hardware-sheet.ts'
import type { Rated } from '../hardware/severity.ts'
import type { SheetText } from '../hardware/sheet-text.ts'
import type { TestedHardware, WorkAtHand } from '../hardware/tested-criteria.ts'
import type { Unit } from '../units/quantity-kinds.ts'
import type { ChoiceSaying, RequirementText } from './requirement-saying.ts'

/** A place of the run. */
export type Place = PlaceAt &
  (
    | { readonly kind: 'post'; readonly own: OwnNumber | null }
    | { readonly kind: 'panel'; readonly own: OwnNumber | null }
    | { readonly kind: 'space' }
    | { readonly kind: 'splice' }
    /** An end unit, with the name of its sheet. */
    | { readonly kind: 'unit'; readonly sheet: SheetText }
    | { readonly kind: 'run' }
  )

/** The number of a piece in the end unit that it belongs to. */
export interface OwnNumber {
  readonly number: number
  readonly of: EndSheet['kind']
}

interface PlaceAt {
  /** Outlives the layout, as `post-9`: whatever stands at this place in a later version has it too. */
  readonly id: string
  /** For showing only: of the post, panel or splice from the first end; of a space that of its upstream post; 1 or 2 of a unit; 0 of the run. */
  readonly number: number
  /** Inches along the rail from the centre of post 1. */
  readonly alongInches: number
}

/** How a requirement is decided. */
export type RequirementLook =
  /** `counted` is what the count of what stands says, where it says something: it can show a fault, never that all is right. */
  | {
      readonly kind: 'measure'
      readonly limits: Dimension<Unit>
      readonly orFrom: Computation | null
      readonly counted?: number
    }
  | { readonly kind: 'choose'; readonly choices: readonly RequirementChoice[]; readonly counted?: string }
  | { readonly kind: 'confirm' }
  | { readonly kind: 'record'; readonly rule: RecordRule }

/** An answer to choose, to be said. */
export interface RequirementChoice extends Omit<Choice, 'label'> {
  readonly label: ChoiceSaying | SheetText
}

/** A length computed from the readings at several posts, when nobody measured it directly. */
export type Computation =
  | { readonly kind: 'difference'; readonly from: string; readonly to: string }
  | { readonly kind: 'middle ordinate'; readonly points: readonly LinePoint[] }
  | { readonly kind: 'offset from line'; readonly point: LinePoint; readonly line: readonly LinePoint[] }

/** A reading that gives a lateral offset, and where along the rail it is taken (inches). */
export interface LinePoint {
  readonly reading: string
  readonly alongInches: number
}

/** A rule decided from the run file and the sheets, not from a reading: with all that decides it. */
export type RecordRule =
  | { readonly kind: 'criteria'; readonly hardware: TestedHardware; readonly at: WorkAtHand }
  | { readonly kind: 'crashworthy'; readonly sheet: CrashworthyEnd; readonly exposure: EndExposure }
  /** Nobody said it, or nobody looked. */
  | { readonly kind: 'not said'; readonly what: 'need' | 'rest of run' | 'end hardware' | 'location' }
  /** Rail that counts short of the stretch that has to be shielded, inches at either end; null where it is not known. */
  | { readonly kind: 'need of run'; readonly shortAtFirst: number | null; readonly shortAtSecond: number | null }
  /** An end unit stands at a system that its sheet does not name. */
  | { readonly kind: 'unit joins another system'; readonly unit: HardwareAtHeight; readonly system: HardwareAtHeight }
  /** Fewer pieces than the sheets ask for. */
  | {
      readonly kind: 'too few pieces'
      readonly of: 'posts' | 'panels'
      readonly counted: number
      readonly wanted: number
    }
  /** A check of the site that the run was made of, with its outcome. */
  | { readonly kind: 'site check'; readonly check: FitCheck }

/** One thing that must be true of one place of the run. */
export interface Requirement {
  /** Its place's id and its topic, as `post-9/rail-height`: it outlives the layout as the place does. */
  readonly id: string
  readonly topic: string
  readonly place: Place
  /** What must be true, in one sentence. */
  readonly must: RequirementText
  readonly look: RequirementLook
  readonly how: RequirementText
  readonly why: RequirementText
  readonly remedy: RequirementText
  readonly hold: boolean
  /** Whether a named person may take it out of judging with a reason: as the sheet says, and what failed of the site. */
  readonly maySetAside: boolean
  /** How bad it is where it fails, as the sheet says. */
  readonly severity: Stated<Rated>
  readonly figure: FigureKind | null
  /** What its figure draws as right, besides its limits. */
  readonly shows?: Shown | undefined
  readonly sheet: string
  readonly sheetVersion: string
  readonly source: FitSource
  readonly confirmation: Confirmation
}

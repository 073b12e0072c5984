import type { SeenKind, Severity, Stated } from '../hardware/hardware-sheet.ts'
import { type Rated, severityOfSeen, severityRank } from '../hardware/severity.ts'
import type { Unit } from '../layout/layout.ts'
import { sheetOf } from '../layout/sheet-of.ts'
import { panelPlace, postPlace, runPlace, spacePlace, splicePlace, unitPlace } from '../requirements/places.ts'
import type { Place } from '../requirements/requirement.ts'
import { endSheetOf, type RunModel } from '../requirements/run-model.ts'

/** What somebody saw that no requirement asks for. Never changed; it is closed by an entry of its own. */
export interface FreeFinding {
  readonly id: string
  readonly what: SeenKind
  /** Id of its place. */
  readonly of: string
  readonly note: string | null
  /** How bad it is by the word of its finder, where the sheet does not say; left out where nobody says. */
  readonly severity?: Severity
  /** Names of photos, as in a reading. */
  readonly photos: readonly string[]
  readonly by: string
  /** ISO 8601 date and time. */
  readonly at: string
  /** Id of the version of the run that its person saw; left out where it was the first. */
  readonly version?: string
  /** Null while it stands. */
  readonly closed: FreeFindingEnd | null
}

/** By what a free finding ended: it was put right, or it is not so. */
export interface FreeFindingEnd extends Pick<FreeFinding, 'id' | 'note' | 'photos' | 'by' | 'at'> {
  readonly as: 'put right' | 'not so'
}

/** A free finding at the run as it is in force. */
export interface PlacedFreeFinding {
  readonly finding: FreeFinding
  /** Null where the version in force has no such place. */
  readonly place: Place | null
  readonly severity: Stated<Rated>
}

/**
 * How bad each is by the sheet of the hardware at its place: those that stand first, the worst of them before the
 * others, then along the rail. What has no place in the version in force stands all the same, and is not stated.
 */
export function placeFreeFindings(model: RunModel, findings: readonly FreeFinding[]): readonly PlacedFreeFinding[] {
  // A long run has thousands of places, and is judged at each reading.
  if (findings.length === 0) return []
  const places = placesById(model)
  return findings
    .map((finding): PlacedFreeFinding => {
      const at = places.get(finding.of)
      if (at === undefined) return { finding, place: null, severity: 'notStated' }
      return { finding, place: at.place, severity: severityAt(model, at.unit, finding) }
    })
    .sort(
      (a, b) =>
        Number(a.finding.closed !== null) - Number(b.finding.closed !== null) ||
        severityRank(a.severity) - severityRank(b.severity) ||
        (a.place?.alongInches ?? 0) - (b.place?.alongInches ?? 0),
    )
}

/** By the sheet of the hardware there, which no finder lessens; where that says nothing, by the word of the finder. */
function severityAt(model: RunModel, unit: Unit, { what, severity }: FreeFinding): Stated<Rated> {
  const bySheet = severityOfSeen(sheetOf(model, unit), what)
  return bySheet === 'notStated' && severity !== undefined ? { severity, by: 'its finder' } : bySheet
}

export const standingOf = (findings: readonly PlacedFreeFinding[]): readonly PlacedFreeFinding[] =>
  findings.filter(({ finding }) => finding.closed === null)

/** Whether it keeps a run from being acceptable: it can let the hardware fail, or nobody says that it cannot. */
export const isGrave = ({ severity }: PlacedFreeFinding): boolean => severityRank(severity) === 0

/** Every place of the run, with the hardware that it belongs to. */
export function placesById(model: RunModel) {
  const { posts, spaces, panels, splices } = model.layout
  const ends = (['first', 'second'] as const).flatMap((unit) => {
    const sheet = endSheetOf(model, unit)
    return sheet === null ? [] : [{ place: unitPlace(model, unit, sheet), unit }]
  })
  const placed = [
    ...posts.map((post) => ({ place: postPlace(model, post), unit: post.unit })),
    ...spaces.map((space, i) => {
      const [before, after] = [posts[i]!.unit, posts[i + 1]!.unit]
      return { place: spacePlace(space), unit: before === after ? before : ('run' as const) }
    }),
    ...panels.map((panel) => ({ place: panelPlace(model, panel), unit: panel.unit })),
    ...splices.map((splice) => ({ place: splicePlace(splice), unit: splice.unit })),
    ...ends,
    { place: runPlace(), unit: 'run' as const },
  ]
  return new Map(placed.map((one) => [one.place.id, one]))
}

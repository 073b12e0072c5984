import type { Layout, LayoutRequest } from '../core/layout/layout.ts'
import type { Reading } from '../core/measurement/reading.ts'
import { type AskedEarlier, photoAskedEarlier, readingsInForce } from '../core/record/readings-in-force.ts'
import type { RunVersion } from '../core/record/version.ts'
import { deriveRequirements } from '../core/requirements/derive-requirements.ts'
import { readableIn } from '../core/requirements/readable-in.ts'
import type { RunModel } from '../core/requirements/run-model.ts'
import { type PlacedFreeFinding, placeFreeFindings, standingOf } from '../core/verdicts/free-findings.ts'
import { canonicalJson } from '../formats/canonical-json.ts'
import type { LocateTicketBody } from '../formats/entry/entry-kinds.ts'
import type { RunFile } from '../formats/run/run-file.ts'
import { type RequiredRun, requiredFor } from './require-by.ts'
import { followingVersion, type RevisedRun } from './revise-run.ts'

/** The layouts that an edited run can have, and which of them it has already. */
export interface EditChoices {
  readonly layouts: readonly Layout[]
  /** Place in `layouts` of the one that stands so far; null where that is none of them. */
  readonly asIs: number | null
}

/**
 * The lawful layouts of an edited run with the one that it has. Where nothing was changed that a layout follows from,
 * that one is a choice whatever the search finds: it was chosen once, perhaps by a program that searched otherwise.
 */
export function editChoices(
  before: Pick<RequiredRun, 'request' | 'model'>,
  laid: { readonly request: LayoutRequest; readonly layouts: readonly Layout[] },
): EditChoices {
  const own = before.model.layout
  const pieces = piecesOf(own)
  const at = laid.layouts.findIndex((layout) => piecesOf(layout) === pieces)
  if (at >= 0) return { layouts: laid.layouts, asIs: at }
  const isAskedTheSame = canonicalJson(laid.request) === canonicalJson(before.request)
  return isAskedTheSame ? { layouts: [own, ...laid.layouts], asIs: 0 } : { layouts: laid.layouts, asIs: null }
}

/** Where everything stands and what it is, whatever it is called. */
const piecesOf = ({ posts, panels, postOneAtInches }: Layout): string =>
  canonicalJson([
    postOneAtInches,
    posts.map(({ alongInches, kind, block, unit, state }) => [alongInches, kind, block, unit, state]),
    panels.map(({ fromInches, toInches, unit, nested }) => [fromInches, toInches, unit, nested]),
  ])

/** What becomes of a run and its readings when an edit is saved. */
export interface EditEffects extends RevisedRun {
  /** How many readings answer the next version as they answered the one before. */
  readonly staying: number
  /** Readings that are judged today and that only an earlier version will have asked for. */
  readonly asked: readonly AskedEarlier[]
  /** How many photos show what only an earlier version will have asked for. */
  readonly photosAsked: number
  /** Findings that no requirement asked for, that stand, and whose place will be gone: they stand all the same. */
  readonly findingsLeft: readonly PlacedFreeFinding[]
  /** Tickets with a mark measured from a post that will be gone: their marks stay where they are on the ground. */
  readonly ticketsLeft: readonly LocateTicketBody[]
  /** Ids of what both versions require, by other limits or words. */
  readonly otherLimits: readonly string[]
  /** Whether nothing is laid out or required otherwise. */
  readonly isOnlyNamed: boolean
}

/** What is recorded at a run and hangs on its places. */
interface Recorded {
  readonly readings: readonly Reading[]
  readonly photos: readonly (string | null)[]
  readonly freeFindings: readonly PlacedFreeFinding[]
  readonly tickets: readonly LocateTicketBody[]
}

/**
 * @param before    the run as it stands, its readings that are judged, what each of its photos shows, and what else is
 *                  recorded at its places
 * @param versions  at hand, by id
 * @param because   why, as somebody wrote it
 */
export function editEffects(
  before: RequiredRun & Recorded,
  versions: ReadonlyMap<string, RunVersion>,
  asked: { readonly run: RunFile; readonly request: LayoutRequest; readonly layout: Layout },
  { version, because }: { readonly version: string; readonly because: string | null },
): EditEffects {
  const fresh = requiredFor(asked.run, asked)
  const revised = followingVersion(before, before.run.version!, fresh, version, because)
  const next = revised.run.version!
  const model = { ...fresh.model, layout: next.layout }
  const requirements = deriveRequirements(model)
  const [askedSoFar, askedThen] = [readableIn(before), readableIn({ model, requirements })]
  const { judged, askedEarlier } = readingsInForce(
    next,
    askedThen,
    before.readings,
    new Map([...versions, [next.id, next]]),
  )
  const now = new Map(requirements.map((one) => [one.id, canonicalJson(one)]))
  const otherLimits = before.requirements.flatMap((one) => {
    const is = now.get(one.id)
    return is === undefined || is === canonicalJson(one) ? [] : [one.id]
  })
  const isSame =
    requirements.length === before.requirements.length &&
    otherLimits.length === 0 &&
    revised.askedOtherwise.length === 0
  return {
    ...revised,
    staying: judged.length,
    asked: askedEarlier,
    photosAsked: before.photos.filter(
      (of) =>
        photoAskedEarlier(before.run.version!, askedSoFar, of) === null &&
        photoAskedEarlier(next, askedThen, of) !== null,
    ).length,
    findingsLeft: findingsLeft(before, model),
    ticketsLeft: ticketsLeft(before, model),
    otherLimits,
    isOnlyNamed: isSame && revised.gone.length === 0 && revised.added.length === 0,
  }
}

function findingsLeft({ freeFindings }: Recorded, next: RunModel): readonly PlacedFreeFinding[] {
  const placed = standingOf(freeFindings).filter(({ place }) => place !== null)
  const then = placeFreeFindings(
    next,
    placed.map(({ finding }) => finding),
  )
  const left = new Set(then.flatMap(({ finding, place }) => (place === null ? [finding.id] : [])))
  return placed.filter(({ finding }) => left.has(finding.id))
}

function ticketsLeft({ model, tickets }: RequiredRun & Recorded, next: RunModel): readonly LocateTicketBody[] {
  const idsOf = ({ layout }: RunModel): ReadonlySet<string> => new Set(layout.posts.map(({ id }) => id))
  const [now, then] = [idsOf(model), idsOf(next)]
  return tickets.filter(({ marks }) => marks.some(({ from }) => now.has(from) && !then.has(from)))
}

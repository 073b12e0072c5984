import type { Reading } from '../measurement/reading.ts'
import { chainOf, firstVersionOf, placeIdsIn, type RunVersion } from './version.ts'

/** A reading that answers nothing which the version in force asks. It is kept and shown, never judged. */
export interface AskedEarlier {
  readonly reading: Reading
  /** Id of the version that its person saw. */
  readonly version: string
  readonly because: 'place gone' | 'asked otherwise' | 'no longer asked' | 'no version in common'
}

export interface ReadingsInForce {
  /** What is judged, in the order given. */
  readonly judged: readonly Reading[]
  readonly askedEarlier: readonly AskedEarlier[]
}

/**
 * Which readings answer what the version in force asks: those whose place it still has and of which it asks the same.
 * One that names no version was taken at the first.
 *
 * @param asked   ids of all that can be read in the version in force
 * @param others  versions that are at hand and that the one in force did not come from
 */
export function readingsInForce(
  inForce: RunVersion,
  asked: ReadonlySet<string>,
  readings: readonly Reading[],
  others: ReadonlyMap<string, RunVersion>,
): ReadingsInForce {
  const places = new Set(placeIdsIn(inForce.layout))
  const changes = new Map<string, ReadonlySet<string> | null>()
  const changedSince = (version: string): ReadonlySet<string> | null => {
    if (!changes.has(version)) changes.set(version, changesBetween(version, inForce, others))
    return changes.get(version)!
  }
  const judged: Reading[] = []
  const askedEarlier: AskedEarlier[] = []
  for (const reading of readings) {
    const version = reading.version ?? firstVersionOf(inForce)
    const changed = changedSince(version)
    if (version === inForce.id) judged.push(reading)
    else if (changed === null) askedEarlier.push({ reading, version, because: 'no version in common' })
    else if (!places.has(placeOf(reading.of))) askedEarlier.push({ reading, version, because: 'place gone' })
    else if (changed.has(reading.of)) askedEarlier.push({ reading, version, because: 'asked otherwise' })
    else if (!asked.has(reading.of)) askedEarlier.push({ reading, version, because: 'no longer asked' })
    else judged.push(reading)
  }
  return { judged, askedEarlier }
}

/** What is asked otherwise in the one version than in the other; null where they have no version in common. */
function changesBetween(
  version: string,
  inForce: RunVersion,
  others: ReadonlyMap<string, RunVersion>,
): ReadonlySet<string> | null {
  const at = inForce.earlier.findIndex(({ id }) => id === version)
  const other = at < 0 ? others.get(version) : { id: version, earlier: inForce.earlier.slice(0, at) }
  if (other === undefined) return null
  const [own, theirs] = [chainOf(inForce), chainOf(other)]
  const shared = own.findLast((id) => theirs.includes(id))
  if (shared === undefined) return null
  const since = [...inForce.earlier.slice(own.indexOf(shared)), ...other.earlier.slice(theirs.indexOf(shared))]
  return new Set(since.flatMap(({ askedOtherwise }) => askedOtherwise))
}

/**
 * Why the version in force no longer asks what a photo shows, which names no version; null where it asks it, and for
 * the run as a whole.
 *
 * @param asked  ids of all that can be read in the version in force
 * @param of     what the photo shows
 */
export function photoAskedEarlier(
  inForce: RunVersion,
  asked: ReadonlySet<string>,
  of: string | null,
): AskedEarlier['because'] | null {
  if (of === null || asked.has(of)) return null
  return placeIdsIn(inForce.layout).includes(placeOf(of)) ? 'no longer asked' : 'place gone'
}

const placeOf = (of: string): string => of.split('/')[0]!
